package ovenloom.solver.bench;

import java.util.Locale;

/**
 * What one row came to. Less is better; where something is not known or was not found it is no number.
 *
 * @param ours what the program came to
 * @param reference the best known
 * @param bound nothing is less than this
 * @param seconds it took
 */
record Measured(double ours, double reference, double bound, double seconds) {

  /** Says that the program found nothing. */
  static final double NOTHING = Double.NaN;

  boolean isAnswered() {
    return !Double.isNaN(ours);
  }

  static Measured read(String text) {
    String[] words = text.split(" ", -1);
    return new Measured(Double.parseDouble(words[0]), Double.parseDouble(words[1]),
        Double.parseDouble(words[2]), Double.parseDouble(words[3]));
  }

  String written() {
    return String.format(Locale.ROOT, "%.3f %.3f %.3f %.3f", ours, reference, bound, seconds);
  }
}
