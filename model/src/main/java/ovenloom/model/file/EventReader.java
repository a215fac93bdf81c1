package ovenloom.model.file;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import ovenloom.model.check.Part;
import ovenloom.model.check.Subject;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.measure.Calendar;
import ovenloom.model.measure.Parsed;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Course;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Wish;
import ovenloom.model.menu.Wishes;
import ovenloom.model.safety.Profile;

/** Reads a whole event. */
final class EventReader {

  static final Keys EVENT = Keys.of("an event", "ovenloom", "event", "guests", "rules", "zone", "clock",
      "calendar",
      "courses", "kitchen", "cooks", "dishes", "apart", "wishes");
  static final Keys COURSE = Keys.of("a course", "name", "at", "served over");
  static final Keys CALENDAR = Keys.of("the calendar", "from");

  private static final int MOST_COOKS = 100;

  static final String VERSION = "1";
  private static final String OWN_FILE = ".+\\.ya?ml";
  /** So that the rest of a file whose courses are wrong can be read all the same. */
  private static final LocalDate SOME_DAY = LocalDate.of(2000, 1, 1);

  private record Sitting(String name, LocalDateTime at, int servedOver, Place place) {}

  private final Desk desk;
  private final Includes includes;
  private final List<Sitting> sittings = new ArrayList<>();

  EventReader(Desk desk, Includes includes) {
    this.desk = desk;
    this.includes = includes;
  }

  /**
   * The event, or as much of it as was understood; null where that is too little to look at. It is to be used only if there
   * are no mistakes on the desk.
   */
  @Nullable
  Event event(Written written, @Nullable Integer forSoMany) {
    if (desk.isOfAnotherVersion(written, "ovenloom", VERSION)) {
      return null;
    }
    if (written instanceof Written.Keyed keyed && keyed.entry(PlanReader.VERSION_KEY) != null) {
      desk.contradiction(written.place(), "this is a plan and no problem",
          "the problem it was made from; \"show\" prints a plan");
      return null;
    }
    Fields event = desk.fields(written, EVENT);
    event.needed("ovenloom");
    String name = event.takeNeeded("event", desk::name);
    Days days = desk.part(Part.COURSES, () -> days(event));
    Integer guests = desk.part(Part.MENU, () -> guests(event, forSoMany));
    HoursReader hours = new HoursReader(desk, days);
    List<Course> courses = desk.part(Part.COURSES, () -> courses(days.calendar()));
    event.refuseMany("cooks", MOST_COOKS);
    List<Cook> cooks = desk.part(Part.COOKS,
        () -> event.someNeeded("cooks", new CookReader(desk, hours)::cook));
    Kitchen kitchen = desk.part(Part.KITCHEN, () -> kitchen(event, hours));
    List<Dish> dishes = desk.part(Part.MENU, () -> dishes(event, courses, kitchen, guests));
    int from = desk.part(Part.COOKS, () -> from(event, days, cooks));
    spoil(Part.COURSES, courses.isEmpty() || event.isMisspelt("courses", "zone"));
    spoil(Part.COOKS, cooks.isEmpty() || event.isMisspelt("cooks", "calendar"));
    spoil(Part.KITCHEN, event.isMisspelt("kitchen"));
    spoil(Part.MENU, dishes.isEmpty() || courses.isEmpty() || event.isMisspelt("dishes", "guests"));
    if (!event.isWhole()) {
      desk.register().spoilAll();
    }
    int clock = event.read("clock", Scalars::someMinutes, Event.CLOCK);
    int faults = desk.faults();
    Profile rules = event.take("rules", this::rules);
    spoil(Part.RULES, desk.faults() > faults || event.isMisspelt("rules"));
    List<Event.Apart> apart = event.each("apart", this::apart);
    Wishes wishes = event.take("wishes", this::wishes);
    return new Event(name == null ? "" : name, rules, guests, days.calendar(), from, clock, courses, kitchen,
        cooks, dishes,
        apart, wishes == null ? Wishes.EVEN : wishes);
  }

  private void spoil(Part part, boolean unsound) {
    if (unsound) {
      desk.register().spoil(part);
    }
  }

  private Days days(Fields event) {
    ZoneId zone = event.read("zone", Days::zone);
    sittings.addAll(event.someNeeded("courses", this::sitting));
    return new Days(new Calendar(day(sittings), zone));
  }

  private static int guests(Fields event, @Nullable Integer forSoMany) {
    Integer written = forSoMany == null ? event.needed("guests", Scalars::count)
        : event.read("guests", Scalars::count);
    Integer guests = forSoMany == null ? written : forSoMany;
    return guests == null ? 1 : guests;
  }

