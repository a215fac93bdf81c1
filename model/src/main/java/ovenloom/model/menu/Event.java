package ovenloom.model.menu;

import java.util.List;
import java.util.NoSuchElementException;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.measure.Calendar;
import ovenloom.model.safety.Profile;

/**
 * Everything that is known before planning: the menu, the guests, the kitchen, the cooks. Every name in it is one that
 * stands elsewhere in it, and every default has been filled in.
 *
 * @param rules the safety profile asked for; absent: the strictest of each
 * @param calendar turns minutes into dates; minute 0 is the midnight that begins <em>the day</em>, the first course's
 * @param from the first minute of the plan's calendar
 * @param clock minutes; the search prefers starts on its multiples
 * @param apart pairs of tags that never share an oven
 */
public record Event(
    String name,
    @Nullable Profile rules,
    int guests,
    Calendar calendar,
    int from,
    int clock,
    List<Course> courses,
    Kitchen kitchen,
    List<Cook> cooks,
    List<Dish> dishes,
    List<Apart> apart,
    Wishes wishes) {

  /** Two food tags that do not share an oven. */
  public record Apart(String one, String other) {}

  /** The clock where a file does not say, minutes. */
  public static final int CLOCK = 5;

  public Event {
    courses = List.copyOf(courses);
    cooks = List.copyOf(cooks);
    dishes = List.copyOf(dishes);
    apart = List.copyOf(apart);
  }

  /** The same, in another kitchen. */
  public Event with(Kitchen other) {
    return new Event(name, rules, guests, calendar, from, clock, courses, other, cooks, dishes, apart,
        wishes);
  }

  /** The same, with one dish done otherwise. */
  public Event with(Dish dish, Dish instead) {
    List<Dish> others = dishes.stream().map(each -> each.equals(dish) ? instead : each).toList();
    return new Event(name, rules, guests, calendar, from, clock, courses, kitchen, cooks, others, apart,
        wishes);
  }

  /** The course a dish belongs to. */
  public Course courseOf(Dish dish) {
    for (Course course : courses) {
      if (course.name().equals(dish.course())) {
        return course;
      }
    }
    throw new NoSuchElementException(dish.course());
  }

  public Dish dish(String name) {
    return dishes.stream().filter(dish -> dish.name().equals(name)).findFirst().orElseThrow();
  }

  /** Minutes from the table time over which a dish is served. */
  public int servedOver(Dish dish) {
    Integer own = dish.servedOver();
    return own != null ? own : courseOf(dish).servedOver();
  }

  /** When a dish's service ends. */
  public int endOfService(Dish dish) {
    return courseOf(dish).at() + servedOver(dish);
  }

  /** The end of service, of all courses and dishes; the calendar ends here. */
  public int to() {
    int last = courses.stream().mapToInt(course -> course.at() + course.servedOver()).max().orElseThrow();
    return Math.max(last, dishes.stream().mapToInt(this::endOfService).max().orElse(last));
  }

  /**
   * When a batch must be at the table: its course's table time, or for a dish that comes in waves a share of the
   * service later.
   *
   * @param batch from 1
   */
  public int due(Dish dish, int batch) {
    int wait = dish.waves() ? servedOver(dish) * (batch - 1) / dish.batches() : 0;
    return courseOf(dish).at() + wait;
  }
}
