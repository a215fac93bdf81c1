package ovenloom.solver.place;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What is looked for: room for a run.
 *
 * @param choice the way to bake it, for a bake
 * @param stay in the oven after its bake; null where it is taken out
 */
record Request(Run run, @Nullable BakeChoice choice, @Nullable OvenStay stay) {

  /** For a run that leaves its place when it ends. */
  static Request of(Run run, @Nullable BakeChoice choice) {
    return new Request(run, choice, null);
  }

  int minutes() {
    return choice == null ? run.minutes() : choice.minutes();
  }

  /** The number of the oven whose door it opens. */
  int door() {
    return choice == null ? 0 : choice.oven();
  }

  boolean stays() {
    return stay != null;
  }

  /** When its food leaves the oven in which it stays. */
  int until() {
    return Objects.requireNonNull(stay).until();
  }

  /** The latest start, not after this one, from which it can still be taken out in its stay's last minutes. */
  int latestStart(int notAfter) {
    return stays() ? Math.min(notAfter, until() - unloading().minutes() - minutes()) : notAfter;
  }

  /** How it is baked, for a start. */
  BakeChoice bakeFrom(int start) {
    BakeChoice bake = Objects.requireNonNull(choice);
    return stay == null ? bake : bake.held(stay.until() - start - minutes(), stay.off());
  }

  /** When it leaves its place, for a start. */
  int leaves(int start) {
    return stays() ? until() : start + minutes();
  }

  /** The hands it needs from its start to its end; who takes it out after its stay is not among them. */
  List<HandsNeed> hands() {
    return stays() ? all().stream().filter(need -> !need.equals(run.unloading())).toList() : all();
  }

  /** The hands it needs, whoever takes it out among them. */
  List<HandsNeed> all() {
    return choice == null ? run.hands() : choice.hands();
  }

  HandsNeed unloading() {
    return Objects.requireNonNull(run.unloading());
  }
}
