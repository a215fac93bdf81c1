package ovenloom.model.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import ovenloom.model.check.Subject;
import ovenloom.model.chill.ChillCard;
import ovenloom.model.chill.WayToChill;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.measure.Pace;
import ovenloom.model.measure.Range;
import ovenloom.model.measure.Temperature;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Keeps;
import ovenloom.model.menu.Link;
import ovenloom.model.menu.Need;
import ovenloom.model.menu.StartState;
import ovenloom.model.menu.Step;
import ovenloom.model.menu.Takes;

/** Reads the steps of one dish. */
final class StepReader {

  static final Keys STEP = Keys.of("a step", "do", "takes", "up to", "once", "together", "one vessel",
      "serve",
      "unattended", "away", "bake", "rack", "load", "unload", "stands", "core", "door shut", "overcook",
      "burner",
      "appliance",
      "in", "cold", "hot", "chill by", "hands", "cooks", "skill", "keeps", "after", "uses", "alongside",
      "order only",
      "starts", "covered");

  /** A year, minutes. */
  private static final int LONGEST = 366 * 24 * 60;

  private final Desk desk;
  private final String dish;
  private final KeepsReader keeps;
  private final LinksReader links;
  private final Dish.Servings servings;

  StepReader(Desk desk, String dish, KeepsReader keeps, LinksReader links, Dish.Servings servings) {
    this.desk = desk;
    this.dish = dish;
    this.keeps = keeps;
    this.links = links;
    this.servings = servings;
  }

  /**
   * A step.
   *
   * @param before the name of the one written before it
   */
  @Nullable
  Step step(Written written, @Nullable String before) {
    int faults = desk.faults();
    Fields fields = desk.fields(written, STEP);
    Step step = step(fields, before);
    if (step != null) {
      Subject subject = Subject.step(dish, step.name());
      fields.standFor(subject, "do");
      if (desk.faults() > faults) {
        desk.register().spoil(subject);
      }
    }
    return step;
  }

  private @Nullable Step step(Fields step, @Nullable String before) {
    String name = step.takeNeeded("do", desk::name);
    List<WayToChill> ways = new ChillReader(desk).ways(step);
    Pace pace = !step.has(ChillReader.KEY) ? pace(step)
        : Pace.steady(Range.exactly(ChillReader.SOME_MINUTES));
    Integer upTo = step.read("up to", Scalars::someMinutes);
    boolean once = step.yes("once");
    List<Need> needs = needs(step, pace.minutesFor(portions(once)).most());
    List<Link> after = links.links(step, before);
    Keeps kept = step.take("keeps", keeps::keeps);
    Step.Together together = new Step.Together(step.read("together", Scalars::count, 1),
        step.yes("one vessel"));
    StartState starts = step.read("starts", Scalars.oneOf(StartState.class));
    Boolean covered = step.read("covered", Scalars::yesOrNo);
    boolean serve = step.yes("serve");
    boolean unattended = step.yes("unattended");
    boolean away = step.yes("away");
    if (away && (!step.has("hands") || step.has("bake") || step.has("burner"))) {
      desk.contradiction(step.placeOf("away"), "whoever is away has hands in this, and nothing on the heat",
          "hands: throughout, and no bake or burner");
    }
    if (name == null) {
      return null;
    }
    if (!ways.isEmpty()) {
      desk.chills().add(new ChillCard(dish, name, ways));
    }
    return new Step(name, new Takes(pace, upTo), once, serve, unattended, away, together, needs, after, kept,
        starts, covered);
  }

  /** Some pace where it cannot be read, so that the rest of the step can. */
  private Pace pace(Fields step) {
    Pace pace = step.needed("takes", Pace::read);
    if (pace == null) {
      return Pace.steady(Range.exactly(LONGEST));
    }
    long minutes = pace.most() + (long) portions(true) * pace.secondsAPortion() / 60;
    if (minutes > LONGEST) {
      desk.contradiction(step.placeOf("takes"),
          "this takes longer than a year for " + portions(true) + " portions",
          "less a portion");
      return Pace.steady(Range.exactly(LONGEST));
    }
    return pace;
  }

  private int portions(boolean once) {
    if (once) {
      return servings.portions();
    }
    Integer aBatch = servings.aBatch();
    int batches = aBatch == null ? 1 : Math.max(1, Math.ceilDiv(servings.portions(), aBatch));
    return Math.ceilDiv(servings.portions(), batches);
  }

  private List<Need> needs(Fields step, int minutes) {
    List<Need> needs = new ArrayList<>();
    Consumer<@Nullable Need> add = need -> {
      if (need != null) {
        needs.add(need);
      }
    };
    List.of("bake", "cold", "hot", "in", "hands", "appliance").forEach(step::refuseEmpty);
    Written bake = step.value("bake");
    if (bake != null) {
      add.accept(new BakeReader(desk).bake(step, bake));
    } else {
      refuseBakeKeys(step);
    }
    BurnerSize burner = step.read("burner", Scalars.oneOf(BurnerSize.class));
    Temperature core = bake == null ? step.read("core", Temperature::read) : null;
    if (burner != null) {
      add.accept(new Need.OnBurner(burner, core));
    }
    step.each("appliance", a -> desk.reference(a, Names.Kind.APPLIANCE))
        .forEach(appliance -> needs.add(new Need.OnAppliance(appliance)));
    needs.addAll(vessels(step));
    shelf(step, add);
    needs.addAll(new HandsReader(desk, minutes).hands(step));
    return needs;
  }

  private void shelf(Fields step, Consumer<@Nullable Need> add) {
    if (step.has("bake") && step.has("burner")) {
      desk.contradiction(step.placeOf("burner"), "this step is in an oven and on a burner at once",
          "one of the two");
    }
    if (step.has("cold") && step.has("hot")) {
      desk.contradiction(step.placeOf("hot"), "this step stands in a cold and in a hot place at once",
          "one of the two");
    }
    if (step.has("cold")) {
      add.accept(keeps.shelf(step, "cold"));
    } else if (step.has("hot")) {
      add.accept(keeps.shelf(step, "hot"));
    }
  }

  private void refuseBakeKeys(Fields step) {
    for (String key : List.of("rack", "load", "unload", "stands", "core", "door shut", "overcook")) {
      boolean onABurner = key.equals("core") && step.has("burner");
      if (step.has(key) && !onABurner) {
        desk.contradiction(step.placeOf(key), "\"" + key + "\" is said of a step that is not in an oven",
            "\"bake:\" as well, like \"bake: {at: 180 C}\"");
      }
    }
  }

  /** A name, a list of them, or names with counts; a name that comes twice is two of them. */
  private List<Need.InVessel> vessels(Fields step) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    Written written = step.value("in");
    for (Written each : written == null ? List.<Written>of() : desk.items(written)) {
      if (each instanceof Written.Keyed keyed) {
        keyed.entries()
            .forEach(entry -> count(counts, entry.key(), desk.read(entry.value(), Scalars::count)));
      } else {
        count(counts, each, 1);
      }
    }
    return counts.entrySet().stream().map(each -> new Need.InVessel(each.getKey(), each.getValue())).toList();
  }

  private void count(Map<String, Integer> counts, Written named, @Nullable Integer count) {
    String name = desk.reference(named, Names.Kind.VESSEL);
    if (name != null && count != null) {
      counts.merge(name, count, Integer::sum);
    }
  }
}
