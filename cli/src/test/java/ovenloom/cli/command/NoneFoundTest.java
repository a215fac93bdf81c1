package ovenloom.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ovenloom.model.audit.Audit;
import ovenloom.solver.search.Found;

class NoneFoundTest {

  private static final Locale HERE = Locale.getDefault();

  @TempDir
  private Path folder;

  @AfterEach
  void back_home() {
    Locale.setDefault(HERE);
  }

  private Typed told(boolean isMisjudged) throws IOException {
    var plan = Kitchens.read(Kitchens.aPlanThatIsLate(folder));
    var breaks = Audit.of(plan.event(), plan);
    var err = new StringWriter();
    var kit = new Kit(new PrintWriter(new StringWriter()), new PrintWriter(err, true), Typed.PIPE,
        new Stop(), InstantSource.system());

    int code = new NoneFound(kit).print(plan.event(), new Found(plan, breaks, List.of(), isMisjudged, 3_003));

    return new Typed(code, "", err.toString());
  }

  @Test
  void a_best_try_that_breaks_a_rule_is_no_plan_and_more_time_may_help() throws IOException {
    var told = told(false);

    assertThat(told.code()).isEqualTo(4);
    assertThat(told.err()).startsWith("ovenloom: no plan found in 3,003 schedules. ").contains("Look longer");
  }

  @Test
  void a_best_try_that_was_taken_for_a_plan_is_our_fault_and_nobody_is_told_to_look_longer()
      throws IOException {
    var told = told(true);

    assertThat(told.code()).isEqualTo(3);
    assertThat(told.err()).startsWith("ovenloom: this is our fault, not yours: ")
        .contains("it breaks", "1.  ", "Please report it, with the problem file.")
        .doesNotContain("Look longer");
  }

  @Test
  void thousands_are_written_alike_everywhere() throws IOException {
    Locale.setDefault(Locale.GERMANY);

    assertThat(told(false).err()).contains("3,003 schedules");
  }
}
