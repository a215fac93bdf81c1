package ovenloom.model.file;

import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import ovenloom.model.measure.Parsed;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Batches;

/** The small values of a plan file: whole numbers, pairs of them, names that are taken as they are. */
record PlanValues(Desk desk) {

  private static final Pattern WHOLE = Pattern.compile("-?[0-9]{1,18}");
  /** Two thousand years, minutes. */
  private static final int FARTHEST = 1_051_200_000;

  /** The name as it is: this program wrote it. */
  @Nullable
  String name(Written written) {
    Written.Words words = desk.words(written);
    return words == null ? null : words.text();
  }

  @Nullable
  Stretch stretch(Written written) {
    List<Integer> both = desk.each(written, each -> desk.read(each, PlanValues::minute));
    if (both.size() == 2 && both.getFirst() <= both.getLast()) {
      return new Stretch(both.getFirst(), both.getLast());
    }
    desk.contradiction(written.place(), "this is no stretch of time", "a minute it begins and one it ends");
    return null;
  }

  @Nullable
  Batches batches(Written written) {
    List<Integer> both = desk.each(written, each -> desk.read(each, Scalars::count));
    if (both.size() == 2 && both.getFirst() <= both.getLast()) {
      return new Batches(both.getFirst(), both.getLast());
    }
    desk.contradiction(written.place(), "these are no batches", "the first and the last of them");
    return null;
  }

  static Parsed<Integer> minute(String text) {
    return Scalars.checked(number(text), text,
        n -> Math.abs(n) <= FARTHEST ? n.intValue() : null, "a minute within two thousand years");
  }

  static Parsed<Long> number(String text) {
    return WHOLE.matcher(text).matches() ? new Parsed.Good<>(Long.parseLong(text))
        : Scalars.bad(text, "a whole number like \"15\"");
  }
}
