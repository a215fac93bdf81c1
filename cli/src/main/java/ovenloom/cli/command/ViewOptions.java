package ovenloom.cli.command;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import ovenloom.cli.sheet.View;
import ovenloom.model.plan.Plan;
import picocli.CommandLine.Option;

/** Which part of a plan to show. */
final class ViewOptions {

  @Option(names = "--cook", paramLabel = "NAME",
      description = {"What one cook does, and what goes to the table.",
          "Small and capital letters are the same."})
  private @Nullable String cook;

  /** The options by which a part was asked for; none where all is to be shown. */
  List<String> asked() {
    return cook == null ? List.of() : List.of("--cook");
  }

  Asked<View> view(Plan plan) {
    return new Viewable(plan).cooks().asked(Objects.requireNonNull(cook));
  }
}
