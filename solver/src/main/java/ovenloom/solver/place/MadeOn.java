package ovenloom.solver.place;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import ovenloom.model.kitchen.Store;
import ovenloom.model.life.Cards;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Keeps;
import ovenloom.model.menu.Need;
import ovenloom.model.menu.StartState;
import ovenloom.model.menu.Work;
import ovenloom.model.safety.Perishable;
import ovenloom.model.safety.Profile;

/** Before which minute a step may not begin, since what it makes would be eaten on too late a day. */
final class MadeOn {

  /** Any minute. */
  static final int ANY_DAY = Integer.MIN_VALUE;

  private final Event event;
  private final Cards cards;
  private final Work work;
  private final OptionalInt days;
  private final Set<String> freezers;
  private final boolean[] raw;
  private final boolean[] cooked;
  private final int[] anyway;
  private final int[] ifRaw;
  private final int[] ifCooked;

  MadeOn(Cards cards) {
    this.cards = cards;
    work = cards.work();
    event = work.event();
    days = Profile.of(event.rules()).days().stream().mapToInt(Profile.Days::most).min();
    freezers = event.kitchen()
        .stores()
        .stream()
        .filter(store -> store.kind() == Store.Kind.FREEZER)
        .map(Store::name)
        .collect(Collectors.toSet());
    int steps = work.steps().size();
    raw = new boolean[steps];
    cooked = new boolean[steps];
    anyway = anyDay(steps);
    ifRaw = anyDay(steps);
    ifCooked = anyDay(steps);
    if (days.isPresent()) {
      work.steps().forEach(this::cook);
      work.steps().reversed().forEach(this::eat);
    }
  }

  private static int[] anyDay(int steps) {
    int[] any = new int[steps];
    Arrays.fill(any, ANY_DAY);
    return any;
  }

  /** The first minute a step may begin in. */
  int notBefore(int step) {
    if (!work.steps().get(step).dish().food()) {
      return ANY_DAY;
    }
    int raws = raw[step] ? ifRaw[step] : ANY_DAY;
    int cookeds = cooked[step] ? ifCooked[step] : ANY_DAY;
    return Math.max(anyway[step], Math.max(raws, cookeds));
  }

  private void cook(BatchStep step) {
    int i = step.index();
    raw[i] = Perishable.isFromTheStart(step.dish().tags());
    cooked[i] = cards.heats(step);
    for (BatchLink link : work.into(i)) {
      raw[i] |= link.carriesFood() && raw[link.from()];
      cooked[i] |= link.carriesFood() && cooked[link.from()];
    }
  }

  private void eat(BatchStep step) {
    int i = step.index();
    if (mayFreeze(step)) {
      return;
    }
    if (work.goesToTheTable(i)) {
      eat(i, step.dish());
      return;
    }
    for (BatchLink link : work.outOf(i)) {
      if (link.carriesFood()) {
        ifCooked[i] = Math.max(ifCooked[i], ifCooked[link.to()]);
        ifRaw[i] = Math.max(ifRaw[i], ifRaw[link.to()]);
        anyway[i] = Math.max(anyway[i], anyway[link.to()]);
      }
    }
  }

  private void eat(int step, Dish dish) {
    if (!Perishable.isNever(dish.tags())) {
      int first = firstMinute(dish);
      ifRaw[step] = first;
      ifCooked[step] = Perishable.isOnceCooked(dish.matter().kind()) ? first : ANY_DAY;
      anyway[step] = Perishable.isFromTheStart(dish.tags()) ? first : ANY_DAY;
    }
  }

  private int firstMinute(Dish dish) {
    LocalDate eaten = event.calendar().at(event.endOfService(dish)).toLocalDate();
    return event.calendar().minuteOf(eaten.minusDays(days.orElseThrow() - 1L).atStartOfDay());
  }

  /** A freezer stops the count of days. */
  private boolean mayFreeze(BatchStep step) {
    Keeps keeps = step.step().keeps();
    Need.OnShelf shelf = step.step().shelf();
    return step.step().starts() == StartState.FROZEN
        || (keeps != null && keeps.stores().keySet().stream().anyMatch(freezers::contains))
        || (shelf != null && shelf.stores().stream().anyMatch(freezers::contains));
  }
}
