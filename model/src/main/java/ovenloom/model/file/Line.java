package ovenloom.model.file;

import org.jspecify.annotations.Nullable;

/** A line of a file, in characters as people count them. A whole file may stand on one line, so nothing here walks along it. */
final class Line {

  private final String text;
  private final int length;
  /** Where each character begins, and where the last one ends; absent where each is one char. */
  private final int @Nullable [] starts;

  Line(String text) {
    this.text = text;
    String written = text.stripTrailing();
    length = written.codePointCount(0, written.length());
    starts = text.codePointCount(0, text.length()) == text.length() ? null : starts(text);
  }

  private static int[] starts(String text) {
    int[] starts = new int[text.codePointCount(0, text.length()) + 1];
    for (int i = 1; i < starts.length; i++) {
      starts[i] = text.offsetByCodePoints(starts[i - 1], 1);
    }
    return starts;
  }

  String text() {
    return text;
  }

  /** Characters of it, without the blanks at its end. */
  int length() {
    return length;
  }

  /** So many characters from a column on, or fewer where it ends. */
  String from(int column, int most) {
    int count = starts == null ? text.length() : starts.length - 1;
    int begin = Math.min(column, count);
    int end = Math.min(begin + most, count);
    return starts == null ? text.substring(begin, end) : text.substring(starts[begin], starts[end]);
  }
}
