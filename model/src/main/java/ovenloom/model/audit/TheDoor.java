package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.audit.Break.Unit;
import ovenloom.model.measure.Stretch;

/** The door is opened over a bake by others twice at most, and not at all while it must stay shut. */
record TheDoor() implements KitchenRule {

  /** Whose heat a bake's minutes make up for. Common practice. */
  private static final int OPENINGS = 2;

  @Override
  public String id() {
    return "the door";
  }

  @Override
  public String sentence() {
    return "The door is opened over a bake by others twice at most, and not at all while it must stay shut.";
  }

  @Override
  public List<Break> check(Case plan) {
    List<Break> breaks = new ArrayList<>();
    List<Bakes> bakes = Bakes.of(plan);
    Doors doors = new Doors(bakes);
    for (Bakes bake : bakes) {
      Stretch inside = betweenLoadAndUnload(bake);
      if (inside != null) {
        List<Doors.Opening> openings = overlapping(doors.of(bake.oven()), inside);
        checkOthers(bake, inside, openings, breaks);
        checkShut(bake, inside, openings, breaks);
      }
    }
    return breaks;
  }

  private static @Nullable Stretch betweenLoadAndUnload(Bakes bake) {
    int from = bake.run().when().from() + bake.bake().load();
    int to = bake.run().when().to() - bake.bake().unload();
    return from < to ? new Stretch(from, to) : null;
  }

  private static List<Doors.Opening> overlapping(List<Doors.Opening> openings, Stretch when) {
    return openings.stream().filter(opening -> opening.when().overlaps(when)).toList();
  }

  private void checkOthers(
      Bakes bake, Stretch inside, List<Doors.Opening> openings, List<Break> breaks) {
    long others = openings.stream().filter(opening -> opening.isForOthersThan(bake.run())).count();
    if (others > OPENINGS) {
      breaks.add(Break.of(this, List.of(bake.name(), bake.oven()), inside, others - OPENINGS,
          Unit.OPENINGS, "the door is opened " + others + " times by others"));
    }
  }

  private void checkShut(Bakes bake, Stretch inside, List<Doors.Opening> openings, List<Break> breaks) {
    int minutes = Math.min(bake.bake().doorShut(), inside.minutes());
    Stretch shut = new Stretch(inside.from(), inside.from() + minutes);
    int opened = overlapping(openings, shut).size();
    if (opened > 0) {
      breaks.add(Break.of(this, List.of(bake.name(), bake.oven()), shut, opened, Unit.OPENINGS,
          "the door must stay shut for " + minutes + " min, and is opened " + opened + " times"));
    }
  }
}
