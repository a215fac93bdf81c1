package ovenloom.model.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.Objects;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.measure.Temperature;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Event;
import ovenloom.model.variation.Variation;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

class WhatIfFileTest {

  private static final String OVEN = "heats: 180 C in 12 min, cools: 200 C to 150 C in 15 min, racks: [{size: 46 x 37 cm, clear: 15 cm}]";

  private static final String OVENS_AND_GUESTS = """
      ovenloom: 1
      what if: More ovens for more guests?
      event: supper.yaml
      axes:
        ovens:
          one oven: as it is
          two ovens:
            kitchen: {ovens: {second oven: {dial: 80 C to 230 C, %s}}}
        guests: [8, 12]
      """.formatted(OVEN);

  @TempDir
  Path folder;

  @BeforeEach
  void a_supper_with_a_kitchen_in_a_file() {
    desk().put("supper.yaml", Desktop.SUPPER + """
        kitchen: {from: kitchens/one-oven.yaml}
        dishes:
          - from: soup.yaml
          - dish: Bread
            portions: 8
            steps: [{do: slice, takes: 5 min, hands: throughout}]
        """)
        .put("kitchens/one-oven.yaml",
            "room: 21 C\novens: [{name: oven, dial: 50 C to 250 C, %s}]\n".formatted(OVEN))
        .put("kitchens/two-ovens.yaml",
            "ovens: [{name: left oven, dial: 50 C to 250 C, %s}, {name: right oven, dial: 50 C to 250 C, %s}]\n"
                .formatted(OVEN, OVEN))
        .put("soup.yaml", "dish: Soup\nsteps: [{do: chop, takes: 10 min, hands: throughout}]\n")
        .put("stew.yaml", "dish: Stew\nsteps: [{do: stir, takes: 10 min, hands: throughout}]\n");
  }

  @Test
  void every_choice_is_taken_with_every_other_the_last_axis_turning_fastest() {
    WhatIf whatIf = whatIf(OVENS_AND_GUESTS);

    List<String> names = LongStream.range(0, whatIf.size())
        .mapToObj(whatIf::variation)
        .map(Variation::name)
        .toList();
    assertThat(names).containsExactly("one oven, 8 guests", "one oven, 12 guests", "two ovens, 8 guests",
        "two ovens, 12 guests");
  }

  @Test
  void a_variation_is_the_event_with_its_patches() {
    Event most = event(whatIf(OVENS_AND_GUESTS), 3);

    assertThat(most.guests()).isEqualTo(12);
    assertThat(most.kitchen().ovens()).extracting(Oven::name).containsExactly("oven", "second oven");
    assertThat(most.kitchen().room()).isEqualTo(Temperature.celsius(21));
  }

  @Test
  void a_patch_is_kept_as_JSON() {
    assertThat(whatIf(OVENS_AND_GUESTS).variation(3).patches()).containsExactly(
        """
            {"kitchen":{"ovens":{"second oven":{"dial":"80 C to 230 C","heats":"180 C in 12 min",\
            "cools":"200 C to 150 C in 15 min","racks":[{"size":"46 x 37 cm","clear":"15 cm"}]}}}}""",
        "{\"guests\":12}");
  }

  @Test
  void in_it_stands_what_stood_in_the_file_it_names() {
    WhatIf whatIf = whatIf(axes("soup: {stew: {dishes: {Soup: {from: stew.yaml, portions: 2}}}}"));

    assertThat(whatIf.variation(0).patches()).containsExactly("""
        {"dishes":{"Soup":{"from":{"dish":"Stew","steps":[{"do":"stir","takes":"10 min",\
        "hands":"throughout"}]},"portions":2}}}""");
  }

  /** Any prime, so that every choice has its turn. */
  private static final int EVERY = 37;

