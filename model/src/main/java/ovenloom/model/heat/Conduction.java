package ovenloom.model.heat;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Food that is as warm all through, put where it is warmer or colder and left there: what remains of the difference, as a
 * share of what it was.
 *
 * <p>Up to a Biot number of 0.1 the food is taken to be as warm inside as outside (lumped); beyond, the series of the heat
 * equation is summed. Above a Fourier number of 0.2 its first term is all that is left within a hundredth. Source: any
 * textbook of heat transfer, such as Cengel and Ghajar, Heat and Mass Transfer, chapter 4.
 */
public final class Conduction {

  /** Below it, food is as warm inside as at its surface, within a few hundredths. */
  static final double LUMPED = 0.1;

  private static final double NEGLIGIBLE = 1e-9;
  private static final int MOST_TERMS = 200;
  private static final double LOOK_EVERY = 0.1;
  private static final double EXACT = 1e-10;
  private static final int MOST_STEPS = 200;

  private final Shape shape;
  private final double biot;
  private final List<Term> terms = new ArrayList<>();

  private record Term(double lambda, double weight) {}

  /**
   * For food of a shape.
   *
   * @param biot its Biot number, h L / k, with L half the thickness or the radius; above 0
   */
  public Conduction(Shape shape, double biot) {
    if (!(biot > 0)) {
      throw new IllegalArgumentException("the Biot number " + biot + " is not above 0");
    }
    this.shape = shape;
    this.biot = biot;
  }

  /** What remains in the middle after a time, as a Fourier number: diffusivity x time / L2. */
  public double inTheMiddle(double fourier) {
    return biot <= LUMPED ? lumped(fourier) : sum(fourier, false);
  }

  /** What remains at the surface. */
  public double atTheSurface(double fourier) {
    return biot <= LUMPED ? lumped(fourier) : sum(fourier, true);
  }

  /** After which time, as a Fourier number, so much remains in the middle, between 0 and 1. */
  public double until(double remains) {
    if (!(remains > 0 && remains < 1)) {
      throw new IllegalArgumentException(remains + " is not between 0 and 1");
    }
    double enough = 1;
    while (inTheMiddle(enough) > remains) {
      enough *= 2;
    }
    return new BrentSolver(EXACT, EXACT).solve(MOST_STEPS, fourier -> inTheMiddle(fourier) - remains, 0,
        enough);
  }

  private double lumped(double fourier) {
    return Math.exp(-shape.sides() * biot * fourier);
  }

  private double sum(double fourier, boolean surface) {
    if (fourier <= 0) {
      return 1;
    }
    double sum = 0;
    for (int i = 0; i < MOST_TERMS; i++) {
      Term term = term(i);
      double left = Math.exp(-term.lambda() * term.lambda() * fourier);
      sum += term.weight() * left * (surface ? shape.atTheSurface(term.lambda()) : 1);
      if (left < NEGLIGIBLE) {
        break;
      }
    }
    return Math.clamp(sum, 0, 1);
  }

  private Term term(int number) {
    while (terms.size() <= number) {
      double lambda = next(terms.isEmpty() ? EXACT : terms.getLast().lambda() + LOOK_EVERY);
      terms.add(new Term(lambda, shape.weight(lambda)));
    }
    return terms.get(number);
  }

  /** The next root, some way after the last. */
  private double next(double after) {
    double low = after;
    while (shape.root(low, biot) * shape.root(low + LOOK_EVERY, biot) > 0) {
      low += LOOK_EVERY;
    }
    return new BrentSolver(EXACT, EXACT).solve(MOST_STEPS, lambda -> shape.root(lambda, biot), low,
        low + LOOK_EVERY);
  }

  /** The first term: how fast what remains shrinks, and the share it has of the whole in the middle. */
  double[] firstTerm() {
    Term first = term(0);
    return new double[]{first.lambda(), first.weight()};
  }
}
