package ovenloom.model.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.model.kitchen.Store;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Need;
import ovenloom.model.menu.Step;

/** A card that offers ways to chill: the first that is fast enough is taken. */
class ChillByTest {

  @TempDir
  private Path folder;

  private Desktop desk(String kitchen, String dish) {
    return new Desktop(folder).put("it.yaml", """
        ovenloom: 1
        event: Supper
        rules: us-service
        guests: 4
        courses: [{name: supper, at: 2026-10-10 19:00}]
        cooks: [{name: Host, hours: {day before: 8:00-20:00, on the day: 8:00-20:00}}]
        kitchen: {%s}
        dishes: [{%s}]
        """.formatted(kitchen, dish));
  }

  private static Step chilled(Event event) {
    return event.dishes().getFirst().step("chill");
  }

  private static List<String> places(Event event) {
    return Objects.requireNonNull(chilled(event).shelf()).stores();
  }

  private String notes() {
    return switch (new Desktop(folder).read("it.yaml")) {
      case Reading.Understood<Event>(var event, var sources, var notes) -> MistakeText.of(notes);
      case Reading.Mistaken<Event>(var mistakes) -> throw new AssertionError(MistakeText.of(mistakes));
    };
  }

  private static final String WALK_INS = """
      burners: [large],
      cold: [{name: walk-in, holds: 3 C, air: moving, shelves: {size: 60 x 60 x 30 cm}},
        {name: walk-in freezer, holds: -18 C, air: moving, shelves: {size: 60 x 60 x 30 cm}}],
      vessels: {pan: {count: 1, size: 50 x 30 x 10 cm}}""";

  private static final String CHILI = """
      dish: Chili, arrives: cool, kind: casserole, thick: %s cm, tags: [tcs], steps: [
        {do: cook, takes: 1 h, burner: large, in: pan},
        {do: chill, chill by: [walk-in, ice bath, walk-in freezer], keeps: {walk-in: 2 days}}]""";

  /**
   * Of two inches and three, in a walk-in, in ice and in a walk-in freezer, only two inches in the freezer were cold in time: Roberts,
   * Olds, Shanklin, Sauer and Sneed, Food Protection Trends 33(1), 2013, 27-31.
   */
  @Test
  void two_inches_of_chili_are_chilled_in_the_freezer_as_the_trial_found() {
    Event event = desk(WALK_INS, CHILI.formatted("5.1")).event("it.yaml");

    assertThat(places(event)).containsExactly("walk-in freezer");
    assertThat(notes()).contains("chilled by walk-in freezer")
        .containsPattern("Too slow: walk-in: from .*at most 2 h .*; ice bath: from .*at most 2 h");
  }

  /** The same trial. */
  @Test
  void three_inches_of_chili_are_cold_in_time_in_none_of_them() {
    String mistakes = desk(WALK_INS, CHILI.formatted("7.6")).mistakes("it.yaml");

    assertThat(mistakes).contains("it.yaml:13:")
        .contains("this cools too slowly, however it is chilled: walk-in: from")
        .contains("ice bath: from")
        .contains("walk-in freezer: from")
        .contains("You could change: \"thick:\" for a thinner layer or smaller pieces, now 7.6 cm; ")
        .doesNotContain("\"chill by:\" with", "\"kind:\"", "\"covered:");
  }

  private static final String BEANS = """
      dish: Beans, arrives: cool, covered: yes, tags: [tcs], steps: [
        {do: cook, takes: 1 h, burner: large, in: tub}, {do: chill, %s, keeps: {fridge: 2 days}}]""";

