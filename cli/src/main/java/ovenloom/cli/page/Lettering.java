package ovenloom.cli.page;

import java.util.List;
import java.util.Objects;
import ovenloom.cli.lane.Box;
import ovenloom.cli.sheet.Wrapped;
import ovenloom.model.measure.Stretch;

/** What is written on a lane, by the room there is in so wide a drawing. */
record Lettering(Window window, double minutePixels) {

  /** How wide a letter of 9 pt is, in pixels; most are less. */
  private static final double LETTER = 6.5;

  private static final double MARGINS = 8;

  /** Of a word that is cut short, so many letters must be left. */
  private static final int LEAST = 4;

  private static final String CUT = "\u2026";

  /**
   * Words in a box or to its right.
   *
   * @param until the minute in which something else is there
   * @param forms the same words, ever fewer; the last one may be cut short
   */
  Lettered of(Box box, int until, List<String> forms) {
    Stretch seen = Objects.requireNonNull(window.when().shared(box.when()));
    double inside = pixels(seen.minutes());
    double beside = pixels(until - seen.to());
    for (String words : forms) {
      if (fits(words, inside)) {
        return new Lettered(box, words, true);
      }
      if (fits(words, beside)) {
        return new Lettered(box, words, false);
      }
    }
    return new Lettered(box, cut(forms.getLast(), Math.max(inside, beside)), inside >= beside);
  }

  /** The first of some words that has room from one minute to another; none where none has. */
  String line(int from, int to, List<String> forms) {
    double room = pixels(Math.min(to, window.when().to()) - Math.max(from, window.when().from()));
    return forms.stream().filter(words -> fits(words, room)).findFirst().orElse("");
  }

  private double pixels(int minutes) {
    return minutes * minutePixels - MARGINS;
  }

  private static boolean fits(String words, double pixels) {
    return Wrapped.length(words) * LETTER <= pixels;
  }

  private static String cut(String words, double pixels) {
    int letters = Wrapped.fitting(words, (int) (pixels / LETTER) - CUT.length());
    return letters < LEAST ? "" : words.substring(0, letters).strip() + CUT;
  }
}
