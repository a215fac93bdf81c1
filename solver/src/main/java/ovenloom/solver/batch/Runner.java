package ovenloom.solver.batch;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Semaphore;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BooleanSupplier;
import java.util.function.LongFunction;
import org.jspecify.annotations.Nullable;
import ovenloom.model.variation.Result;

/**
 * Does runs side by side, one a core, and writes each result down as it comes. Of runs, only those that are being done are in memory, and the
 * next one; of the others, their names.
 */
public final class Runner {

  private final Results results;
  private final int cores;
  private final Doing doing;
  private final Progress progress;
  private final BooleanSupplier stop;
  private final List<String> asked = new ArrayList<>();
  private final AtomicLong done = new AtomicLong();
  private final AtomicReference<@Nullable Throwable> trouble = new AtomicReference<>();

  /** Does a run; null where it was stopped on the way, so that there is no result. */
  @FunctionalInterface
  public interface Doing {
    @Nullable
    Result of(Run run) throws IOException;
  }

  /** Told of each run that has its result, also of those that had it before; by one thread at a time. */
  @FunctionalInterface
  public interface Progress {
    void report(long done, long all, boolean isNew);
  }

  /**
   * One whose results go to a file.
   *
   * @param cores how many runs are done side by side
   */
  public Runner(Results results, int cores, Doing doing, Progress progress, BooleanSupplier stop) {
    this.results = results;
    this.cores = cores;
    this.doing = doing;
    this.progress = progress;
    this.stop = stop;
  }

  /**
   * Does all that have no result yet, in their order, until all are done or somebody says stop.
   *
   * @param run each of them by its number from 0; asked for on this thread, one after the other
   * @throws IOException where something cannot be written; what was written is whole, and the batch can go on later
   */
  public void run(long all, LongFunction<Run> run) throws IOException {
    Semaphore free = new Semaphore(cores);
    try (ExecutorService workers = Executors.newFixedThreadPool(cores)) {
      for (long index = 0; index < all && goesOn(); index++) {
        Run next = run.apply(index);
        String id = next.id();
        asked.add(id);
        if (results.has(id)) {
          tell(all, false);
        } else {
          free.acquireUninterruptibly();
          workers.execute(() -> {
            doAndWrite(next, all);
            free.release();
          });
        }
      }
    }
    rethrow();
  }

  /** What tells the runs that were come to, in their order. */
  public List<String> asked() {
    return Collections.unmodifiableList(asked);
  }

  private boolean goesOn() {
    return !stop.getAsBoolean() && trouble.get() == null;
  }

  private void doAndWrite(Run run, long all) {
    try {
      Result result = goesOn() ? doing.of(run) : null;
      if (result != null) {
        results.add(result);
        tell(all, true);
      }
    } catch (IOException | RuntimeException | Error failed) {
      trouble.compareAndSet(null, failed);
    }
  }

  private synchronized void tell(long all, boolean isNew) {
    progress.report(done.incrementAndGet(), all, isNew);
  }

  private void rethrow() throws IOException {
    switch (trouble.get()) {
      case null -> {
      }
      case IOException cannotWrite -> throw cannotWrite;
      case RuntimeException fault -> throw fault;
      case Error fault -> throw fault;
      case Throwable other -> throw new IllegalStateException(other);
    }
  }
}
