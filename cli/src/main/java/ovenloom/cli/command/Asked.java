package ovenloom.cli.command;

import java.util.List;

/** What some typed words ask for, once they are held against a plan. */
sealed interface Asked<T> {

  record For<T>(T value) implements Asked<T> {}

  /**
   * The plan has nothing of the kind.
   *
   * @param lines what to say
   */
  record Wrong<T>(List<String> lines) implements Asked<T> {
    public Wrong {
      lines = List.copyOf(lines);
    }
  }
}
