package ovenloom.cli.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import ovenloom.cli.sheet.GroupWords;
import ovenloom.model.tally.Answers;
import ovenloom.model.tally.Fit;
import ovenloom.model.variation.Result.Answer;

/**
 * A map of what fits: a row for each choice along one axis, a column for each along another.
 *
 * @param name a word without spaces, for links
 */
public record FitMap(String name, Fit fit) {

  /** How the runs of a cell ended, as one sees it at once. */
  enum Sort {
    FITS,
    SOME,
    NO,
    OPEN,
    NOTHING
  }

  /** {@code kitchen by guests}. */
  public String heading() {
    return fit.rows().name() + " by " + fit.columns().name();
  }

  /** The class of a cell, by which it has a colour and a pattern. */
  public String style(Answers cell) {
    return sort(cell).name().toLowerCase(Locale.ROOT);
  }

  private static Sort sort(Answers cell) {
    long plans = cell.of(Answer.PLAN);
    if (cell.all() == 0) {
      return Sort.NOTHING;
    }
    if (plans > 0) {
      return plans == cell.all() ? Sort.FITS : Sort.SOME;
    }
    return cell.of(Answer.NO_PLAN) == cell.all() ? Sort.NO : Sort.OPEN;
  }

  /** What is told first: {@code 12 of 40}. */
  public String words(Answers cell) {
    if (cell.all() > 1) {
      return GroupWords.grouped(cell.of(Answer.PLAN)) + " of " + GroupWords.grouped(cell.all());
    }
    return switch (sort(cell)) {
      case FITS, SOME -> "fits";
      case NO -> "no";
      case OPEN -> cell.wrong() > 0 ? "wrong" : "none found";
      case NOTHING -> "no run";
    };
  }

  /** What else there is to tell of several: {@code 20 no, 8 open}. */
  public String rest(Answers cell) {
    List<String> parts = new ArrayList<>();
    if (cell.all() > 1) {
      add(parts, cell.of(Answer.NO_PLAN), "no");
      add(parts, cell.of(Answer.NONE_FOUND), "open");
      add(parts, cell.wrong(), "wrong");
    }
    return String.join(", ", parts);
  }

  private static void add(List<String> parts, long count, String what) {
    if (count > 0) {
      parts.add(GroupWords.grouped(count) + " " + what);
    }
  }
}
