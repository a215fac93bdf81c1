package ovenloom.solver.place;

import static org.assertj.core.api.Assertions.assertThat;

import ovenloom.solver.place.InnerProblem.Link;

/** Holds a plan against its problem minute by minute, knowing nothing of how it was made. */
final class PlanCheck {

  private PlanCheck() {}

  static void holds(InnerProblem problem, InnerDecoder plan, int makespan) {
    int first = Integer.MAX_VALUE;
    int last = Integer.MIN_VALUE;
    for (int step = 0; step < problem.steps().size(); step++) {
      first = Math.min(first, plan.start(step));
      last = Math.max(last, plan.start(step) + problem.steps().get(step).minutes());
    }
    assertThat(last - first).isEqualTo(makespan);
    for (Link link : problem.links()) {
      assertThat(plan.start(link.to()) - plan.start(link.from()))
          .as("%s", link)
          .isGreaterThanOrEqualTo(link.lag());
    }
    for (int thing = 0; thing < problem.capacities().size(); thing++) {
      for (int moment = first; moment < last; moment++) {
        assertThat(takenAt(problem, plan, thing, moment))
            .as("thing %s at %s", thing, moment)
            .isLessThanOrEqualTo(problem.capacities().get(thing));
      }
    }
  }

  private static int takenAt(InnerProblem problem, InnerDecoder plan, int thing, int moment) {
    int taken = 0;
    for (int step = 0; step < problem.steps().size(); step++) {
      int start = plan.start(step);
      if (start <= moment && moment < start + problem.steps().get(step).minutes()) {
        taken += problem.steps().get(step).demands().get(thing);
      }
    }
    return taken;
  }
}
