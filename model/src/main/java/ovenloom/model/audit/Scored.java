package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import ovenloom.model.audit.score.Reckoning;
import ovenloom.model.menu.Wish;
import ovenloom.model.plan.Score;

/** The plan is as good as it says it is. */
record Scored() implements KitchenRule {

  @Override
  public String id() {
    return "score";
  }

  @Override
  public String sentence() {
    return "The plan is as good as it says it is.";
  }

  /** How many breaks it says it has is not compared: the other rules show them. */
  @Override
  public List<Break> check(Case plan) {
    Score said = plan.plan().score();
    Score counted = Reckoning.of(plan.cards(), plan.plan());
    List<Break> breaks = new ArrayList<>();
    Set<String> dishes = new TreeSet<>(said.atTheTable().keySet());
    dishes.addAll(counted.atTheTable().keySet());
    for (String dish : dishes) {
      compare("at the table: " + dish, of(said.atTheTable(), dish), of(counted.atTheTable(), dish), breaks);
    }
    for (Wish wish : Wish.values()) {
      compare(wish.name().toLowerCase(Locale.ROOT), of(said.points(), wish), of(counted.points(), wish),
          breaks);
    }
    compare("wishes", said.wishes(), counted.wishes(), breaks);
    compare("early", said.early(), counted.early(), breaks);
    return breaks;
  }

  private static <K> long of(Map<K, Long> figures, K which) {
    return figures.getOrDefault(which, 0L);
  }

  private void compare(String figure, long said, long counted, List<Break> breaks) {
    if (said != counted) {
      breaks.add(Break.of(this, List.of(figure), null, Math.abs(said - counted), Break.Unit.POINTS,
          figure + " is " + counted + ", not " + said));
    }
  }
}
