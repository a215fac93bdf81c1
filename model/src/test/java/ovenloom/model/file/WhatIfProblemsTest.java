package ovenloom.model.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.model.variation.Axis;

/** The what-ifs of the house read, and each of their variations is an event. */
class WhatIfProblemsTest {

  private static final Path PROBLEMS = Path.of("../problems");

  /** Prime, so that every choice has its turn. */
  private static final int EVERY = 17;

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      clubhouse-menus           | 600  | kitchen, guests, first, main, sweet
      birthday-by-the-thousand  | 1000 | guests, ovens, help, hours, wishes
      """)
  void a_what_if_varies_its_event(String name, long size, String axes) {
    WhatIf whatIf = read(name);

    assertThat(whatIf.size()).isEqualTo(size);
    assertThat(String.join(", ", whatIf.axes().stream().map(Axis::name).toList())).isEqualTo(axes);
    assertThat(LongStream.range(0, size / EVERY))
        .allSatisfy(index -> assertThat(whatIf.event(index * EVERY))
            .as(whatIf.variation(index * EVERY).name())
            .isInstanceOf(Reading.Understood.class));
  }

  private static WhatIf read(String name) {
    return switch (WhatIfFile.read(PROBLEMS.resolve(name + ".what-if.yaml"), PROBLEMS)) {
      case Reading.Understood<WhatIf>(WhatIf whatIf, var sources, var notes) -> whatIf;
      case Reading.Mistaken<WhatIf>(List<Mistake> mistakes) ->
        throw new AssertionError(MistakeText.of(mistakes));
    };
  }
}
