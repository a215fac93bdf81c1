package ovenloom.model.file;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import ovenloom.model.check.Trouble;

/**
 * Puts a mistake into words: what it is, the line with a mark under it, and what to do next.
 *
 * <pre>
 * supper.yaml:41:13: "350 K" is not an oven setting
 *     oven: 350 K
 *           ^^^^^
 *   Expected something like "350 F", "180 C" or "gas 4". Did you mean "350 F"?
 * </pre>
 */
public final class MistakeText {

  private static final String LIKE = " like ";
  private static final int LONGEST_LINE = 160;
  private static final int LONGEST_VALUE = 80;

  /** What is wrong, and what to do about it; nothing where there is nothing to say. */
  record Said(String what, String next) {}

  private MistakeText() {}

  /** Several lines, the last without an end. */
  public static String of(Mistake mistake) {
    Place place = mistake.place();
    Said said = say(mistake.fault());
    String head = place.file() + ":" + place.line() + ":" + place.column() + ": " + said.what();
    String next = said.next().isEmpty() ? "" : "\n  " + said.next();
    return head + marked(place) + next;
  }

  /** All of them, one after the other. */
  public static String of(List<Mistake> mistakes) {
    return mistakes.stream().map(MistakeText::of).collect(Collectors.joining("\n", "", "\n"));
  }

  /** The line without its indentation, and a mark under the place; of a very long line, what is around the place. */
  private static String marked(Place place) {
    Line line = new Line(place.text());
    int indent = (int) place.text().codePoints().takeWhile(Character::isWhitespace).count();
    if (indent >= line.length()) {
      return "";
    }
    int at = Math.max(indent, Math.min(place.column() - 1, line.length()));
    boolean fits = line.length() - indent <= LONGEST_LINE;
    int from = fits ? indent : Math.max(indent, at - LONGEST_LINE / 2);
    int to = Math.min(line.length(), from + LONGEST_LINE);
    int length = Math.max(1, Math.min(place.length(), to - at));
    return "\n    " + visible(line.from(from, to - from)) + "\n    " + " ".repeat(at - from)
        + "^".repeat(length);
  }

  /** As it may be shown on a terminal: one column for each character, and none that does things to it. */
  private static String visible(String text) {
    return text.codePoints()
        .mapToObj(c -> Character.isISOControl(c) ? " " : Character.toString(c))
        .collect(Collectors.joining());
  }

  private static Said say(Fault fault) {
    return switch (fault) {
      case Fault.NotUnderstood(String written, String expected, List<String> suggestions) ->
        notUnderstood(written, expected, suggestions);
      case Fault.WrongShape(String of, Fault.Shape found, String expected) ->
        new Said(of + " cannot be " + shape(found), "Expected " + expected + ".");
      case Fault.UnknownKey(String written, String of, String nearest, List<String> known) ->
        new Said(quoted(written) + " is not said of " + of,
            didYouMean(nearest, "Known here", known));
      case Fault.MissingKey(String key, String of) ->
        new Said(of + " needs " + quoted(key + ":"), "Add " + quoted(key + ":") + ".");
      case Fault.NoValue(String key, boolean insideBraces, String decimal) ->
        noValue(key, insideBraces, decimal);
      case Fault.RepeatedKey(String key, int firstLine) ->
        new Said(quoted(key) + " is here twice", "The first is in line " + firstLine + ". Keep one of them.");
      case Fault.UnknownName name -> unknownName(name);
      case Fault.AlmostKnown(String written, String kind, String nearest, String key) ->
        new Said("there is no " + kind + " " + quoted(written), "Did you mean " + quoted(nearest)
            + "? If it is a new one, write among its keys \"" + key + ": " + visible(written) + "\".");
      case Fault.RepeatedName(String name, String kind) ->
        new Said("there is another " + kind + " " + quoted(name), "Give one of them another name.");
      case Fault.CommaInside(String written) ->
        new Said(quoted(written) + " holds a comma",
            "Names hold none. Write several values as a list, like [one, two].");
      case Fault.CutShort(String written) -> new Said("\" #\" begins a comment, so the name ends before it",
          "If it belongs to the name, write the name in quotes: " + quoted(written) + ".");
      case Fault.NotLaidOut(Fault.Slip slip, String problem) -> notLaidOut(slip, problem);
      case Fault.MergeKey() ->
        new Said("\"<<\" is not used here", "Write the keys out, or put them into a file of their own and "
            + "name it with \"from:\".");
      case Fault.TooMuch(String what, int limit) ->
        new Said("more than " + limit + " " + what, "A file may hold at most " + limit + ".");
      case Fault.NoSuchFile(String written, Fault.Obstacle trouble) -> noSuchFile(written, trouble);
      case Fault.Impossible(Trouble trouble) -> TroubleText.say(trouble);
      case Fault.Contradiction(String what, String expected) -> new Said(what, "Expected " + expected + ".");
    };
  }

