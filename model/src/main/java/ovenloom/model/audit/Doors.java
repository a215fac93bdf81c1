package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Need;
import ovenloom.model.plan.HandsOn;
import ovenloom.model.plan.Placement;

/** When the door of each oven is opened, by whom and for what. */
final class Doors {

  /**
   * The door once opened: what starts at one minute by one cook.
   *
   * @param when until the last of it is done
   * @param runs for which it is opened
   */
  record Opening(Stretch when, String cook, List<Placement> runs) {

    /** Whether it is opened for anyone but this run. */
    boolean isForOthersThan(Placement run) {
      return runs.stream().anyMatch(each -> !each.equals(run));
    }
  }

  private record Act(Stretch when, Placement run) {}

  /** @param cook a name of no one where the plan does not say who */
  private record Key(String oven, int start, String cook) {}

  private final Map<Key, List<Act>> acts = new LinkedHashMap<>();

  Doors(List<Bakes> bakes) {
    bakes.forEach(this::open);
  }

  /** Those of one oven. */
  List<Opening> of(String oven) {
    List<Opening> openings = new ArrayList<>();
    acts.forEach((key, together) -> {
      if (key.oven().equals(oven)) {
        int end = together.stream().mapToInt(act -> act.when().to()).reduce(key.start(), Math::max);
        openings.add(new Opening(new Stretch(key.start(), end), key.cook(),
            together.stream().map(Act::run).toList()));
      }
    });
    return openings;
  }

  private void open(Bakes bake) {
    Stretch when = bake.run().when();
    int load = Math.min(bake.bake().load(), when.minutes());
    add(bake, HandsOn.Act.LOAD, new Stretch(when.from(), when.from() + load), bake.run().hands());
    if (!bake.allIsLeft()) {
      unload(bake, when, bake.run().hands());
    }
    for (Bakes.Left left : bake.left()) {
      if (left.when().to() == left.stay().parts().getLast().when().to()) {
        unload(bake, left.when(), left.stay().hands());
      }
    }
    turn(bake);
  }

  private void unload(Bakes bake, Stretch when, List<HandsOn> hands) {
    int unload = Math.min(bake.bake().unload(), when.minutes());
    add(bake, HandsOn.Act.UNLOAD, new Stretch(when.to() - unload, when.to()), hands);
  }

  /** Turned or basted at stated moments; the plan lists hands in the order in which the step asks for them. */
  private void turn(Bakes bake) {
    List<Need.Hands> asked = bake.steps().getFirst().step().hands();
    List<HandsOn> given = bake.run()
        .hands()
        .stream()
        .filter(hands -> hands.act() == HandsOn.Act.WORK)
        .toList();
    for (int i = 0; i < Math.min(asked.size(), given.size()); i++) {
      if (asked.get(i).moment() instanceof Need.Moment.At) {
        add(bake, HandsOn.Act.WORK, given.get(i).when(), List.of(given.get(i)));
      }
    }
  }

  /** By whoever the plan names for it, or else is at work on this very food then. */
  private void add(Bakes bake, HandsOn.Act act, Stretch when, List<HandsOn> hands) {
    String cook = cook(hands.stream().filter(each -> each.act() == act && each.when().from() == when.from()));
    if (cook == null) {
      cook = cook(hands.stream().filter(each -> each.when().encloses(when)));
    }
    Key key = new Key(bake.oven(), when.from(), cook == null ? "nobody for " + bake.name() : cook);
    acts.computeIfAbsent(key, none -> new ArrayList<>()).add(new Act(when, bake.run()));
  }

  private static @Nullable String cook(Stream<HandsOn> hands) {
    return hands.flatMap(each -> each.cooks().stream()).findFirst().orElse(null);
  }
}
