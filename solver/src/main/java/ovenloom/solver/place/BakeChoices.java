package ovenloom.solver.place;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.IntStream;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.life.BakeMinutes;
import ovenloom.model.life.RoastOvens;
import ovenloom.model.life.Starts;
import ovenloom.model.measure.Setting;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Need;
import ovenloom.model.safety.Profile;
import ovenloom.solver.timeline.Bake;

/** Every oven, mode and mark in which a run may be baked; of a whole roast those that are hot enough. */
final class BakeChoices {

  /** Minutes by which a stage may be shorter or longer than it is written. */
  private static final int STAGE_SLIP = 3;
  private static final long TENTHS_OF_A_KELVIN_A_POINT = 50;

  private final Event event;
  private final BakeMinutes minutes;
  private final Starts starts;
  private final RoastOvens roasts;
  private final Map<String, Integer> tagBits = new TreeMap<>();

  BakeChoices(Event event, BakeMinutes minutes) {
    this.event = event;
    this.minutes = minutes;
    starts = new Starts(minutes.cards());
    roasts = new RoastOvens(Profile.of(event.rules()), minutes.cards());
  }

  /**
   * For each start that a run's food may have, the one it is written for first, the ways to bake it, oven by oven, those as
   * written first; none for a run that is no bake.
   */
  List<List<BakeChoice>> of(Run run) {
    Need.Bake bake = run.step().bake();
    if (bake == null) {
      return List.of(List.of());
    }
    return starts.of(run.units().getFirst()).stream().map(start -> from(start, run, bake)).toList();
  }

  private List<BakeChoice> from(Starts.Start start, Run run, Need.Bake bake) {
    List<BakeChoice> choices = new ArrayList<>();
    Kitchen kitchen = event.kitchen();
    for (int oven = 0; oven < kitchen.ovens().size(); oven++) {
      for (String mode : kitchen.ovens().get(oven).modes()) {
        addMarks(choices, start, run, bake, oven, mode);
      }
    }
    return choices;
  }

  private void addMarks(
      List<BakeChoice> choices, Starts.Start start, Run run, Need.Bake bake, int number, String mode) {
    Oven oven = event.kitchen().ovens().get(number);
    OvenDial dial = new OvenDial(oven);
    List<Integer> racks = IntStream.range(0, oven.racks().size())
        .filter(rack -> bake.level() == null || oven.isAt(rack, bake.level()))
        .boxed()
        .toList();
    List<Setting> written = new ArrayList<>();
    for (Need.Stage stage : bake.stages()) {
      Setting mark = dial.written(stage, mode);
      if (mark == null || racks.isEmpty()) {
        return;
      }
      written.add(mark);
    }
    List<List<Setting>> all = inTheirWindows(bake, dial, mode).stream()
        .filter(marks -> roasts.allows(run.units().getFirst(), mode, marks))
        .toList();
    if (all.isEmpty()) {
      return;
    }
    List<Setting> nearest = all.contains(written) ? written : all.getFirst();
    add(choices, start, run, bake, number, mode, nearest, racks, true);
    for (List<Setting> marks : all) {
      if (!marks.equals(nearest)) {
        add(choices, start, run, bake, number, mode, marks, racks, false);
      }
    }
  }

  private void add(List<BakeChoice> choices, Starts.Start start, Run run, Need.Bake bake, int number,
      String mode,
      List<Setting> marks, List<Integer> racks, boolean asWritten) {
    Oven oven = event.kitchen().ovens().get(number);
    BatchStep first = run.units().getFirst();
    int needed = minutes.needed(first, oven, mode, marks, start.celsius());
    if (needed != BakeMinutes.NEVER) {
      NeededFrom from = new NeededFrom(minutes, first, oven, mode, marks);
      choices.add(choice(run, bake, number, mode, marks, racks, asWritten, start, needed, from));
    }
  }