  private static Said notUnderstood(String written, String expected, List<String> suggestions) {
    int like = expected.startsWith("a ") || expected.startsWith("an ") ? expected.indexOf(LIKE) : -1;
    String what = like < 0 ? quoted(written) + " is not understood"
        : quoted(written) + " is not " + expected.substring(0, like);
    String next = like < 0 ? "Expected " + expected + "."
        : "Expected something like " + expected.substring(like + LIKE.length()) + ".";
    String guess = suggestions.isEmpty() ? ""
        : " Did you mean " + suggestions.stream().map(MistakeText::quoted).collect(Collectors.joining(" or "))
            + "?";
    boolean several = suggestions.isEmpty() && written.contains(", ");
    return new Said(what, next + guess + (several ? " Several values are a list, like [one, two]." : ""));
  }

  private static Said noValue(String key, boolean insideBraces, @Nullable String decimal) {
    String what = key.isEmpty() ? "there is nothing here" : quoted(key) + " has no value";
    if (decimal != null) {
      return new Said(what, "A comma begins a new key. Did you mean " + quoted(decimal) + "?");
    }
    return new Said(what,
        insideBraces
            ? "A comma inside { } or [ ] begins a new key. Leave it out, or write the text in quotes."
            : "Write its value behind it, or leave the key out.");
  }

  private static Said notLaidOut(Fault.Slip slip, String problem) {
    return switch (slip) {
      case TAB ->
        new Said("there is a tab here", "Use spaces: a tab is as wide as whoever looks at it likes.");
      case COLON_IN_NAME ->
        new Said("a second \": \" in one line", "If it belongs to the text, put the text in quotes.");
      case NOT_CLOSED -> new Said("something was opened and not closed before this",
          "Look for a missing \"]\", \"}\", comma or quote.");
      case SIGN_AT_START -> new Said("a text cannot begin with this sign", "Put the text in quotes.");
      case INDENTATION -> new Said("this line does not fit those before it",
          "Check how far it is moved in, and that every key ends with a colon and a space.");
      case QUOTE_INSIDE -> new Said("a text in quotes ends before this",
          "Write a single quote inside single quotes twice, or use double quotes around it.");
      case SECOND_DOCUMENT ->
        new Said("a second document begins here", "A file holds one. Remove the line \"---\".");
      case EMPTY -> new Said("there is nothing in this file", "Expected keys like \"ovenloom: 1\".");
      case OTHER -> new Said("the file cannot be read here", "It says: " + problem + ".");
    };
  }

  private static Said noSuchFile(String written, Fault.Obstacle trouble) {
    return switch (trouble) {
      case MISSING ->
        new Said("there is no file " + quoted(written), "");
      case UNREADABLE -> new Said(quoted(written) + " cannot be opened as a file", "");
      case NOT_TEXT -> new Said(quoted(written) + " is no text in UTF-8", "");
      case OUTSIDE -> new Said(quoted(written) + " is outside the folder that may be read",
          "Move it below the folder of the first file, or give a wider one with --root.");
      case CIRCLE -> new Said(quoted(written) + " takes itself in, directly or in a round", "");
    };
  }

  private static Said unknownName(Fault.UnknownName name) {
    return new Said("there is no " + name.kind() + " " + quoted(name.written()),
        didYouMean(name.nearest(), "There is", name.known()) + countIt(name));
  }

  private static String didYouMean(
      @Nullable String nearest, String introduction, List<String> known) {
    if (nearest != null) {
      return "Did you mean " + quoted(nearest) + "?";
    }
    if (known.isEmpty()) {
      return "There is none at all.";
    }
    return known.stream()
        .map(MistakeText::quoted)
        .collect(Collectors.joining(", ", introduction + ": ", "."));
  }

  /** What a kitchen has it lists, with how many. */
  private static String countIt(Fault.UnknownName name) {
    if (!name.kind().equals("vessel") && !name.kind().equals("appliance")) {
      return "";
    }
    String list = name.kind() + "s:";
    if (name.atHome()) {
      return (name.nearest() == null ? " If you have one" : " If not") + ", add \"kitchen: {from: home, "
          + list + " {" + visible(name.written())
          + (name.kind().equals("vessel") ? ": {count: 1, size: 30 x 20 x 5 cm}}}\"." : ": 1}}\".");
    }
    return " " + (name.nearest() == null ? "Say" : "If not, say") + " under \"" + list
        + "\" how many there are.";
  }

  private static String shape(Fault.Shape found) {
    return switch (found) {
      case TEXT -> "a single text";
      case LIST -> "a list";
      case KEYS -> "made of keys";
    };
  }

  static String quoted(String text) {
    String shown = text.codePointCount(0, text.length()) <= LONGEST_VALUE ? text
        : text.substring(0, text.offsetByCodePoints(0, LONGEST_VALUE)) + "...";
    return "\"" + visible(shown) + "\"";
  }
}
