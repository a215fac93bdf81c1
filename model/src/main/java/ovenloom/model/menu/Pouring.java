package ovenloom.model.menu;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Follows food from vessel to vessel, and so finds how long each vessel is taken. */
final class Pouring {

  private static final class Open {
    final String vessel;
    final int count;
    final Set<Integer> steps = new LinkedHashSet<>();
    final Set<Integer> movers = new LinkedHashSet<>();

    Open(String vessel, int count) {
      this.vessel = vessel;
      this.count = count;
    }
  }

  private final List<BatchStep> steps;
  private final List<BatchLink> links;
  private final List<Open> fillings = new ArrayList<>();

  Pouring(List<BatchStep> steps, List<BatchLink> links) {
    this.steps = steps;
    this.links = links;
  }

  List<Filling> fillings() {
    steps.forEach(this::pour);
    return fillings.stream().map(this::closed).toList();
  }

  private void pour(BatchStep step) {
    Set<Open> before = new LinkedHashSet<>();
    for (BatchLink link : into(step)) {
      before.addAll(holding(link.from()));
    }
    List<Need.InVessel> named = step.step().vessels();
    if (named.isEmpty()) {
      stayInPlace(step);
    }
    for (Need.InVessel need : named) {
      fill(step, need, before);
    }
    for (Open filling : before) {
      if (!filling.steps.contains(step.index())) {
        filling.movers.add(step.index());
      }
    }
  }

  /** A step that names no vessel goes on in those of the first step that feeds it. */
  private void stayInPlace(BatchStep step) {
    @Nullable
    BatchStep first = null;
    for (BatchLink link : into(step)) {
      BatchStep feeder = steps.get(link.from());
      if (first == null && !holding(link.from()).isEmpty()) {
        first = feeder;
      }
      if (first != null && feeder.isOfTheSameStepAs(first)) {
        holding(link.from()).forEach(filling -> filling.steps.add(step.index()));
      }
    }
  }

  /** Into the vessels of that kind it comes in, as many as it takes, and into more where those are too few. */
  private void fill(BatchStep step, Need.InVessel need, Set<Open> before) {
    int wanted = need.count();
    for (Open filling : before) {
      if (filling.vessel.equals(need.vessel()) && wanted > 0) {
        filling.steps.add(step.index());
        wanted -= filling.count;
      }
    }
    if (wanted > 0) {
      Open filling = new Open(need.vessel(), wanted);
      filling.steps.add(step.index());
      fillings.add(filling);
    }
  }

  private Filling closed(Open filling) {
    boolean toTheTable = filling.steps.stream()
        .anyMatch(step -> links.stream()
            .noneMatch(link -> link.from() == step && link.carriesFood()));
    return new Filling(
        filling.vessel, filling.count, List.copyOf(filling.steps), List.copyOf(filling.movers), toTheTable);
  }

  private List<BatchLink> into(BatchStep step) {
    return links.stream().filter(link -> link.to() == step.index() && link.carriesFood()).toList();
  }

  private List<Open> holding(int step) {
    return fillings.stream().filter(filling -> filling.steps.contains(step)).toList();
  }
}
