package ovenloom.model.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MergePatchTest {

  private final Desk desk = new Desk();

  /** RFC 7396, appendix A: all fifteen cases, in its order. */
  @ParameterizedTest(name = "{0} with {1} is {2}")
  @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
      {"a":"b"}         | {"a":"c"}                   | {"a":"c"}
      {"a":"b"}         | {"b":"c"}                   | {"a":"b","b":"c"}
      {"a":"b"}         | {"a":null}                  | {}
      {"a":"b","b":"c"} | {"a":null}                  | {"b":"c"}
      {"a":["b"]}       | {"a":"c"}                   | {"a":"c"}
      {"a":"c"}         | {"a":["b"]}                 | {"a":["b"]}
      {"a":{"b":"c"}}   | {"a":{"b":"d","c":null}}    | {"a":{"b":"d"}}
      {"a":[{"b":"c"}]} | {"a":[1]}                   | {"a":[1]}
      ["a","b"]         | ["c","d"]                   | ["c","d"]
      {"a":"b"}         | ["c"]                       | ["c"]
      {"a":"foo"}       | null                        | null
      {"a":"foo"}       | "bar"                       | "bar"
      {"e":null}        | {"a":1}                     | {"e":null,"a":1}
      [1,2]             | {"a":"b","c":null}          | {"a":"b"}
      {}                | {"a":{"bb":{"ccc":null}}}   | {"a":{"bb":{}}}
      """)
  void the_examples_of_the_standard_come_out_as_it_says(String original, String patch, String result) {
    assertThat(patched(original, patch)).isEqualTo(result);
  }

  @Test
  void a_word_in_quotes_is_no_null() {
    assertThat(patched("{\"a\":\"b\"}", "{\"a\":\"null\"}")).isEqualTo("{\"a\":\"null\"}");
  }

  @Test
  void a_member_of_a_list_is_patched_by_its_name_and_keeps_its_place() {
    String ovens = "[{name: oven, dial: 50 C to 250 C}, {name: small oven, dial: 80 C to 230 C}]";

    assertThat(patched(ovens, "{oven: {dial: 60 C to 300 C}}")).isEqualTo(
        "[{\"name\":\"oven\",\"dial\":\"60 C to 300 C\"},{\"name\":\"small oven\",\"dial\":\"80 C to 230 C\"}]");
  }

  @Test
  void a_member_is_taken_out_and_another_is_added_with_its_name() {
    assertThat(patched("[{do: mix}, {do: bake, takes: 20 min}]", "{mix: null, cool: {takes: 5 min}}"))
        .isEqualTo("[{\"do\":\"bake\",\"takes\":\"20 min\"},{\"do\":\"cool\",\"takes\":\"5 min\"}]");
  }

  @Test
  void whoever_takes_out_what_is_not_there_is_told() {
    patched("[{dish: Leek soup}]", "{Leak soup: null}");

    assertThat(MistakeText.of(desk.mistakes().all())).contains("there is no dish \"Leak soup\"")
        .contains("Did you mean \"Leek soup\"?");
  }

  @Test
  void a_slip_of_the_pen_is_told_and_adds_nothing() {
    assertThat(patched("[{do: boil}]", "{boill: {takes: 30 min}}")).isEqualTo("[{\"do\":\"boil\"}]");

    assertThat(MistakeText.of(desk.mistakes().all())).contains("there is no step \"boill\"")
        .contains("Did you mean \"boil\"? If it is a new one, write among its keys \"do: boill\".");
  }

  @Test
  void what_says_its_name_itself_is_new_however_much_it_is_like_another() {
    assertThat(patched("[{name: Ana}]", "{Anna: {name: Anna}}"))
        .isEqualTo("[{\"name\":\"Ana\"},{\"name\":\"Anna\"}]");
  }

  @Test
  void a_second_oven_is_no_slip_of_the_first() {
    assertThat(patched("[{name: oven 1}]", "{oven 2: {dial: gas 1 to gas 9}}"))
        .isEqualTo("[{\"name\":\"oven 1\"},{\"name\":\"oven 2\",\"dial\":\"gas 1 to gas 9\"}]");
  }

  @Test
  void a_list_of_which_two_have_one_name_is_patched_as_the_standard_says() {
    assertThat(patched("[{name: pot}, {name: pot}]", "{pot: 2}")).isEqualTo("{\"pot\":2}");
  }

  @Test
  void nothing_behind_a_key_is_a_mistake_and_no_null() {
    patched("{a: b}", "{a: }");

    assertThat(MistakeText.of(desk.mistakes().all())).contains("\"a\" has no value");
  }

  private String patched(String target, String patch) {
    return JsonText.of(new MergePatch(desk).over(written(target), written(patch)));
  }

  private Written written(String text) {
    Sheet sheet = new Sheet("it.yaml", Path.of("it.yaml"), text);
    return Objects.requireNonNull(new WrittenReader(sheet, Limits.PROBLEM, desk.mistakes()).read());
  }
}
