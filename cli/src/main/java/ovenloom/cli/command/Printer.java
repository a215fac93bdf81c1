package ovenloom.cli.command;

import java.util.List;
import java.util.function.IntSupplier;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import ovenloom.cli.sheet.BreakList;
import ovenloom.cli.sheet.Harmless;
import ovenloom.cli.sheet.RunSheet;
import ovenloom.model.audit.Audit;
import ovenloom.model.audit.Break;
import ovenloom.model.plan.Plan;

/** The only way to a printed plan: whatever made it, it is audited here first. */
record Printer(Kit kit) {

  /** Prints the run sheet; or, of a plan that breaks a rule, which ones. */
  int print(Plan plan, String name) {
    return print(plan, name, () -> RunSheet.of(plan, kit.terminal().width(), kit.terminal().colour()));
  }

  /** Prints something else of it. */
  int print(Plan plan, String name, Supplier<String> words) {
    return audited(plan, name, () -> {
      kit.out().print(words.get());
      return Answer.A_PLAN;
    });
  }

  /** Keeps it, or a cook's own part of it, in a file, as something else. */
  int keep(Plan plan, String name, Target target, Keepsake keepsake, @Nullable String cook) {
    return audited(plan, name,
        () -> target.write(keepsake.of(plan, cook, kit.clock().instant()), kit.err()));
  }

  /** Whether it keeps all rules; where it does not, says which ones it breaks. */
  boolean passes(Plan plan, String name) {
    List<Break> breaks = Audit.of(plan.event(), plan);
    if (!breaks.isEmpty()) {
      kit.err().println("ovenloom: " + Harmless.text(name) + " is no plan: " + BreakList.count(breaks));
      kit.err().print(BreakList.of(plan.event(), breaks, kit.terminal().width()));
    }
    return breaks.isEmpty();
  }

  private int audited(Plan plan, String name, IntSupplier then) {
    return passes(plan, name) ? then.getAsInt() : Answer.NO;
  }
}
