package ovenloom.model.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.events.CollectionEndEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.CollectionNode;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** Takes the text of a file apart, YAML or JSON, keeping every place and guessing nothing about values. */
final class WrittenReader {

  /** How deep lists and keys may be nested. */
  static final int DEEPEST = 40;

  private static final int MOST_ALIASES = 20;

  private final Sheet sheet;
  private final Limits limits;
  private final LoadSettings settings;
  private final Mistakes mistakes;
  private int values;

  WrittenReader(Sheet sheet, Limits limits, Mistakes mistakes) {
    this.sheet = sheet;
    this.limits = limits;
    this.settings = LoadSettings.builder()
        .setMaxAliasesForCollections(MOST_ALIASES)
        .setAllowNonScalarKeys(true)
        .setCodePointLimit(limits.bytes())
        .setBufferSize(sheet.text().length() + 16) // in pieces, a letter of two chars at their edge breaks the parser
        .build();
    this.mistakes = mistakes;
  }

  /** The whole file, or null where it cannot be taken apart. */
  @Nullable
  Written read() {
    try {
      Node root = isTooDeep() ? null : new Compose(settings).composeString(sheet.text()).orElse(null);
      return root == null ? null : written(root, false, null, 0);
    } catch (MarkedYamlEngineException e) {
      Place place = e.getProblemMark().map(sheet::at).orElse(sheet.first());
      mistakes.add(place, Slips.fault(e, place, limits));
    } catch (YamlEngineException e) {
      mistakes.add(sheet.first(), Slips.fault(e, limits));
    }
    return null;
  }

  /** Before anything is nested in memory, since composing deep nests overflows the stack. */
  private boolean isTooDeep() {
    int depth = 0;
    for (Event event : new Parse(settings).parseString(sheet.text())) {
      depth += event instanceof CollectionStartEvent ? 1 : event instanceof CollectionEndEvent ? -1 : 0;
      if (depth > DEEPEST) {
        mistakes.add(event.getStartMark().map(sheet::at).orElse(sheet.first()),
            new Fault.TooMuch("levels of lists and keys", DEEPEST));
        return true;
      }
    }
    return false;
  }

  /** A value; inside braces, what stood before it may tell what a lone word was meant to be. */
  private Written written(Node node, boolean insideBraces, @Nullable String before, int depth) {
    values++;
    if (values > limits.values() || depth > DEEPEST) {
      throw new YamlEngineException("aliases");
    }
    return switch (node) {
      case ScalarNode scalar when scalar.isPlain() && scalar.getValue().isEmpty() ->
        new Written.Nothing(insideBraces, before, place(node));
      case ScalarNode scalar -> words(scalar);
      case SequenceNode list -> new Written.Many(
          list.getValue().stream().map(each -> written(each, flows(list), null, depth + 1)).toList(),
          place(list));
      case MappingNode keys -> keyed(keys, depth);
      default -> throw new YamlEngineException("unknown " + node.getNodeType());
    };
  }

  private Written.Keyed keyed(MappingNode keys, int depth) {
    Map<String, Written.Entry> entries = new LinkedHashMap<>();
    boolean whole = true;
    String before = null;
    for (NodeTuple tuple : keys.getValue()) {
      Written.Words key = key(tuple.getKeyNode());
      if (key == null) {
        whole = false;
        continue;
      }
      Written value = written(tuple.getValueNode(), flows(keys), before, depth + 1);
      Written.Entry first = entries.putIfAbsent(key.text(), new Written.Entry(key, value));
      if (first != null) {
        mistakes.add(key.place(), new Fault.RepeatedKey(key.text(), first.key().place().line()));
      }
      before = value instanceof Written.Words words ? words.text() : null;
    }
    return new Written.Keyed(new ArrayList<>(entries.values()), whole, place(keys));
  }

  private Written.@Nullable Words key(Node node) {
    if (!(node instanceof ScalarNode name)) {
      Fault.Shape shape = node instanceof SequenceNode ? Fault.Shape.LIST : Fault.Shape.KEYS;
      mistakes.add(place(node), new Fault.WrongShape("a key", shape, "a word"));
      return null;
    }
    if (name.isPlain() && name.getValue().equals("<<")) {
      mistakes.add(place(node), new Fault.MergeKey());
      return null;
    }
    return words(name);
  }

  private static boolean flows(CollectionNode<?> node) {
    return node.getFlowStyle() == FlowStyle.FLOW;
  }

  private Written.Words words(ScalarNode node) {
    Mark from = mark(node.getStartMark().orElse(null));
    Mark to = mark(node.getEndMark().orElse(null));
    boolean quoted = node.getScalarStyle() == ScalarStyle.DOUBLE_QUOTED
        || node.getScalarStyle() == ScalarStyle.SINGLE_QUOTED;
    int quotes = quoted ? 2 : 0;
    int length = node.getValue().codePointCount(0, node.getValue().length());
    boolean literal = from.getLine() == to.getLine() && to.getColumn() - from.getColumn() == length + quotes;
    return new Written.Words(
        node.getValue(), sheet.between(from, to), literal ? quotes / 2 : null,
        quoted ? "" : sheet.behind(to));
  }

  private Place place(Node node) {
    return sheet.between(mark(node.getStartMark().orElse(null)), mark(node.getEndMark().orElse(null)));
  }

  private static Mark mark(@Nullable Mark mark) {
    return Objects.requireNonNull(mark, "marks are kept unless switched off");
  }
}
