package ovenloom.model.file;

import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.check.Trouble;

/** What is wrong, as data; the words are chosen where it is printed. */
public sealed interface Fault {

  /**
   * A value that says nothing known.
   *
   * @param written the value
   * @param expected what would do, as the end of a sentence that begins "Expected"
   * @param suggestions what may have been meant
   */
  record NotUnderstood(String written, String expected, List<String> suggestions) implements Fault {
    public NotUnderstood {
      suggestions = List.copyOf(suggestions);
    }
  }

  /** A value made of the wrong things: a list where one word was wanted. */
  record WrongShape(String of, Shape found, String expected) implements Fault {}

  /** How a value is built. */
  enum Shape {
    TEXT,
    LIST,
    KEYS
  }

  /**
   * A key that means nothing here.
   *
   * @param of what the keys describe: {@code a step}
   * @param nearest the known key most like it, if any is
   * @param known all that would do
   */
  record UnknownKey(String written, String of, @Nullable String nearest,
      List<String> known) implements Fault {
    public UnknownKey {
      known = List.copyOf(known);
    }
  }

  /** A key that has to be there and is not. */
  record MissingKey(String key, String of) implements Fault {}

  /**
   * A key without a value: often what follows a comma inside braces.
   *
   * @param decimal how it reads with the value before it and a decimal point between, where both are digits
   */
  record NoValue(String key, boolean insideBraces, @Nullable String decimal) implements Fault {}

  /** A key that was there before. */
  record RepeatedKey(String key, int firstLine) implements Fault {}

  /**
   * A name that nothing has.
   *
   * @param kind of thing: {@code vessel}
   * @param nearest the known name most like it, if any is
   * @param known all there are
   * @param atHome whether the kitchen is the one a home is taken to have
   */
  record UnknownName(String written, String kind, @Nullable String nearest, List<String> known,
      boolean atHome) implements Fault {
    public UnknownName {
      known = List.copyOf(known);
    }
  }

  /**
   * A name in a patch that nothing has, and that is a slip of the pen away from one that something has.
   *
   * @param key by which one that is truly new says its name itself
   */
  record AlmostKnown(String written, String kind, String nearest, String key) implements Fault {}

  /** A name two things of a kind would share. */
  record RepeatedName(String name, String kind) implements Fault {}

  /** A comma inside a name or a value. */
  record CommaInside(String written) implements Fault {}

  /** A number sign that cuts a name short. */
  record CutShort(String written) implements Fault {}

  /** Text that is not laid out as YAML or JSON at all. */
  record NotLaidOut(Slip slip, String problem) implements Fault {}

  /** The usual reasons why a file cannot be taken apart. */
  enum Slip {
    TAB,
    COLON_IN_NAME,
    NOT_CLOSED,
    SIGN_AT_START,
    INDENTATION,
    QUOTE_INSIDE,
    SECOND_DOCUMENT,
    EMPTY,
    OTHER
  }

  /** The merge key of old YAML. */
  record MergeKey() implements Fault {}

  /** More than a file may hold. */
  record TooMuch(String what, int limit) implements Fault {}

  /** A file that may not be, or cannot be, read. */
  record NoSuchFile(String written, Obstacle obstacle) implements Fault {}

  /** Why a file is not read. */
  enum Obstacle {
    MISSING,
    UNREADABLE,
    NOT_TEXT,
    OUTSIDE,
    CIRCLE
  }

  /** Something that was understood and cannot be. */
  record Impossible(Trouble trouble) implements Fault {}

  /**
   * Something that contradicts itself or what else is in the file.
   *
   * @param what in a few words, values and all
   * @param expected what would do, as the end of a sentence that begins "Expected"
   */
  record Contradiction(String what, String expected) implements Fault {}
}