  @ParameterizedTest
  @MethodSource("house")
  void what_is_written_of_event_and_patches_is_all_that_a_variation_is_made_of(Path file) {
    WhatIf whatIf = understood(WhatIfFile.read(file, Objects.requireNonNull(file.getParent())));
    Desktop empty = new Desktop(folder.resolve("empty")).put("event.json", whatIf.written());

    for (long index = 0; index < whatIf.size(); index += EVERY) {
      empty.put("again.json", again(whatIf.variation(index)));
      WhatIf again = understood(WhatIfFile.read(empty.folder().resolve("again.json"), empty.folder()));

      assertThat(event(again, 0)).as(again.variation(0).name()).isEqualTo(event(whatIf, index));
      assertThat(again.variation(0)).isEqualTo(whatIf.variation(index));
    }
  }

  private static String again(Variation variation) {
    Iterator<String> patches = variation.patches().iterator();
    JsonMapper mapper = new JsonMapper();
    ObjectNode again = mapper.createObjectNode()
        .put("ovenloom", 1)
        .put("what if", "Again?")
        .put("event", "event.json");
    ObjectNode axes = again.putObject("axes");
    variation.choices()
        .forEach((axis, choice) -> axes.putObject(axis).set(choice, mapper.readTree(patches.next())));
    return again.toString();
  }

  @Test
  void a_file_that_is_changed_meanwhile_changes_nothing() throws IOException {
    WhatIf whatIf = whatIf(axes("soup: {stew: {dishes: {Soup: {from: stew.yaml}}}}"));
    Event before = event(whatIf, 0);

    Files.delete(folder.resolve("stew.yaml"));
    desk().put("kitchens/one-oven.yaml", "room: 30 C\n");

    assertThat(event(whatIf, 0)).isEqualTo(before);
  }

  @Test
  void what_changes_nothing_is_the_event_itself() {
    WhatIf whatIf = whatIf(OVENS_AND_GUESTS.replace("guests: [8, 12]", "guests: [4]"));

    assertThat(event(whatIf, 0)).isEqualTo(desk().event("supper.yaml"));
  }

  @Test
  void another_file_is_taken_in_before_any_patch_whatever_the_order_of_the_axes() {
    WhatIf whatIf = whatIf("""
        ovenloom: 1
        what if: Another kitchen?
        event: supper.yaml
        axes:
          room: {warm: {kitchen: {room: 27 C}}}
          kitchen: {large: {kitchen: {from: kitchens/two-ovens.yaml}}}
          soup: {stew: {dishes: {Soup: {from: stew.yaml}}}}
        """);

    Event event = event(whatIf, 0);
    assertThat(event.kitchen().ovens()).extracting(Oven::name).containsExactly("left oven", "right oven");
    assertThat(event.kitchen().room()).isEqualTo(Temperature.celsius(27));
    assertThat(event.dishes()).extracting(Dish::name).containsExactly("Stew", "Bread");
  }

  @Test
  void a_file_stands_in_place_of_what_the_event_wrote_itself() {
    desk().put("rolls.yaml", "dish: Rolls\nsteps: [{do: shape, takes: 10 min, hands: throughout}]\n")
        .put("own.yaml",
            Desktop.SUPPER
                + """
                    kitchen: {room: 19 C, ovens: [{name: own oven, dial: 50 C to 250 C, %s}]}
                    dishes: [{dish: Bread, course: supper, for: 3, steps: [{do: slice, takes: 5 min, hands: throughout}]}]
                    """
                    .formatted(OVEN))
        .put("bare.yaml", Desktop.SUPPER
            + "dishes: [{dish: Bread, steps: [{do: slice, takes: 5 min, hands: throughout}]}]\n");
    String change = axes("all: {other: {kitchen: {from: kitchens/two-ovens.yaml},"
        + " dishes: {Bread: {from: rolls.yaml, portions: 2}}}}");

    Event own = event(whatIf(change.replace("supper.yaml", "own.yaml")), 0);
    Event bare = event(whatIf(change.replace("supper.yaml", "bare.yaml")), 0);

    assertThat(own.kitchen().ovens()).extracting(Oven::name).containsExactly("left oven", "right oven");
    assertThat(own.dishes()).extracting(Dish::name).containsExactly("Rolls");
    assertThat(own.dishes().getFirst().servings().portions()).isEqualTo(3);
    assertThat(own.dishes().getFirst().batches()).isEqualTo(2);
    assertThat(bare.kitchen().ovens()).extracting(Oven::name).containsExactly("left oven", "right oven");
  }

