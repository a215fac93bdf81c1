package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.life.BakeMinutes;
import ovenloom.model.life.Leg;
import ovenloom.model.life.Life;
import ovenloom.model.measure.Setting;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.plan.Baking;

/** Every bake is as long as its food needs at its mark and from how cold it goes in, and not much longer. */
record LongEnough() implements KitchenRule {

  @Override
  public String id() {
    return "long enough";
  }

  @Override
  public String sentence() {
    return "Every bake is as long as its food needs, as cold as it goes in, and not much longer.";
  }

  @Override
  public List<Break> check(Case plan) {
    Life life = plan.life();
    BakeMinutes minutes = new BakeMinutes(plan.cards());
    List<Break> breaks = new ArrayList<>();
    for (Bakes bake : Bakes.of(plan)) {
      Oven oven = Objects.requireNonNull(plan.event().kitchen().oven(bake.oven()));
      for (BatchStep step : bake.steps()) {
        check(bake, step, needed(step, bake, oven, life, minutes), breaks);
      }
    }
    return breaks;
  }

  /** As cold as the food truly is. */
  private static int needed(BatchStep step, Bakes bake, Oven oven, Life life, BakeMinutes minutes) {
    Baking baking = bake.baking();
    List<Setting> marks = baking.stages().stream().map(Baking.StageRun::mark).toList();
    List<Leg> legs = life.of(step);
    return legs.isEmpty() ? bake.run().when().minutes()
        : minutes.needed(step, oven, baking.mode(), marks, legs.getFirst().food().getFirst());
  }

  private void check(Bakes bake, BatchStep step, int needed, List<Break> breaks) {
    int booked = bake.run().when().minutes();
    int most = needed == BakeMinutes.NEVER ? 0 : BakeMinutes.longest(bake.bake(), step, needed);
    String has = " min at " + bake.baking().stages().getLast().mark().written() + " and has " + booked;
    if (needed == BakeMinutes.NEVER) {
      add(bake, booked, "is never done" + has.substring(" min".length()), breaks);
    } else if (booked < needed) {
      add(bake, needed - booked, "needs " + needed + has, breaks);
    } else if (booked > most) {
      add(bake, booked - most,
          "needs " + needed + has + ", more than " + bake.bake().overcookPercent() + " % too long", breaks);
    }
  }

  private void add(Bakes bake, int off, String what, List<Break> breaks) {
    breaks.add(Break.of(this, List.of(bake.name()), bake.run().when(), off, Break.Unit.MINUTES, what));
  }
}
