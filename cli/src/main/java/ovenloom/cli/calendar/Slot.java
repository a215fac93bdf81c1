package ovenloom.cli.calendar;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import ovenloom.model.menu.Batches;
import ovenloom.model.menu.Event;

/**
 * Which entry one is, in whatever plan of the event: by it a later plan finds those of an earlier one.
 *
 * @param of a dish, a vessel, a course
 * @param step of the dish
 * @param batch the first of those it is for
 * @param number among several, from 1
 */
record Slot(Doing doing, String of, String step, int batch, int number) {

  /** What one is at. */
  enum Doing {
    START, LOAD, WORK, UNLOAD, UNLOAD_LATER, WASH, TABLE, MOMENT
  }

  static Slot of(Doing doing, String dish, String step, Batches batches, int number) {
    return new Slot(doing, dish, step, batches.first(), number);
  }

  static Slot table(String course) {
    return new Slot(Doing.TABLE, course, "", 1, 1);
  }

  static Slot wash(String vessel, int number) {
    return new Slot(Doing.WASH, vessel, "", 1, number);
  }

  static Slot moment(int number) {
    return new Slot(Doing.MOMENT, "", "", 1, number);
  }

  /** The same for the same event, and another for each cook's own calendar, so that one cook's does not touch another's. */
  String uid(Event event, @Nullable String cook) {
    List<Object> parts = List.of(event.name(), event.calendar().day(), cook == null ? "" : cook, doing, of,
        step, batch, number);
    // With its length before each, since a name may hold whatever would stand between two.
    String all = parts.stream()
        .map(Object::toString)
        .map(part -> part.length() + ":" + part)
        .collect(Collectors.joining());
    return UUID.nameUUIDFromBytes(all.getBytes(StandardCharsets.UTF_8)).toString();
  }
}