  @Test
  void patches_of_a_dish_from_another_file_come_in_the_order_of_the_axes() {
    WhatIf whatIf = whatIf("""
        ovenloom: 1
        what if: Another soup?
        event: supper.yaml
        axes:
          soup: {stew: {dishes: {Soup: {from: stew.yaml, portions: 2}}}}
          portions: {many: {dishes: {Stew: {portions: 1}}}}
        """);

    assertThat(event(whatIf, 0).dishes().getFirst().batches()).isEqualTo(4);
  }

  @Test
  void a_dish_is_taken_out_and_one_from_a_file_is_added() {
    Event event = event(whatIf(axes("menu: {winter: {dishes: {Soup: null, Stew: {from: stew.yaml}}}}")), 0);

    assertThat(event.dishes()).extracting(Dish::name).containsExactly("Bread", "Stew");
  }

  @Test
  void listed_variations_come_as_listed() {
    WhatIf whatIf = whatIf(OVENS_AND_GUESTS + """
        take:
          - {ovens: two ovens, guests: 8}
          - {guests: 12, ovens: one oven}
        """);

    assertThat(whatIf.size()).isEqualTo(2);
    assertThat(whatIf.variation(0).name()).isEqualTo("two ovens, 8 guests");
    assertThat(whatIf.variation(1).name()).isEqualTo("one oven, 12 guests");
  }

  @Test
  void a_sample_is_the_same_for_the_same_seed_and_holds_nothing_twice() {
    String many = axes("guests: " + LongStream.rangeClosed(1, 200).boxed().toList()
        + "\n  clock: [5 min, 10 min]");

    List<String> once = names(whatIf(many + "take: {sample: 50, seed: 7}\n"));
    List<String> again = names(whatIf(many + "take: {sample: 50, seed: 7}\n"));
    List<String> other = names(whatIf(many + "take: {sample: 50, seed: 8}\n"));
    assertThat(once).hasSize(50).doesNotHaveDuplicates().isEqualTo(again).isNotEqualTo(other);
  }

  @Test
  void a_sample_of_more_than_there_are_is_all_of_them() {
    assertThat(names(whatIf(OVENS_AND_GUESTS + "take: {sample: 50}\n"))).hasSize(4);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
      menu: {a: {dishes: {Soop: null}}}          | it.yaml:5:23: there is no dish "Soop"
      rooms: {a: {kitchen: {rom: 20 C}}}         | it.yaml:5:25: "rom" is not said of a kitchen
      rooms: {a: {kitchen: {room: 20}}}          | it.yaml:5:31: "20" is not a temperature
      guests: {many: a lot}                      | it.yaml:5:18: a choice cannot be a single text
      guests: {many: }                           | it.yaml:5:12: "many" has no value
      guests: [4, 4]                             | it.yaml:5:15: there is another choice "4"
      guests: []                                 | it.yaml:5:11: nothing to choose from
      gests: [4, 5]                              | it.yaml:5:3: "gests" is not said of an event
      """)
  void a_mistake_in_a_choice_is_shown_at_its_place(String axis, String said) {
    assertThat(mistakes(axes(axis))).contains(said);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
      take: all                               | "all" is not understood
      take: [{ovens: one oven}]               | a variation needs "guests:"
      take: [{ovens: no oven, guests: 8}]     | there is no choice for "ovens" "no oven"
      take: {sample: 0}                       | "0" is not a whole number from 1 to 1000000
      """)
  void so_is_one_in_what_to_take(String take, String said) {
    assertThat(mistakes(OVENS_AND_GUESTS + take + "\n")).contains(said);
  }

