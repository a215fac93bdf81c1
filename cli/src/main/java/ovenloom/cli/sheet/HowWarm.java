package ovenloom.cli.sheet;

import java.util.List;
import java.util.Locale;
import ovenloom.cli.sheet.Line.Cell;
import ovenloom.model.life.Life;
import ovenloom.model.life.Served;
import ovenloom.model.plan.Plan;
import ovenloom.model.safety.Profile;
import ovenloom.model.watch.Concern;
import ovenloom.model.watch.Watch;

/** How warm each dish is predicted to be at the table, and which limits of safety the prediction breaks. */
record HowWarm(Plan plan, Life life, Page page) {

  private static final int WIDEST = 32;

  void write() {
    List<Served> served = Served.all(plan, life);
    List<Concern> concerns = Watch.over(plan, life);
    int width = Math.min(WIDEST, Math.min(page.width() / 3,
        plan.event().dishes().stream().mapToInt(dish -> Wrapped.length(dish.name())).max().orElse(0)));
    if (!served.isEmpty()) {
      atTheTable(served, width);
      new NotPredicted(plan, served).reasons().forEach((dish, why) -> row(dish, why, width));
    }
    page.blank().line(rules());
    if (!concerns.isEmpty()) {
      page.blank().underlined("What is not safe as predicted");
      concerns.forEach(each -> concern(each, width));
    }
  }

  private String rules() {
    Profile named = plan.event().rules();
    return named == null
        ? "No rules are named, so the strictest of " + String.join(", ", Profile.NAMES)
            + " hold for what is safe."
        : "What is safe is held against the rules " + named.name()
            + (isCooledWithoutLimit(named) ? ", which set no limit to how fast cooked food cools." : ".");
  }

  /** Whether something cools for which other rules would have a limit. */
  private boolean isCooledWithoutLimit(Profile named) {
    return named.cool().isEmpty() && !Watch.cooling(Profile.strictest(), life).isEmpty();
  }

  private void atTheTable(List<Served> served, int width) {
    page.blank().underlined("How warm it is at the table");
    page.line(
        "Predicted for what is worst off until all are served, stirred together, and how far it may be off. A prediction is no thermometer.")
        .blank();
    served.forEach(each -> row(each.dish().name(), words(each), width));
  }

  private void row(String dish, String words, int width) {
    page.row(List.of(new Cell(dish, width, true), new Cell(words, 0, false)));
  }

  private String words(Served served) {
    double room = plan.event().kitchen().room().inCelsius();
    String warm = String.format(Locale.ENGLISH, "%d C (%d to %d)", Math.round(served.likely()),
        Math.round(served.coldest()), Math.round(served.warmest()));
    return served.misses(room) > 0.5 ? warm + ": " + new Goal(served.dish().arrives(), room).words() + "."
        : warm + ".";
  }

  private void concern(Concern concern, int width) {
    String step = Words.capital(concern.step().step().name());
    String words = step + ": " + concern.what() + " (" + concern.source() + ".) " + concern.help();
    page.row(List.of(
        new Cell(concern.step().dish().name(), width, true), new Cell(words, 0, false, Ink.CAUTION)));
  }
}
