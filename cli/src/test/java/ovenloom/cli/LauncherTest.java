package ovenloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LauncherTest {
  @TempDir
  private Path root;
  private Doorstep doorstep;

  @BeforeEach
  void clean() throws IOException {
    doorstep = new Doorstep(root.toRealPath());
  }

  @Test
  void without_any_java_it_says_what_to_install_and_stops() throws Exception {
    var answer = doorstep.run("--version");

    assertThat(answer.code()).isEqualTo(2);
    assertThat(answer.out()).isEmpty();
    assertThat(answer.err()).startsWith("ovenloom: no Java 21 or newer was found")
        .contains("apt install openjdk-21");
  }

  @ParameterizedTest
  @ValueSource(strings = {"1.8.0_392", "9", "17.0.15", "20.0.2"})
  void an_older_java_does_not_do(String version) throws Exception {
    doorstep.java("usr/lib/jvm/old", version);

    var answer = doorstep.run();

    assertThat(answer.code()).isEqualTo(2);
    assertThat(answer.err()).startsWith("ovenloom: no Java 21");
  }

  @ParameterizedTest
  @ValueSource(strings = {"21", "21.0.3", "25-ea", "100.0.1"})
  void a_java_of_21_or_more_does(String version) throws Exception {
    doorstep.java("usr/lib/jvm/new", version);

    var answer = doorstep.run();

    assertThat(answer.out()).first().isEqualTo("usr/lib/jvm/new");
    assertThat(answer.err()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {
      "usr/lib/jvm/jdk-21",
      "Library/Java/JavaVirtualMachines/jdk-21.jdk/Contents/Home",
      "home/.sdkman/candidates/java/21.0.3-tem"})
  void it_looks_where_machines_keep_their_javas(String home) throws Exception {
    doorstep.java(home, "21.0.3");

    assertThat(doorstep.run().out()).first().isEqualTo(home);
  }

  @Test
  void the_java_given_to_ovenloom_comes_first_then_java_home_then_the_path() throws Exception {
    doorstep.java("usr/lib/jvm/found", "21");
    Files.createSymbolicLink(doorstep.at("path/java"), doorstep.java("on path", "21").resolve("bin/java"));
    assertThat(doorstep.run().out()).first().isEqualTo("on path");

    doorstep.with("JAVA_HOME", doorstep.java("java home", "21").toString());
    assertThat(doorstep.run().out()).first().isEqualTo("java home");

    doorstep.with("OVENLOOM_JAVA", doorstep.java("given", "21").toString());
    assertThat(doorstep.run().out()).first().isEqualTo("given");

    doorstep.with("OVENLOOM_JAVA", doorstep.java("given as a command", "21").resolve("bin/java").toString());
    assertThat(doorstep.run().out()).first().isEqualTo("given as a command");
  }

  @Test
  void a_java_given_but_too_old_is_named_and_passed_over() throws Exception {
    var old = doorstep.java("old", "17.0.15");
    doorstep.java("usr/lib/jvm/new", "21");

    var answer = doorstep.with("OVENLOOM_JAVA", old.toString()).with("JAVA_HOME", old.toString()).run();

    assertThat(answer.out()).first().isEqualTo("usr/lib/jvm/new");
    assertThat(answer.err()).isEqualTo(
        "ovenloom: OVENLOOM_JAVA is " + old + ", which is no Java 21 or newer; looking elsewhere");
  }

  @Test
  void a_java_that_has_no_release_file_is_asked() throws Exception {
    doorstep.javaThatMustBeAsked("usr/lib/jvm/a", "17.0.15");
    doorstep.javaThatMustBeAsked("usr/lib/jvm/b", "21.0.3");

    assertThat(doorstep.run().out()).first().isEqualTo("usr/lib/jvm/b");
  }

  @Test
  void every_word_reaches_the_program_as_typed_and_its_answer_comes_back() throws Exception {
    doorstep.java("usr/lib/jvm/new", "21");

    var answer = doorstep.run("plan", "a feast.yaml", "", "*", "$HOME", "it's");

    assertThat(answer.out()).endsWith("-jar", doorstep.at("loom at home/lib/ovenloom.jar").toString(), "plan",
        "a feast.yaml", "", "*", "$HOME", "it's");
    assertThat(answer.code()).isEqualTo(7);
  }

  @Test
  void stopping_the_launcher_stops_the_program_since_they_are_one_process() throws Exception {
    doorstep.java("usr/lib/jvm/new", "21");

    var answer = doorstep.run();

    assertThat(answer.out()).element(1).isEqualTo(Long.toString(answer.pid()));
  }

  @Test
  void it_finds_its_home_through_links_upon_links() throws Exception {
    doorstep.java("usr/lib/jvm/new", "21");
    Files.createSymbolicLink(doorstep.at("path/first"), doorstep.launcher());
    Files.createSymbolicLink(doorstep.at("second one"), Path.of("path/first"));

    var answer = doorstep.run(doorstep.at("second one"));

    assertThat(answer.out()).contains(doorstep.at("loom at home/lib/ovenloom.jar").toString());
  }

  @Test
  void names_with_accents_can_be_read_even_where_no_language_is_set() throws Exception {
    doorstep.java("usr/lib/jvm/new", "21");

    assertThat(doorstep.run().out()).element(2).isEqualTo("locale C.UTF-8 read in ASCII");
    assertThat(doorstep.with("LANG", "fr_FR.UTF-8").run().out()).element(2).isEqualTo("locale ");
  }
}
