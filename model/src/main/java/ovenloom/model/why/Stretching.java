package ovenloom.model.why;

import java.util.ArrayList;
import java.util.List;
import ovenloom.model.measure.Stretch;
import ovenloom.model.plan.Stay;
import ovenloom.model.plan.Where;

/** How a stay is made longer or shorter, where the step before or after it has moved. */
enum Stretching {
  /** What it begins or ends with gives way: food comes into the fridge when it did. */
  AT_ITS_ENDS {
    @Override
    List<Stretch> stretched(List<Stay.Part> parts, Stretch when) {
      List<Integer> turns = new ArrayList<>();
      parts.subList(1, parts.size()).forEach(part -> turns.add(part.when().from()));
      return between(turns, when);
    }
  },
  /** What lies between its ends gives way: food stands on the counter for as long as it did. */
  BETWEEN_THEM {
    @Override
    List<Stretch> stretched(List<Stay.Part> parts, Stretch when) {
      if (parts.size() < 2) {
        return List.of(when);
      }
      List<Integer> turns = new ArrayList<>();
      int first = parts.getFirst().where() instanceof Where.Counter
          ? when.from() + parts.getFirst().when().minutes()
          : when.to() - parts.getLast().when().minutes();
      turns.add(first);
      if (parts.size() > 2) {
        turns.add(when.to() - parts.getLast().when().minutes());
      }
      return between(turns, when);
    }
  };

  /** One for each part, in their order, together as long as the wait; some may be empty. */
  abstract List<Stretch> stretched(List<Stay.Part> parts, Stretch when);

  /** The same places over another wait; on the counter where nothing waited until now. */
  Stay over(Stay stay, Stretch when) {
    List<Stay.Part> before = stay.parts().stream().filter(part -> part.when().minutes() > 0).toList();
    if (before.isEmpty()) {
      return new Stay(stay.dish(), stay.step(), stay.batches(), onTheCounter(when), List.of());
    }
    List<Stretch> stretches = stretched(before, when);
    List<Stay.Part> parts = new ArrayList<>();
    for (int i = 0; i < stretches.size(); i++) {
      if (stretches.get(i).minutes() > 0) {
        parts.add(new Stay.Part(before.get(i).where(), stretches.get(i)));
      }
    }
    int later = when.to() - before.getLast().when().to();
    return new Stay(stay.dish(), stay.step(), stay.batches(), parts,
        parts.isEmpty() ? List.of() : Shifted.by(stay.hands(), later));
  }

  static List<Stay.Part> onTheCounter(Stretch when) {
    return when.minutes() == 0 ? List.of() : List.of(new Stay.Part(new Where.Counter(), when));
  }

  private static List<Stretch> between(List<Integer> turns, Stretch when) {
    List<Stretch> stretches = new ArrayList<>();
    int at = when.from();
    for (int turn : turns) {
      int next = Math.clamp(turn, at, when.to());
      stretches.add(new Stretch(at, next));
      at = next;
    }
    stretches.add(new Stretch(at, when.to()));
    return stretches;
  }
}
