package ovenloom.cli.sheet;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Step;
import ovenloom.model.menu.Work;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Where;

/**
 * Suppers by seed, and plans of them, for laws: each dish goes its way to the table in time, its food waits where it may, and cooks do
 * what steps ask for. That nobody is in two places at once is not promised.
 */
public final class RandomHandPlans {

  /** When it is, and where: on a day like others, or in a night in which the clocks change, some of them at midnight. */
  private static final List<String> NIGHTS = List.of("2026-10-10 19:00", "2026-10-10 19:00/UTC",
      "2026-10-25 03:40/Europe/Berlin", "2027-03-28 04:30/Europe/Berlin", "2026-09-06 02:00/America/Santiago",
      "2026-10-25 01:30/Asia/Beirut", "2026-10-10 19:00/Asia/Kolkata", "2027-04-04 04:00/Pacific/Auckland");

  private static final List<String> NAMES = List.of("Soup", "Leg; of: lamb",
      "Kn\u00f6del \\\"s\u00fc\u00df\\\"",
      "T\u00f6rtchen \uD83D\uDC69\u200D\uD83C\uDF73 mit \u00c4pfeln; \u00d6l und viel \uD83C\uDF4F\uD83C\uDF4E",
      "=1+1", "-a\\nb", "Rice\\u0007 dish",
      "\u00dcberbackene S\u00fc\u00dfkartoffeln mit Kr\u00e4utern und geschmortem Fenchel");

  private static final String CREAM = """
          - {do: whisk, takes: 10 min, hands: throughout, in: bowl, keeps: {counter: 1 h, fridge: 1 day}}
          - {do: set, takes: 2 h, up to: 9 h, cold: fridge, in: dish, keeps: {fridge: 2 days}}
      """;
  private static final String ROAST = """
          - {do: "season; and tie", takes: 12 min, hands: {first: 5 min}, in: dish, keeps: {counter: 1 h, fridge: 1 day}}
          - {do: roast, takes: 50 min, bake: [{at: 220 C, for: 20 min}, {at: 160 C}], core: 63 C, hands: [{at: 25 min, for: 2 min}], keeps: {oven: 1 h}}
          - {do: rest, takes: 15 min, up to: 40 min, in: tray}
          - {do: carve, takes: 8 min, hands: throughout, in: platter}
      """;
  private static final String STEW = """
          - {do: cut, takes: 10 min, hands: throughout, in: bowl, keeps: {counter: 30 min}}
          - {do: stew, takes: 40 min, burner: large, core: 75 C, in: pot, hands: {last: 3 min}, keeps: {burner: 30 min, fridge: 2 days}}
          - {do: warm, takes: 15 min, burner: small, in: pot, keeps: {burner: 20 min}}
      """;
  private static final String ROLLS = """
          - {do: knead, once: yes, takes: 15 min, hands: throughout, in: bowl}
          - {do: shape, takes: 10 min, hands: throughout, in: tray, keeps: {fridge: 1 day, counter: 2 h}}
          - {do: bake, takes: 20 min, together: 2, bake: {at: 180 C}, keeps: {counter: 2 h}}
          - {do: glaze, takes: 4 min, keeps: {counter: 1 h}}
      """;

  /** With vessels enough for a dish that many make. */
  private static final String KITCHEN = SheetLines.KITCHEN
      .substring(SheetLines.KITCHEN.indexOf("kitchen:"))
      .replaceAll("count: \\d+, size: (\\d+ x \\d+ x \\d+ cm)", "count: 30, size: $1")
      .replace("platter: 1", "platter: 30, bowl: {count: 1, size: 20 x 20 x 10 cm}");

  private final Random random;

  private RandomHandPlans(long seed) {
    random = new Random(seed);
  }

  /** The supper of a seed. */
  public static String problem(long seed) {
    return new RandomHandPlans(seed).problem();
  }

  /** One of many plans for it. */
  public static Plan plan(String problem, long seed) {
    return new RandomHandPlans(seed).planned(problem);
  }

