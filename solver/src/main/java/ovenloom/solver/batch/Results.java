package ovenloom.solver.batch;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedReader;
import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
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

  private final Path path;
  private final FileChannel file;
  private final FileLock lock;

  /** Where in the file the line of each run begins. */
  private final Map<String, Long> done = new HashMap<>();
  private long end;

  private Results(Path path, FileChannel file, FileLock lock) {
    this.path = path;
    this.file = file;
    this.lock = lock;
  }

  /** Somebody else writes here. */
  public static final class InUse extends IOException {
    private static final long serialVersionUID = 1;

    InUse(Path path) {
      super(path + " is in use by another batch");
    }
  }

  /**
   * Opens the results in a file, which is made where there is none.
   *
   * @throws InUse where another batch has it open
   * @throws IOException where it cannot be read or written, or holds a line that is no result
   */
  public static Results in(Path path) throws IOException {
    FileChannel file = FileChannel.open(path, StandardOpenOption.CREATE, StandardOpenOption.READ,
        StandardOpenOption.WRITE);
    try {
      FileLock lock = lock(file);
      if (lock == null) {
        throw new InUse(path);
      }
      Results results = new Results(path, file, lock);
      results.cutOffHalfALine();
      // Not through the path: closing a second channel would give the lock away (fcntl).
      each(lines(file, 0), path, (result, from) -> results.done.putIfAbsent(result.run(), from));
      return results;
    } catch (IOException | RuntimeException trouble) {
      file.close();
      throw trouble;
    }
  }

  private static @Nullable FileLock lock(FileChannel file) throws IOException {
    try {
      return file.tryLock();
    } catch (OverlappingFileLockException heldHere) {
      return null;
    }
  }

  /**
   * Reads the results in a file one by one; not of one that is open here, which would then be locked no longer.
   *
   * @throws IOException where it cannot be read, or holds a line that is no result
   */
  public static void each(Path path, Consumer<Result> then) throws IOException {
    try (BufferedReader lines = Files.newBufferedReader(path)) {
      each(lines, path, (result, from) -> then.accept(result));
    } catch (UncheckedIOException trouble) {
      throw trouble.getCause();
    }
  }

  /** With where each begins, in bytes. */
  private static void each(BufferedReader lines, Path path, BiConsumer<Result, Long> then)
      throws IOException {
    int number = 1;
    long from = 0;
    for (String line = lines.readLine(); line != null; line = lines.readLine()) {
      Result result = ResultLine.read(line);
      if (result == null) {
        throw new IOException("line " + number + " of " + path + " is no result");
      }
      then.accept(result, from);
      from += line.getBytes(UTF_8).length + 1;
      number++;
    }
  }

  private static BufferedReader lines(FileChannel file, long from) throws IOException {
    return new BufferedReader(Channels.newReader(file.position(from), UTF_8));
  }

  private void cutOffHalfALine() throws IOException {
    end = 0;
    long at = 0;
    ByteBuffer some = ByteBuffer.allocate(1 << 16);
    while (file.read(some, at) > 0) {
      for (int i = 0; i < some.position(); i++) {
        end = some.get(i) == '\n' ? at + i + 1 : end;
      }
      at += some.position();
      some.clear();
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
   * @throws IOException where it cannot be read, or is no longer there
   */
  public synchronized @Nullable Result of(String run) throws IOException {
    Long from = done.get(run);
    if (from == null) {
      return null;
    }
    String line = lines(file, from).readLine();
    Result result = line == null ? null : ResultLine.read(line);
    if (result == null || !result.run().equals(run)) {
      throw new IOException(path + " was changed by somebody else");
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
    long from = end;
    try {
      while (line.hasRemaining()) {
        end += file.write(line, end);
      }
      file.force(false);
      done.put(result.run(), from);
    } catch (IOException noRoom) {
      end = from;
      file.truncate(end);
      throw noRoom;
    }
  }

  @Override
  public synchronized void close() throws IOException {
    lock.release();
    file.close();
  }
}
