package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ovenloom.cli.sheet.Line.Cell;
import ovenloom.model.plan.Plan;
import ovenloom.model.why.Hold;

/** Why a plan is as it is. */
public final class WhySheet {

  private static final int LABEL = 8;
  private static final String HOW = """
      What is named keeps a step from being later, by even a minute where none are told. Each was tried by itself: with \
      its cooks, oven, burners and shelves, and with all else where it is.""";

  private final Plan plan;
  private final Clock clock;
  private final Page page;

  /**
   * Of a plan.
   *
   * @param width of a line, in characters
   */
  public WhySheet(Plan plan, int width, boolean colour) {
    this.plan = plan;
    clock = new Clock(plan.event().calendar());
    page = new Page(width, colour);
  }

  /** What its score is made of, and what holds each of its runs, dish by dish, in a line or two. */
  public String all(List<Hold> holds) {
    new MakeUp(plan, page).write();
    page.blank().underlined("What holds each step where it is").line(HOW);
    Map<String, List<Hold>> byDish = new LinkedHashMap<>();
    holds.forEach(hold -> byDish.computeIfAbsent(hold.run().dish(), none -> new ArrayList<>()).add(hold));
    int width = holds.stream().mapToInt(hold -> times(hold).length()).max().orElse(0);
    byDish.forEach((dish, own) -> {
      page.blank().heading(dish);
      for (Hold hold : own) {
        page.row(List.of(new Cell(times(hold), width, false),
            new Cell(Words.capital(step(hold)) + ". " + new HoldText(plan, hold).inShort(), 0, false)));
      }
    });
    return page.toString();
  }

  /** What holds some of its runs, each with all that breaks or costs, and with what holds the steps that hold it. */
  public String closely(List<List<Hold>> chains) {
    for (List<Hold> chain : chains) {
      Hold hold = chain.getFirst();
      HoldText text = new HoldText(plan, hold);
      page.heading(hold.run().dish() + ": " + step(hold) + ", " + times(hold));
      hold.next()
          .forEach(next -> row(next.equals(hold.next().getFirst()) ? "Next" : "",
              Words.capital(text.follows(next)) + "."));
      row("Held", text.inFull());
      chain.stream().skip(1).forEach(this::behind);
      page.blank();
    }
    return page.line(HOW).toString();
  }

  private void behind(Hold hold) {
    row("Behind", hold.name() + ": " + new HoldText(plan, hold).inFull());
  }

  private void row(String label, String words) {
    page.row(List.of(new Cell(label, LABEL, false), new Cell(words, 0, false)));
  }

  private static String step(Hold hold) {
    return hold.name().substring(hold.run().dish().length() + 1);
  }

  private String times(Hold hold) {
    int from = hold.run().when().from();
    return clock.time(from, 0) + " to " + clock.time(hold.run().when().to(), from);
  }
}
