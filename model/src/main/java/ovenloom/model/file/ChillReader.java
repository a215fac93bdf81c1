package ovenloom.model.file;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import ovenloom.model.check.Subject;
import ovenloom.model.check.Trouble;
import ovenloom.model.chill.Advice;
import ovenloom.model.chill.ChillCard;
import ovenloom.model.chill.Chooser;
import ovenloom.model.chill.Chosen;
import ovenloom.model.chill.WayToChill;
import ovenloom.model.menu.Event;

/** Reads in which ways the food of a step may be chilled, and once all is read, has one chosen. */
final class ChillReader {

  static final String KEY = "chill by";

  /** Until a way is chosen, and its minutes with it. */
  static final int SOME_MINUTES = 30;

  private static final String ANY = "any";
  private static final Pattern WITH_MINUTES = Pattern.compile("(.*\\S)\\s+(\\d.*)");
  private static final List<String> USUAL = List.of("fridge", WayToChill.SHALLOW_PANS, WayToChill.ICE_BATH,
      "freezer");

  private final Desk desk;

  ChillReader(Desk desk) {
    this.desk = desk;
  }

  /** The ways, in their order; none where the step does not say. */
  List<WayToChill> ways(Fields step) {
    Written written = step.value(KEY);
    if (written == null) {
      return List.of();
    }
    for (String key : List.of("takes", "up to", "cold", "hot", "bake", "burner")) {
      if (step.has(key)) {
        desk.contradiction(step.placeOf(key), "\"" + key + "\" is said of a step that says \"" + KEY + "\"",
            "one of the two; \"" + KEY + ": freezer 40 min\" says how long");
      }
    }
    step.refuseEmpty(KEY);
    List<WayToChill> ways = new ArrayList<>();
    for (Written each : desk.items(written)) {
      String text = desk.name(each);
      if (ANY.equals(text)) {
        USUAL.forEach(name -> ways.add(new WayToChill(name, null)));
      } else if (text != null) {
        WayToChill way = way(each, text);
        if (way != null) {
          ways.add(way);
        }
      }
    }
    return ways;
  }

  private @Nullable WayToChill way(Written written, String text) {
    Matcher parts = WITH_MINUTES.matcher(text);
    boolean isTimed = parts.matches() && !known().contains(text);
    String name = isTimed ? parts.group(1) : text;
    if (!known().contains(name)) {
      desk.mistake(written.place(), new Fault.UnknownName(name, "way to chill", Nearest.to(name, known()),
          List.copyOf(known()), desk.names().isAtHome()));
      return null;
    }
    if (!isTimed) {
      return new WayToChill(name, null);
    }
    Integer minutes = desk.read(written, all -> Scalars.someMinutes(parts.group(2)));
    return minutes == null ? null : new WayToChill(name, minutes);
  }

  private Set<String> known() {
    Set<String> known = new LinkedHashSet<>(USUAL);
    known.add(ANY);
    known.addAll(desk.names().all(Names.Kind.STORE));
    return known;
  }

  /**
   * Has a way chosen for each step that offers several.
   *
   * @param otherwise where to show what is said of a step whose place nobody knows
   */
  static Event chosen(Event event, Desk desk, Place otherwise) {
    Event now = event;
    for (ChillCard card : desk.mistakes().none() ? desk.chills() : List.<ChillCard>of()) {
      Chosen chosen = Chooser.of(now, card);
      Place known = desk.register().place(Subject.step(card.dish(), card.step()).key(KEY));
      Place place = known == null ? otherwise : known;
      WayToChill way = chosen.way();
      now = chosen.event();
      if (way == null) {
        desk.mistakes()
            .add(place, new Fault.Impossible(
                new Trouble.NoWayToChill(chosen.refused(), Advice.onWays(now, card).text())));
      } else {
        int minutes = now.dish(card.dish()).step(card.step()).takes().minutes(1);
        desk.notes()
            .add(place, new Fault.Impossible(new Trouble.ChilledBy(way.name(), minutes, chosen.refused())));
      }
    }
    return now;
  }
}
