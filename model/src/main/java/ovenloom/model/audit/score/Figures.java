package ovenloom.model.audit.score;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.life.Cards;
import ovenloom.model.measure.Stretch;
import ovenloom.model.measure.Stretches;
import ovenloom.model.menu.Work;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Stay;
import ovenloom.model.plan.Where;

/**
 * What people compare of two plans, beside their scores.
 *
 * @param begins the minute at which work begins, on whatever day
 * @param onTheDay the minute of the day at which work begins on it; when work begins, where none is done on the day
 * @param handsOnTheDay minutes of all cooks
 * @param handsInTheLastHour minutes of all cooks in the hour before each course
 * @param hottest the first minute at which most is going on at once
 * @param atOnce how much that is: busy cooks, ovens with food inside and lit burners, counted together
 * @param dialTurns changes of a dial to another mark
 * @param energy tenths of a kilowatt-hour, rounded down
 * @param busy per cent of what there is that is in use in the two hours before each course
 */
public record Figures(
    int begins, int onTheDay, long handsOnTheDay, long handsInTheLastHour, int hottest, int atOnce,
    long dialTurns,
    long energy, Map<Scarce, Integer> busy) {

  /** What may be short. */
  public enum Scarce {
    HANDS,
    OVENS,
    BURNERS
  }

  private static final Stretch THE_DAY = new Stretch(0, 1440);

  public Figures {
    busy = Map.copyOf(busy);
  }

  /** Those of a plan. */
  public static Figures of(Plan plan) {
    Ledger ledger = Ledger.of(new Cards(Work.of(plan.event())), plan);
    Busy hands = Busy.in(ledger);
    Stretches work = hands.anybody();
    int begins = work.isEmpty() ? plan.event().from() : work.parts().getFirst().from();
    Stretches today = work.shared(Stretches.of(THE_DAY));
    int hottest = hottest(plan, hands);
    return new Figures(begins, today.isEmpty() ? begins : today.parts().getFirst().from(),
        hands.cookMinutes(Stretches.of(THE_DAY)), hands.cookMinutes(Calm.beforeCourses(ledger, Calm.LAST)),
        hottest,
        atOnce(plan, hands, hottest), DialTurns.turns(ledger), Energy.points(ledger), busy(ledger, hands));
  }

  /** Minutes of all cooks in the hour before each course, by dish; washing up is nobody's. */
  public static Map<String, Long> lastHourByDish(Plan plan) {
    Ledger ledger = Ledger.of(new Cards(Work.of(plan.event())), plan);
    Map<String, Long> byDish = new TreeMap<>();
    for (Placement run : plan.placements()) {
      byDish.merge(run.dish(), Calm.lastMinutes(ledger, run), Long::sum);
    }
    return byDish;
  }

  /** Only where something begins can there be more than before. */
  private static int hottest(Plan plan, Busy hands) {
    TreeSet<Integer> begins = new TreeSet<>();
    hands.byCook().values().forEach(work -> work.parts().forEach(part -> begins.add(part.from())));
    plan.placements().forEach(run -> begins.add(run.when().from()));
    plan.stays().forEach(stay -> stay.parts().forEach(part -> begins.add(part.when().from())));
    int hottest = plan.event().from();
    int most = 0;
    for (int minute : begins) {
      int now = atOnce(plan, hands, minute);
      hottest = now > most ? minute : hottest;
      most = Math.max(most, now);
    }
    return hottest;
  }

  private static int atOnce(Plan plan, Busy hands, int minute) {
    long cooks = hands.byCook().values().stream().filter(work -> work.contains(minute)).count();
    long ovens = plan.event()
        .kitchen()
        .ovens()
        .stream()
        .filter(oven -> new Stretches(inside(plan, oven.name())).contains(minute))
        .count();
    long burners = lit(plan).stream().filter(when -> when.contains(minute)).count();
    return (int) (cooks + ovens + burners);
  }

  private static Map<Scarce, Integer> busy(Ledger ledger, Busy hands) {
    Stretches last = Calm.beforeCourses(ledger, Calm.BEFORE);
    Map<Scarce, Integer> busy = new EnumMap<>(Scarce.class);
    busy.put(Scarce.HANDS, perCent(hands.cookMinutes(last), atWork(ledger, last)));
    busy.put(Scarce.OVENS,
        perCent(ovenMinutes(ledger, last), last.minutes() * ledger.event().kitchen().ovens().size()));
    busy.put(Scarce.BURNERS,
        perCent(burnerMinutes(ledger, last), last.minutes() * ledger.event().kitchen().burners().size()));
    return busy;
  }

  private static int perCent(long used, long there) {
    return there == 0 ? 0 : (int) (100 * used / there);
  }

  private static long atWork(Ledger ledger, Stretches last) {
    long minutes = 0;
    for (Cook cook : ledger.event().cooks()) {
      minutes += new Stretches(cook.hours()).without(new Stretches(cook.breaks())).shared(last).minutes();
    }
    return minutes;
  }

  private static long ovenMinutes(Ledger ledger, Stretches last) {
    return ledger.event()
        .kitchen()
        .ovens()
        .stream()
        .mapToLong(oven -> new Stretches(inside(ledger.plan(), oven.name())).shared(last).minutes())
        .sum();
  }

  /** When food bakes in an oven, or waits in it. */
  private static List<Stretch> inside(Plan plan, String oven) {
    List<Stretch> inside = new ArrayList<>();
    for (Placement run : plan.placements()) {
      if (run.baking() != null && run.baking().oven().equals(oven)) {
        inside.add(run.when());
      }
    }
    for (Stay.Part part : parts(plan)) {
      if (part.where() instanceof Where.InOven in && in.oven().equals(oven)) {
        inside.add(part.when());
      }
    }
    return inside;
  }

  private static List<Stay.Part> parts(Plan plan) {
    return plan.stays().stream().flatMap(stay -> stay.parts().stream()).toList();
  }

  /** When burners are lit, one stretch for each. */
  private static List<Stretch> lit(Plan plan) {
    List<Stretch> lit = new ArrayList<>();
    plan.placements().forEach(run -> run.burners().forEach(burner -> lit.add(run.when())));
    for (Stay.Part part : parts(plan)) {
      if (part.where() instanceof Where.OnBurner on) {
        on.burners().forEach(burner -> lit.add(part.when()));
      }
    }
    return lit;
  }

  private static long burnerMinutes(Ledger ledger, Stretches last) {
    return lit(ledger.plan()).stream().mapToLong(when -> Stretches.of(when).shared(last).minutes()).sum();
  }
}
