package ovenloom.cli.command;

import java.io.PrintWriter;
import java.util.List;
import ovenloom.cli.sheet.Harmless;
import ovenloom.model.file.Mistake;
import ovenloom.model.file.MistakeText;

/** What is no mistake in a file, and yet worth a look. */
final class Notes {

  private Notes() {}

  /** Prints nothing where there is nothing to note. */
  static void print(PrintWriter to, List<Mistake> notes) {
    if (!notes.isEmpty()) {
      to.print(Harmless.text("Worth a look:\n" + MistakeText.of(notes)));
    }
  }
}
