package ovenloom.cli.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.io.text.ICalReader;
import biweekly.property.Status;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A calendar file as another library than the one that wrote it reads it; one that it has no fault to find with. */
public final class ReadBack {

  private final ICalendar calendar;

  private ReadBack(ICalendar calendar) {
    this.calendar = calendar;
  }

  /**
   * Of its text, with zones as this machine knows them: how the file itself has them is read by few, and this reader is an hour off
   * where the clocks change.
   */
  public static ReadBack of(String text) {
    assertThat(read(text, 0).getTimezoneInfo().getComponents())
        .hasSize(text.contains("BEGIN:VTIMEZONE") ? 1 : 0);
    int zones = text.contains(";TZID=") ? 1 : 0;
    ICalendar calendar = read(text.replaceAll("(?s)BEGIN:VTIMEZONE.*END:VTIMEZONE\r\n", ""), zones);
    assertThat(calendar.validate(ICalVersion.V2_0)).isEmpty();
    return new ReadBack(calendar);
  }

  /** It is told where a zone is not in the file. */
  private static ICalendar read(String text, int unknownZones) {
    try (ICalReader reader = new ICalReader(text)) {
      ICalendar calendar = reader.readNext();
      assertThat(reader.getWarnings()).hasSize(unknownZones);
      return calendar;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** All that are to be, by their names. */
  public Map<String, VEvent> events() {
    return over(Map.of());
  }

  /** What is in a calendar that these were in before, once this is taken into it. */
  public Map<String, VEvent> over(Map<String, VEvent> before) {
    Map<String, VEvent> all = new LinkedHashMap<>(before);
    for (VEvent event : calendar.getEvents()) {
      String uid = event.getUid().getValue();
      Status status = event.getStatus();
      if (status.isCancelled()) {
        all.remove(uid);
      } else {
        all.put(uid, event);
      }
    }
    return all;
  }

  /** Those that are called off as well. */
  public List<String> uids() {
    return calendar.getEvents().stream().map(event -> event.getUid().getValue()).toList();
  }

  static List<Instant> when(VEvent event) {
    return List.of(event.getDateStart().getValue().toInstant(), event.getDateEnd().getValue().toInstant());
  }

  int sequence() {
    return calendar.getEvents().getFirst().getSequence().getValue();
  }
}
