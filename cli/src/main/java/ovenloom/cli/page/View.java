package ovenloom.cli.page;

import java.nio.charset.StandardCharsets;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
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
 * @param zone of the event, as browsers call it; null where it has none
 * @param ofCooks one cook's days each
 * @param after the last line of the run sheet: how warm, how good, the cautions
 * @param proven how much better a plan could still be, as its file says
 */
public record View(String key, @Nullable String zone, Title title, List<Day> days,
    Map<String, List<Day>> ofCooks, List<Picture> pictures,
    List<Place> places,
    Band band, List<Warmth> warmths, List<Line> after, String proven) {

  static View of(Plan plan) {
    Life life = Life.of(plan, 1);
    // It follows all food twice more, which takes as long as much of the rest.
    CompletableFuture<List<Line>> after = CompletableFuture.supplyAsync(() -> Afterword.of(plan, life));
    List<Act> acts = Acts.of(plan, life);
    Title title = new Title(plan.event());
    List<Day> days = Days.of(acts, plan.event());
    ZoneId zone = plan.event().calendar().zone();
    return new View(key(title, acts), zone == null ? null : zone.getId(), title, days,
        ofCooks(plan, days),
        Pictures.of(plan), Place.of(plan),
        Band.of(plan.event()), Warmth.of(plan, life), after.join(), BoundText.asRead(plan));
  }

  /** None where there is but one. */
  private static Map<String, List<Day>> ofCooks(Plan plan, List<Day> days) {
    Map<String, List<Day>> all = new LinkedHashMap<>();
    if (plan.event().cooks().size() > 1) {
      for (Cook cook : plan.event().cooks()) {
        all.put(cook.name(),
            days.stream().map(day -> day.of(cook.name())).filter(day -> !day.lines().isEmpty()).toList());
      }
    }
    return all;
  }

  /** Whether lines must say who. */
  public boolean isForSeveral() {
    return !ofCooks.isEmpty();
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
    String who = isForSeveral() && !line.act().cooks().isEmpty() ? line.act().who() + ". " : "";
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
