package ovenloom.model.audit.score;

import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.kitchen.Store;
import ovenloom.model.life.MeanWarmth;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Stay;
import ovenloom.model.plan.Where;

/** When the steps of a plan run, and where their food waits; a step that was forgotten takes no time. */
record PlanTimes(Ledger plan) implements MeanWarmth.Timetable {

  private @Nullable Placement run(int step) {
    return plan.run(plan.work().steps().get(step));
  }

  @Override
  public int start(int step) {
    Placement run = run(step);
    return run == null ? 0 : run.when().from();
  }

  @Override
  public int end(int step) {
    Placement run = run(step);
    return run == null ? 0 : run.when().to();
  }

  private List<Stay.Part> wait(int step) {
    BatchStep unit = plan.work().steps().get(step);
    Stay stay = plan.stay(unit);
    return stay == null ? List.of() : stay.parts();
  }

  @Override
  public int parts(int step) {
    return wait(step).size();
  }

  @Override
  public int place(int step, int part) {
    return switch (wait(step).get(part).where()) {
      case Where.Counter() -> COUNTER;
      case Where.OnShelf shelf -> store(shelf.store());
      case Where.OnBurner burner -> KEPT_WARM;
      case Where.InOven oven -> KEPT_WARM;
    };
  }

  private static final int COUNTER = MeanWarmth.COUNTER;
  private static final int KEPT_WARM = MeanWarmth.KEPT_WARM;

  /** One that nobody knows is no store. */
  private int store(String name) {
    Kitchen kitchen = plan.event().kitchen();
    Store store = kitchen.store(name);
    return store == null ? COUNTER : kitchen.stores().indexOf(store);
  }

  @Override
  public int from(int step, int part) {
    return wait(step).get(part).when().from();
  }

  @Override
  public int to(int step, int part) {
    return wait(step).get(part).when().to();
  }

  @Override
  public int store(int step) {
    Placement run = run(step);
    return run == null || run.shelves().isEmpty() ? COUNTER : store(run.shelves().getFirst().store());
  }
}
