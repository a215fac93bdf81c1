package ovenloom.model.why;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Clock.between;
import static ovenloom.model.audit.Waits.aStay;

import java.util.List;
import org.junit.jupiter.api.Test;
import ovenloom.model.measure.Stretch;
import ovenloom.model.plan.HandsOn;
import ovenloom.model.plan.Stay;
import ovenloom.model.plan.Where;

class StretchingTest {

  private final Stay pie = aStay("pie", "bake", "16:00").counter("16:30")
      .shelf("18:00", "fridge", "top")
      .counter("18:20")
      .stay();

  @Test
  void at_its_ends_food_comes_into_the_fridge_and_out_of_it_when_it_did() {
    Stay longer = Stretching.AT_ITS_ENDS.over(pie, between("15:50", "18:25"));

    assertThat(times(longer)).containsExactly(between("15:50", "16:30"), between("16:30", "18:00"),
        between("18:00", "18:25"));
  }

  @Test
  void between_them_it_stands_on_the_counter_for_as_long_as_it_did() {
    Stay later = Stretching.BETWEEN_THEM.over(pie, between("16:10", "18:25"));

    assertThat(times(later)).containsExactly(between("16:10", "16:40"), between("16:40", "18:05"),
        between("18:05", "18:25"));
  }

  @Test
  void what_is_left_of_a_short_wait_has_no_empty_parts() {
    Stay short20 = Stretching.AT_ITS_ENDS.over(pie, between("18:00", "18:20"));

    assertThat(times(short20)).containsExactly(between("18:00", "18:20"));
    assertThat(short20.parts().getFirst().where()).isEqualTo(new Where.Counter());
  }

  @Test
  void what_went_on_at_once_and_has_to_wait_waits_on_the_counter() {
    Stay none = aStay("pie", "bake", "16:00").stay();

    Stay some = Stretching.AT_ITS_ENDS.over(none, between("15:55", "16:00"));

    assertThat(some.parts()).containsExactly(new Stay.Part(new Where.Counter(), between("15:55", "16:00")));
  }

  @Test
  void who_takes_it_out_of_the_oven_does_so_in_the_last_minute_of_the_wait() {
    Stay inside = aStay("pie", "bake", "16:00").ovenThatIsOff("16:30", "oven").unload("Host").stay();

    Stay later = Stretching.AT_ITS_ENDS.over(inside, between("16:00", "16:40"));

    assertThat(later.hands()).extracting(HandsOn::when).containsExactly(between("16:39", "16:40"));
  }

  private static List<Stretch> times(Stay stay) {
    return stay.parts().stream().map(Stay.Part::when).toList();
  }
}
