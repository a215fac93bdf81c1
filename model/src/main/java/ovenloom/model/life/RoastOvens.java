package ovenloom.model.life;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import ovenloom.model.measure.Setting;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Work;
import ovenloom.model.safety.Profile;

/** How hot the oven must be in which a whole roast is baked for the first time, by what it weighs. */
public final class RoastOvens {

  private static final String WHOLE_ROAST = "whole roast";

  private final Profile profile;
  private final Work work;
  private final Weights weights;

  /** By a profile, of the food of these cards. */
  public RoastOvens(Profile profile, Cards cards) {
    this.profile = profile;
    work = cards.work();
    weights = new Weights(cards);
  }

  /** The hottest that is asked of an oven in a mode; absent where nothing is. */
  public Profile.@Nullable RoastOven least(BatchStep step, String mode) {
    return isFirstBakeOfARoast(step) ? profile.roastOven()
        .stream()
        .filter(each -> each.isFor(weights.roast(step), mode))
        .max(Comparator.comparing(Profile.RoastOven::at))
        .orElse(null) : null;
  }

  /** Whether an oven in a mode is hot enough in each stage of a step. */
  public boolean allows(BatchStep step, String mode, List<Setting> marks) {
    Profile.RoastOven least = least(step, mode);
    return least == null || marks.stream().allMatch(mark -> mark.temperature().compareTo(least.at()) >= 0);
  }

  private boolean isFirstBakeOfARoast(BatchStep step) {
    return isBakeOfARoast(step) && !wasBaked(step.index(), new HashSet<>());
  }

  private static boolean isBakeOfARoast(BatchStep step) {
    return step.step().bake() != null && step.dish().tags().contains(WHOLE_ROAST);
  }

  private boolean wasBaked(int step, Set<Integer> seen) {
    return work.into(step)
        .stream()
        .filter(BatchLink::carriesFood)
        .map(BatchLink::from)
        .filter(seen::add)
        .anyMatch(before -> isBakeOfARoast(work.steps().get(before)) || wasBaked(before, seen));
  }
}
