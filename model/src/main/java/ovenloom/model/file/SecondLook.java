package ovenloom.model.file;

import ovenloom.model.check.Checks;
import ovenloom.model.check.Finding;
import ovenloom.model.menu.Event;

/** Looks at an event that was read for what makes it impossible, and shows it at its place. */
final class SecondLook {

  private SecondLook() {}

  /**
   * Of an event with mistakes in it only what they leave sound is looked at. Notes are shown of what was written word for
   * word, not of what it was taken to mean.
   */
  static void at(Event event, Desk desk, Place otherwise) {
    for (Finding finding : Checks.of(event, desk.register().sound())) {
      boolean told = finding.fatal() || desk.register().isWritten(finding.subject());
      if (told && !desk.register().isSpoilt(finding.subject())) {
        Place place = desk.register().place(finding.subject());
        Mistakes kind = finding.fatal() ? desk.mistakes() : desk.notes();
        kind.add(place == null ? otherwise : place, new Fault.Impossible(finding.trouble()));
      }
    }
  }
}
