package ovenloom.solver.batch;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedInputStream;
import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashMap;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import ovenloom.model.file.ResultLine;
import ovenloom.model.variation.Result;

/**
 * The results of a batch as they come, a line each. A line is there whole or not at all: half a line, left by whoever was killed while
 * writing it, is cut off when the file is opened, and one that no longer fits on the disk at once.
 */
public final class Results implements Closeable {

  /** With this every line begins. */
  private static final String BEGINNING = "{\"run\":\"";

  private final Path path;
  private final FileChannel file;
  private final FileChannel lock;

  /** Where in the file the line of each run begins. */
  private final Map<String, Long> done = new HashMap<>();
  private long end;

  private Results(Path path, FileChannel file, FileChannel lock) {
    this.path = path;
    this.file = file;
    this.lock = lock;
  }

  /** Somebody else writes here, or wrote what is no result: nothing was changed. */
  public static final class NotOurs extends IOException {
    private static final long serialVersionUID = 1;

    NotOurs(String why) {
      super(why);
    }
  }

  /**
   * Opens the results in a file, which is made where there is none. What keeps others away is a file of its own beside it: a lock is lost
   * as soon as its file is opened once more and closed.
   *
   * @throws NotOurs where another batch has it open, or it holds a line that is no result
   * @throws IOException where it cannot be read or written
   */
  public static Results in(Path path) throws IOException {
    FileChannel lock = opened(path.resolveSibling(path.getFileName() + ".lock"));
    try {
      if (!isOurs(lock)) {
        throw new NotOurs(path + " is in use by another batch");
      }
      Results results = new Results(path, opened(path), lock);
      results.end = wholeLines(path, (result, from) -> results.done.putIfAbsent(result.run(), from));
      results.cutOffHalfALine(path);
      return results;
    } catch (IOException | RuntimeException trouble) {
      lock.close();
      throw trouble;
    }
  }

  private static FileChannel opened(Path path) throws IOException {
    return FileChannel.open(path, StandardOpenOption.CREATE, StandardOpenOption.READ,
        StandardOpenOption.WRITE);
  }

  private static boolean isOurs(FileChannel lock) throws IOException {
    try {
      return lock.tryLock() != null;
    } catch (OverlappingFileLockException heldHere) {
      return false;
    }
  }

  /**
   * Reads the results in a file one by one; half a line at its end is none.
   *
   * @throws NotOurs where it holds a line that is no result
   * @throws IOException where it cannot be read
   */
  public static void each(Path path, Consumer<Result> then) throws IOException {
    wholeLines(path, (result, from) -> then.accept(result));
  }

  /** Where they end. */
  private static long wholeLines(Path path, BiConsumer<Result, Long> then) throws IOException {
    long end = 0;
    int number = 0;
    try (InputStream in = new BufferedInputStream(Files.newInputStream(path))) {
      ByteArrayOutputStream line = new ByteArrayOutputStream();
      for (int next = in.read(); next >= 0; next = in.read()) {
        if (next != '\n') {
          line.write(next);
          continue;
        }
        number++;
        Result result = ResultLine.read(line.toString(UTF_8));
        if (result == null) {
          throw new NotOurs("line " + number + " of " + path + " is no result");
        }
        then.accept(result, end);
        end += line.size() + 1;
        line.reset();
      }
    }
    return end;
  }

  private void cutOffHalfALine(Path path) throws IOException {
    ByteBuffer half = ByteBuffer.allocate((int) Math.min(BEGINNING.length(), file.size() - end));
    file.read(half, end);
    if (!BEGINNING.startsWith(UTF_8.decode(half.flip()).toString())) {
      throw new NotOurs("the last line of " + path + " is no result");
    }
    file.truncate(end);
  }

  /** Whether a run has its result here. */
  public synchronized boolean has(String run) {
    return done.containsKey(run);
  }

  /**
   * The result of a run, read where it lies; null where there is none.
   *
   * @throws NotOurs where somebody has changed the file
   * @throws IOException where it cannot be read
   */
  public synchronized @Nullable Result of(String run) throws IOException {
    Long from = done.get(run);
    if (from == null) {
      return null;
    }
    String line = new BufferedReader(Channels.newReader(file.position(from), UTF_8)).readLine();
    Result result = line == null ? null : ResultLine.read(line);
    if (result == null || !result.run().equals(run)) {
      throw new NotOurs(path + " was changed by somebody else");
    }
    return result;
  }

  /** How many there are. */
  public synchronized int count() {
    return done.size();
  }

  /**
   * Writes one down for good; one that is there already is not written again.
   *
   * @throws IOException where it cannot be written, for want of room, say; then nothing of it is there
   */
  public synchronized void add(Result result) throws IOException {
    if (has(result.run())) {
      return;
    }
    ByteBuffer line = UTF_8.encode(ResultLine.json(result) + "\n");
    try {
      long at = end;
      while (line.hasRemaining()) {
        at += file.write(line, at);
      }
      file.force(false);
      done.put(result.run(), end);
      end = at;
    } catch (IOException noRoom) {
      file.truncate(end);
      throw noRoom;
    }
  }

  @Override
  public synchronized void close() throws IOException {
    file.close();
    lock.close();
  }
}
