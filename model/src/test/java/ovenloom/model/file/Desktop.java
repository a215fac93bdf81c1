package ovenloom.model.file;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import ovenloom.model.menu.Event;

/** A folder to write problems into and read them from, for tests. */
record Desktop(Path folder) {

  /** A small file that reads; tests add to it or spoil it. */
  static final String SUPPER = """
      ovenloom: 1
      event: Supper
      guests: 4
      courses: [{name: supper, at: 2026-10-10 19:00, served over: 20 min}]
      cooks: [{name: Host, hours: {on the day: 14:00-20:00}}]
      """;

  Desktop put(String file, String text) {
    try {
      Path path = folder.resolve(file);
      Files.createDirectories(path.getParent() == null ? folder : path.getParent());
      Files.writeString(path, text);
      return this;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  Reading<Event> read(String file) {
    return ProblemFile.read(folder.resolve(file), folder, null);
  }

  Event event(String file) {
    return switch (read(file)) {
      case Reading.Understood<Event>(Event event, var sources, var notes) -> event;
      case Reading.Mistaken<Event>(List<Mistake> mistakes) ->
        throw new AssertionError(MistakeText.of(mistakes));
    };
  }

  /** Everything wrong with a file, without its folder; empty where nothing is. */
  String mistakes(String file) {
    return switch (read(file)) {
      case Reading.Understood<Event> fine -> "";
      case Reading.Mistaken<Event>(List<Mistake> mistakes) ->
        MistakeText.of(mistakes).replace(folder + "/", "");
    };
  }

  /** The same of a text. */
  String mistakesIn(String yaml) {
    return put("it.yaml", yaml).mistakes("it.yaml");
  }
}
