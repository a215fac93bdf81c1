package ovenloom.model.file;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Writes YAML that every YAML reader takes the same way: one of YAML 1.1 would make a truth of a plain {@code no} and a
 * number of {@code 12:30}, so what is not plainly text stands in quotes.
 */
final class YamlText {

  private static final int WIDTH = 110;
  private static final Pattern PLAIN = Pattern
      .compile("[\\p{L}\\p{N}](?:[\\p{L}\\p{N} ._/()'+%-]|:(?=[0-9]))*");
  private static final Pattern COUNT = Pattern.compile("0|[1-9][0-9]{0,8}");
  /** Numbers, minutes of hours, dates and times of YAML 1.1 (yaml.org/type), and a little more to be safe. */
  private static final Pattern LIKE_A_NUMBER = Pattern
      .compile("[0-9][0-9_]*(?::[0-9]+)*(?:\\.[0-9_]*)?(?:[eE][-+]?[0-9]+)?"
          + "|0[xXoObB][0-9a-fA-F_]+|[0-9]{4}-[0-9]{1,2}-[0-9]{1,2}(?:(?:[Tt]| +)[0-9]{1,2}:[0-9]{2}:.*)?");
  private static final Set<String> TRUTHS = Set.of("y", "n", "yes", "no", "on", "off", "true", "false",
      "null");

  private YamlText() {}

  static String of(Draft.Card card) {
    var text = new StringBuilder();
    block(card, 0, text);
    return text.toString();
  }

  private static void block(Draft draft, int indent, StringBuilder text) {
    switch (draft) {
      case Draft.Card card -> {
        for (Map.Entry<String, Draft> entry : card.said().entrySet()) {
          text.append(" ".repeat(indent)).append(scalar(entry.getKey())).append(':');
          value(entry.getValue(), indent, indent + entry.getKey().length() + 4, text);
        }
      }
      case Draft.Items items -> {
        for (Draft item : items.items()) {
          text.append(" ".repeat(indent)).append('-');
          item(item, indent, text);
        }
      }
      case Draft.Text one -> text.append(" ".repeat(indent)).append(scalar(one.text())).append('\n');
    }
  }

  private static void value(Draft value, int indent, int used, StringBuilder text) {
    String flow = flow(value);
    if (used + flow.length() <= WIDTH || value instanceof Draft.Text || flow.length() <= 2) {
      text.append(' ').append(flow).append('\n');
    } else {
      text.append('\n');
      block(value, indent + 2, text);
    }
  }

  /** A long card begins on the line of its dash. */
  private static void item(Draft item, int indent, StringBuilder text) {
    String flow = flow(item);
    if (indent + 2 + flow.length() <= WIDTH || item instanceof Draft.Text) {
      text.append(' ').append(flow).append('\n');
    } else {
      var inside = new StringBuilder();
      block(item, indent + 2, inside);
      text.append(' ').append(inside.substring(indent + 2));
    }
  }

  private static String flow(Draft draft) {
    return switch (draft) {
      case Draft.Text(String text) -> scalar(text);
      case Draft.Items(List<Draft> items) ->
        items.stream().map(YamlText::flow).collect(Collectors.joining(", ", "[", "]"));
      case Draft.Card card -> card.said()
          .entrySet()
          .stream()
          .map(entry -> scalar(entry.getKey()) + ": " + flow(entry.getValue()))
          .collect(Collectors.joining(", ", "{", "}"));
    };
  }

  private static String scalar(String text) {
    if (COUNT.matcher(text).matches()) {
      return text;
    }
    boolean plain = PLAIN.matcher(text).matches() && !text.endsWith(" ") && !text.contains("  ")
        && !TRUTHS.contains(text.toLowerCase(Locale.ROOT)) && !LIKE_A_NUMBER.matcher(text).matches();
    return plain ? text : quoted(text);
  }

  private static String quoted(String text) {
    var quoted = new StringBuilder("\"");
    text.codePoints().forEach(c -> {
      if (c == '"' || c == '\\') {
        quoted.append('\\').appendCodePoint(c);
      } else if (isUnseen(c)) {
        quoted.append(c > 0xffff ? "\\U%08x".formatted(c) : "\\u%04x".formatted(c));
      } else {
        quoted.appendCodePoint(c);
      }
    });
    return quoted.append('"').toString();
  }

  private static boolean isUnseen(int c) {
    return switch (Character.getType(c)) {
      case Character.CONTROL, Character.FORMAT, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR,
          Character.SURROGATE, Character.UNASSIGNED, Character.PRIVATE_USE ->
        true;
      default -> false;
    };
  }
}
