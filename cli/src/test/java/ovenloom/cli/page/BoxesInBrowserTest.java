package ovenloom.cli.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ovenloom.cli.command.Kitchens;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Batches;
import ovenloom.model.plan.HandsOn;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Stay;
import ovenloom.model.plan.Where;

/** Every box in the pictures against the plan it is drawn from. */
class BoxesInBrowserTest {

  private static final String BOXES = """
      [...document.querySelectorAll('.picture')].filter(picture => picture.getClientRects().length).flatMap(picture => [...picture.querySelectorAll('g[data-use]')].map(box => {
        const lane = box.closest('.lane > svg').getBoundingClientRect();
        const here = box.querySelector('rect').getBoundingClientRect();
        return [box.dataset.use + ' ' + box.dataset.lane + ' ' + box.dataset.food, picture.dataset.minutes,
          box.dataset.minutes, (here.left - lane.left) / lane.width, (here.right - lane.left) / lane.width].join('\t');
      }))""";

  private static final String OVERLAID = """
      [...document.querySelectorAll('.lane > svg')].flatMap(lane => {
        const boxes = [...lane.querySelectorAll('g[data-use]')].map(box => [box, box.querySelector('rect').getBoundingClientRect()]);
        return boxes.flatMap(([one, a], i) => boxes.slice(i + 1)
          .filter(([other, b]) => Math.min(a.right, b.right) - Math.max(a.left, b.left) > .5
            && Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > .5)
          .map(([other]) => one.querySelector('title').textContent + ' and ' + other.querySelector('title').textContent));
      })""";

  private static final String RUN_OVER = """
      [...document.querySelectorAll('.lane > svg')].flatMap(lane => {
        const boxes = [...lane.querySelectorAll('g[data-use]')].map(box => [box, box.querySelector('rect').getBoundingClientRect()]);
        return [...lane.querySelectorAll('text')].filter(text => text.getClientRects().length).filter(text => {
          const words = text.getBoundingClientRect();
          const own = text.closest('g[data-use]');
          const [, here] = boxes.find(([box]) => box === own) || [];
          const others = boxes.filter(([box, other]) => box !== own && Math.min(words.right, other.right) - Math.max(words.left, other.left) > .5
            && Math.min(words.bottom, other.bottom) - Math.max(words.top, other.top) > 4);
          return others.length || words.right > lane.getBoundingClientRect().right
            || text.matches('.in') && words.right > here.right;
        }).map(text => text.textContent);
      })""";

  /**
   * A box as it is drawn.
   *
   * @param left from the left end of its lane, as a share of it
   * @param right the same of its right side
   */
  private record Box(String what, Stretch picture, Stretch minutes, double left, double right) {

    static Box of(Object told) {
      String[] parts = String.valueOf(told).split("\t", -1);
      return new Box(parts[0], stretch(parts[1]), stretch(parts[2]), Double.parseDouble(parts[3]),
          Double.parseDouble(parts[4]));
    }

    String told() {
      return what + " " + minutes.from() + "-" + minutes.to();
    }

    void isWhereItsMinutesAre() {
      assertThat(minutes.overlaps(picture)).as(told()).isTrue();
      assertThat(picture.from() + left * picture.minutes()).as(told())
          .isCloseTo(Math.max(minutes.from(), picture.from()), within(0.5));
      assertThat(picture.from() + right * picture.minutes()).as(told())
          .isCloseTo(Math.min(minutes.to(), picture.to()), within(0.5));
    }
  }

  @TempDir
  private static Path folder;

  private static Plan plan;
  private static Path page;

  @BeforeAll
  static void write() throws IOException {
    plan = Kitchens.sample("easter-lamb-two-ovens", 300, folder);
    page = Files.writeString(folder.resolve("plan.html"), PlanPage.of(plan));
  }

  @ParameterizedTest
  @ValueSource(strings = {"screen", "print"})
  void each_is_a_run_or_a_wait_and_as_long_minute_by_minute(String medium) {
    try (Browser browser = open(medium)) {
      List<Box> boxes = ((List<?>) browser.ask(BOXES)).stream().map(Box::of).toList();

      assertThat(boxes.stream()
          .map(Box::told)
          .filter(BoxesInBrowserTest::isOfARunOrAWait)
          .collect(Collectors.toSet()))
          .isEqualTo(expected(plan));
      assertThat(boxes).allSatisfy(Box::isWhereItsMinutesAre);
      assertThat(browser.ask(OVERLAID)).as("no box lies over another").isEqualTo(List.of());
      assertThat(browser.ask(RUN_OVER)).as("no words run over").isEqualTo(List.of());
    }
  }

  private static Browser open(String medium) {
    Browser browser = Browser.open();
    return medium.equals("print") ? browser.wide(700, 1000).paper().open(page)
        : browser.wide(1280, 900).open(page);
  }

  private static boolean isOfARunOrAWait(String box) {
    return !box.startsWith("FULL") && !box.startsWith("BREAK");
  }

  private static Stretch stretch(String minutes) {
    String[] ends = minutes.split("(?<=\\d)-", -1);
    return new Stretch(Integer.parseInt(ends[0]), Integer.parseInt(ends[1]));
  }

  private static Set<String> expected(Plan plan) {
    Set<String> all = new TreeSet<>();
    for (Placement run : plan.placements()) {
      if (run.baking() != null) {
        all.add(box("WORK", lane(run.baking().oven()), run.dish(), run.step(), run.batches(), run.when()));
      }
      run.burners()
          .forEach(
              each -> all.add(box("WORK", lane(each), run.dish(), run.step(), run.batches(), run.when())));
      run.shelves()
          .forEach(each -> all.add(
              box("WORK", each.store() + "/" + each.shelf(), run.dish(), run.step(), run.batches(),
                  run.when())));
      addHands(all, run.hands(), run.dish(), run.step(), run.batches());
    }
    for (Stay stay : plan.stays()) {
      stay.parts().forEach(part -> addWait(all, stay, part));
      addHands(all, stay.hands(), stay.dish(), stay.step(), stay.batches());
    }
    plan.washes().forEach(wash -> {
      all.add(box("WASH", lane(wash.cook()), wash.vessel(), "", Batches.only(1), wash.when()));
      all.add(box("WASH", lane(wash.vessel()), wash.vessel(), "", Batches.only(1), wash.when()));
    });
    return all;
  }

  private static void addHands(Set<String> all, List<HandsOn> hands, String dish, String step,
      Batches batches) {
    hands.forEach(each -> each.cooks()
        .forEach(cook -> all.add(
            box("WORK", lane(cook), dish, step, batches, each.when()))));
  }

  private static void addWait(Set<String> all, Stay stay, Stay.Part part) {
    List<String> lanes = switch (part.where()) {
      case Where.Counter() -> List.of();
      case Where.OnShelf(String store, List<String> shelves) ->
        shelves.stream().map(each -> store + "/" + each).toList();
      case Where.InOven(String oven, var mark) -> List.of(lane(oven));
      case Where.OnBurner(List<String> burners) -> burners.stream().map(BoxesInBrowserTest::lane).toList();
    };
    if (part.when().minutes() > 0) {
      lanes
          .forEach(lane -> all.add(box("WAIT", lane, stay.dish(), stay.step(), stay.batches(), part.when())));
    }
  }

  private static String lane(String name) {
    return name + "/" + name;
  }

  private static String box(String use, String lane, String dish, String step, Batches batches,
      Stretch when) {
    return use + " " + lane + " " + dish + "/" + step + "/" + batches.first() + "-" + batches.last() + " "
        + when.from()
        + "-" + when.to();
  }
}