  /** A mark for each stage, in all ways in which each is in its window. */
  private static List<List<Setting>> inTheirWindows(Need.Bake bake, OvenDial dial, String mode) {
    List<List<Setting>> all = List.of(List.of());
    for (Need.Stage stage : bake.stages()) {
      List<List<Setting>> longer = new ArrayList<>();
      for (List<Setting> marks : all) {
        for (Setting mark : dial.window(stage, mode)) {
          List<Setting> more = new ArrayList<>(marks);
          more.add(mark);
          longer.add(more);
        }
      }
      all = longer;
    }
    return all;
  }

  private BakeChoice choice(
      Run run,
      Need.Bake bake,
      int oven,
      String mode,
      List<Setting> marks,
      List<Integer> racks,
      boolean asWritten,
      Starts.Start start,
      int needed,
      NeededFrom from) {
    OvenDial dial = new OvenDial(event.kitchen().ovens().get(oven));
    long off = 0;
    int[] settings = new int[marks.size()];
    for (int stage = 0; stage < settings.length; stage++) {
      settings[stage] = dial.setting(marks.get(stage), mode);
      off += Math.round(10 * dial.off(bake.stages().get(stage), mode, marks.get(stage)));
    }
    int points = (int) (off / TENTHS_OF_A_KELVIN_A_POINT);
    Setting hold = event.kitchen().ovens().get(oven).hold();
    List<HandsNeed> hands = HandsNeeds.of(run.step(), run.minutes(), needed);
    return new BakeChoice(oven, mode, marks, shape(run, bake, settings, hands, needed), racks, points,
        asWritten, start.state(), start.celsius(),
        needed, from, hands, new BakeChoice.Hold(hold, dial.setting(hold, mode)), 0);
  }

  /** A moment in the middle may open the door at any minute to which it may slip. */
  private Bake shape(Run run, Need.Bake bake, int[] settings, List<HandsNeed> all, int minutes) {
    List<HandsNeed> middle = all.stream()
        .filter(hands -> !hands.isDoor() && hands.from() > 0 && hands.minutes() != HandsNeed.TO_THE_END)
        .toList();
    return new Bake(
        stageMinutes(bake, minutes),
        settings,
        bake.load(),
        bake.unload(),
        bake.doorShut(),
        middle.stream().mapToInt(need -> need.from() - need.slip()).toArray(),
        middle.stream().mapToInt(need -> need.minutes() + 2 * need.slip()).toArray(),
        tags(run.dish()),
        avoided(run.dish()));
  }

  /** As written, but that earlier stages slip where nothing would be left for the last. */
  static int[] stageMinutes(Need.Bake bake, int minutes) {
    int[] lengths = new int[bake.stages().size()];
    int left = minutes;
    long over = 1L - minutes;
    for (Need.Stage stage : bake.stages()) {
      over += Objects.requireNonNullElse(stage.minutes(), 0);
    }
    for (int stage = 0; stage < lengths.length - 1; stage++) {
      int written = Objects.requireNonNullElse(bake.stages().get(stage).minutes(), 1);
      int slip = Math.clamp(over, 0, Math.min(STAGE_SLIP, written));
      lengths[stage] = Math.min(written - slip, left - 1);
      left -= lengths[stage];
      over -= slip;
    }
    lengths[lengths.length - 1] = left;
    return lengths;
  }

  private long tags(Dish dish) {
    long bits = 0;
    for (String tag : dish.tags()) {
      bits |= bit(tag);
    }
    return bits;
  }

  private long avoided(Dish dish) {
    long bits = 0;
    for (Event.Apart apart : event.apart()) {
      bits |= dish.tags().contains(apart.one()) ? bit(apart.other()) : 0;
      bits |= dish.tags().contains(apart.other()) ? bit(apart.one()) : 0;
    }
    return bits;
  }

  /** Only tags that some oven must keep apart need a bit. */
  private long bit(String tag) {
    boolean counts = event.apart()
        .stream()
        .anyMatch(apart -> apart.one().equals(tag) || apart.other().equals(tag));
    return counts ? 1L << tagBits.computeIfAbsent(tag, each -> tagBits.size()) : 0;
  }
}
