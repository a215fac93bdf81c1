package ovenloom.model.audit;

import java.util.List;
import java.util.stream.Stream;
import ovenloom.model.life.Cards;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Work;
import ovenloom.model.plan.Plan;

/** The rules of the kitchen, in the order of docs/rules, held against a plan. */
public final class Audit {

  static final List<KitchenRule> OF_THE_TIMETABLE = List.of(
      new EverythingOnce(),
      new InTheCalendar(),
      new OnTime(),
      new BatchesInOrder(),
      new Links(),
      new Stays(),
      new Keeping(),
      new DaysKept(),
      new CleanVessels(),
      new SetPoints(),
      new OneDial(),
      new WarmingAndCooling(),
      new RoomInside(),
      new TagsApart(),
      new TheDoor(),
      new Burners(),
      new Appliances(),
      new Landing(),
      new Circuits(),
      new Open(),
      new Hands(),
      new OneThingAtATime(),
      new SomeoneThere(),
      new Shelves(),
      new RawBelow(),
      new AllergensApart(),
      new Scored());

  /** Only food of a plan that keeps all the others can be followed through the kitchen, to see how warm it is. */
  private static final List<KitchenRule> OF_HEAT = List.of(new LongEnough(), new Safe(), new WarmLoad());

  /** All of them. */
  public static final List<KitchenRule> RULES = Stream.concat(OF_THE_TIMETABLE.stream(), OF_HEAT.stream())
      .toList();

  private Audit() {}

  /** Every break of every rule, with those of heat where no other is broken; none for a plan. */
  public static List<Break> of(Event event, Plan plan) {
    return of(plan, new Cards(Work.of(event)));
  }

  /** The same, for many plans of one event. */
  public static List<Break> of(Plan plan, Cards cards) {
    Case audited = new Case(cards, plan);
    List<Break> breaks = breaks(OF_THE_TIMETABLE, audited);
    return breaks.isEmpty() ? breaks(OF_HEAT, audited) : breaks;
  }

  private static List<Break> breaks(List<KitchenRule> rules, Case audited) {
    return rules.stream().flatMap(rule -> rule.check(audited).stream()).toList();
  }
}
