package ovenloom.cli.sheet;

import java.util.List;
import java.util.Locale;
import ovenloom.cli.sheet.Line.Cell;
import ovenloom.model.menu.Wish;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Score;

/** The score, level by level, and the caution that belongs under every plan. */
record HowGood(Plan plan, Page page) {

  private static final int NAME = 14;
  private static final int SUM = 16;

  private static final String CAUTION = """
      This sheet says when, not whether it is done: temperatures are predicted, and nothing is measured. Check \
      with a probe thermometer. Local food codes and licensed practice come first. Wash hands, boards and knives after raw food. Mind hot surfaces, and ask your guests \
      about allergens.""";

  void write() {
    Score score = plan.score();
    page.blank().underlined("How good it is");
    page.line("Fewer points are better: first at the table, then the wishes together, then early.").blank();
    atTheTable(score);
    row("Wishes", grouped(score.wishes()), "all of these together:");
    score.points().forEach(this::wish);
    row("Early", grouped(score.early()), "minutes from the start of each step to its course, added up.");
    page.blank().line(CAUTION);
  }

  private void atTheTable(Score score) {
    List<String> dishes = score.atTheTable()
        .entrySet()
        .stream()
        .filter(each -> each.getValue() > 0)
        .map(each -> each.getKey() + " " + grouped(each.getValue()))
        .toList();
    String why = dishes.isEmpty()
        ? "no points for dishes too cool, by longer waits than their cards ask for, or too warm."
        : "portions times tenths of a degree by which dishes are too cool, by longer waits than their cards ask for, or too warm: "
            + String.join(", ", dishes) + ".";
    row("At the table", grouped(score.atTheTableInAll()), why);
  }

  private void wish(Wish wish, long points) {
    int weight = plan.event().wishes().weight(wish);
    if (wish == Wish.STEADY && points == 0) {
      return;
    }
    String sum = weight == 0 ? points + " x 0" : points + " x " + weight + " = " + grouped(points * weight);
    page.row(List.of(
        new Cell("", 0, false), new Cell(wish.name().toLowerCase(Locale.ROOT), NAME - Cell.GAP, false),
        new Cell(sum, SUM, false), new Cell(meaning(wish), 0, false)));
  }

  private static String meaning(Wish wish) {
    return switch (wish) {
      case FRESHNESS -> "food that waits longer than it is at its best.";
      case SETTING ->
        "ovens away from the mark that is written, 1 for 5 K; bakes longer than needed, 1 for 5 %.";
      case CALM -> "work in the last hour before a course, no hand free in the last two, work on the day.";
      case DIAL -> "turns of an oven's dial to another mark; 5 each.";
      case ENERGY -> "tenths of a kilowatt-hour.";
      case SESSIONS -> "stretches of work on earlier days, 10 each; washes, 1 each.";
      case STEADY -> "changes of what people had been told.";
    };
  }

  private void row(String name, String sum, String meaning) {
    page.row(List.of(new Cell(name, NAME, false), new Cell(sum, SUM, false), new Cell(meaning, 0, false)));
  }

  private static String grouped(long number) {
    return String.format(Locale.ENGLISH, "%,d", number);
  }
}
