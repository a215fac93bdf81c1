package ovenloom.model.audit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.measure.Calendar;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Course;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Wish;
import ovenloom.model.menu.Wishes;
import ovenloom.model.safety.Profile;

/**
 * Events for tests: supper for ten at 19:00 (minute 1140) on a Saturday, served over ten minutes, in the home kitchen,
 * cooked by "Host" from 8:00 to 22:00 on the day; the calendar begins two days before at 8:00.
 */
public final class Events {

  private static final LocalDate SATURDAY = LocalDate.of(2026, 10, 10);

  private Kitchens kitchen = Kitchens.aHomeKitchen();
  private int from = Clock.daysBefore(2, "8:00");
  private final List<Course> courses = new ArrayList<>(List.of(new Course("supper", Clock.at("19:00"), 10)));
  private final List<Cook> cooks = new ArrayList<>(List.of(aCook("Host", Clock.between("8:00", "22:00"))));
  private final List<Dishes> dishes = new ArrayList<>();
  private final List<Event.Apart> apart = new ArrayList<>();
  private Wishes wishes = Wishes.EVEN;
  private @Nullable Profile rules;

  private Events() {}

  /** These dishes, in this order, and nothing else. */
  public static Events aSupperOf(Dishes... dishes) {
    Events event = new Events();
    event.dishes.addAll(Arrays.asList(dishes));
    return event;
  }

  /** Someone without skills who takes no break. */
  public static Cook aCook(String name, Stretch... hours) {
    return new Cook(name, List.of(hours), List.of(), Set.of());
  }

  public Events in(Kitchens wanted) {
    kitchen = wanted;
    return this;
  }

  public Events rules(String profile) {
    rules = Profile.read(profile);
    return this;
  }

  public Events from(int minute) {
    from = minute;
    return this;
  }

  /** Beside supper, or instead of it where it is called that. */
  public Events course(String name, int at, int servedOver) {
    courses.removeIf(course -> course.name().equals(name));
    courses.add(new Course(name, at, servedOver));
    return this;
  }

  /** Instead of the host. */
  public Events cooks(Cook... all) {
    cooks.clear();
    cooks.addAll(Arrays.asList(all));
    return this;
  }

  public Events apart(String one, String other) {
    apart.add(new Event.Apart(one, other));
    return this;
  }

  public Events wish(Wish wish, int weight) {
    Map<Wish, Integer> weights = new EnumMap<>(wishes.weights());
    weights.put(wish, weight);
    wishes = new Wishes(weights);
    return this;
  }

  public Event event() {
    return new Event("supper", rules, 10, new Calendar(SATURDAY, null), from, Event.CLOCK, courses,
        kitchen.kitchen(), cooks, dishes.stream().map(Dishes::dish).toList(), apart, wishes);
  }
}
