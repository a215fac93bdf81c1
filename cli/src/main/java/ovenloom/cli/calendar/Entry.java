package ovenloom.cli.calendar;

import java.util.List;
import java.util.stream.Collectors;
import ovenloom.cli.sheet.Act;
import ovenloom.cli.sheet.Clock;
import ovenloom.cli.sheet.Words;
import ovenloom.model.measure.Stretch;

/**
 * A stretch of time in which somebody is at something, or a minute in which something is done.
 *
 * @param cooks nobody: it goes on by itself, or is everybody's
 * @param acts all that is done in it, in its order
 */
record Entry(Slot slot, List<String> cooks, Stretch when, String title, List<Act> acts) {

  Entry {
    cooks = List.copyOf(cooks);
    acts = List.copyOf(acts);
  }

  /** Whether it is on this cook's own calendar. */
  boolean isOf(String cook) {
    return cooks.isEmpty() || cooks.contains(cook);
  }

  Entry in(Slot other) {
    return new Entry(other, cooks, when, title, acts);
  }

  boolean isAMoment() {
    return slot.doing() == Slot.Doing.MOMENT;
  }

  /** Whether somebody must be called to it; not where all that is done in it is told elsewhere, or goes on by itself. */
  boolean rings() {
    return !acts.isEmpty() && (!cooks.isEmpty() || slot.doing() == Slot.Doing.TABLE);
  }

  /**
   * What a locked phone shows of it: what is to be probed comes first, since nothing else may hide it, and what else is done in it is
   * named behind.
   */
  String headline() {
    if (slot.doing() == Slot.Doing.TABLE) {
      return title;
    }
    List<String> probed = acts.stream()
        .filter(act -> act.turn() == Act.Turn.PROBE)
        .map(Act::thing)
        .distinct()
        .toList();
    List<String> others = acts.stream()
        .map(Act::thing)
        .distinct()
        .filter(thing -> !title.startsWith(thing + ":") && !probed.contains(thing))
        .toList();
    return (probed.isEmpty() ? "" : "Probe " + Words.and(probed) + "; ") + title
        + (others.isEmpty() ? "" : "; also " + Words.and(others));
  }

  /** {@code Gravy: Off the burner}: an act, up to the end of its first sentence; which batches it is of is none. */
  static String headline(Act act) {
    String[] sentences = act.words().split("(?<=\\.) ", -1);
    boolean saysBatches = sentences.length > 1
        && sentences[0].matches("(Batch|Batches) .* of \\d+\\.|Both batches\\.|All \\d+ batches\\.");
    String words = saysBatches ? sentences[0] + " " + sentences[1] : sentences[0];
    return act.thing() + ": " + words.replaceFirst("\\.$", "");
  }

  /** Each act on a line, with its time where it is not the entry's own. */
  String description(Clock clock) {
    return acts.stream().map(act -> line(act, clock)).collect(Collectors.joining("\n"));
  }

  private String line(Act act, Clock clock) {
    String time = act.at() == when.from() ? "" : clock.column(act.at()) + " ";
    return time + act.thing() + ": " + act.words();
  }
}
