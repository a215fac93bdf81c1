package ovenloom.model.life;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import ovenloom.model.heat.Kind;
import ovenloom.model.heat.Surroundings;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.kitchen.Store;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Temperature;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Need;
import ovenloom.model.plan.Baking;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Stay;
import ovenloom.model.plan.Where;

/**
 * What surrounds food in each place of a kitchen.
 *
 * @param cards what the menu says of its bakes
 * @param lids what is over it
 */
record Places(Kitchen kitchen, Cards cards, Lids lids) {

  /** Room air, moving by itself, and what is radiated, W/(m2 K): 8 to 12. An engineering estimate. */
  static final double ON_THE_COUNTER = 10;

  /** An oven at hold or cooling, W/(m2 K). Free gas: 2 to 25. */
  static final double IN_AN_IDLE_OVEN = 12;

  /** A pot on a low burner, C. Common practice. */
  static final double TURNED_LOW = 80;

  /** A stretch in one place, how to call it, and the store it is in, if it is in one. */
  record Placed(String where, @Nullable Store store, Spell spell) {

    Placed(String where, Spell spell) {
      this(where, null, spell);
    }
  }

  List<Placed> during(BatchStep step, Placement run) {
    Need.Bake bake = step.step().bake();
    Baking baking = run.baking();
    if (bake != null && baking != null) {
      return inTheOven(step, bake, baking);
    }
    int minutes = run.when().minutes();
    if (step.step().burner() != null || cards.isMadeHotByAMachine(step)) {
      return List.of(new Placed(step.step().burner() == null ? "machine" : "burner",
          new Spell.WarmedTo(minutes, cards.done(step))));
    }
    if (!run.shelves().isEmpty()) {
      return List.of(shelf(step, run.shelves().getFirst().store(), minutes));
    }
    return List.of(counter(step, minutes));
  }

  private List<Placed> inTheOven(BatchStep step, Need.Bake bake, Baking baking) {
    if (!cards.fit(step, bake).bends()) {
      String where = baking.oven() + " at " + baking.stages().getLast().mark().written();
      int minutes = baking.stages().stream().mapToInt(stage -> stage.when().minutes()).sum();
      return List.of(new Placed(where, new Spell.WarmedTo(minutes, cards.done(step))));
    }
    double coefficient = cards.fit(step, bake).coefficient();
    double wetness = cards.substance().wetness(step);
    Oven oven = Objects.requireNonNull(kitchen.oven(baking.oven()));
    List<Placed> all = new ArrayList<>();
    for (int i = 0; i < baking.stages().size(); i++) {
      Baking.StageRun stage = baking.stages().get(i);
      String written = bake.stages().get(Math.min(i, bake.stages().size() - 1)).mode();
      Double more = oven.converts(/* written= */ baking.mode(), /* mode= */ written);
      Temperature air = stage.mark().temperature().plusKelvins(more == null ? 0 : more);
      Surroundings there = new Surroundings(air, coefficient, wetness);
      all.add(new Placed(baking.oven() + " at " + stage.mark().written(),
          new Spell.Around(stage.when().minutes(), minute -> there)));
    }
    return all;
  }

  Placed counter(BatchStep step, int minutes) {
    return new Placed("counter",
        new Spell.InStillAir(minutes, lids.onTheCounter(step)));
  }

  private Placed shelf(BatchStep step, String name, int minutes) {
    Store store = Objects.requireNonNull(kitchen.store(name));
    return new Placed(name, store, inStore(step, store, minutes));
  }

  /** What a cold or hot place does to the food of a step: what is liquid is stirred while it stands in ice water. */
  Spell inStore(BatchStep step, Store store, int minutes) {
    Surroundings there = lids.in(step, store);
    return isStirred(step, store) ? new Spell.Stirred(minutes, there) : new Spell.InStillAir(minutes, there);
  }

  boolean isStirred(BatchStep step, Store store) {
    return store.kind() == Store.Kind.ICE_BATH && cards.substance().kind(step.dish()) == Kind.LIQUID;
  }

  private Spell around(int minutes, Temperature air, double coefficient) {
    Surroundings there = new Surroundings(air, coefficient * lids.draught(), 0);
    return new Spell.Around(minutes, minute -> there);
  }

  Placed waiting(BatchStep step, Stay.Part part, Temperature ovenWas) {
    int minutes = part.when().minutes();
    return switch (part.where()) {
      case Where.Counter() -> counter(step, minutes);
      case Where.OnShelf shelf -> shelf(step, shelf.store(), minutes);
      case Where.OnBurner burner -> new Placed("burner, low",
          new Spell.KeptOnLow(minutes, TURNED_LOW, lids.onTheCounter(step)));
      case Where.InOven(String name, Setting mark) -> mark == null ? cooling(name, minutes, ovenWas)
          : new Placed(name + " at " + mark.written(), around(minutes, mark.temperature(), IN_AN_IDLE_OVEN));
    };
  }

  private Placed cooling(String name, int minutes, Temperature from) {
    Oven oven = Objects.requireNonNull(kitchen.oven(name));
    return new Placed(name + ", off", new Spell.Around(minutes,
        minute -> new Surroundings(oven.warmth().cooled(from, minute), IN_AN_IDLE_OVEN * lids.draught(), 0)));
  }
}
