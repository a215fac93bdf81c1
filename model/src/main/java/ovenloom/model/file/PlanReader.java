package ovenloom.model.file;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Batches;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Wish;
import ovenloom.model.plan.Bound;
import ovenloom.model.plan.OvenLog;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Score;
import ovenloom.model.plan.Spread;
import ovenloom.model.plan.Wash;

/** Reads a plan back, the whole event in it. */
final class PlanReader {

  static final String VERSION_KEY = "ovenloom plan";
  static final String VERSION = "1";

  static final Keys PLAN = Keys.of("a plan", VERSION_KEY, "files", "score", "bound", "runs", "stays",
      "ovens",
      "washes", "layouts", "event");
  static final Keys SOURCE = Keys.of("a file", "file", "sha256");
  static final Keys LOG = Keys.of("an oven's log", "oven", "spans");
  static final Keys SPAN = Keys.of("a span", "doing", "mark", "mode", "when");
  static final Keys WASH = Keys.of("a wash", "vessel", "count", "when", "cook");
  static final Keys SPREAD = Keys.of("a layout", "place", "level", "when", "spots");
  static final Keys SPOT = Keys.of("a spot", "dish", "step", "batches", "piece", "left", "front",
      "turned");
  static final Keys BOUND = Keys.of("a bound", "at the table", "wishes");
  static final Keys SCORE = Keys.of("a score", "breaks", "at the table", "points", "wishes", "early");

  private final Desk desk;
  private final PlanValues values;

  PlanReader(Desk desk) {
    this.desk = desk;
    this.values = new PlanValues(desk);
  }

  /** The plan, or null where too little of it was understood. */
  @Nullable
  Plan plan(Written written) {
    if (!(written instanceof Written.Keyed keyed) || keyed.entry(VERSION_KEY) == null) {
      desk.contradiction(written.place(), "this is no plan of this program",
          "a plan that \"solve\" has written with -o");
      return null;
    }
    if (desk.isOfAnotherVersion(written, VERSION_KEY, VERSION)) {
      return null;
    }
    Fields plan = desk.fields(written, PLAN);
    Event event = plan.takeNeeded("event", this::event);
    List<Plan.Source> sources = plan.eachNeeded("files", this::source);
    RunReader runs = new RunReader(desk);
    var placements = plan.eachNeeded("runs", runs::run);
    var stays = plan.eachNeeded("stays", runs::stay);
    List<OvenLog> ovens = plan.eachNeeded("ovens", this::log);
    List<Wash> washes = plan.eachNeeded("washes", this::wash);
    List<Spread> layouts = plan.eachNeeded("layouts", this::spread);
    Score score = plan.takeNeeded("score", this::score);
    Bound bound = plan.take("bound", this::bound);
    return event == null || score == null ? null
        : new Plan(event, sources, placements, stays, ovens, washes, layouts, score, bound);
  }

  /** With the second look, since whoever works on a plan relies on what it finds. */
  private @Nullable Event event(Written written) {
    Event event = new EventReader(desk, Includes.none(desk)).event(written, null);
    if (event != null && desk.mistakes().none()) {
      SecondLook.at(event, desk, written.place());
    }
    return event;
  }

  private Plan.@Nullable Source source(Written written) {
    Fields source = desk.fields(written, SOURCE);
    String file = source.takeNeeded("file", values::name);
    String digest = source.takeNeeded("sha256", values::name);
    return file == null || digest == null ? null : new Plan.Source(file, digest);
  }

  private @Nullable OvenLog log(Written written) {
    Fields log = desk.fields(written, LOG);
    String oven = log.takeNeeded("oven", values::name);
    List<OvenLog.Span> spans = log.eachNeeded("spans", this::span);
    return oven == null ? null : new OvenLog(oven, spans);
  }

  private OvenLog.@Nullable Span span(Written written) {
    Fields span = desk.fields(written, SPAN);
    OvenLog.Doing doing = span.needed("doing", Scalars.oneOf(OvenLog.Doing.class));
    Setting mark = span.needed("mark", Setting::read);
    String mode = span.takeNeeded("mode", values::name);
    Stretch when = span.takeNeeded("when", values::stretch);
    return doing == null || mark == null || mode == null || when == null ? null
        : new OvenLog.Span(doing, mark, mode, when);
  }

  private @Nullable Wash wash(Written written) {
    Fields wash = desk.fields(written, WASH);
    String vessel = wash.takeNeeded("vessel", values::name);
    Integer count = wash.needed("count", Scalars::count);
    Stretch when = wash.takeNeeded("when", values::stretch);
    String cook = wash.takeNeeded("cook", values::name);
    return vessel == null || count == null || when == null || cook == null ? null
        : new Wash(vessel, count, when, cook);
  }

  private @Nullable Spread spread(Written written) {
    Fields spread = desk.fields(written, SPREAD);
    String place = spread.takeNeeded("place", values::name);
    Integer level = spread.needed("level", Scalars::countOrNone);
    Stretch when = spread.takeNeeded("when", values::stretch);
    List<Spread.Spot> spots = spread.eachNeeded("spots", this::spot);
    return place == null || level == null || when == null ? null : new Spread(place, level, when, spots);
  }

  private Spread.@Nullable Spot spot(Written written) {
    Fields spot = desk.fields(written, SPOT);
    String dish = spot.takeNeeded("dish", values::name);
    String step = spot.takeNeeded("step", values::name);
    Batches batches = spot.takeNeeded("batches", values::batches);
    Integer piece = spot.needed("piece", Scalars::countOrNone);
    Length left = spot.needed("left", Length::read);
    Length front = spot.needed("front", Length::read);
    boolean turned = spot.yes("turned");
    return dish == null || step == null || batches == null || piece == null || left == null || front == null
        ? null
        : new Spread.Spot(dish, step, batches, piece, left, front, turned);
  }

  private Score score(Written written) {
    Fields score = desk.fields(written, SCORE);
    Map<String, Long> table = new TreeMap<>();
    for (Written.Entry entry : entries(score, "at the table")) {
      table.put(entry.key().text(), number(desk.read(entry.value(), PlanValues::number)));
    }
    Map<Wish, Long> points = new EnumMap<>(Wish.class);
    for (Written.Entry entry : entries(score, "points")) {
      Wish wish = desk.read(entry.key(), Scalars.oneOf(Wish.class));
      long some = number(desk.read(entry.value(), PlanValues::number));
      if (wish != null) {
        points.put(wish, some);
      }
    }
    return new Score(number(score.needed("breaks", PlanValues::number)), table, points,
        number(score.needed("wishes", PlanValues::number)),
        number(score.needed("early", PlanValues::number)));
  }

  private Bound bound(Written written) {
    Fields bound = desk.fields(written, BOUND);
    return new Bound(number(bound.needed("at the table", PlanValues::number)),
        number(bound.needed("wishes", PlanValues::number)));
  }

  private List<Written.Entry> entries(Fields score, String key) {
    Written value = score.needed(key);
    return value == null ? List.of() : desk.entries(value, "points", "calm: 3");
  }

  private static long number(@Nullable Long read) {
    return Objects.requireNonNullElse(read, 0L);
  }
}
