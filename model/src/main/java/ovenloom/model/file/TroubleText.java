package ovenloom.model.file;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import ovenloom.model.check.Trouble;
import ovenloom.model.kitchen.Level;
import ovenloom.model.measure.Range;
import ovenloom.model.measure.Size;

/** Puts into words why something cannot be, and what to do about it. */
final class TroubleText {

  private TroubleText() {}

  static MistakeText.Said say(Trouble trouble) {
    return switch (trouble) {
      case Trouble.Circle(List<String> steps) -> circle(steps);
      case Trouble.NoOven() -> said("this kitchen has no oven",
          "Give the kitchen one under \"ovens:\", or begin it with \"from: home\".");
      case Trouble.NoMark(var from, var to, String mode, Integer stage) ->
        said(
            "no oven has a mark " + (from.equals(to) ? "at " + from : "from " + from + " to " + to)
                + " in mode " + quoted(mode)
                + (stage == null ? "" : ", as stage " + stage + " asks"),
            "Widen \"from:\" and \"to:\", or look at the dials and modes of the ovens.");
      case Trouble.NothingToBakeIn() ->
        said("nothing says what this is baked in", "Add \"in:\" here, or to a step before it.");
      case Trouble.NoSize(String vessel) ->
        said("nobody knows how large " + quoted(vessel) + " is, and it goes into an oven",
            "Give its size in the kitchen: \"" + vessel + ": {count: 1, size: 30 x 20 x 5 cm}\".");
      case Trouble.NoRack(String vessel, Size size, var stands, Level level) ->
        said(
            quoted(vessel) + " (" + size + (stands == null ? "" : "; what is in it stands " + stands)
                + ") fits on no "
                + (level == null ? "rack" : Scalars.word(level) + " rack") + " of an oven that can bake this",
            "Use a smaller one, or look at the racks' sizes.");
      case Trouble.NoRoomForAll(String vessel, int count) ->
        said(count + " of " + quoted(vessel) + " at once fit into no oven",
            "Make fewer portions a batch, so that more batches share them out.");
      case Trouble.NoShelf(String vessel, Size size, List<String> places) ->
        said(quoted(vessel) + " (" + size + ") fits on no shelf of " + list(places),
            "Use a smaller one, or look at the shelves' sizes.");
      case Trouble.KeepsTooShort tooShort -> keepsTooShort(tooShort);
      case Trouble.NoWayToChill(List<String> why, String help) ->
        said("this cools too slowly, however it is chilled: " + String.join("; ", why), help);
      case Trouble.ChilledBy(String way, int minutes, List<String> others) ->
        said("chilled by " + way + ", " + time(minutes),
            others.isEmpty() ? "" : "Too slow: " + String.join("; ", others) + ".");
      case Trouble.TooFewBurners(var atLeast, int wanted, int there) ->
        said(
            "this needs " + several(wanted, "burner") + " of size " + quoted(Scalars.word(atLeast))
                + " or larger, and there " + are(there),
            "Ask for a smaller one, or look at the burners each vessel needs.");
      case Trouble.TooFewCooks(int wanted, int there) ->
        said("this needs " + several(wanted, "cook") + ", and there " + are(there),
            "Ask for fewer, or find more.");
      case Trouble.NobodySoLong(int minutes, int cooks, String skill, int longest) ->
        nobodySoLong(minutes, cooks, skill, longest);
      case Trouble.NobodyAbout(int minutes, int longest) ->
        said(
            "this cooks for " + time(minutes) + ", and someone is there for " + time(longest)
                + " on end at most before it is due",
            "Let someone stay, or say \"unattended: yes\" if it may cook alone.");
      case Trouble.NobodyToServe(String dish) ->
        said("nobody is in hours as " + quoted(dish) + " goes to the table",
            "Let someone stay until then, or look at the hours of the cooks.");
      case Trouble.TooFewVessels(String vessel, int wanted, int there) ->
        said("this takes " + wanted + " of " + quoted(vessel) + ", and there " + are(there),
            "Take fewer, or count them again.");
      case Trouble.UnknownRawFood(String tag, List<String> known) ->
        said(quoted(tag) + " may be any raw food, and counts as the one that must be cooked hottest",
            "Known here: " + list(known) + ". Leave \"raw\" off what may be eaten as it is.");
      case Trouble.NotFree(String allergen, String from) -> notFree(allergen, from);
      case Trouble.UnknownAllergen(String allergen, List<String> known) -> unknownAllergen(allergen, known);
      case Trouble.NeverSafe(String what, var source, String help) ->
        said(what.substring(0, what.length() - 1) + " (" + source + ")", help);
      case Trouble.TooFewInHand(String vessel, int wanted, int there) ->
        said(
            "this has its food in " + wanted + " of " + quoted(vessel) + " at once, and there " + are(there),
            "Make fewer batches, move their food into something else before, or count them again.");
      case Trouble.TooFewAtTheTable(String vessel, int wanted, int there) ->
        said(wanted + " of " + quoted(vessel) + " are at the table together, and there " + are(there),
            "Serve in something else, or in fewer batches.");
      case Trouble.TooLittleLanding(int wanted, int there) ->
        said("this puts " + wanted + " vessels down at once, and there is room for " + there,
            "Give the kitchen a larger \"landing:\".");
      case Trouble.BeforeTheCalendar(int minutes) ->
        said("this is " + time(minutes) + " before anyone begins",
            "Begin earlier: look at the cooks' hours and \"calendar:\".");
      case Trouble.TooLateBeforeItBegins(int needed, int there) ->
        said(
            "this and all it waits for take " + time(needed) + ", and there are " + time(there)
                + " from the first hour to the table",
            "Begin earlier: look at the cooks' hours and \"calendar:\".");
      case Trouble.ServedTooLong(int minutes, int servedOver) ->
        said("this takes " + time(minutes) + ", and the dish is served over " + time(servedOver),
            "Give the course, or the dish, a longer \"served over:\".");
      case Trouble.AfterServing(String served) ->
        said("this must be done by the table time, and comes after " + quoted(served) + ", which begins then",
            "Say \"serve: yes\" here as well, or put it before.");
      case Trouble.StagesTooLong(int stages, int step) ->
        said("all stages but the last take " + time(stages) + " of a step of " + time(step),
            "Leave at least a minute for the last stage.");
      case Trouble.DoorShut(int at, int until) ->
        said("the door stays shut until minute " + until + ", and hands are needed inside at minute " + at,
            "Change one of the two.");
      case Trouble.OverCircuit(var draws, String circuit, var limit) ->
        said("this draws " + draws + ", and " + quoted(circuit) + " gives " + limit,
            "Put it on another circuit.");
      case Trouble.BreakOutsideHours() ->
        said("a break outside this cook's hours", "Look at the day and the time.");
    };
  }

