package ovenloom.cli.command;

import java.util.List;
import java.util.stream.Collectors;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Plan;

/** How the event a plan was made from differs from the one that was read. */
record Difference(Event event, List<Plan.Source> sources, Plan plan) {

  String inWords() {
    Event planned = plan.event();
    if (!planned.name().equals(event.name())) {
      return "The plan is for \"" + planned.name() + "\", the file for \"" + event.name() + "\".";
    }
    if (planned.guests() != event.guests()) {
      return "The plan is for " + planned.guests() + " guests, the file for " + event.guests() + ".";
    }
    String changed = sources.stream()
        .filter(source -> !plan.sources().contains(source))
        .map(Plan.Source::file)
        .collect(Collectors.joining(", "));
    return changed.isEmpty() ? "Not by the files: the plan's own event has been changed."
        : "Changed since the plan was made: " + changed + ".";
  }
}
