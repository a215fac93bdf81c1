package ovenloom.solver.place;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.solver.timeline.Footprints;
import ovenloom.solver.timeline.RackFit;
import ovenloom.solver.timeline.Timeline;

/** Two racks of 40 x 30 cm, each 10 cm clear, or two shelves of that size and height; the first is below, or above. */
class TiersTest {

  private static final int CENTIMETRE = 10_000;

  private static final int CAKE = 5;
  private static final int BREAD = 6;
  private static final int CHICKEN = 7;

  private static final long READY = 0;
  private static final long RAW_FISH = 336_150;
  private static final long RAW_POULTRY = 347_039;

  private static final int LOW = 0;
  private static final int HIGH = 1;
  private static final List<Integer> LOW_FIRST = List.of(LOW, HIGH);
  private static final List<Integer> HIGH_FIRST = List.of(HIGH, LOW);

  private static final int TOP = 0;
  private static final int BOTTOM = 1;

  private final Footprints footprints = new Footprints();
  private final Tiers racks = tiers(true);
  private final Tiers shelves = tiers(false);

  private Tiers tiers(boolean tallReachesUp) {
    var fit = new RackFit(footprints, 40 * CENTIMETRE, 30 * CENTIMETRE, CENTIMETRE);
    return new Tiers(0, 600, List.of(fit, fit), new long[]{10 * CENTIMETRE, 10 * CENTIMETRE}, tallReachesUp);
  }

  private Piece tray(int height) {
    return piece(40, height);
  }

  private Piece halfTray(int height) {
    return piece(19, height);
  }

  private Piece piece(int width, int height) {
    return new Piece(footprints.number(width * CENTIMETRE, 30 * CENTIMETRE), false,
        (long) height * CENTIMETRE,
        BurnerSize.SMALL);
  }

  private static void put(Tiers tiers, int from, int to, Piece piece, int tier, long requires, int owner) {
    tiers.take(from, to, List.of(piece), new int[]{tier}, requires, owner);
  }

  private boolean mayStand(int tier, long requires) {
    return shelves.hasRoom(100, 110, List.of(halfTray(5)), new int[]{tier}, requires);
  }

  @Test
  void a_second_tray_goes_on_the_other_rack_and_a_third_waits() {
    assertThat(racks.room(100, 130, List.of(tray(5), tray(5)), LOW_FIRST, READY)).containsExactly(LOW, HIGH);
    assertThat(racks.room(100, 130, List.of(tray(5), tray(5)), HIGH_FIRST, READY)).containsExactly(HIGH, LOW);
    assertThat(racks.room(100, 130, List.of(tray(5), tray(5), tray(5)), LOW_FIRST, READY)).isNull();
    assertThat(racks.room(100, 130, List.of(tray(5), tray(5)), List.of(LOW), READY)).isNull();
  }

  @Test
  void looking_for_room_takes_none() {
    racks.room(100, 130, List.of(tray(5), tray(5)), LOW_FIRST, READY);
    racks.hasRoom(100, 130, List.of(tray(5), tray(5)), new int[]{LOW, HIGH}, READY);

    assertThat(racks.room(100, 130, List.of(tray(5), tray(5)), LOW_FIRST, READY)).isNotNull();
  }

  @Test
  void the_cake_waits_for_the_last_tray_that_is_in_its_way() {
    put(racks, 100, 130, tray(5), LOW, READY, BREAD);
    put(racks, 110, 140, tray(5), HIGH, READY, CAKE);

    assertThat(racks.latestStart(130, 20, List.of(tray(5)), LOW_FIRST, READY, 0)).isEqualTo(130);
    assertThat(racks.blocker()).isEqualTo(Timeline.NOBODY);
    assertThat(racks.latestStart(129, 20, List.of(tray(5)), LOW_FIRST, READY, 0)).isEqualTo(90);
    assertThat(racks.blocker()).isEqualTo(CAKE);
    assertThat(racks.latestStart(129, 20, List.of(tray(5)), LOW_FIRST, READY, 91)).isEqualTo(Timeline.NONE);
    assertThat(racks.latestStart(129, 20, List.of(tray(5)), List.of(LOW), READY, 0)).isEqualTo(80);
    assertThat(racks.blocker()).isEqualTo(BREAD);
  }

