package ovenloom.model.tally;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import ovenloom.model.audit.score.Figures;
import ovenloom.model.plan.Score;
import ovenloom.model.variation.Axis;
import ovenloom.model.variation.Result;

/** What the results of many runs come to. Each is looked at once and none is kept, so that any number of them fits into memory. */
public final class Tally {

  private final List<Axis> axes;
  private final Group all = new Group();
  private final Map<String, Map<String, Group>> byChoice = new HashMap<>();
  private final List<Fit> fits;
  private final Front front = new Front();
  private final Bins bins = new Bins();
  private final Deciding deciding = new Deciding();

  /** Of runs that make a choice along each of these axes. */
  public Tally(List<Axis> axes) {
    this.axes = List.copyOf(axes);
    for (Axis axis : axes) {
      Map<String, Group> groups = new LinkedHashMap<>();
      axis.choices().forEach(choice -> groups.put(choice, new Group()));
      byChoice.put(axis.name(), groups);
    }
    fits = Pairs.of(axes);
  }

  /** Adds one more. Where runs are equally good the one that was added first is named. */
  public void add(Result result) {
    all.add(result);
    axes.forEach(axis -> with(axis, result.choice(axis)).add(result));
    fits.forEach(fit -> fit.add(result));
    deciding.add(result);
    Score score = result.score();
    Figures figures = result.figures();
    if (score != null && figures != null) {
      bins.add(figures.handsInTheLastHour(), figures.energy());
      front.add(new Front.Point(figures.handsInTheLastHour(), figures.energy(), result.name(), score, 0));
    }
  }

  public List<Axis> axes() {
    return axes;
  }

  public Group all() {
    return all;
  }

  /** Those with one choice. */
  public Group with(Axis axis, String choice) {
    return Objects.requireNonNull(Objects.requireNonNull(byChoice.get(axis.name()), axis.name()).get(choice),
        choice);
  }

  /** For each two axes; what to look at first is first. */
  public List<Fit> fits() {
    return fits;
  }

  public Front front() {
    return front;
  }

  public Bins bins() {
    return bins;
  }

  public Deciding deciding() {
    return deciding;
  }
}
