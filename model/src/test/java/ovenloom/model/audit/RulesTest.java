package ovenloom.model.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ovenloom.model.menu.Wish;

/** Every rule is in the list, and has a page that says its sentence, and a test. */
class RulesTest {

  private static final Path DOCS = Path.of("..", "docs");
  private static final Pattern ENTRY = Pattern.compile("(?m)^- \\[(.+)]\\((.+)\\.md\\)$");

  static Stream<KitchenRule> rules() {
    return Audit.RULES.stream();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rules")
  void a_rule_has_a_page_that_says_its_sentence_and_works_a_case_by_hand(KitchenRule rule)
      throws IOException {
    String page = Files.readString(DOCS.resolve("rules").resolve(page(rule) + ".md"));

    assertThat(page.lines().filter(line -> line.startsWith("> "))).containsExactly("> " + rule.sentence());
    assertThat(page).containsIgnoringCase("# " + rule.id()).contains("\n## By hand\n", "\n## Source\n");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rules")
  void a_rule_has_a_test_of_its_own(KitchenRule rule) {
    Path test = Path.of("src", "test", "java")
        .resolve(rule.getClass().getName().replace('.', '/') + "Test.java");

    assertThat(test).isRegularFile();
  }

  @Test
  void the_pages_are_listed_in_the_order_in_which_a_plan_is_judged() throws IOException {
    String contents = Files.readString(DOCS.resolve("rules").resolve("README.md"));

    assertThat(entries(contents, 1)).isEqualTo(rules().map(KitchenRule::id).toList());
    assertThat(entries(contents, 2)).isEqualTo(rules().map(RulesTest::page).toList());
  }

  @Test
  void no_rule_is_written_and_then_left_out_of_the_list() throws IOException, URISyntaxException {
    URI home = KitchenRule.class.getProtectionDomain().getCodeSource().getLocation().toURI();
    try (Stream<Path> classes = Files.list(Path.of(home).resolve("ovenloom/model/audit"))) {
      List<String> written = classes.map(RulesTest::name)
          .filter(RulesTest::isARule)
          .toList();

      assertThat(written).hasSizeGreaterThan(20)
          .containsExactlyInAnyOrderElementsOf(rules().map(rule -> rule.getClass().getName()).toList());
    }
  }

  @Test
  void no_page_is_about_a_rule_that_is_not_kept() throws IOException {
    try (Stream<Path> pages = Files.list(DOCS.resolve("rules"))) {
      assertThat(pages.map(page -> page.getFileName().toString()).filter(page -> !page.equals("README.md")))
          .containsExactlyInAnyOrderElementsOf(rules().map(rule -> page(rule) + ".md").toList());
    }
  }

  @Test
  void every_wish_is_worked_by_hand() throws IOException {
    String page = Files.readString(DOCS.resolve("wishes.md"));

    assertThat(Wish.values())
        .allSatisfy(wish -> assertThat(page).containsIgnoringCase("\n## " + wish.name() + "\n"));
  }

  private static String page(KitchenRule rule) {
    return rule.id().replace(' ', '-');
  }

  private static List<String> entries(String contents, int group) {
    return ENTRY.matcher(contents).results().map((MatchResult entry) -> entry.group(group)).toList();
  }

  private static String name(Path file) {
    return "ovenloom.model.audit." + file.getFileName().toString().replace(".class", "");
  }

  private static boolean isARule(String name) {
    try {
      Class<?> kind = Class.forName(name);
      return KitchenRule.class.isAssignableFrom(kind) && !kind.isInterface();
    } catch (ClassNotFoundException notAClass) {
      return false;
    }
  }
}
