package ovenloom.cli.sheet;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import ovenloom.cli.sheet.Line.Cell;
import ovenloom.model.audit.score.Shares;
import ovenloom.model.life.Cards;
import ovenloom.model.menu.Wish;
import ovenloom.model.menu.Work;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Score;

/** What each level of a plan's score is made of, largest first. */
record MakeUp(Plan plan, Page page) {

  private static final int NAME = 14;
  private static final int SUM = 9;
  private static final int NAMED = 5;

  void write() {
    Score score = plan.score();
    Shares shares = Shares.of(new Cards(Work.of(plan.event())), plan);
    page.underlined("What its points are made of");
    row("At the table", score.atTheTableInAll(), named(score.atTheTable(), 1));
    row("Wishes", score.wishes(), "");
    score.points()
        .keySet()
        .stream()
        .filter(wish -> points(wish) > 0)
        .sorted(Comparator.comparingLong(this::points).reversed())
        .forEach(wish -> wish(wish, shares));
    row("Early", score.early(), named(shares.early(), 1));
  }

  private long points(Wish wish) {
    return plan.score().points().getOrDefault(wish, 0L) * weight(wish);
  }

  private int weight(Wish wish) {
    return plan.event().wishes().weight(wish);
  }

  private void row(String name, long sum, String what) {
    page.row(List.of(new Cell(name, NAME, false), new Cell(grouped(sum), SUM, false),
        new Cell(what, 0, false)));
  }

  private void wish(Wish wish, Shares shares) {
    page.row(List.of(new Cell("", 0, false),
        new Cell(wish.name().toLowerCase(Locale.ROOT), NAME - Cell.GAP, false),
        new Cell(grouped(points(wish)), SUM, false),
        new Cell(named(shares.of(wish), weight(wish)), 0, false)));
  }

  private static String named(Map<String, Long> parts, int weight) {
    List<Map.Entry<String, Long>> largest = parts.entrySet()
        .stream()
        .filter(each -> each.getValue() > 0)
        .sorted(Map.Entry.<String, Long>comparingByValue(Comparator.reverseOrder()))
        .toList();
    List<String> words = largest.stream()
        .limit(NAMED)
        .map(each -> each.getKey() + " " + grouped(each.getValue() * weight))
        .toList();
    int more = largest.size() - words.size();
    return String.join(", ", words) + (more > 0 ? ", and " + more + " more" : "");
  }

  private static String grouped(long number) {
    return String.format(Locale.ENGLISH, "%,d", number);
  }
}
