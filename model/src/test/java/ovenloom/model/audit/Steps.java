package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.kitchen.Level;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Pace;
import ovenloom.model.measure.Range;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Temperature;
import ovenloom.model.menu.Keeps;
import ovenloom.model.menu.Link;
import ovenloom.model.menu.Need;
import ovenloom.model.menu.StartState;
import ovenloom.model.menu.Step;
import ovenloom.model.menu.Takes;

/** Steps for tests. One that says nothing of what it comes after follows the step before it in its dish. */
public final class Steps {

  private final String name;
  private Pace pace = Pace.steady(Range.exactly(10));
  private @Nullable Integer upTo;
  private boolean once;
  private boolean serve;
  private boolean unattended;
  private boolean away;
  private Step.Together together = Step.Together.APART;
  private final List<Need> needs = new ArrayList<>();
  private @Nullable List<Link> after;
  private @Nullable Keeps keeps;
  private @Nullable StartState starts;
  private @Nullable Boolean covered;

  private Steps(String name) {
    this.name = name;
  }

  /** A step of ten minutes. */
  public static Steps aStep(String name) {
    return new Steps(name);
  }

  /** A stage at one mark of a still oven. */
  public static Need.Stage aStage(int celsius, @Nullable Integer minutes) {
    return aStage(celsius, celsius, celsius, minutes);
  }

  public static Need.Stage aStage(int from, int written, int to, @Nullable Integer minutes) {
    return new Need.Stage(
        Setting.celsius(written), Setting.celsius(from), Setting.celsius(to), Oven.STILL, minutes);
  }

  /** A bake with a minute each to load and unload, on any rack. */
  public static Need.Bake aBake(Need.Stage... stages) {
    return new Need.Bake(
        List.of(stages), null, null, 1, 1, 0, null, Need.Bake.OVERCOOK_PERCENT);
  }

  public Steps takes(int minutes) {
    pace = Pace.steady(Range.exactly(minutes));
    return this;
  }

  public Steps takes(Pace wanted) {
    pace = wanted;
    return this;
  }

  public Steps upTo(int minutes) {
    upTo = minutes;
    return this;
  }

  public Steps once() {
    once = true;
    return this;
  }

  public Steps serve() {
    serve = true;
    return this;
  }

  public Steps away() {
    away = true;
    return this;
  }

  public Steps unattended() {
    unattended = true;
    return this;
  }

  public Steps together(int most) {
    together = new Step.Together(most, false);
    return this;
  }

  public Steps togetherInOneVessel(int most) {
    together = new Step.Together(most, true);
    return this;
  }

  /** In a still oven at this mark and no other. */
  public Steps bake(int celsius) {
    return needs(aBake(aStage(celsius, null)));
  }

  public Steps bake(int from, int written, int to) {
    return needs(aBake(aStage(from, written, to, null)));
  }

  public Steps bake(Need.Stage... stages) {
    return needs(aBake(stages));
  }

  public Steps rack(Level level) {
    return rebake(
        b -> new Need.Bake(b.stages(), level, b.stands(), b.load(), b.unload(), b.doorShut(), null, 20));
  }

  public Steps stands(double cm) {
    return rebake(b -> new Need.Bake(
        b.stages(), b.level(), Length.cm(cm), b.load(), b.unload(), b.doorShut(), null, 20));
  }

  public Steps load(int minutes) {
    return rebake(
        b -> new Need.Bake(b.stages(), b.level(), b.stands(), minutes, b.unload(), b.doorShut(), null, 20));
  }

  public Steps unload(int minutes) {
    return rebake(
        b -> new Need.Bake(b.stages(), b.level(), b.stands(), b.load(), minutes, b.doorShut(), null, 20));
  }

  public Steps doorShut(int minutes) {
    return rebake(
        b -> new Need.Bake(b.stages(), b.level(), b.stands(), b.load(), b.unload(), minutes, null, 20));
  }

  private Steps rebake(UnaryOperator<Need.Bake> change) {
    needs.replaceAll(need -> need instanceof Need.Bake bake ? change.apply(bake) : need);
    return this;
  }

  public Steps burner(BurnerSize atLeast, double core) {
    return needs(new Need.OnBurner(atLeast, Temperature.celsius(core)));
  }

  public Steps burner(BurnerSize atLeast) {
    return needs(new Need.OnBurner(atLeast, null));
  }

  public Steps appliance(String appliance) {
    return needs(new Need.OnAppliance(appliance));
  }

  public Steps in(String vessel) {
    return in(vessel, 1);
  }

  public Steps in(String vessel, int count) {
    return needs(new Need.InVessel(vessel, count));
  }

  public Steps shelf(String... stores) {
    return needs(new Need.OnShelf(Arrays.asList(stores)));
  }

  /** One cook from end to end. */
  public Steps hands() {
    return hands(new Need.Moment.Throughout());
  }

  public Steps hands(Need.Moment moment) {
    return hands(moment, 1, null);
  }

  public Steps hands(Need.Moment moment, int cooks, @Nullable String skill) {
    return needs(new Need.Hands(moment, cooks, skill));
  }

  public Steps needs(Need need) {
    needs.add(need);
    return this;
  }

  /** After another step of its dish, whose food it takes as long as that keeps. */
  public Steps after(String step) {
    return after(new Link(Link.Kind.FOOD, "", step, 0, null));
  }

  /** After a step of another dish, whose food it takes. */
  public Steps uses(String dish, String step) {
    return after(new Link(Link.Kind.FOOD, dish, step, 0, null));
  }

  /** After nothing. */
  public Steps first() {
    after = new ArrayList<>();
    return this;
  }

  /** A link without a dish is to a step of its own. */
  public Steps after(Link link) {
    List<Link> all = after == null ? new ArrayList<>() : new ArrayList<>(after);
    all.add(link);
    after = all;
    return this;
  }

  public Steps keeps(@Nullable Integer counter, @Nullable Integer oven, @Nullable Integer burner) {
    keeps = new Keeps(counter, oven, burner, Map.of());
    return this;
  }

  public Steps keepsOnTheCounter(int minutes) {
    return keeps(minutes, null, null);
  }

  public Steps keepsIn(String store, int minutes) {
    keeps = new Keeps(null, null, null, Map.of(store, minutes));
    return this;
  }

  public Steps keeps(Keeps wanted) {
    keeps = wanted;
    return this;
  }

  public Steps starts(StartState state) {
    starts = state;
    return this;
  }

  public Steps covered(boolean is) {
    covered = is;
    return this;
  }

  public Step step(String dish, @Nullable String before) {
    List<Link> own = after;
    List<Link> links;
    if (own != null) {
      links = own.stream().map(link -> link.dish().isEmpty() ? inDish(link, dish) : link).toList();
    } else if (before != null) {
      links = List.of(new Link(Link.Kind.FOOD, dish, before, 0, null));
    } else {
      links = List.of();
    }
    return new Step(
        name, new Takes(pace, upTo), once, serve, unattended, away, together, needs, links, keeps, starts,
        covered);
  }

  private static Link inDish(Link link, String dish) {
    return new Link(link.kind(), dish, link.step(), link.least(), link.most());
  }

  public String name() {
    return name;
  }
}