  private static final String DEEP_TUB = """
      burners: [large],
      cold: [{name: fridge, holds: 4 C, shelves: {size: 60 x 60 x 40 cm}},
        {name: freezer, holds: -18 C, shelves: {size: 60 x 60 x 40 cm}}],
      vessels: {tub: {count: 1, size: 40 x 40 x 15 cm}}""";

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "chill by: fridge               | You could change: \"chill by:\" with \"freezer\" or \"ice bath\" too; ",
      "chill by: [freezer, fridge] | You could change: \"chill by:\" with \"ice bath\" too; ",
      "'takes: 20 h, cold: fridge'    | You could change: \"chill by:\" with \"freezer\" or \"ice bath\", in place of \"takes:\" and \"cold:\"; "})
  void what_the_card_has_not_tried_is_told(String chill, String told) {
    String mistakes = desk(DEEP_TUB, BEANS.formatted(chill)).mistakes("it.yaml");

    assertThat(mistakes).contains(told)
        .contains("\"thick:\" for a thinner layer or smaller pieces; \"kind:\", which nothing says; ")
        .contains("\"covered: no\" in the cold; \"holds:\" and \"air:\"");
  }

  @Test
  void in_ice_a_lid_is_no_matter() {
    String mistakes = desk(DEEP_TUB,
        BEANS.replace("covered", "kind: casserole, covered").formatted("chill by: ice bath"))
        .mistakes("it.yaml");

    assertThat(mistakes).contains("with \"fridge\" or \"freezer\" too; ")
        .doesNotContain("\"covered:", "\"air:", "\"kind:", "or \"ice bath\"");
  }

  @Test
  void soup_is_stirred_in_a_sink_of_ice_every_ten_minutes() {
    Event event = desk("""
        burners: [large],
        cold: [{name: fridge, holds: 4 C, shelves: {size: 60 x 60 x 40 cm}}],
        vessels: {pot: {count: 1, size: 30 x 30 x 12 cm}}""", """
        dish: Soup, arrives: cold, tags: [tcs], steps: [
          {do: cook, takes: 1 h, burner: large, in: pot},
          {do: chill, chill by: [fridge, ice bath], keeps: {fridge: 2 days}}]""").event("it.yaml");

    assertThat(places(event)).containsExactly("ice bath");
    assertThat(event.kitchen().stores()).extracting(Store::kind).contains(Store.Kind.ICE_BATH);
    assertThat(chilled(event).hands()).extracting(Need.Hands::moment)
        .startsWith(new Need.Moment.First(5), new Need.Moment.At(10, 1, false),
            new Need.Moment.At(20, 1, false));
  }

  /** A tub of 15 litres, 24 cm deep, goes into two pans of about nine. */
  @Test
  void beans_are_spread_out_in_as_many_shallow_pans_as_they_need() {
    Event event = desk("""
        burners: [large],
        cold: [{name: blast chiller, holds: 1 C, air: blast, shelves: {count: 3, size: 60 x 60 x 30 cm}}],
        vessels: {tub: {count: 1, size: 25 x 25 x 24 cm}, GN 1/1-65: 3}""", """
        dish: Beans, arrives: cool, kind: casserole, tags: [tcs], steps: [
          {do: cook, takes: 1 h, burner: large, in: tub},
          {do: chill, chill by: [blast chiller, shallow pans], keeps: {blast chiller: 2 days}}]""")
        .event("it.yaml");

    assertThat(chilled(event).vessels()).containsExactly(new Need.InVessel("GN 1/1-65", 2));
    assertThat(chilled(event).hands()).extracting(Need.Hands::moment)
        .containsExactly(new Need.Moment.First(5));
  }

  @Test
  void where_the_rules_set_no_limit_the_first_way_is_taken_until_it_is_cold() {
    Desktop desk = desk(WALK_INS, CHILI.formatted("7.6"));
    Event event = desk.put("home.yaml", read("it.yaml").replace("us-service", "us-home")).event("home.yaml");

    assertThat(places(event)).containsExactly("walk-in");
    assertThat(chilled(event).takes().minutes(4)).isBetween(6 * 60, 24 * 60);
  }

  private String read(String file) {
    try {
      return Files.readString(folder.resolve(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void a_way_may_say_for_how_long() {
    Event event = desk(WALK_INS,
        CHILI.formatted("5.1").replace("walk-in freezer]", "walk-in freezer 100 min]"))
        .event("it.yaml");

    assertThat(chilled(event).takes().minutes(4)).isEqualTo(100);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "chill by: [walk-out]                    | there is no way to chill \"walk-out\"",
      "chill by: walk-in, takes: 1 h           | \"takes\" is said of a step that says \"chill by\"",
      "chill by: []                            | \"chill by\" is an empty list"})
  void what_is_no_way_to_chill_is_told(String chill, String told) {
    String mistakes = desk(WALK_INS, """
        dish: Chili, tags: [tcs], steps: [{do: cook, takes: 1 h, burner: large, in: pan}, {do: chill, %s}]"""
        .formatted(chill)).mistakes("it.yaml");

    assertThat(mistakes).contains(told);
  }
}
