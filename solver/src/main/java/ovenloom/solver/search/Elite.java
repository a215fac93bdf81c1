package ovenloom.solver.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import ovenloom.model.menu.Work;
import ovenloom.solver.place.Decisions;

/** The few best that all rounds of all searches came to, no two of which cost the same: parents of what is tried next. */
final class Elite {

  private static final int MOST = 8;

  private final List<Member> members = new ArrayList<>();

  private record Member(Decisions decisions, long cost) {}

  /** Takes in what a round came to, if it is among the best. */
  void add(Decisions decisions, long cost) {
    if (members.stream().noneMatch(member -> member.cost == cost)) {
      members.add(new Member(decisions, cost));
      members.sort(Comparator.comparingLong(Member::cost));
    }
    if (members.size() > MOST) {
      members.removeLast();
    }
  }

  /** Whether there are two to be crossed. */
  boolean isPlural() {
    return members.size() > 1;
  }

  /** A child of two of them, or one as it is; good ones are drawn more often. */
  Decisions child(Work work, Random lot) {
    int one = lot.nextInt(members.size());
    int other = lot.nextInt(members.size());
    int third = lot.nextInt(members.size());
    return Crossing.of(members.get(Math.min(one, third)).decisions(), members.get(other).decisions(), work,
        lot);
  }
}