  private String problem() {
    String[] night = one(NIGHTS).split("/", 2);
    StringBuilder text = new StringBuilder("ovenloom: 1\nevent: " + name(0) + "\nguests: 8\n");
    text.append(night.length > 1 ? "zone: " + night[1] + "\n" : "")
        .append("courses: [{name: supper, at: " + night[0] + ", served over: " + 20 * random.nextInt(2))
        .append(" min}]\n")
        .append(KITCHEN)
        .append("cooks:\n");
    for (int i = 0; i <= random.nextInt(3); i++) {
      text.append("  - {name: " + name(i) + ", hours: {2 days before: 0:00-24:00, day before: 0:00-24:00,"
          + " on the day: 0:00-24:00}}\n");
    }
    text.append("dishes:\n");
    for (int i = 0; i <= random.nextInt(4); i++) {
      text.append("  - dish: " + name(i) + "\n    tags: [not tcs]\n");
      text.append(random.nextBoolean() ? "    portions: 4\n" : "");
      text.append(random.nextBoolean() ? "    waves: yes\n" : "");
      text.append("    steps:\n" + one(List.of(CREAM, ROAST, STEW, ROLLS)));
    }
    return text.toString();
  }

  private String name(int number) {
    return "\"" + one(NAMES) + " " + number + "\"";
  }

  private Plan planned(String problem) {
    HandPlan plan = HandPlan.forProblem(problem);
    Event event = HandPlan.read(problem);
    event.dishes().forEach(dish -> plan(event, dish, plan));
    washUp(event, plan);
    return plan.plan();
  }

  /** The bowl, between any two that fill it. */
  private void washUp(Event event, HandPlan plan) {
    long fillings = Work.of(event).fillings().stream().filter(each -> each.vessel().equals("bowl")).count();
    for (int i = 1; i < fillings; i++) {
      if (random.nextBoolean()) {
        plan.wash("bowl", 1, 60 * i, one(event.cooks()).name());
      }
    }
  }

  /** From the table backwards, each batch its own way, or all of them alike. */
  private void plan(Event event, Dish dish, HandPlan plan) {
    boolean isAlike = random.nextBoolean();
    int[] taken = IntStream.rangeClosed(0, dish.batches())
        .map(batch -> event.due(dish, isAlike || batch == 0 ? 1 : batch))
        .toArray();
    for (Step step : dish.steps().reversed()) {
      int most = step.once() ? dish.batches() : isAlike ? step.together().most() : 1;
      int gap = gap(step);
      for (int first = 1; first <= dish.batches(); first += most) {
        gap = isAlike ? gap : gap(step);
        int last = Math.min(dish.batches(), first + most - 1);
        int end = Arrays.stream(taken, first, last + 1).min().orElseThrow() - gap;
        int start = end - minutes(dish, step);
        run(event, dish, step, first, last, start, plan);
        for (int batch = first; batch <= (step.once() ? first : last); batch++) {
          int until = step.equals(dish.steps().getLast()) ? event.due(dish, batch)
              : Arrays.stream(taken, batch, (step.once() ? last : batch) + 1).max().orElseThrow();
          wait(dish, step, batch, end, until, plan);
        }
        Arrays.fill(taken, first, last + 1, start);
      }
    }
  }

  private int gap(Step step) {
    return one(mayBeStored(step) ? List.of(0, 4, 60, 600) : List.of(0, 0, 4, 12));
  }

  private static boolean mayBeStored(Step step) {
    return step.keeps() != null && !step.keeps().stores().isEmpty();
  }

  private static int minutes(Dish dish, Step step) {
    return step.takes().minutes(step.once() ? dish.servings().portions() : dish.portionsInABatch());
  }

  private void run(Event event, Dish dish, Step step, int first, int last, int start, HandPlan plan) {
    String cook = one(event.cooks()).name();
    String other = one(event.cooks()).name();
    Integer[] places = first == last || step.once() ? new Integer[]{0} : new Integer[]{0, 1};
    plan.run(dish.name() + "/" + step.name(), start,
        run -> run.batches(first, last).by(cook).takenOutBy(other).racks(places).shelves(places));
  }

  /** On the counter; or a while in the fridge, or in the oven or on the burner it was made in. */
  private void wait(Dish dish, Step step, int batch, int from, int to, HandPlan plan) {
    String name = dish.name() + "/" + step.name();
    if (to - from > 30 && mayBeStored(step)) {
      Where shelf = new Where.OnShelf("fridge", List.of(one(List.of("top", "low"))));
      plan.batchWaits(batch, name, new Where.Counter(), from + random.nextInt(10), shelf,
          to - random.nextInt(10), new Where.Counter(), to);
    } else if (to > from && step.burner() != null && random.nextBoolean()) {
      plan.batchWaits(batch, name, new Where.OnBurner(List.of("large burner 1")), to);
    } else if (to > from && step.bake() != null && random.nextBoolean()) {
      plan.batchWaits(batch, name, new Where.InOven("oven", null), to);
    }
  }

  private <T> T one(List<T> all) {
    return all.get(random.nextInt(all.size()));
  }
}
