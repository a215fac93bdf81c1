package ovenloom.model.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.measure.Readings.good;

import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is written reads back as what it was, over the whole extent of what is read. */
class WrittenFormsTest {

  private static final int A_YEAR = 366 * 24 * 60;
  private static final List<String> COUNTED = List.of("eggs", "cloves of garlic", "half-shells", "Äpfel");

  static LongStream seeds() {
    return LongStream.range(0, 200);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void every_setting_reads_back(long seed) {
    var random = new Random(seed);
    var any = new Temperature(random.nextLong(273_150, 873_151));
    GasMark mark = List.of(GasMark.values()).get(random.nextInt(11));

    for (Setting setting : List.of(new Setting(any, TemperatureUnit.CELSIUS),
        new Setting(any, TemperatureUnit.FAHRENHEIT), Setting.fahrenheit(random.nextInt(32, 1113)),
        Setting.gas(mark))) {
      assertThat(good(Setting.read(setting.written()))).isEqualTo(setting);
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void a_degree_fahrenheit_is_written_with_the_decimals_it_was_given(long seed) {
    long degrees = 32 + seed * 5;

    for (String written : List.of(degrees + " F", degrees + ".3 F", degrees + ".07 F")) {
      assertThat(good(Setting.read(written))).hasToString(written);
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void every_temperature_reads_back(long seed) {
    var temperature = new Temperature(new Random(seed).nextLong(173_150, 873_151));

    assertThat(good(Temperature.read(temperature.written()))).isEqualTo(temperature);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void every_length_reads_back(long seed) {
    Length length = anyLength(new Random(seed));

    assertThat(good(Length.read(length.written()))).isEqualTo(length);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void every_size_reads_back(long seed) {
    var random = new Random(seed);
    var size = new Size(anyLength(random), anyLength(random),
        random.nextBoolean() ? anyLength(random) : null);

    assertThat(good(Size.read(size.written()))).isEqualTo(size);
  }

  private static Length anyLength(Random random) {
    return switch (random.nextInt(4)) {
      case 0 -> new Length(random.nextLong(1, 10_000_001));
      case 1 -> new Length(random.nextLong(1, 10_000));
      case 2 -> Length.in(random.nextInt(1, 160) / 8.0);
      default -> Length.cm(random.nextInt(1, 160) / 2.0);
    };
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void every_time_reads_back(long seed) {
    Range range = anyRange(new Random(seed));

    assertThat(good(Range.read(range.written()))).isEqualTo(range);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void every_pace_reads_back(long seed) {
    var random = new Random(seed);
    Range base = random.nextInt(4) == 0 ? Range.exactly(0) : anyRange(random);
    int seconds = random.nextInt(5) * random.nextInt(21_601);
    var pace = new Pace(base.least(), base.most(), seconds);

    assertThat(good(Pace.read(pace.written()))).isEqualTo(pace);
  }

  private static Range anyRange(Random random) {
    int step = List.of(1, 5, 60, 1440).get(random.nextInt(4));
    int longest = random.nextBoolean() ? A_YEAR / step : Math.min(A_YEAR / step, 240);
    int most = random.nextInt(longest + 1);
    int least = random.nextBoolean() ? most : random.nextInt(most + 1);
    return new Range(least * step, most * step);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void every_weight_and_volume_reads_back(long seed) {
    var random = new Random(seed);
    long smallest = random.nextLong(random.nextBoolean() ? 1_000_000_001 : 10_000);

    assertThat(good(Mass.read(new Mass(smallest).written()))).isEqualTo(new Mass(smallest));
    assertThat(good(Volume.read(new Volume(smallest).written()))).isEqualTo(new Volume(smallest));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void every_power_and_share_reads_back(long seed) {
    var random = new Random(seed);
    var power = new Power(random.nextInt(1_000_001));
    var share = new Percent(random.nextInt(100_001));

    assertThat(good(Power.read(power.written()))).isEqualTo(power);
    assertThat(good(Percent.read(share.written()))).isEqualTo(share);
    var conducts = new Conductivity(20 + random.nextInt(4_981));
    assertThat(good(Conductivity.read(conducts.written()))).isEqualTo(conducts);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void every_quantity_reads_back(long seed) {
    var random = new Random(seed);

    for (Unit unit : Unit.values()) {
      var quantity = new Quantity(anyAmount(random), unit, unit == Unit.PIECE ? anyWord(random) : null);
      assertThat(good(Quantity.read(quantity.written()))).isEqualTo(quantity);
    }
  }

  private static BigFraction anyAmount(Random random) {
    return switch (random.nextInt(4)) {
      case 0 -> BigFraction.of(random.nextInt(2_000), List.of(1, 2, 3, 4, 6, 8).get(random.nextInt(6)));
      case 1 -> BigFraction.of(random.nextInt(2_000_000), 1_000);
      case 2 -> BigFraction.of(random.nextInt(1_000_001), random.nextInt(1, 1_000));
      default -> BigFraction.of(random.nextLong(1_000_000_000_000L), 1_000_000);
    };
  }

  private static @Nullable String anyWord(Random random) {
    return random.nextBoolean() ? null : COUNTED.get(random.nextInt(COUNTED.size()));
  }
}