  @Test
  void bread_taller_than_its_rack_needs_the_rack_above_empty_and_closes_it() {
    assertThat(racks.room(100, 130, List.of(halfTray(10)), List.of(LOW), READY)).containsExactly(LOW);
    put(racks, 100, 130, halfTray(5), HIGH, READY, CAKE);

    assertThat(racks.room(129, 140, List.of(halfTray(11)), List.of(LOW), READY)).isNull();
    assertThat(racks.room(129, 140, List.of(halfTray(10)), List.of(LOW), READY)).isNotNull();
    assertThat(racks.room(130, 140, List.of(halfTray(11)), List.of(LOW), READY)).isNotNull();

    put(racks, 200, 230, halfTray(11), LOW, READY, BREAD);
    assertThat(racks.room(229, 240, List.of(halfTray(5)), List.of(HIGH), READY)).isNull();
    assertThat(racks.room(229, 240, List.of(halfTray(5)), List.of(LOW), READY)).isNotNull();
    assertThat(racks.room(230, 240, List.of(halfTray(5)), List.of(HIGH), READY)).isNotNull();
  }

  @Test
  void a_bird_as_tall_as_all_racks_together_just_goes_in_and_a_taller_one_never() {
    assertThat(racks.room(100, 130, List.of(tray(20)), List.of(LOW), READY)).isNotNull();
    assertThat(racks.room(100, 130, List.of(tray(21)), List.of(LOW), READY)).isNull();
    assertThat(racks.room(100, 130, List.of(tray(11)), List.of(HIGH), READY)).isNull();
    assertThat(racks.latestStart(100, 30, List.of(tray(21)), LOW_FIRST, READY, 0)).isEqualTo(Timeline.NONE);
    assertThat(racks.blocker()).isEqualTo(Timeline.HOURS);
  }

  @Test
  void nothing_taller_than_a_shelf_stands_on_it() {
    assertThat(shelves.room(100, 130, List.of(tray(10)), LOW_FIRST, READY)).isNotNull();
    assertThat(shelves.room(100, 130, List.of(tray(11)), LOW_FIRST, READY)).isNull();
  }

  @Test
  void raw_chicken_stands_below_what_is_ready_to_eat_and_never_beside_it() {
    put(shelves, 90, 120, halfTray(5), BOTTOM, RAW_POULTRY, CHICKEN);

    assertThat(mayStand(BOTTOM, READY)).as("beside it").isFalse();
    assertThat(mayStand(BOTTOM, RAW_FISH)).as("beside it").isFalse();
    assertThat(mayStand(BOTTOM, RAW_POULTRY)).isTrue();
    assertThat(mayStand(TOP, READY)).isTrue();
    assertThat(mayStand(TOP, RAW_FISH)).isTrue();
    assertThat(mayStand(TOP, RAW_POULTRY)).isTrue();
  }

  @Test
  void nothing_that_asks_for_less_stands_below_raw_fish() {
    put(shelves, 90, 120, halfTray(5), TOP, RAW_FISH, CHICKEN);

    assertThat(mayStand(BOTTOM, READY)).isFalse();
    assertThat(mayStand(BOTTOM, RAW_FISH)).isTrue();
    assertThat(mayStand(BOTTOM, RAW_POULTRY)).isTrue();
  }

  @Test
  void food_waits_until_the_raw_chicken_above_it_is_gone() {
    put(shelves, 90, 120, halfTray(5), TOP, RAW_POULTRY, CHICKEN);

    assertThat(shelves.latestStart(120, 20, List.of(tray(5)), List.of(BOTTOM), READY, 0)).isEqualTo(120);
    assertThat(shelves.latestStart(119, 20, List.of(tray(5)), List.of(BOTTOM), READY, 0)).isEqualTo(70);
    assertThat(shelves.blocker()).isEqualTo(CHICKEN);
  }

  @Test
  void a_shelf_lent_out_is_used_before_and_after() {
    Stream.of(TOP, BOTTOM).forEach(shelf -> shelves.close(shelf, 200, 300));

    assertThat(shelves.latestStart(300, 30, List.of(tray(5)), LOW_FIRST, READY, 0)).isEqualTo(300);
    assertThat(shelves.latestStart(299, 30, List.of(tray(5)), LOW_FIRST, READY, 0)).isEqualTo(170);
    assertThat(shelves.blocker()).isEqualTo(Timeline.HOURS);
    shelves.clear();
    assertThat(shelves.latestStart(299, 30, List.of(tray(5)), LOW_FIRST, READY, 0)).isEqualTo(170);
  }

  @Test
  void a_cleared_oven_is_empty() {
    put(racks, 100, 130, tray(5), LOW, READY, BREAD);

    racks.clear();

    assertThat(racks.latestStart(110, 20, List.of(tray(5)), List.of(LOW), READY, 0)).isEqualTo(110);
  }
}
