package ovenloom.model.file;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import ovenloom.model.audit.score.Figures;
import ovenloom.model.menu.Wish;
import ovenloom.model.plan.Bound;
import ovenloom.model.plan.Score;
import ovenloom.model.variation.Result;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** One result as one line of JSON; equal results are equal lines. */
public final class ResultLine {

  private static final JsonMapper MAPPER = new JsonMapper();
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private ResultLine() {}

  /** The line, without its end. */
  public static String json(Result result) {
    ObjectNode line = NODES.objectNode();
    line.put("run", result.run()).put("event", result.event());
    ObjectNode choices = line.putObject("choices");
    result.choices().forEach(choices::put);
    var patches = line.putArray("patches");
    result.patches().forEach(patch -> patches.add(MAPPER.readTree(patch)));
    if (result.tries() != null) {
      line.put("tries", result.tries());
    }
    if (result.seconds() != null) {
      line.put("seconds", result.seconds());
    }
    line.put("seed", result.seed()).put("warm", result.warm()).put("version", result.version());
    line.put("answer", Scalars.word(result.answer()));
    put(line, "why", result.why());
    put(line, "decides", result.decides());
    if (result.score() != null) {
      line.set("score", score(result.score()));
    }
    if (result.bound() != null) {
      line.putObject("bound")
          .put("at the table", result.bound().atTheTable())
          .put("wishes", result.bound().wishes());
    }
    if (result.figures() != null) {
      line.set("figures", figures(result.figures()));
    }
    return line.toString();
  }

  private static void put(ObjectNode line, String key, @Nullable String text) {
    if (text != null) {
      line.put(key, text);
    }
  }

  private static ObjectNode score(Score score) {
    ObjectNode node = NODES.objectNode();
    ObjectNode table = node.putObject("at the table");
    score.atTheTable().forEach(table::put);
    ObjectNode points = node.putObject("points");
    score.points().forEach((wish, each) -> points.put(Scalars.word(wish), each));
    return node.put("wishes", score.wishes()).put("early", score.early());
  }

  private static ObjectNode figures(Figures figures) {
    ObjectNode node = NODES.objectNode()
        .put("begins", figures.begins())
        .put("on the day", figures.onTheDay())
        .put("hands on the day", figures.handsOnTheDay())
        .put("hands in the last hour", figures.handsInTheLastHour())
        .put("hottest", figures.hottest())
        .put("at once", figures.atOnce())
        .put("dial turns", figures.dialTurns())
        .put("energy", figures.energy());
    ObjectNode busy = node.putObject("busy");
    new TreeMap<>(figures.busy()).forEach((what, perCent) -> busy.put(Scalars.word(what), perCent));
    return node;
  }

  /** The result a line tells; null where the line is none. */
  public static @Nullable Result read(String line) {
    try {
      JsonNode node = MAPPER.readTree(line);
      return node.isObject() && node.has("run") ? result(node) : null;
    } catch (JacksonException | IllegalArgumentException noResult) {
      return null;
    }
  }

  private static Result result(JsonNode line) {
    return new Result(line.required("run").asString(), line.required("event").asString(),
        map(line.required("choices"), JsonNode::asString),
        line.required("patches").valueStream().map(JsonNode::toString).toList(),
        line.has("tries") ? line.get("tries").asLong() : null,
        line.has("seconds") ? line.get("seconds").asDouble() : null, line.required("seed").asLong(),
        line.required("warm").asBoolean(), line.required("version").asString(),
        word(Result.Answer.class, line.required("answer").asString()), text(line, "why"),
        text(line, "decides"),
        line.has("score") ? score(line.get("score")) : null,
        line.has("bound") ? bound(line.get("bound")) : null,
        line.has("figures") ? figures(line.get("figures")) : null);
  }

  private static @Nullable String text(JsonNode line, String key) {
    return line.has(key) ? line.get(key).asString() : null;
  }

  private static <T> Map<String, T> map(JsonNode node, Function<JsonNode, T> value) {
    Map<String, T> map = new LinkedHashMap<>();
    node.properties().forEach(each -> map.put(each.getKey(), value.apply(each.getValue())));
    return map;
  }

  private static <E extends Enum<E>> E word(Class<E> all, String word) {
    return Arrays.stream(all.getEnumConstants())
        .filter(each -> Scalars.word(each).equals(word))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no " + word));
  }

  private static <E extends Enum<E>, T> Map<E, T> byWord(Class<E> all, JsonNode node,
      Function<JsonNode, T> value) {
    Map<E, T> map = new EnumMap<>(all);
    map(node, value).forEach((word, each) -> map.put(word(all, word), each));
    return map;
  }

  private static Score score(JsonNode score) {
    return new Score(0, map(score.required("at the table"), JsonNode::asLong),
        byWord(Wish.class, score.required("points"), JsonNode::asLong), score.required("wishes").asLong(),
        score.required("early").asLong());
  }

  private static Bound bound(JsonNode bound) {
    return new Bound(bound.required("at the table").asLong(), bound.required("wishes").asLong());
  }

  private static Figures figures(JsonNode figures) {
    return new Figures(figures.required("begins").asInt(), figures.required("on the day").asInt(),
        figures.required("hands on the day").asLong(), figures.required("hands in the last hour").asLong(),
        figures.required("hottest").asInt(), figures.required("at once").asInt(),
        figures.required("dial turns").asLong(), figures.required("energy").asLong(),
        byWord(Figures.Scarce.class, figures.required("busy"), JsonNode::asInt));
  }
}
