package ovenloom.model.file;

import java.util.regex.Pattern;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;

/** Writes JSON of the same shape as the YAML; whole numbers are numbers, all else is text. */
final class JsonText {

  private static final Pattern COUNT = Pattern.compile("0|-?[1-9][0-9]{0,17}");
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final JsonMapper MAPPER = new JsonMapper();

  private JsonText() {}

  static String of(Draft draft) {
    return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(node(draft)).replace("\r\n", "\n")
        + "\n";
  }

  /** What is written, on one line; a bare {@code null} stays what it is. */
  static String of(Written written) {
    return node(written).toString();
  }

  private static JsonNode node(Written written) {
    return switch (written) {
      case Written.Words words when MergePatch.takesOut(words) -> NODES.nullNode();
      case Written.Words words -> scalar(words.text());
      case Written.Nothing nothing -> NODES.nullNode();
      case Written.Many many -> {
        var array = NODES.arrayNode();
        many.items().forEach(item -> array.add(node(item)));
        yield array;
      }
      case Written.Keyed keyed -> {
        var object = NODES.objectNode();
        keyed.entries().forEach(entry -> object.set(entry.key().text(), node(entry.value())));
        yield object;
      }
    };
  }

  private static JsonNode scalar(String text) {
    return COUNT.matcher(text).matches() ? NODES.numberNode(Long.parseLong(text)) : NODES.stringNode(text);
  }

  private static JsonNode node(Draft draft) {
    return switch (draft) {
      case Draft.Text(String text) -> scalar(text);
      case Draft.Items items -> {
        var array = NODES.arrayNode();
        items.items().forEach(item -> array.add(node(item)));
        yield array;
      }
      case Draft.Card card -> {
        var object = NODES.objectNode();
        card.said().forEach((key, value) -> object.set(key, node(value)));
        yield object;
      }
    };
  }
}