  private static MistakeText.Said circle(List<String> steps) {
    if (steps.size() == 1) {
      return said(quoted(steps.getFirst()) + " waits for itself", "Take it out of what it comes after.");
    }
    String ring = steps.stream().map(TroubleText::quoted).collect(Collectors.joining(" waits for "));
    return said("these steps wait for each other: " + ring + " waits for " + quoted(steps.getFirst()),
        "One of them must not wait.");
  }

  private static MistakeText.Said keepsTooShort(Trouble.KeepsTooShort wait) {
    String small = wait.tooSmall().isEmpty() ? ""
        : " (its vessel does not fit into " + list(wait.tooSmall()) + ")";
    return said(
        "what " + quoted(wait.before()) + " makes must wait at least " + time(wait.least()) + " and keeps "
            + time(wait.most()) + " at most" + small,
        "Say under \"keeps:\" where it can wait so long.");
  }

  private static MistakeText.Said unknownAllergen(String allergen, List<String> known) {
    String nearest = Nearest.to(allergen, known);
    String meant = nearest == null ? "" : "; did you mean " + quoted("free of " + nearest) + "?";
    return said(
        quoted("free of " + allergen) + " keeps nothing apart: no dish " + quoted("contains " + allergen)
            + meant,
        "Use the same name in both.");
  }

  private static MistakeText.Said notFree(String allergen, @Nullable String from) {
    String free = quoted("free of " + allergen);
    String contains = quoted("contains " + allergen);
    return from == null ? said("this is said to be " + free + " and " + contains, "Leave one of the two off.")
        : said("this is " + free + ", and " + quoted(from) + ", which goes into it, " + contains,
            "Make it without, or leave " + free + " off: ask the guest first.");
  }

  private static MistakeText.Said nobodySoLong(int minutes, int cooks, @Nullable String skill, int longest) {
    String who = cooks == 1
        ? skill == null ? "nobody works" : "nobody with the skill " + quoted(skill) + " works"
        : "no " + cooks + " cooks" + (skill == null ? "" : ", one with the skill " + quoted(skill) + ",")
            + " work together";
    String so = longest == 0 ? " at all before it is due"
        : " for longer than " + time(longest) + " on end before it is due";
    return said("this needs hands for " + time(minutes) + ", and " + who + so,
        "Divide the step, or look at hours and breaks.");
  }

  private static String several(int count, String thing) {
    return count + " " + thing + (count == 1 ? "" : "s");
  }

  private static String are(int there) {
    return there == 0 ? "are none" : there == 1 ? "is 1" : "are " + there;
  }

  private static String time(int minutes) {
    return Range.exactly(Math.max(0, minutes)).written();
  }

  private static String list(List<String> names) {
    return names.stream().map(TroubleText::quoted).collect(Collectors.joining(" or "));
  }

  private static String quoted(String text) {
    return MistakeText.quoted(text);
  }

  private static MistakeText.Said said(String what, String next) {
    return new MistakeText.Said(what, next);
  }
}
