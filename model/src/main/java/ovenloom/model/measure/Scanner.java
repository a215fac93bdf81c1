package ovenloom.model.measure;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Walks along a few written words, one number or word at a time, and remembers where they went
 * wrong. What typesetting adds (long dashes, hard spaces, capital letters) is gone; every character
 * keeps its place.
 */
final class Scanner {

  private static final int WORDS_IN_A_UNIT = 3;
  private static final String SIGNS = "°%\"℃℉";

  private final String written;
  private final String plain;
  private int at;
  private int wrongFrom = -1;
  private int wrongTo;
  private @Nullable String reason;

  Scanner(String written) {
    this.written = written;
    this.plain = plain(written);
  }

  /** The same text, character for character, in small letters and with one kind of space, dash, cross and slash. */
  static String plain(String written) {
    var plain = new StringBuilder(written.length());
    written.chars().forEach(c -> plain.append(plain((char) c)));
    return plain.toString();
  }

  private static char plain(char c) {
    return switch (c) {
      case '\u00a0', '\u202f', '\u2009', '\u2007', '\u200a' -> ' ';
      case '\u2010', '\u2011', '\u2012', '\u2013', '\u2014', '\u2212' -> '-';
      case '×', '✕' -> 'x';
      case '\u2044', '\u2215' -> '/';
      case '″', '”', '“' -> '"';
      case 'º', '˚' -> '°';
      default -> 'A' <= c && c <= 'Z' ? (char) (c - 'A' + 'a') : c;
    };
  }

  /** Where the next word or number begins. */
  int at() {
    while (peek() == ' ') {
      at++;
    }
    return at;
  }

  boolean ended() {
    return at() == plain.length();
  }

  /** Goes back to a place this scanner has been. */
  void backTo(int place) {
    at = place;
  }

  /** The character here, spaces included; NUL at the end. */
  char peek() {
    return at < plain.length() ? plain.charAt(at) : '\0';
  }

  void step() {
    at++;
  }

  /** Takes this character if it is the next one after any spaces. */
  boolean take(char wanted) {
    if (plain.startsWith(String.valueOf(wanted), at())) {
      at++;
      return true;
    }
    return false;
  }

  /** Takes the next word if it is one of these. */
  boolean takeWord(String... wanted) {
    int from = at();
    if (List.of(wanted).contains(word())) {
      return true;
    }
    at = from;
    return false;
  }

  /** The digits right here, perhaps none. */
  String digits() {
    int from = at;
    while ('0' <= peek() && peek() <= '9') {
      at++;
    }
    return plain.substring(from, at);
  }

  /** The next letters, with the point of an abbreviation taken but left out, or the next sign; empty if neither. */
  String word() {
    int from = at();
    if (!ended() && SIGNS.indexOf(peek()) >= 0) {
      at++;
      return plain.substring(from, at);
    }
    while (Character.isLetter(peek())) {
      at++;
    }
    String word = plain.substring(from, at);
    if (!word.isEmpty() && peek() == '.') {
      at++;
    }
    return word;
  }

  /** The letters, digits and points from here on without a break. */
  String run() {
    int from = at();
    while (Character.isLetterOrDigit(peek()) || peek() == '.') {
      at++;
    }
    return plain.substring(from, at);
  }

  /** Everything from here on as it was written, but with single plain spaces. */
  String rest() {
    String rest = written.substring(at());
    at = plain.length();
    return rest.replaceAll("[\\s\\u00a0\\u202f\\u2007]+", " ").strip();
  }

  /** Takes the longest run of words that names a unit, or nothing and answers null. */
  <U> @Nullable U unit(Words<U> words) {
    int end = at();
    U found = null;
    String phrase = "";
    for (int i = 0; i < WORDS_IN_A_UNIT; i++) {
      phrase = (phrase + " " + word()).strip();
      U meant = words.meaning(phrase);
      if (meant != null) {
        found = meant;
        end = at;
      }
    }
    at = end;
    return found;
  }

  /** Marks everything from there to here as wrong, unless something was before; answers null. */
  @SuppressWarnings("TypeParameterUnusedInFormals") // the answer is null, which is of every type
  <T> @Nullable T refuse(int from, @Nullable String whatWasExpected) {
    if (wrongFrom < 0) {
      wrongFrom = from;
      wrongTo = at;
      reason = whatWasExpected;
    }
    return null;
  }

  /** The fault: what was refused, else the word the reading stopped at, else the whole. */
  <T> Parsed<T> fault(String expected, List<String> suggestions) {
    if (wrongFrom < 0) {
      markWhereItStopped();
    }
    return new Parsed.Bad<>(Objects.requireNonNullElse(reason, expected), suggestions, wrongFrom, wrongTo);
  }

  private void markWhereItStopped() {
    if (ended()) {
      wrongTo = plain.stripTrailing().length();
      at = 0;
      wrongFrom = wrongTo == 0 ? 0 : at();
      wrongTo = wrongTo == 0 ? plain.length() : wrongTo;
    } else {
      int space = plain.indexOf(' ', at);
      wrongFrom = at;
      wrongTo = space < 0 ? plain.length() : space;
    }
  }
}
