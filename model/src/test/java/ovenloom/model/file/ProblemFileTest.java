package ovenloom.model.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.kitchen.Store;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Size;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Keeps;
import ovenloom.model.menu.Link;
import ovenloom.model.menu.Need;
import ovenloom.model.menu.Step;
import ovenloom.model.menu.Wish;
import ovenloom.model.menu.Work;

class ProblemFileTest {

  private static final Path HERE = Path.of("src/test/resources/ovenloom/model/file");
  private static final Path PROBLEMS = Path.of("../problems");

  @Test
  void ten_guests_make_two_batches_of_a_lasagne_for_eight() {
    Event supper = read(HERE.resolve("harvest-supper.yaml"));

    assertThat(supper.dish("Squash lasagne").batches()).isEqualTo(2);
    assertThat(supper.dish("Squash lasagne").portionsInABatch()).isEqualTo(5);
  }

  @Test
  void steps_follow_one_another_unless_they_say_otherwise() {
    Event supper = read(HERE.resolve("harvest-supper.yaml"));

    List<Step> steps = supper.dish("Squash lasagne").steps();

    assertThat(steps.getFirst().after()).isEmpty();
    assertThat(steps.get(1).after())
        .containsExactly(new Link(Link.Kind.FOOD, "Squash lasagne", "roast the squash", 0, null));
  }

  @Test
  void days_count_back_from_the_day_of_the_first_course() {
    Event supper = read(HERE.resolve("harvest-supper.yaml"));

    assertThat(supper.calendar().day()).hasToString("2026-10-10");
    assertThat(supper.cooks().getFirst().hours()).containsExactly(
        new Stretch(-1800, -1620), new Stretch(-900, -660), new Stretch(-540, -420), new Stretch(600, 1200));
    assertThat(supper.from()).isEqualTo(-1800);
  }

  @Test
  void a_fish_kettle_has_its_own_size_and_a_half_sheet_the_trades() {
    Event supper = read(HERE.resolve("harvest-supper.yaml"));

    assertThat(size(supper, "fish kettle")).hasToString("60 x 17 x 15 cm");
    assertThat(size(supper, "half sheet").width()).isEqualTo(Length.in(18));
    assertThat(size(supper, "9x13 in dish").depth()).isEqualTo(Length.in(13));
  }

  @Test
  void a_fridge_in_keeps_means_every_fridge_of_the_kitchen() {
    Event supper = read(HERE.resolve("harvest-supper.yaml"));
    Event dinner = read(HERE.resolve("winter-dinner.yaml"));

    assertThat(keeps(supper.dish("Squash lasagne").steps().getFirst()).stores())
        .containsOnlyKeys("kitchen fridge");
    assertThat(keeps(dinner.dish("Braise").step("chill")).stores())
        .containsOnlyKeys("kitchen fridge", "blast chiller");
    assertThat(dinner.dish("Braise").step("reheat").keeps())
        .isEqualTo(new Keeps(null, null, null, Map.of("cabinet", 90)));
  }

  @Test
  void a_roast_in_two_stages_keeps_both_and_may_be_taller_than_its_tin() {
    Need.Bake roast = Objects
        .requireNonNull(read(HERE.resolve("winter-dinner.yaml")).dish("Turkey").step("roast").bake());

    assertThat(roast.stages()).extracting(Need.Stage::written)
        .containsExactly(Setting.celsius(220), Setting.celsius(160));
    assertThat(roast.stages()).extracting(Need.Stage::minutes).containsExactly(30, null);
    assertThat(roast.stands()).isEqualTo(Length.cm(28));
  }

  @Test
  void gravy_uses_what_the_turkey_leaves_in_the_tin() {
    Event dinner = read(HERE.resolve("winter-dinner.yaml"));

    assertThat(dinner.dish("Gravy").steps().getFirst().after())
        .containsExactly(new Link(Link.Kind.FOOD, "Turkey", "roast", 0, 30));
    assertThat(Work.of(dinner).steps()).isNotEmpty();
  }

  @Test
  void wishes_that_are_not_named_weigh_one() {
    Event supper = read(HERE.resolve("harvest-supper.yaml"));

    assertThat(supper.wishes().weight(Wish.CALM)).isEqualTo(3);
    assertThat(supper.wishes().weight(Wish.DIAL)).isEqualTo(1);
  }

