package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.List;

/** Words broken into lines; a word that is too long by itself is cut. */
public final class Wrapped {

  private Wrapped() {}

  public static List<String> lines(String words, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : Harmless.words(words, "").split(" ", -1)) {
      String rest = word;
      if (!line.isEmpty() && length(line.toString()) + 1 + length(rest) > width) {
        lines.add(line.toString());
        line.setLength(0);
      }
      while (line.isEmpty() && length(rest) > width) {
        int cut = fitting(rest, width);
        lines.add(rest.substring(0, cut));
        rest = rest.substring(cut);
      }
      line.append(line.isEmpty() ? "" : " ").append(rest);
    }
    lines.add(line.toString());
    return lines;
  }

  /** How many of its characters fit into so many columns, one at least. */
  public static int fitting(String word, int width) {
    int cut = 0;
    int taken = 0;
    while (cut < word.length()) {
      int point = word.codePointAt(cut);
      taken += columns(point);
      if (taken > width && cut > 0) {
        break;
      }
      cut += Character.charCount(point);
    }
    return cut;
  }

  /** Columns on a terminal. */
  public static int length(String words) {
    return words.codePoints().map(Wrapped::columns).sum();
  }

  private static int columns(int point) {
    int type = Character.getType(point);
    if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK) {
      return 0;
    }
    return isWide(point) ? 2 : 1;
  }

  private static boolean isWide(int point) {
    return (point >= 0x1100 && point <= 0x115F) || (point >= 0x2E80 && point <= 0xA4CF)
        || (point >= 0xAC00 && point <= 0xD7A3) || (point >= 0xF900 && point <= 0xFAFF)
        || (point >= 0xFE30 && point <= 0xFE6F) || (point >= 0xFF00 && point <= 0xFF60)
        || (point >= 0x1F300 && point <= 0x1F64F) || (point >= 0x20000 && point <= 0x3FFFD);
  }
}
