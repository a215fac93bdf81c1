package ovenloom.solver.place;

import java.util.List;

/**
 * The bare bones of a plan: steps that last, things they need while they last, and gaps between
 * them. It knows nothing of kitchens, so that published scheduling problems can be put to it.
 *
 * <p>Steps are numbered from zero in the order of the list, things likewise.
 *
 * @param capacities how many of each thing there are, at every minute
 */
public record InnerProblem(List<Step> steps, List<Integer> capacities, List<Link> links) {

  /**
   * Something that lasts.
   *
   * @param minutes zero or more
   * @param demands how many it takes of each thing, from its start to its end
   */
  public record Step(int minutes, List<Integer> demands) {

    public Step {
      demands = List.copyOf(demands);
      if (minutes < 0 || demands.stream().anyMatch(demand -> demand < 0)) {
        throw new IllegalArgumentException(
            "a step lasts " + minutes + " minutes and takes " + demands + ": no less than zero");
      }
    }
  }

  /**
   * {@code to} starts no earlier than the start of {@code from} and so many minutes. Below zero it
   * is a greatest gap the other way round: {@code from} starts no later than so many minutes after
   * the start of {@code to}.
   */
  public record Link(int from, int to, int lag) {}

  public InnerProblem {
    steps = List.copyOf(steps);
    capacities = List.copyOf(capacities);
    links = List.copyOf(links);
    for (Step step : steps) {
      if (step.demands().size() != capacities.size()) {
        throw new IllegalArgumentException(
            "a step takes " + step.demands() + " of " + capacities.size() + " things");
      }
    }
    for (Link link : links) {
      if (Math.min(link.from(), link.to()) < 0
          || Math.max(link.from(), link.to()) >= steps.size()) {
        throw new IllegalArgumentException(link + " names no two of " + steps.size() + " steps");
      }
    }
  }

  /** The same with time running the other way: a plan of one, read backward, is one of the other. */
  InnerProblem mirrored() {
    List<Link> turned = links.stream()
        .map(
            link -> new Link(
                link.to(),
                link.from(),
                link.lag() + minutes(link.to()) - minutes(link.from())))
        .toList();
    return new InnerProblem(steps, capacities, turned);
  }

  private int minutes(int step) {
    return steps.get(step).minutes();
  }
}
