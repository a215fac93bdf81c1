package ovenloom.model.file;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.menu.Event;

/** An event as people write it by hand, in YAML or JSON. */
public final class ProblemFile {

  private ProblemFile() {}

  /** Writes an event as YAML that reads as the same event, whoever reads it. */
  public static String yaml(Event event) {
    return YamlText.of(EventWriter.draft(event));
  }

  /** Writes an event as JSON that reads as the same event. */
  public static String json(Event event) {
    return JsonText.of(EventWriter.draft(event));
  }

  /**
   * Reads an event and the files it names.
   *
   * @param file the first file; it is called in messages as it is here
   * @param root the folder that every file must be in, links followed
   * @param guests how many guests, instead of what the file says; null: as the file says
   * @return the event with every default filled in, or every mistake that was found. A file that is missing, too large or
   *     outside the folder is a mistake like any other.
   */
  public static Reading<Event> read(Path file, Path root, @Nullable Integer guests) {
    Desk desk = new Desk();
    Folder folder;
    try {
      folder = new Folder(root, Limits.PROBLEM);
    } catch (IOException e) {
      Place place = new Place(file.toString(), 1, 1, "", 1);
      return new Reading.Mistaken<>(
          List.of(new Mistake(place, new Fault.NoSuchFile(root.toString(), Fault.Obstacle.MISSING))));
    }
    Includes includes = new Includes(folder, desk);
    Written written = includes.first(file, Limits.PROBLEM);
    return written == null ? new Reading.Mistaken<>(desk.mistakes().all())
        : event(written, desk, includes, guests);
  }

  /** The event that is written, or every mistake. */
  static Reading<Event> event(Written written, Desk desk, Includes includes, @Nullable Integer guests) {
    Event event = new EventReader(desk, includes).event(written, guests);
    if (event != null) {
      event = ChillReader.chosen(event, desk, written.place());
      SecondLook.at(event, desk, written.place());
    }
    return event == null || !desk.mistakes().none() ? new Reading.Mistaken<>(desk.mistakes().all())
        : new Reading.Understood<>(event, includes.sources(), desk.notes().all());
  }
}
