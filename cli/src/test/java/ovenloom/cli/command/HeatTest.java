package ovenloom.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.cli.command.Typed.ovenloom;

import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

class HeatTest {

  @TempDir
  private Path folder;

  @Test
  void a_soup_is_followed_to_the_table() {
    var typed = ovenloom("heat", Kitchens.aPlan(folder), "leek SOUP");

    assertThat(typed.code()).isZero();
    assertThat(typed.out()).startsWith("Leek soup")
        .contains("21 to 95", "Simmer: burner.", "probe the thickest part")
        .doesNotContain("NaN");
  }

  @Test
  void a_dish_or_a_batch_that_is_not_there_is_named_with_those_that_are() {
    assertThat(ovenloom("heat", Kitchens.aPlan(folder), "stew").err())
        .contains("there is no dish \"stew\"", "It has: ", "Leek soup");
    assertThat(ovenloom("heat", Kitchens.aPlan(folder), "Leek soup", "--batch", 2).err())
        .contains("has no batch 2");
  }

  @Test
  void it_is_drawn_with_its_limits_and_each_place_it_is_in() throws Exception {
    Path drawing = folder.resolve("soup.svg");

    var typed = ovenloom("heat", Kitchens.aPlan(folder), "Leek soup", "-o", drawing);

    Document svg = DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(Files.readString(drawing))));
    assertThat(typed.code()).isZero();
    assertThat(svg.getElementsByTagName("title").item(0).getTextContent()).isEqualTo("Leek soup");
    long lines = typed.out().lines().filter(line -> line.matches("\\d\\d:\\d\\d - .*")).count();
    assertThat(svg.getElementsByTagName("polyline").getLength()).isEqualTo((int) (2 * lines)).isPositive();
    assertThat(svg.getDocumentElement().getTextContent()).contains("5 C", "57 C");
  }
}
