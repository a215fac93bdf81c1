package ovenloom.cli.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;
import java.util.function.ToLongFunction;
import java.util.stream.LongStream;
import ovenloom.cli.sheet.GroupWords;
import ovenloom.model.tally.Bins;
import ovenloom.model.tally.Front;
import ovenloom.model.tally.Tally;

/**
 * Hands in the last hour against energy, drawn: plans that no other beats, and about where all the others are.
 *
 * @param width how many minutes, and how many tenths of a kilowatt-hour, one ring stands for
 */
public record FrontPicture(List<Ring> rings, List<Spot> spots, String line, List<Tick> across, List<Tick> up,
    long width) {

  /** Some plans, the larger the more. */
  public record Ring(String left, String top, String radius) {}

  /**
   * One that no other beats.
   *
   * @param hasRoom whether its number can be read beside those before it
   */
  public record Spot(int number, String left, String top, boolean hasRoom, Front.Point point) {

    public String kilowattHours() {
      return GroupWords.kilowattHours((double) point.energy());
    }

    /** The run, and how many more there are like it. */
    public String name() {
      return point.alike() == 0 ? point.name()
          : point.name() + ", and " + GroupWords.counted(point.alike(), "run", "runs") + " like it";
    }
  }

  /** A number that is written on a scale. */
  public record Tick(String at, String words) {}

  private static final double SMALLEST = 2.5;
  private static final double LARGEST = 9;

  /** Percent of the picture between two numbers that can be read. */
  private static final double APART = 5;

  private static final int SIDE = 1000;

  public FrontPicture {
    rings = List.copyOf(rings);
    spots = List.copyOf(spots);
    across = List.copyOf(across);
    up = List.copyOf(up);
  }

  static FrontPicture of(Tally tally) {
    Scale hands = scale(Bins.Bin::hands, Front.Point::hands, tally);
    Scale energy = scale(Bins.Bin::energy, Front.Point::energy, tally);
    return new FrontPicture(rings(tally.bins(), hands, energy), spots(tally.front().points(), hands, energy),
        line(tally.front().points(), hands, energy),
        hands.ticks().stream().map(tick -> new Tick(hands.at(tick), GroupWords.grouped(tick))).toList(),
        energy.ticks()
            .stream()
            .map(tick -> new Tick(energy.down(tick), GroupWords.kilowattHours((double) tick)))
            .toList(),
        tally.bins().width());
  }

  public boolean isEmpty() {
    return spots.isEmpty();
  }

  private static Scale scale(ToLongFunction<Bins.Bin> ofBin, ToLongFunction<Front.Point> ofPoint,
      Tally tally) {
    LongStream bins = tally.bins().counts().keySet().stream().mapToLong(ofBin);
    LongStream points = tally.front().points().stream().mapToLong(ofPoint);
    var all = LongStream.concat(bins, points).summaryStatistics();
    return all.getCount() == 0 ? Scale.of(0, 1)
        : Scale.of(all.getMin(), all.getMax() + tally.bins().width() - 1);
  }

  private static List<Ring> rings(Bins bins, Scale hands, Scale energy) {
    long middle = (bins.width() - 1) / 2;
    return bins.counts()
        .entrySet()
        .stream()
        .map(each -> new Ring(hands.at(each.getKey().hands() + middle),
            energy.down(each.getKey().energy() + middle), radius(each.getValue())))
        .toList();
  }

  private static String radius(long count) {
    return String.format(Locale.ROOT, "%.1f", Math.min(LARGEST, SMALLEST + Math.log((double) count)));
  }

  private static List<Spot> spots(List<Front.Point> points, Scale hands, Scale energy) {
    List<Spot> spots = new ArrayList<>();
    Front.Point last = null;
    for (Front.Point point : points) {
      boolean hasRoom = last == null || hands.percent(point.hands()) - hands.percent(last.hands()) >= APART
          || energy.percent(last.energy()) - energy.percent(point.energy()) >= APART;
      spots.add(new Spot(spots.size() + 1, hands.at(point.hands()), energy.down(point.energy()), hasRoom,
          point));
      last = hasRoom ? point : last;
    }
    return spots;
  }

  /** Points for a polyline in a square of a thousand: along the front, by steps. */
  private static String line(List<Front.Point> points, Scale hands, Scale energy) {
    StringJoiner line = new StringJoiner(" ");
    double top = 0;
    for (Front.Point point : points) {
      double left = SIDE * hands.percent(point.hands()) / 100;
      if (line.length() > 0) {
        line.add(corner(left, top));
      }
      top = SIDE - SIDE * energy.percent(point.energy()) / 100;
      line.add(corner(left, top));
    }
    return line.toString();
  }

  private static String corner(double left, double top) {
    return String.format(Locale.ROOT, "%.0f,%.0f", left, top);
  }
}
