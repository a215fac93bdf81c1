package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import ovenloom.cli.lane.Box;
import ovenloom.cli.lane.Lane;
import ovenloom.cli.lane.Lanes;
import ovenloom.cli.sheet.StripLine.Mark;
import ovenloom.model.measure.Stretch;
import ovenloom.model.plan.OvenLog;
import ovenloom.model.plan.Plan;

/** Lines for ovens, burners, cooks, cold and hot places, and the table. */
final class StripLines {

  /** Where more shelves of one place are used than that, all are one line. */
  private static final int SHELVES = 4;

  private final Plan plan;
  private final Letters letters;
  private final Glyphs glyphs;
  private final List<Lane> lanes;

  StripLines(Plan plan, Letters letters, Glyphs glyphs) {
    this.plan = plan;
    this.letters = letters;
    this.glyphs = glyphs;
    this.lanes = Lanes.of(plan).stream().filter(lane -> lane.kind() != Lane.Kind.VESSEL).toList();
  }

  List<StripLine> all() {
    List<StripLine> all = new ArrayList<>();
    for (Lane lane : lanes) {
      StripLine next = line(lane);
      boolean isSame = !all.isEmpty() && all.getLast().label().equals(next.label());
      all.add(isSame ? all.removeLast().and(next) : next);
    }
    all.add(table());
    return all;
  }

  private StripLine line(Lane lane) {
    List<Mark> marks = lane.boxes().stream().map(box -> new Mark(box.when(), letter(box))).toList();
    return new StripLine(label(lane), marks, lane.kind() == Lane.Kind.OVEN ? on(lane.name()) : List.of());
  }

  private List<Mark> on(String oven) {
    return plan.ovens()
        .stream()
        .filter(log -> log.oven().equals(oven))
        .map(OvenLog::spans)
        .flatMap(List::stream)
        .map(span -> new Mark(span.when(), glyphs.on()))
        .toList();
  }

  private char letter(Box box) {
    return switch (box.use()) {
      case WORK, WAIT, FULL -> letters.of(box.dish());
      case WASH -> glyphs.wash();
      case BREAK -> glyphs.rest();
    };
  }

  private String label(Lane lane) {
    Words words = new Words(plan.event().kitchen());
    return switch (lane.kind()) {
      case OVEN -> words.ovenAlone(lane.name());
      case BURNER, COOK, VESSEL -> Words.capital(lane.name());
      case SHELF -> hasMany(lane.place()) ? Words.capital(lane.place())
          : Words.bare(words.shelves(lane.place(), List.of(lane.name())));
    };
  }

  private boolean hasMany(String store) {
    return lanes.stream()
        .filter(lane -> lane.kind() == Lane.Kind.SHELF && lane.place().equals(store))
        .count() > SHELVES;
  }

  private StripLine table() {
    TableActs sittings = new TableActs(plan.event());
    List<Mark> marks = plan.event()
        .courses()
        .stream()
        .filter(sittings::hasADish)
        .map(course -> new Mark(new Stretch(course.at(), course.at() + 1), glyphs.sitting()))
        .toList();
    return new StripLine("All sit down", marks, List.of());
  }

  /** When somebody works or something is on the heat. */
  List<Stretch> work() {
    Stream<Stretch> boxes = lanes.stream()
        .filter(lane -> lane.kind() != Lane.Kind.SHELF)
        .flatMap(lane -> lane.boxes().stream())
        .filter(box -> box.use() != Box.Use.BREAK)
        .map(Box::when);
    Stream<Stretch> dials = plan.ovens()
        .stream()
        .flatMap(log -> log.spans().stream())
        .map(OvenLog.Span::when);
    return Stream.of(boxes, dials, table().marks().stream().map(Mark::when)).flatMap(each -> each).toList();
  }
}