  private Kitchen kitchen(Fields event, HoursReader hours) {
    Written place = event.value("kitchen");
    if (place == null) {
      desk.names().areThoseOfAHome();
    }
    return new KitchenReader(desk, hours).kitchen(place == null ? includes.home() : includes.kitchen(place));
  }

  private List<Dish> dishes(Fields event, List<Course> courses, Kitchen kitchen, int guests) {
    Written written = event.needed("dishes");
    event.refuseEmpty("dishes");
    List<Written> all = written == null ? List.of()
        : desk.items(written).stream().map(includes::dish).toList();
    List<Dish> dishes = new DishReader(desk, courses, kitchen, guests).dishes(all);
    Fault tooMuch = Extent.tooMuch(dishes);
    if (tooMuch != null) {
      desk.mistake(event.placeOf("dishes"), tooMuch);
      desk.register().spoilAll();
    }
    return dishes;
  }

  /** One of those in the house by its name, or one's own: in a file beside this one, or here. */
  private @Nullable Profile rules(Written written) {
    if (written instanceof Written.Words words && words.text().matches(OWN_FILE)) {
      Written own = includes.beside(words);
      return own == null ? null : new RulesReader(desk).profile(own, words.text());
    }
    return written instanceof Written.Keyed ? new RulesReader(desk).profile(written, "in the problem file")
        : desk.read(written, EventReader::named);
  }

  private static Parsed<Profile> named(String text) {
    return Profile.NAMES.contains(text) ? new Parsed.Good<>(Profile.read(text))
        : Scalars.oneOfThese(text, Profile.NAMES.stream().sorted().toList());
  }

  private @Nullable Sitting sitting(Written written) {
    Fields course = desk.fields(written, COURSE);
    String name = course.takeNeeded("name", named -> desk.newName(named, Names.Kind.COURSE));
    LocalDateTime at = course.needed("at", Days::moment);
    int servedOver = course.read("served over", Scalars::minutes, 0);
    if (name == null || at == null) {
      return null;
    }
    course.standFor(Subject.course(name), "name");
    return new Sitting(name, at, servedOver, course.placeOf("at"));
  }

  private static LocalDate day(List<Sitting> sittings) {
    return sittings.stream()
        .map(Sitting::at)
        .min(Comparator.naturalOrder())
        .map(LocalDateTime::toLocalDate)
        .orElse(SOME_DAY);
  }

  private List<Course> courses(Calendar calendar) {
    List<Course> courses = new ArrayList<>();
    for (Sitting sitting : sittings) {
      if (sitting.at().toLocalDate().isAfter(calendar.day().plusDays(Days.FARTHEST))) {
        desk.contradiction(sitting.place(),
            "this course is more than " + Days.FARTHEST + " days after the first",
            "courses of one event");
      } else {
        courses.add(new Course(sitting.name(), calendar.minuteOf(sitting.at()), sitting.servedOver()));
      }
    }
    return courses;
  }

  /** The first hour of any cook, unless the file says. */
  private int from(Fields event, Days days, List<Cook> cooks) {
    Written calendar = event.value("calendar");
    Integer written = calendar == null ? null : desk.fields(calendar, CALENDAR).needed("from", days::minute);
    return written != null ? written
        : cooks.stream().flatMap(cook -> cook.hours().stream()).mapToInt(Stretch::from).min().orElse(0);
  }

  private Event.@Nullable Apart apart(Written written) {
    List<String> tags = desk.each(written, desk::name);
    if (tags.size() != 2) {
      desk.contradiction(written.place(), "a list of " + tags.size() + " is no pair",
          "two tags, like \"[fish, pastry]\"");
      return null;
    }
    return new Event.Apart(tags.getFirst().toLowerCase(Locale.ROOT),
        tags.getLast().toLowerCase(Locale.ROOT));
  }

  private Wishes wishes(Written written) {
    Map<Wish, Integer> weights = new EnumMap<>(Wish.class);
    List<Written.Entry> all = new ArrayList<>(desk.entries(written, "wishes", "calm: 3"));
    for (Written.Entry entry : all) {
      Wish wish = desk.read(entry.key(), Scalars.oneOf(Wish.class));
      Integer weight = desk.read(entry.value(), EventReader::weight);
      if (wish != null && weight != null) {
        weights.put(wish, weight);
      }
    }
    return new Wishes(weights);
  }

  private static Parsed<Integer> weight(String text) {
    return Scalars.checked(Scalars.countOrNone(text), text, n -> n <= 10 ? n : null, "a weight from 0 to 10");
  }
}
