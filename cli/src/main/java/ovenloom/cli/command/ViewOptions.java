package ovenloom.cli.command;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.cli.sheet.View;
import ovenloom.model.plan.Plan;
import picocli.CommandLine.Option;

/** Which part of a plan to show. */
final class ViewOptions {

  @Option(names = "--cook", paramLabel = "NAME",
      description = {"What one cook does, and what goes to the table.",
          "In small or capital letters, as all names here."})
  private @Nullable String cook;

  @Option(names = "--oven", paramLabel = "NAME", description = {"What concerns one oven.",
      "What goes in and comes out, is turned or probed in it, and its dial."})
  private @Nullable String oven;

  @Option(names = "--shelf", paramLabel = "NAME",
      description = {"What concerns one shelf, or a cold or hot place.",
          "\"fridge\", \"fridge, top shelf\" or \"fridge/top\"."})
  private @Nullable String shelf;

  /** The options by which a part was asked for; none where all is to be shown. */
  List<String> asked() {
    List<String> asked = new ArrayList<>();
    if (cook != null) {
      asked.add("--cook");
    }
    if (oven != null) {
      asked.add("--oven");
    }
    if (shelf != null) {
      asked.add("--shelf");
    }
    return asked;
  }

  Asked<View> view(Plan plan) {
    Viewable parts = new Viewable(plan.event());
    if (asked().size() > 1) {
      return new Asked.Wrong<>(
          List.of(String.join(" and ", asked()) + " show different parts of a plan", "Ask for one."));
    }
    if (cook != null) {
      return parts.cooks().asked(cook);
    }
    return oven == null ? parts.shelves().asked(String.valueOf(shelf)) : parts.ovens().asked(oven);
  }
}
