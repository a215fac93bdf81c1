package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import ovenloom.model.audit.Break.Unit;
import ovenloom.model.audit.Surface.Place;
import ovenloom.model.audit.Surface.Standing;
import ovenloom.model.kitchen.Level;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.kitchen.Rack;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Size;
import ovenloom.model.measure.Stretch;
import ovenloom.model.plan.Placement;

/** Whatever is baked stands on a rack where it ought to, beside what stands there, and below the rack above. */
record RoomInside() implements KitchenRule {

  /** A vessel on its rack. */
  private record Stood(Bakes bake, Piece piece, int index, Oven oven, int rack, Stretch when) {

    List<String> who() {
      return List.of(bake.name(), oven.name());
    }

    Length height() {
      Length stands = bake.bake().stands();
      return stands == null || stands.compareTo(piece.height()) < 0 ? piece.height() : stands;
    }
  }

  @Override
  public String id() {
    return "room inside";
  }

  @Override
  public String sentence() {
    return "Whatever is baked stands on a rack where it ought to, beside what stands there, and below the rack above.";
  }

  @Override
  public List<Break> check(Case plan) {
    List<Break> breaks = new ArrayList<>();
    List<Stood> all = new ArrayList<>();
    for (Bakes bake : Bakes.of(plan)) {
      Oven oven = plan.event().kitchen().oven(bake.oven());
      if (oven != null) {
        stand(plan, bake, oven, all, breaks);
      }
    }
    Map<Place, Surface> racks = new TreeMap<>();
    for (Stood stood : all) {
      checkLevel(stood, breaks);
      put(stood, racks, breaks);
      checkHeight(stood, all, breaks);
    }
    racks.values().forEach(rack -> breaks.addAll(rack.check(this, plan)));
    return breaks;
  }

  private static String count(int number, String thing) {
    return number == 1 ? "1 " + thing : number + " " + thing + "s";
  }

  private void stand(Case plan, Bakes bake, Oven oven, List<Stood> all, List<Break> breaks) {
    List<Piece> pieces = Piece.of(plan, bake.run());
    List<Integer> racks = bake.baking().racks();
    int off = Math.abs(pieces.size() - racks.size());
    if (off > 0) {
      breaks.add(Break.of(this, List.of(bake.name(), oven.name()), bake.run().when(), off, Unit.PIECES,
          count(pieces.size(), "vessel") + " and " + count(racks.size(), "rack")));
    }
    for (int piece = 0; piece < Math.min(pieces.size(), racks.size()); piece++) {
      int rack = racks.get(piece);
      Stretch when = bake.inside(pieces.get(piece).batches());
      if (rack >= 0 && rack < oven.racks().size()) {
        all.add(new Stood(bake, pieces.get(piece), piece, oven, rack, when));
      } else {
        breaks.add(Break.of(this, List.of(bake.name(), oven.name()), when, 1, Unit.PIECES,
            "there is no rack " + (rack + 1) + " from the bottom"));
      }
    }
  }

  private void checkLevel(Stood stood, List<Break> breaks) {
    Level level = stood.bake().bake().level();
    if (level != null && !stood.oven().isAt(stood.rack(), level)) {
      breaks.add(Break.of(this, stood.who(), stood.when(), 1, Unit.PIECES,
          "rack " + (stood.rack() + 1) + " from the bottom is not " + level.name().toLowerCase(Locale.ROOT)));
    }
  }

  private void put(Stood stood, Map<Place, Surface> racks, List<Break> breaks) {
    Size size = stood.piece().size();
    if (size == null) {
      breaks.add(Break.of(this, stood.who(), stood.when(), 1, Unit.PIECES,
          "nobody knows how large a " + stood.piece().name() + " is"));
      return;
    }
    Rack rack = stood.oven().racks().get(stood.rack());
    Placement run = stood.bake().run();
    racks.computeIfAbsent(new Place(stood.oven().name(), stood.rack()),
        place -> new Surface(place, rack.width(), rack.depth()))
        .put(new Standing(run.dish(), run.step(), run.batches(), stood.index(), size, stood.bake().name()),
            stood.when());
  }

  /** What is too tall for its rack closes those above it, as many as it reaches through. */
  private void checkHeight(Stood tall, List<Stood> all, List<Break> breaks) {
    long missing = tall.height().micrometres();
    int top = tall.rack();
    for (; top < tall.oven().racks().size() && missing > 0; top++) {
      missing -= tall.oven().racks().get(top).clear().micrometres();
    }
    if (missing > 0) {
      long off = Math.ceilDiv(missing, 1000);
      breaks.add(Break.of(this, tall.who(), tall.when(), off, Unit.MILLIMETRES,
          tall.height() + " tall on rack " + (tall.rack() + 1) + ", which is too tall by " + off + " mm"));
    }
    for (Stood other : all) {
      checkIsNotIn(tall, top, other, breaks);
    }
  }

  private void checkIsNotIn(Stood tall, int top, Stood other, List<Break> breaks) {
    Stretch shared = tall.when().shared(other.when());
    boolean closed = other.rack() > tall.rack() && other.rack() < top;
    if (shared != null && closed && other.oven().equals(tall.oven())) {
      breaks.add(Break.of(this, List.of(tall.oven().name(), tall.bake().name(), other.bake().name()), shared,
          shared.minutes(), Unit.MINUTES, tall.height() + " on rack " + (tall.rack() + 1)
              + " reaches through rack " + (other.rack() + 1)));
    }
  }
}
