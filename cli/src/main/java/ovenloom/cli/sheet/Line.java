package ovenloom.cli.sheet;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A line of a sheet before it is known how wide the paper is. */
public sealed interface Line {

  record Blank() implements Line {}

  record Heading(String words) implements Line {}

  /** The heading of a part. */
  record Underlined(String words) implements Line {}

  record Sentence(String words) implements Line {}

  /** Cells side by side, the last of which takes what is left of the width. */
  record Row(List<Cell> cells) implements Line {
    public Row {
      cells = List.copyOf(cells);
    }
  }

  /**
   * Words in a column; the last column's width does not matter.
   *
   * @param ink of all of them; absent for the sentences of an act, of which some stand out
   * @param right whether they stand at the right of the column, as numbers do
   */
  record Cell(String words, int width, boolean bold, @Nullable Ink ink, boolean right) {
    public static final int GAP = 2;

    /** In the ink of the page. */
    public Cell(String words, int width, boolean bold) {
      this(words, width, bold, Ink.PLAIN);
    }

    Cell(String words, int width, boolean bold, @Nullable Ink ink) {
      this(words, width, bold, ink, false);
    }

    static Cell number(String words, int width, boolean bold) {
      return new Cell(words, width, bold, Ink.PLAIN, true);
    }
  }
}
