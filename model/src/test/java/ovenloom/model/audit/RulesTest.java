package ovenloom.model.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each rule is one class, one page, one test and one line in the list. */
class RulesTest {

  private static final Path PAGES = Path.of("..", "docs", "rules");

  /** Classes of rules, listed or not. */
  static List<Class<?>> rules() throws IOException {
    List<Class<?>> rules = new ArrayList<>();
    try (Stream<Path> files = Files.list(classes())) {
      for (Path file : files.sorted().toList()) {
        String name = file.getFileName().toString();
        Class<?> found = name.endsWith(".class") ? named(name.substring(0, name.length() - 6)) : Object.class;
        if (KitchenRule.class.isAssignableFrom(found) && !found.isInterface()) {
          rules.add(found);
        }
      }
    }
    return rules;
  }

  private static Path classes() {
    try {
      URL audit = Objects.requireNonNull(Audit.class.getResource("Audit.class"));
      return Objects.requireNonNull(Path.of(audit.toURI()).getParent());
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Class<?> named(String name) {
    try {
      return Class.forName("ovenloom.model.audit." + name);
    } catch (ClassNotFoundException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void there_are_as_many_rules_as_the_kitchen_has() throws IOException {
    assertThat(rules()).hasSizeGreaterThanOrEqualTo(24);
    assertThat(Audit.RULES).extracting(KitchenRule::id).doesNotHaveDuplicates();
    assertThat(Audit.RULES).extracting(KitchenRule::sentence).doesNotHaveDuplicates();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rules")
  void each_has_a_line_in_the_list(Class<?> rule) {
    assertThat(Audit.RULES).filteredOn(each -> each.getClass().equals(rule)).hasSize(1);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rules")
  void each_has_a_test(Class<?> rule) {
    assertThat(named(rule.getSimpleName() + "Test")).isNotNull();
  }

  static List<KitchenRule> listed() {
    return Audit.RULES;
  }

  @ParameterizedTest(name = "rule {index}")
  @MethodSource("listed")
  void each_has_a_page_that_says_its_sentence(KitchenRule rule) {
    assertThat(page(rule)).exists().content().contains("> " + rule.sentence()).contains("## ");
  }

  @Test
  void no_page_is_about_a_rule_that_is_not_kept() throws IOException {
    try (Stream<Path> pages = Files.list(PAGES)) {
      assertThat(pages.filter(page -> !page.endsWith("README.md")))
          .containsExactlyInAnyOrderElementsOf(Audit.RULES.stream().map(RulesTest::page).toList());
    }
  }

  @Test
  void the_pages_are_listed_in_the_order_of_the_rules() throws IOException {
    List<String> lines = Files.readAllLines(PAGES.resolve("README.md"));

    assertThat(lines.stream().filter(line -> line.startsWith("- "))).containsExactlyElementsOf(
        Audit.RULES.stream().map(rule -> "- [" + rule.id() + "](" + file(rule) + ")").toList());
  }

  private static Path page(KitchenRule rule) {
    return PAGES.resolve(file(rule));
  }

  private static String file(KitchenRule rule) {
    return rule.id().replace(' ', '-') + ".md";
  }
}
