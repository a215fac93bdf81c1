package ovenloom.cli.page;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import ovenloom.cli.sheet.Act;
import ovenloom.cli.sheet.Acts;
import ovenloom.cli.sheet.Afterword;
import ovenloom.cli.sheet.BoundText;
import ovenloom.cli.sheet.Line;
import ovenloom.cli.sheet.Title;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.life.Life;
import ovenloom.model.plan.Plan;

/**
 * All that is on the page.
 *
 * @param key of this plan, under which a browser remembers what was ticked
 * @param after the last line of the run sheet: how warm, how good, the cautions
 * @param proven how much better a plan could still be
 */
public record View(String key, Title title, List<Day> days, List<String> cooks, List<Picture> pictures,
    List<Place> places,
    List<Warmth> warmths, List<Line> after, String proven) {

  static View of(Plan plan) {
    Life life = Life.of(plan, 1);
    List<Act> acts = Acts.of(plan, life);
    Title title = new Title(plan.event());
    return new View(key(title, acts), title, Days.of(acts, plan.event().calendar()),
        plan.event().cooks().stream().map(Cook::name).toList(), Pictures.of(plan), Place.of(plan),
        Warmth.of(plan, life), Afterword.of(plan, life), BoundText.sentence(plan));
  }

  private static String key(Title title, List<Act> acts) {
    String words = title.name() + title.sentence() + acts.stream()
        .map(act -> act.at() + act.who() + act.thing() + act.words())
        .collect(Collectors.joining("\n"));
    return UUID.nameUUIDFromBytes(words.getBytes(StandardCharsets.UTF_8)).toString();
  }

  /** What the sheet begins with, in a line. */
  public String first() {
    Day day = days.getFirst();
    Ticked line = day.lines().getFirst();
    String who = cooks.size() > 1 && !line.act().cooks().isEmpty() ? line.act().who() + ". " : "";
    return day.heading() + ", " + line.time() + ". " + who + line.act().thing() + ": " + line.act().words();
  }

  /** Lines at which something is probed. */
  public List<Ticked> probes() {
    return days.stream()
        .flatMap(day -> day.lines().stream())
        .filter(line -> line.act().turn() == Act.Turn.PROBE)
        .toList();
  }

  public String style() {
    return Palette.style() + PlanPage.read("page.css");
  }

  public String script() {
    return PlanPage.read("page.js");
  }
}
