package ovenloom.cli.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.cli.sheet.HandPlan.at;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import ovenloom.model.audit.Break;
import ovenloom.model.audit.Break.Unit;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Event;

class BreakListTest {

  private static final Event SUPPER = HandPlan.read("""
      ovenloom: 1
      event: Supper
      guests: 4
      courses: [{name: supper, at: 2026-10-10 19:00}]
      cooks: [{name: Host, hours: {on the day: 8:00-20:00}}]
      dishes: [{dish: Bread, steps: [{do: slice, takes: 5 min, hands: throughout}]}]
      """);

  private static Break aBreak(String rule, @Nullable Stretch when, long off, Unit unit) {
    return new Break(rule, "Food is on time.", List.of("Pie/bake", "the table"), when, off, unit,
        "ends too late");
  }

  private static Break late(int minutes) {
    return aBreak("on time", new Stretch(at("18:30"), at("19:10")), minutes, Unit.MINUTES);
  }

  @Test
  void a_break_tells_the_rule_who_when_and_by_how_much() {
    assertThat(BreakList.of(SUPPER, List.of(late(10)), 200)).isEqualTo(
        """
            1.  Food is on time. Pie/bake and the table: ends too late. Saturday 10 October 18:30 to 19:10. Off by 10 min.
            """);
  }

  @Test
  void the_worst_break_comes_first() {
    var breaks = List.of(late(10), late(90), aBreak("clean vessels", null, 2, Unit.PIECES));

    var list = BreakList.of(SUPPER, breaks, 200).lines().toList();

    assertThat(list.get(0)).startsWith("1.").endsWith("Off by 90 min.");
    assertThat(list.get(1)).startsWith("2.").endsWith("Off by 2 pieces.");
    assertThat(list.get(2)).startsWith("3.").endsWith("Off by 10 min.");
  }

  @Test
  void breaks_are_counted_by_rule_and_place() {
    assertThat(BreakList.count(List.of(late(10)))).isEqualTo("it breaks a rule");
    assertThat(BreakList.count(List.of(late(10), late(20)))).isEqualTo("it breaks a rule in 2 places");
    assertThat(BreakList.count(List.of(late(10), aBreak("keeps", null, 1, Unit.MINUTES))))
        .isEqualTo("it breaks 2 rules");
    assertThat(BreakList.count(List.of(late(10), late(5), aBreak("keeps", null, 1, Unit.MINUTES))))
        .isEqualTo("it breaks 2 rules in 3 places");
  }
}
