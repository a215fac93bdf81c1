package ovenloom.cli.compare;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import ovenloom.cli.sheet.Words;
import ovenloom.model.menu.Batches;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;

/**
 * A step that is not done at the same time, in the same place and by the same cooks in all of some plans.
 *
 * @param batches those that are done alike in each plan
 * @param isSome whether there are others
 * @param doings one for each plan; null in one that has no such step
 */
public record Differing(String dish, String step, Batches batches, boolean isSome,
    List<@Nullable Doing> doings) {

  /** One batch's share of a step. */
  private record Share(String dish, String step, int batch) implements Comparable<Share> {
    private static final Comparator<Share> ORDER = Comparator.comparing(Share::dish)
        .thenComparing(Share::step)
        .thenComparingInt(Share::batch);

    @Override
    public int compareTo(Share other) {
      return ORDER.compare(this, other);
    }
  }

  public Differing {
    doings = Collections.unmodifiableList(new ArrayList<>(doings));
  }

  /** All of some plans, in the order of their time. */
  static List<Differing> of(List<Plan> plans) {
    List<Map<Share, Doing>> all = plans.stream().map(Differing::shares).toList();
    List<Differing> differing = new ArrayList<>();
    TreeSet<Share> shares = new TreeSet<>();
    all.forEach(each -> shares.addAll(each.keySet()));
    for (Share share : shares) {
      List<@Nullable Doing> doings = new ArrayList<>();
      all.forEach(each -> doings.add(each.get(share)));
      if (new HashSet<>(doings).size() > 1) {
        add(differing, share, isOfSeveral(plans, share.dish()), doings);
      }
    }
    differing.sort(Comparator.comparingInt(Differing::from));
    return differing;
  }

  private static Map<Share, Doing> shares(Plan plan) {
    Map<Share, Doing> shares = new HashMap<>();
    for (Placement run : plan.placements()) {
      Doing doing = Doing.of(plan.event(), run);
      for (int batch = run.batches().first(); batch <= run.batches().last(); batch++) {
        shares.put(new Share(run.dish(), run.step(), batch), doing);
      }
    }
    return shares;
  }

  private static boolean isOfSeveral(List<Plan> plans, String dish) {
    return plans.stream()
        .flatMap(plan -> plan.event().dishes().stream())
        .anyMatch(each -> each.name().equals(dish) && each.batches() > 1);
  }

  /** What is done as the batch before it goes with that. */
  private static void add(List<Differing> all, Share share, boolean isSome, List<@Nullable Doing> doings) {
    Differing last = all.isEmpty() ? null : all.getLast();
    boolean isAlike = last != null && last.dish.equals(share.dish) && last.step.equals(share.step)
        && last.batches.last() + 1 == share.batch && last.doings.equals(doings);
    int first = last != null && isAlike ? all.removeLast().batches.first() : share.batch;
    all.add(new Differing(share.dish, share.step, new Batches(first, share.batch), isSome, doings));
  }

  /** When it begins, in the first plan that has it. */
  private int from() {
    return doings.stream().filter(Objects::nonNull).mapToInt(Doing::from).findFirst().orElseThrow();
  }

  /** {@code Bread: bake, batch 2} */
  public String name() {
    return dish + ": " + step + (isSome ? ", " + Words.batches(batches) : "");
  }
}