  @Test
  void a_file_that_says_nothing_of_its_kitchen_has_a_homes(@TempDir Path folder) {
    Event soup = new Desktop(folder)
        .put("soup.yaml", Desktop.SUPPER + "dishes: [{dish: Soup, steps: [{do: stir, takes: 5 min}]}]\n")
        .event("soup.yaml");

    assertThat(soup.kitchen().ovens()).hasSize(1);
    assertThat(soup.kitchen().stores()).extracting(Store::kind)
        .containsExactly(Store.Kind.FRIDGE, Store.Kind.FREEZER);
  }

  @Test
  void a_kitchen_may_be_a_homes_with_ramekins_and_fewer_saucepans(@TempDir Path folder) {
    Desktop desktop = new Desktop(folder);
    String soup = "dishes: [{dish: Soup, steps: [{do: stir, takes: 5 min}]}]\n";
    Kitchen plain = desktop.put("plain.yaml", Desktop.SUPPER + soup).event("plain.yaml").kitchen();

    Kitchen own = desktop.put("kitchen.yaml", "{from: home, vessels: {ramekin: 6}}\n")
        .put("own.yaml",
            Desktop.SUPPER + soup + "kitchen: {from: kitchen.yaml, landing: 4, vessels: {saucepan: 1}}\n")
        .event("own.yaml")
        .kitchen();

    assertThat(own.ovens()).isEqualTo(plain.ovens()).isNotEmpty();
    assertThat(own.stores()).isEqualTo(plain.stores());
    assertThat(own.landing()).isEqualTo(4);
    assertThat(own.vessels()).hasSize(plain.vessels().size() + 1)
        .anySatisfy(vessel -> assertThat(vessel.name() + " " + vessel.count()).isEqualTo("ramekin 6"))
        .anySatisfy(vessel -> assertThat(vessel.name() + " " + vessel.count()).isEqualTo("saucepan 1"));
  }

  @Test
  void what_would_stand_in_a_file_may_stand_in_place_of_its_name(@TempDir Path folder) {
    Desktop desktop = new Desktop(folder)
        .put("kitchen.yaml", "{from: home, vessels: {ramekin: 6}}\n")
        .put("soup.yaml", "dish: Soup\nsteps: [{do: stir, takes: 5 min}]\n");

    Event named = desktop.put("named.yaml", Desktop.SUPPER + """
        kitchen: {from: kitchen.yaml, landing: 4}
        dishes: [{from: soup.yaml, portions: 2}]
        """).event("named.yaml");
    Event written = desktop.put("written.yaml", Desktop.SUPPER + """
        kitchen: {from: {from: home, vessels: {ramekin: 6}}, landing: 4}
        dishes: [{from: {dish: Soup, steps: [{do: stir, takes: 5 min}]}, portions: 2}]
        """).event("written.yaml");

    assertThat(written).isEqualTo(named);
  }

  @Test
  void a_list_is_neither_a_file_nor_what_stands_in_one(@TempDir Path folder) {
    assertThat(new Desktop(folder).mistakesIn(Desktop.SUPPER + """
        kitchen: {from: [home]}
        dishes: [{dish: Soup, steps: [{do: stir, takes: 5 min}]}]
        """)).startsWith("it.yaml:6:17: ");
  }

  @ParameterizedTest
  @MethodSource("problems")
  void every_problem_in_the_house_reads(Path file) {
    assertThat(read(file).dishes()).isNotEmpty();
  }

  static List<Path> problems() throws IOException {
    try (Stream<Path> files = Files.list(PROBLEMS)) {
      return files.filter(file -> file.toString().matches(".*\\.(yaml|json)"))
          .filter(file -> !file.toString().matches(".*(mistakes|what-if).*"))
          .sorted()
          .toList();
    }
  }

  private static Size size(Event event, String vessel) {
    return Objects.requireNonNull(Objects.requireNonNull(event.kitchen().vessel(vessel)).size());
  }

  private static Keeps keeps(Step step) {
    return Objects.requireNonNull(step.keeps());
  }

  private static Event read(Path file) {
    return switch (ProblemFile.read(file, Objects.requireNonNull(file.getParent()), null)) {
      case Reading.Understood<Event>(Event event, var sources, var notes) -> event;
      case Reading.Mistaken<Event>(List<Mistake> mistakes) ->
        throw new AssertionError(MistakeText.of(mistakes));
    };
  }
}
