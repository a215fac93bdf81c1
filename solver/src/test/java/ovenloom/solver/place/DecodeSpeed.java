package ovenloom.solver.place;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import ovenloom.solver.bench.PsplibFile;
import ovenloom.solver.bench.Published;

/**
 * Measures schedules a second on PSPLIB j30. In the solver's folder, once its tests are compiled:
 * {@code java -cp target/classes:target/test-classes ovenloom.solver.place.DecodeSpeed}.
 */
public final class DecodeSpeed {

  private static final int ROUNDS = 5;
  private static final int ORDERS = 1000;

  private DecodeSpeed() {}

  public static void main(String[] arguments) {
    List<InnerProblem> problems = new ArrayList<>();
    for (int set = 1; set <= 48; set++) {
      problems.add(PsplibFile.read(Published.linesOutsideATest("rcpsp/j30/j30" + set + "_1.sm")));
    }
    List<InnerDecoder> forward = problems.stream().map(InnerDecoder::forward).toList();
    List<InnerDecoder> backward = problems.stream().map(InnerDecoder::backward).toList();
    for (int round = 0; round < ROUNDS; round++) {
      System.out.printf("forward %,d, ", measure(forward));
      System.out.printf("backward %,d schedules a second%n", measure(backward));
    }
  }

  private static long measure(List<InnerDecoder> decoders) {
    var random = new Random(1);
    List<int[]> orders = new ArrayList<>();
    for (int i = 0; i < ORDERS; i++) {
      orders.add(Orders.shuffled(32, random));
    }
    long sum = 0;
    long started = System.nanoTime();
    for (InnerDecoder decoder : decoders) {
      for (int[] order : orders) {
        sum += decoder.decode(order);
      }
    }
    long nanos = System.nanoTime() - started;
    if (sum <= 0) {
      throw new IllegalStateException("no schedule at all");
    }
    return 1_000_000_000L * ORDERS * decoders.size() / nanos;
  }
}
