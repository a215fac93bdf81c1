package ovenloom.solver.place;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import ovenloom.model.file.ProblemFile;
import ovenloom.model.file.Reading;
import ovenloom.model.menu.Event;
import ovenloom.solver.wish.Scorer;

/**
 * Measures schedules a second with heat beside those without, in turns, and prints rows of a table. Arguments: problem files.
 * {@code .ci/performance} calls it.
 */
public final class HeatSpeed {

  private static final int ROUNDS = 6;
  private static final int ORDERS = 400;
  private static final int NEAR = 8;
  private static final double NANOS = 1e9;

  private HeatSpeed() {}

  /** Nobody looks. */
  private static final class NoHeat extends ColdStarts {

    NoHeat(Runs runs) {
      super(runs);
    }

    @Override
    void follow(Draft draft) {}

    @Override
    boolean settle(Draft draft, Fitting fitting) {
      return false;
    }

    @Override
    void check(Draft draft) {}
  }

  public static void main(String[] arguments) throws IOException {
    for (String file : List.of(arguments)) {
      Runs runs = Runs.of(read(Path.of(file)));
      Scorer scorer = new Scorer(runs);
      Decoder with = new Decoder(runs);
      Decoder without = new Decoder(runs, new NoHeat(runs));
      double heat = 0;
      double none = 0;
      for (int round = 0; round < ROUNDS; round++) {
        double first = seconds(with, scorer, runs, round);
        double second = seconds(without, scorer, runs, round);
        heat += round == 0 ? 0 : first;
        none += round == 0 ? 0 : second;
      }
      int all = ORDERS * (ROUNDS - 1);
      System.out.printf(Locale.ENGLISH, "| %s | %,.0f | %,.0f | %.2f |%n", Path.of(file).getFileName(),
          all / heat,
          all / none, none / heat);
    }
  }

  private static double seconds(Decoder decoder, Scorer scorer, Runs runs, int round) {
    Random lot = new Random(round);
    Decisions decisions = Decisions.open(runs.work().steps().size());
    long began = System.nanoTime();
    for (int order = 0; order < ORDERS; order++) {
      scorer.of(decoder.decode(decisions));
      shift(decisions, lot);
    }
    return (System.nanoTime() - began) / NANOS;
  }

  /** A step goes a few turns on. */
  private static void shift(Decisions decisions, Random lot) {
    double[] wanted = new double[decisions.steps()];
    for (int turn = 0; turn < wanted.length; turn++) {
      wanted[decisions.step(turn)] = turn;
    }
    wanted[lot.nextInt(wanted.length)] += lot.nextDouble(-NEAR, NEAR);
    decisions.queueBy(wanted);
  }

  private static Event read(Path file) throws IOException {
    return switch (ProblemFile.read(file, Path.of("").toAbsolutePath(), null)) {
      case Reading.Understood<Event>(var event, var sources, var notes) -> event;
      case Reading.Mistaken<Event>(var mistakes) -> throw new IllegalArgumentException(mistakes.toString());
    };
  }
}
