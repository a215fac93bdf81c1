package ovenloom.model.file;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.apache.commons.numbers.fraction.Fraction;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.measure.Quantity;
import ovenloom.model.measure.Unit;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Step;
import ovenloom.model.menu.Wish;
import ovenloom.model.safety.Profile;

/** Writes an event so that reading it gives the same event. */
final class EventWriter {

  private final Event event;
  private final HoursWriter hours;

  private EventWriter(Event event) {
    this.event = event;
    this.hours = new HoursWriter(event.calendar());
  }

  static Draft.Card draft(Event event) {
    return new EventWriter(event).draft();
  }

  private Draft.Card draft() {
    Draft.Card wishes = new Draft.Card();
    for (Wish wish : Wish.values()) {
      wishes.sayUnless(1, Scalars.word(wish), event.wishes().weight(wish), String::valueOf);
    }
    Draft.Card card = new Draft.Card()
        .say("ovenloom", EventReader.VERSION)
        .say("event", event.name())
        .say("guests", Integer.toString(event.guests()));
    Profile rules = event.rules();
    if (rules != null) {
      card.say("rules", RulesWriter.draft(rules));
    }
    return card
        .say("zone", event.calendar().zone() == null ? null : String.valueOf(event.calendar().zone()))
        .say("clock", Times.written(event.clock()))
        .say("calendar", new Draft.Card().say("from", hours.moment(event.from())))
        .each("courses", event.courses(), course -> new Draft.Card()
            .say("name", course.name())
            .say("at", hours.moment(course.at()))
            .sayUnless(0, "served over", course.servedOver(), Times::written))
        .say("kitchen", new KitchenWriter(hours).kitchen(event.kitchen()))
        .say("cooks", Draft.Items.of(event.cooks(), this::cook))
        .say("dishes", Draft.Items.of(event.dishes(), this::dish))
        .each("apart", event.apart(), pair -> Draft.Items.texts(List.of(pair.one(), pair.other())))
        .sayAny("wishes", wishes);
  }

  private Draft cook(Cook cook) {
    Draft.Card card = new Draft.Card().say("name", cook.name()).say("hours", hours.hours(cook.hours()));
    if (!cook.breaks().isEmpty()) {
      card.say("breaks", hours.hours(cook.breaks()));
    }
    return card.some("skills", List.copyOf(cook.skills()));
  }

  private Draft dish(Dish dish) {
    Dish.Servings servings = dish.servings();
    Draft.Card card = new Draft.Card()
        .say("dish", dish.name())
        .say("course", dish.course());
    if (!dish.food()) {
      card.say("food", "no");
    }
    card.sayUnless(event.guests(), "for", servings.guests(), String::valueOf)
        .sayUnless(Fraction.ONE, "portions a guest", servings.aGuest(), EventWriter::written)
        .sayUnless(0, "spare", servings.sparePercent(), n -> n + " %")
        .say("portions", number(servings.aBatch()))
        .say("arrives", Scalars.word(dish.arrives()))
        .some("tags", dish.tags())
        .yes("waves", dish.waves())
        .say("served over", Times.orAbsent(dish.servedOver()))
        .say("best for", Times.orAbsent(dish.bestFor()));
    MatterWriter.say(card, dish.matter());
    if (!dish.ingredients().isEmpty()) {
      Draft.Card ingredients = new Draft.Card();
      dish.ingredients().forEach((name, quantity) -> ingredients.say(name, quantity.written()));
      card.say("ingredients", ingredients);
    }
    return card.say("steps", new Draft.Items(steps(dish)));
  }

  private List<Draft> steps(Dish dish) {
    StepWriter writer = new StepWriter(event.kitchen(), dish);
    List<Draft> steps = new ArrayList<>();
    Step before = null;
    for (Step step : dish.steps()) {
      steps.add(writer.step(step, before));
      before = step;
    }
    return steps;
  }

  private static String written(Fraction portions) {
    return new Quantity(BigFraction.of(portions.getNumerator(), portions.getDenominator()), Unit.PIECE)
        .written();
  }

  private static @Nullable String number(@Nullable Integer number) {
    return number == null ? null : number.toString();
  }
}
