package ovenloom.solver.exact;

import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.life.Leg;
import ovenloom.model.life.Track;
import ovenloom.model.life.Unsaid;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Keeps;
import ovenloom.model.plan.Where;

/** From the last heat to the end of service: where food waits, and for how long it is left out by that. */
final class Afterwards {

  /** It does not stay hot there for so long. */
  static final long TOO_COOL = -1;

  /** Where it may wait, by a way to bake it. */
  private interface Place {
    Where in(Bake.@Nullable Way way);
  }

  private final Danger danger;
  private final Wait wait;
  private final List<Place> places = new ArrayList<>();
  private final List<Literal> choices = new ArrayList<>();
  private final int longest;
  private final int rest;

  Afterwards(Steps steps, Wait wait, Danger danger) {
    this.danger = danger;
    this.wait = wait;
    places.add(way -> new Where.Counter());
    Kitchen kitchen = steps.event().kitchen();
    if (!wait.cold().isEmpty()) {
      throw new UnsupportedOperationException("a cold place after the last heat, of " + wait.step());
    }
    wait.stores()
        .forEach((name, there) -> add(there, way -> new Where.OnShelf(name,
            List.of(Objects.requireNonNull(kitchen.store(name)).shelves().getFirst().name()))));
    wait.burner()
        .forEach(
            there -> add(there, way -> new Where.OnBurner(List.of(kitchen.burners().getFirst().name()))));
    wait.hold().forEach(there -> add(there, way -> inTheOven(way, true)));
    wait.off().forEach(there -> add(there, way -> inTheOven(way, false)));
    longest = longest(wait.step().step().keeps());
    rest = rest(steps, wait.step());
    if (longest + rest > danger.soonestToBeCool()) {
      throw new UnsupportedOperationException("food so long after its last heat, of " + wait.step());
    }
  }

  private void add(Literal there, Place place) {
    choices.add(there);
    places.add(place);
  }

  private static Where inTheOven(Bake.@Nullable Way way, boolean isHeld) {
    Bake.Way baked = Objects.requireNonNull(way);
    return new Where.InOven(baked.oven().name(), isHeld ? baked.oven().hold() : null);
  }

  private static int longest(@Nullable Keeps keeps) {
    Keeps all = keeps == null ? Keeps.HARDLY : keeps;
    int counter = Keeps.FREE_ON_THE_COUNTER + Objects.requireNonNullElse(all.counter(), 0);
    int oven = Objects.requireNonNullElse(all.oven(), 0);
    int burner = Objects.requireNonNullElse(all.burner(), 0);
    int store = all.stores().values().stream().mapToInt(Integer::intValue).max().orElse(0);
    return Math.max(Math.max(counter, store), Math.max(oven, burner));
  }

  /** Minutes on the counter and at the table once it has waited. */
  private static int rest(Steps steps, BatchStep last) {
    if (steps.work().goesToTheTable(last.index())) {
      return steps.event().endOfService(last.dish()) - steps.due(last);
    }
    List<BatchLink> out = steps.work().outOf(last.index());
    BatchStep next = steps.all().get(out.getFirst().to());
    if (out.size() > 1 || !next.step().serve() || !next.dish().equals(last.dish())
        || next.step().covered() != null) {
      throw new UnsupportedOperationException("more than serving after the last heat, of " + last);
    }
    return next.minutes();
  }

  BatchStep step() {
    return wait.step();
  }

  boolean mayBeKeptHot() {
    return places.size() > 1;
  }

  /** By place, and by minutes that it waits there: how many it is left out in the end, or {@link #TOO_COOL}. */
  long[] leftOut(Supplier<Rehearsal> cooked, Bake.@Nullable Way way) {
    long[] all = new long[places.size() * (longest + 1)];
    Arrays.fill(all, TOO_COOL);
    Rehearsal out = cooked.get();
    int end = out.now();
    out.waits(new Where.Counter(), longest + rest);
    long[] onTheCounter = leftOut(out, end);
    for (int minutes = 0; minutes <= longest; minutes++) {
      all[minutes] = onTheCounter[minutes + rest];
      for (int place = 1; place < places.size() && minutes > 0; place++) {
        Rehearsal dish = cooked.get()
            .waits(places.get(place).in(way), minutes)
            .waits(new Where.Counter(), rest);
        all[place * (longest + 1) + minutes] = staysHot(dish) ? leftOut(dish, end)[minutes + rest] : TOO_COOL;
      }
    }
    return all;
  }

  /** By how many minutes have passed since, the most that they were so, under a lid or without. */
  private long[] leftOut(Rehearsal dish, int since) {
    long[] most = new long[dish.now() - since + 1];
    for (Unsaid unsaid : List.of(Unsaid.OPEN, Unsaid.LOOSE)) {
      Track life = dish.life(unsaid);
      long sum = 0;
      for (int minute = since; minute < dish.now(); minute++) {
        sum += danger.isLeftOut(life.at(minute), minute) ? 1 : 0;
        most[minute - since + 1] = Math.max(most[minute - since + 1], sum);
      }
    }
    return most;
  }

  private boolean staysHot(Rehearsal dish) {
    for (Unsaid unsaid : List.of(Unsaid.OPEN, Unsaid.LOOSE)) {
      for (Leg leg : dish.life(unsaid).legs()) {
        boolean isKept = leg.waits() && leg.store() != null && !leg.store().kind().isCold();
        if (isKept && !danger.isKeptHot(leg)) {
          return false;
        }
      }
    }
    return true;
  }

  /** The number of a figure among those of {@link #leftOut}, as a model chooses. */
  LinearExpr chosen() {
    LinearExprBuilder chosen = LinearExpr.newBuilder().add(Cp.minus(wait.to(), wait.from()));
    for (int i = 0; i < choices.size(); i++) {
      chosen.addTerm(choices.get(i), (long) (i + 1) * (longest + 1));
    }
    return chosen.build();
  }
}
