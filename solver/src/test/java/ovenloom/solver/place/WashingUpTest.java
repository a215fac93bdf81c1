package ovenloom.solver.place;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ovenloom.solver.supper.Decoded;

/** A bowl that is wanted twice is washed in between. */
class WashingUpTest {

  private static final String TWO_SALADS = """
        - dish: Salad
          steps:
            - {do: mix, takes: 10 min, hands: throughout, in: bowl}
            - {do: arrange, takes: 10 min, hands: throughout, in: platter}
        - dish: Fruit
          steps:
            - {do: mix, takes: 10 min, hands: throughout, in: bowl}
            - {do: arrange, takes: 10 min, hands: throughout, in: platter, keeps: {counter: 2 h}}
      """;

  @TempDir
  private Path folder;

  private Decoded with(int bowls, String cooks) throws IOException {
    return AtSeven.supper(folder, "vessels: {bowl: {count: %d, wash: 5 min}, platter: 2}".formatted(bowls),
        cooks, TWO_SALADS);
  }

  /** The salad's bowl must be clean at 18:40: the fruit is out of it at 18:35 at the latest. */
  @Test
  void one_bowl_is_washed_when_the_fruit_is_out_of_it_and_clean_the_minute_the_salad_goes_in()
      throws IOException {
    Decoded supper = with(1, "{name: Ann, hours: {on the day: 10:00-20:00}}");

    assertThat(supper.told().when("Salad/mix")).containsExactly("18:40-18:50");
    assertThat(supper.told().washes()).containsExactly("Ann 1 bowl 18:35-18:40");
    assertThat(supper.told().when("Fruit/arrange")).containsExactly("18:25-18:35");
    assertThat(supper.brokenRules()).isEmpty();
  }

  @Test
  void of_two_bowls_none_is_washed() throws IOException {
    Decoded supper = with(2, "{name: Ann, hours: {on the day: 10:00-20:00}}");

    assertThat(supper.told().washes()).isEmpty();
    assertThat(supper.told().when("Fruit/arrange")).containsExactly("18:30-18:40");
    assertThat(supper.brokenRules()).isEmpty();
  }

  @Test
  void a_wash_takes_hands_that_are_not_on_a_break() throws IOException {
    Decoded supper = with(1,
        "{name: Ann, hours: {on the day: 10:00-20:00}, breaks: {on the day: 18:36-18:40}}");

    assertThat(supper.told().washes()).containsExactly("Ann 1 bowl 18:31-18:36");
    assertThat(supper.told().when("Fruit/arrange")).containsExactly("18:21-18:31");
    assertThat(supper.brokenRules()).isEmpty();
  }

  @Test
  void whoever_is_free_washes_up() throws IOException {
    Decoded supper = with(1, """
        {name: Ann, hours: {on the day: 10:00-20:00}, breaks: {on the day: 18:39-18:40}},
        {name: Ben, hours: {on the day: 18:35-18:40}}""");

    assertThat(supper.told().washes()).containsExactly("Ben 1 bowl 18:35-18:40");
    assertThat(supper.brokenRules()).isEmpty();
  }
}
