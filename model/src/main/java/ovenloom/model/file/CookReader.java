package ovenloom.model.file;

import java.util.HashSet;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.check.Subject;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.measure.Stretch;

/** Reads someone who works in the kitchen. */
final class CookReader {

  static final Keys COOK = Keys.of("a cook", "name", "hours", "breaks", "skills");

  private final Desk desk;
  private final HoursReader hours;

  CookReader(Desk desk, HoursReader hours) {
    this.desk = desk;
    this.hours = hours;
  }

  @Nullable
  Cook cook(Written written) {
    Fields cook = desk.fields(written, COOK);
    String name = cook.takeNeeded("name", named -> desk.newName(named, Names.Kind.COOK));
    Written there = cook.needed("hours");
    List<Stretch> stretches = there == null ? List.of() : hours.hours(there);
    Written away = cook.value("breaks");
    List<Stretch> breaks = away == null ? List.of() : hours.hours(away);
    List<String> skills = cook.each("skills", desk::name);
    skills.forEach(skill -> desk.names().add(Names.Kind.SKILL, skill));
    if (name != null) {
      cook.standFor(Subject.cook(name), "name");
    }
    return name == null ? null : new Cook(name, stretches, breaks, new HashSet<>(skills));
  }
}
