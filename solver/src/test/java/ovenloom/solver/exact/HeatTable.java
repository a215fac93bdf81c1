package ovenloom.solver.exact;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import ovenloom.model.heat.TemperatureProfile;
import ovenloom.model.life.BakeMinutes;
import ovenloom.model.life.MeanWarmth;
import ovenloom.model.life.Track;
import ovenloom.model.life.Unsaid;
import ovenloom.model.menu.BatchStep;

/** What each way to spend the time before the heat makes of a dish, minute by minute: by the model's own tables of heat. */
final class HeatTable {

  /** What no plan may do. */
  static final long NEVER = -1;

  /** Kelvins by which food may be colder than a start that a plan says it has. */
  private static final double NEARLY = 0.5;

  private final Journey journey;
  private final List<Bake.Way> ways;
  private final Bending bending;
  private final MeanWarmth warmth;
  private final @Nullable Danger danger;
  private final boolean isOutFromTheStart;
  private final @Nullable Afterwards afterwards;
  private final long[] out;
  private final long[] rows;
  private final List<List<Fate>> fates = new ArrayList<>();
  private final List<long[]> thens = new ArrayList<>();

  /**
   * What one of its ways makes of a bake.
   *
   * @param points for what it is baked too long, or {@link #NEVER} where it is too short, or far too long
   * @param then which of the {@link #thens} comes afterwards
   */
  record Fate(long points, long then) {}

  /**
   * Of a journey.
   *
   * @param danger absent where food need be neither hot nor cold
   * @param afterwards absent where it is not the last heat, or there is no danger
   */
  HeatTable(Journey journey, List<Bake.Way> ways, Bending bending, @Nullable Danger danger,
      boolean isOutFromTheStart, @Nullable Afterwards afterwards) {
    this.journey = journey;
    this.ways = ways;
    this.bending = bending;
    this.danger = danger;
    this.isOutFromTheStart = isOutFromTheStart;
    this.afterwards = afterwards;
    warmth = new MeanWarmth(bending.cards());
    Grid grid = journey.grid();
    out = new long[grid.size()];
    rows = new long[grid.size()];
    Arrays.fill(out, NEVER);
    Arrays.fill(rows, NEVER);
    for (int before = 0; before <= grid.before(); before++) {
      for (int cold = 0; cold <= grid.cold(); cold++) {
        if (journey.isPossible(cold)) {
          fill(before, cold);
        }
      }
    }
  }

  /** By cell of the grid, the minutes that it is left out, or {@link #NEVER} where it cools too slowly. */
  long[] out() {
    return out;
  }

  /** By cell, which of the {@link #fates}, or {@link #NEVER}. */
  long[] rows() {
    return rows;
  }

  /** Each with one for each way; with one for a burner, which leaves all food as hot. */
  List<List<Fate>> fates() {
    return fates;
  }

  /** Minutes that it is left out in the end, as {@link Afterwards} numbers them. */
  List<long[]> thens() {
    return thens;
  }

  private void fill(int before, int cold) {
    Grid grid = journey.grid();
    Rehearsal longest = journey.rehearsal(bending.cards(), before, cold, grid.after());
    int since = longest.now() - before - cold - grid.after();
    Track loose = longest.life(Unsaid.LOOSE);
    List<Track> lives = danger == null ? List.of(loose) : List.of(loose, longest.life(Unsaid.OPEN));
    for (int after = 0; after <= grid.after(); after++) {
      int cell = grid.cell(before, cold, after);
      int to = since + before + cold + after;
      out[cell] = danger == null ? 0 : out(danger, lives, since, to);
      rows[cell] = row(fates(loose, to, before, cold, after));
    }
  }

  private long out(Danger limits, List<Track> lives, int since, int to) {
    boolean isCooked = journey.isFromTheHeat();
    long most = 0;
    for (Track life : lives) {
      long sum = 0;
      for (int minute = since; minute < to && (isCooked || isOutFromTheStart); minute++) {
        sum += limits.isLeftOut(life.at(minute), minute) ? 1 : 0;
      }
      most = Math.max(most, sum);
      if (isCooked && !limits.coolsInTime(life.warmest(since, to))) {
        return NEVER;
      }
    }
    return most;
  }

  private List<Fate> fates(Track life, int to, int before, int cold, int after) {
    List<Fate> all = new ArrayList<>();
    if (ways.isEmpty()) {
      all.add(thens.isEmpty() ? new Fate(0, then(null, before, cold, after)) : new Fate(0, 0));
    }
    for (Bake.Way way : ways) {
      TemperatureProfile food = journey.known().isEmpty()
          ? cooked(way, before, cold, after).life(Unsaid.LOOSE).legs().getFirst().food().getFirst()
          : life.food(to);
      int needed = bending.minutes().needed(journey.to(), way.oven(), way.mode(), way.marks(), food);
      double begins = cooked(way, before, cold, after).begins(warmth);
      boolean isEnough = needed <= way.minutes() && way.minutes() <= longest(needed);
      all.add(isEnough && begins >= way.start().celsius() - NEARLY
          ? new Fate(points(way, begins), then(way, before, cold, after))
          : new Fate(NEVER, NEVER));
    }
    return all;
  }

  private int longest(int needed) {
    BatchStep to = journey.to();
    return BakeMinutes.longest(Objects.requireNonNull(to.step().bake()), to, needed);
  }

  private long points(Bake.Way way, double begins) {
    return BakeMinutes.points(way.minutes(),
        bending.minutes().needed(journey.to(), way.oven(), way.mode(), way.marks(), begins));
  }

  private Rehearsal cooked(Bake.@Nullable Way way, int before, int cold, int after) {
    int minutes = way == null ? journey.to().minutes() : way.minutes();
    return journey.rehearsal(bending.cards(), before, cold, after).does(journey.to(), minutes, way);
  }

  /** What comes after the heat. */
  private long then(Bake.@Nullable Way way, int before, int cold, int after) {
    if (danger == null) {
      return 0;
    }
    isCooked(danger, cooked(way, before, cold, after).life(Unsaid.OPEN));
    long[] then = afterwards == null ? new long[0]
        : afterwards.leftOut(() -> cooked(way, before, cold, after), way);
    for (int i = 0; i < thens.size(); i++) {
      if (Arrays.equals(thens.get(i), then)) {
        return i;
      }
    }
    thens.add(then);
    return thens.size() - 1L;
  }

  private void isCooked(Danger limits, Track life) {
    if (!limits.isHotThrough(journey.to().dish().tags(), life.legs().getLast().coldest(life.to()))) {
      throw new UnsupportedOperationException(
          "food that gets hot enough only after the heat, of " + journey.to());
    }
  }

  private int row(List<Fate> fate) {
    int known = fates.indexOf(fate);
    if (known < 0) {
      fates.add(fate);
    }
    return known < 0 ? fates.size() - 1 : known;
  }
}
