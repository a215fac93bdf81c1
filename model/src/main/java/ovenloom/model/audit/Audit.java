package ovenloom.model.audit;

import java.util.List;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Plan;

/** The rules of the kitchen, in the order of docs/rules, held against a plan. */
public final class Audit {

  /** All of them. */
  public static final List<KitchenRule> RULES = List.of(
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
      new Scored());

  private Audit() {}

  /** Every break of every rule; none for a plan. */
  public static List<Break> of(Event event, Plan plan) {
    Case audited = Case.of(event, plan);
    return RULES.stream().flatMap(rule -> rule.check(audited).stream()).toList();
  }
}