  @Test
  void a_choice_that_only_goes_with_another_is_no_mistake() {
    WhatIf whatIf = whatIf(axes(
        """
            menu: {bread: {dishes: {Bread: {steps: [{do: knead, takes: 9 min, hands: throughout, appliance: mixer}]}}}}
              kitchen: {without: as it is, with: {kitchen: {appliances: {mixer: 1}}}}
            """));

    assertThat(whatIf.event(0)).isInstanceOf(Reading.Mistaken.class);
    assertThat(event(whatIf, 1).kitchen().appliances()).hasSize(1);
  }

  @Test
  void what_is_well_written_and_cannot_be_done_is_no_mistake_either() {
    WhatIf whatIf = whatIf(axes("bread: {large: {dishes: {Bread: {steps: {slice: {takes: 5 days}}}}}}"));

    assertThat(whatIf.event(0)).isInstanceOfSatisfying(Reading.Mistaken.class,
        mistaken -> assertThat(mistaken.isWellWritten()).isTrue());
  }

  @Test
  void more_variations_than_a_machine_can_plan_are_refused() {
    String guests = LongStream.rangeClosed(1, 1001).boxed().toList().toString();

    assertThat(mistakes(axes("guests: " + guests + "\n  landing: {a: as it is}\n  clock: " + guests)))
        .contains("more than 1000000 variations");
  }

  @Test
  void an_event_is_no_what_if() {
    assertThat(mistakes(Desktop.SUPPER)).contains("\"guests\" is not said of a what-if file");
  }

  private static String axes(String axes) {
    return "ovenloom: 1\nwhat if: It?\nevent: supper.yaml\naxes:\n  " + axes + "\n";
  }

  static List<Path> house() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("../problems"))) {
      return files.filter(file -> file.toString().endsWith(".what-if.yaml")).sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("house")
  void every_what_if_in_the_house_reads_with_all_its_variations(Path file) {
    WhatIf whatIf = understood(WhatIfFile.read(file, Objects.requireNonNull(file.getParent())));

    assertThat(whatIf.size()).isGreaterThan(1);
    assertThat(LongStream.range(0, whatIf.size()).mapToObj(index -> event(whatIf, index)).distinct().count())
        .isEqualTo(whatIf.size());
  }

  @ParameterizedTest
  @CsvSource({"clubhouse-menus, 600", "birthday-by-the-thousand, 1000"})
  void the_caterer_and_the_planner_have_as_many_runs_as_they_ask_for(String name, long runs) {
    Path problems = Path.of("../problems");

    assertThat(understood(WhatIfFile.read(problems.resolve(name + ".what-if.yaml"), problems)).size())
        .isEqualTo(runs);
  }

  private static List<String> names(WhatIf whatIf) {
    return LongStream.range(0, whatIf.size()).mapToObj(index -> whatIf.variation(index).name()).toList();
  }

  private Desktop desk() {
    return new Desktop(folder);
  }

  private Reading<WhatIf> read(String yaml) {
    desk().put("it.yaml", yaml);
    return WhatIfFile.read(folder.resolve("it.yaml"), folder);
  }

  private WhatIf whatIf(String yaml) {
    return understood(read(yaml));
  }

  private static WhatIf understood(Reading<WhatIf> reading) {
    return switch (reading) {
      case Reading.Understood<WhatIf>(WhatIf whatIf, var sources, var notes) -> whatIf;
      case Reading.Mistaken<WhatIf>(List<Mistake> mistakes) ->
        throw new AssertionError(MistakeText.of(mistakes));
    };
  }

  private String mistakes(String yaml) {
    return switch (read(yaml)) {
      case Reading.Understood<WhatIf> fine -> "";
      case Reading.Mistaken<WhatIf>(List<Mistake> mistakes) ->
        MistakeText.of(mistakes).replace(folder + "/", "");
    };
  }

  private static Event event(WhatIf whatIf, long index) {
    return switch (whatIf.event(index)) {
      case Reading.Understood<Event>(Event event, var sources, var notes) -> event;
      case Reading.Mistaken<Event>(List<Mistake> mistakes) ->
        throw new AssertionError(MistakeText.of(mistakes));
    };
  }
}
