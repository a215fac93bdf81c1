package ovenloom.model.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Kitchens.aHomeKitchen;
import static ovenloom.model.audit.Kitchens.aShelf;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.model.heat.Kind;
import ovenloom.model.kitchen.Air;
import ovenloom.model.kitchen.Availability;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.kitchen.Store;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Mass;
import ovenloom.model.measure.Temperature;

/** The numbers are docs/rules/warm-load.md's; common practice, no source. */
class WarmLoadTest {

  private final KitchenRule rule = new WarmLoad();

  private static Dishes stew(String name, String weight) {
    return aDish(name).kind(Kind.CASSEROLE, Length.mm(40))
        .ingredient("beef", weight)
        .step(aStep("simmer").takes(30).burner(BurnerSize.SMALL).in("bowl"))
        .step(aStep("chill").takes(60).shelf("fridge", "larder").in("bowl"));
  }

  private static Kitchens kitchen(int holds, Air air, @Nullable Mass load) {
    return aHomeKitchen().with(new Store("fridge", Store.Kind.FRIDGE, Temperature.celsius(holds), air,
        List.of(aShelf("top")), load, Availability.ALWAYS)).fridge("larder", aShelf("top"));
  }

  private static Plans simmeredAtTen(Events supper) {
    return aPlanFor(supper)
        .with(aRun("one", "simmer", "10:00", 30).burners("large"))
        .with(aRun("two", "simmer", "10:00", 30).burners("medium"));
  }

  private List<Break> twoStews(Kitchens kitchen, String one, String two, String second) {
    Events supper = aSupperOf(stew("one", "3 kg"), stew("two", "3 kg")).in(kitchen);
    return simmeredAtTen(supper)
        .with(aStay("one", "simmer", "10:30").counter(one))
        .with(aStay("two", "simmer", "10:30").counter(two))
        .with(aRun("one", "chill", one, 60).shelves("fridge", "top"))
        .with(aRun("two", "chill", two, 60).shelves(second, "top"))
        .heldAgainst(rule);
  }

  private List<Break> twoStews(String one, String two, String second) {
    return twoStews(kitchen(4, Air.STILL, Store.WARM_LOAD), one, two, second);
  }

  @ParameterizedTest
  @CsvSource({"10:40, true", "11:39, true", "11:40, false"})
  void two_pans_go_in_an_hour_apart_and_not_a_minute_less(String two, boolean tooMuch) {
    assertThat(twoStews("10:40", two, "fridge")).extracting(Break::off)
        .isEqualTo(tooMuch ? List.of(2000L) : List.of());
  }

  @Test
  void it_says_what_goes_in_how_much_and_what_would_help() {
    assertThat(twoStews("10:40", "10:50", "fridge")).singleElement().satisfies(each -> {
      assertThat(each.who()).containsExactly("one/chill", "two/chill", "fridge");
      assertThat(each.unit()).isEqualTo(Break.Unit.GRAMS);
      assertThat(each.what()).contains("about 6.0 kg", "at most 4 kg", "an hour apart", "warm load")
          .doesNotContain("counter");
    });
  }

  @Test
  void each_fridge_has_a_load_of_its_own() {
    assertThat(twoStews("10:40", "10:40", "larder")).isEmpty();
  }

  @Test
  void a_blast_chiller_takes_any_and_a_large_fridge_as_much_as_its_file_says() {
    assertThat(twoStews(kitchen(4, Air.BLAST, null), "10:40", "10:40", "fridge")).isEmpty();
    assertThat(twoStews(kitchen(4, Air.STILL, Mass.grams(6000)), "10:40", "10:40", "fridge")).isEmpty();
    assertThat(twoStews(kitchen(4, Air.STILL, Mass.grams(5900)), "10:40", "10:40", "fridge"))
        .extracting(Break::off)
        .containsExactly(100L);
    assertThat(Store.usualWarmLoad(Store.Kind.FRIDGE, Air.BLAST)).isNull();
    assertThat(Store.usualWarmLoad(Store.Kind.FREEZER, Air.STILL)).isNull();
    assertThat(Store.usualWarmLoad(Store.Kind.FRIDGE, Air.MOVING)).isEqualTo(Mass.grams(4000));
  }

  private List<Break> oneLargeStew(int room, int holds, String chilled) {
    Events supper = aSupperOf(stew("one", "5 kg")).in(kitchen(holds, Air.STILL, Store.WARM_LOAD).room(room));
    return aPlanFor(supper)
        .with(aRun("one", "simmer", "6:00", 30).burners("large"))
        .with(aStay("one", "simmer", "6:30").counter(chilled))
        .with(aRun("one", "chill", chilled, 60).shelves("fridge", "top"))
        .heldAgainst(rule);
  }

  @Test
  void one_batch_alone_may_be_too_much_and_is_to_be_made_in_smaller_ones() {
    assertThat(oneLargeStew(20, 4, "6:40")).singleElement().satisfies(each -> {
      assertThat(each.off()).isEqualTo(1000);
      assertThat(each.what()).contains("smaller batches");
    });
  }

  /** A room at 15 C is not 10 K above a fridge at 8 C: on the counter food gets cool enough, and long after it has been simmered it is. */
  @ParameterizedTest
  @CsvSource({"15, 8, 18:00, false", "15, 8, 6:40, true", "20, 8, 18:00, true"})
  void what_has_cooled_to_ten_kelvins_above_it_is_warm_no_longer(
      int room, int holds, String chilled, boolean tooMuch) {
    List<Break> breaks = oneLargeStew(room, holds, chilled);

    assertThat(breaks.isEmpty()).isEqualTo(!tooMuch);
    assertThat(breaks).allSatisfy(each -> assertThat(each.what().contains("counter")).isEqualTo(room == 15));
  }

  @Test
  void what_stays_on_its_shelf_is_not_put_in_again() {
    Events supper = aSupperOf(
        stew("one", "3 kg").step(aStep("lift the fat").takes(5).shelf("fridge").in("bowl")))
        .in(kitchen(4, Air.STILL, Store.WARM_LOAD));

    assertThat(aPlanFor(supper)
        .with(aRun("one", "simmer", "10:00", 30).burners("large"))
        .with(aRun("one", "chill", "10:30", 60).shelves("fridge", "top"))
        .with(aRun("one", "lift the fat", "11:30", 5).shelves("fridge", "top"))
        .with(aStay("one", "lift the fat", "11:35").shelf("19:00", "fridge", "top"))
        .heldAgainst(rule)).isEmpty();
  }

  @Test
  void what_waits_there_counts_like_what_is_chilled_there() {
    Events supper = aSupperOf(aDish("soup").kind(Kind.LIQUID, Length.mm(40))
        .ingredient("stock", "5 l")
        .step(aStep("simmer").takes(30).burner(BurnerSize.SMALL).in("bowl")));

    assertThat(aPlanFor(supper)
        .with(aRun("soup", "simmer", "10:00", 30).burners("large"))
        .with(aStay("soup", "simmer", "10:30").shelf("19:00", "fridge", "top"))
        .heldAgainst(rule)).extracting(Break::off).containsExactly(1000L);
  }
}
