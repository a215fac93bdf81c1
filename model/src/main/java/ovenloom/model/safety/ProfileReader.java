package ovenloom.model.safety;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import ovenloom.model.measure.Mass;
import ovenloom.model.measure.Parsed;
import ovenloom.model.measure.Temperature;
import tools.jackson.databind.JsonNode;
import tools.jackson.dataformat.yaml.YAMLMapper;

/** Reads the profiles in the house; tests read them all, so a slip in one is a slip in the program. */
final class ProfileReader {

  private ProfileReader() {}

  static Profile read(String name) {
    try (InputStream in = Objects.requireNonNull(ProfileReader.class.getResourceAsStream(name + ".yaml"))) {
      JsonNode file = new YAMLMapper().readTree(in);
      return new Profile(name,
          each(file, "cook", node -> new Profile.Cook(text(node, "food"), hold(node))),
          each(file, "roast oven", ProfileReader::roastOven),
          each(file, "reheat", node -> new Profile.Reheat(
              hold(node),
              node.has("from") ? new Profile.Within(temperature(node, "from"), number(node, "minutes"))
                  : null)),
          each(file, "cool", node -> new CoolDown(
              temperature(node, "from"), temperature(node, "to"), number(node, "minutes"), source(node))),
          each(file, "hot", ProfileReader::limit),
          each(file, "cold", ProfileReader::limit),
          each(file, "thawed", ProfileReader::limit),
          each(file, "days", node -> new Profile.Days(number(node, "most"), source(node))),
          each(file, "out", ProfileReader::outOfTemperature),
          each(file, "time only", ProfileReader::timeOnly));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static <T> List<T> each(JsonNode file, String key, Function<JsonNode, T> reader) {
    return file.path(key).valueStream().map(reader).toList();
  }

  private static Profile.RoastOven roastOven(JsonNode node) {
    return new Profile.RoastOven(text(node, "mode"),
        node.has("under") ? read(node, "under", Mass::read) : null, temperature(node, "at"), source(node));
  }

  private static HoldTime hold(JsonNode node) {
    return new HoldTime(
        each(node, "hold", row -> new HoldTime.Row(temperature(row, "at"), number(row, "seconds"))),
        source(node));
  }

  private static Profile.Limit limit(JsonNode node) {
    return new Profile.Limit(temperature(node, "at"), source(node));
  }

  private static Profile.OutOfTemperature outOfTemperature(JsonNode node) {
    return new Profile.OutOfTemperature(
        temperature(node, "from"), temperature(node, "to"), number(node, "minutes"),
        temperature(node, "hot air"), number(node, "then"), source(node));
  }

  private static Profile.TimeOnly timeOnly(JsonNode node) {
    return new Profile.TimeOnly(
        temperature(node, "cold"), temperature(node, "hot"), number(node, "after hot"),
        number(node, "after cold"),
        node.has("cool") ? new Profile.Cool(temperature(node, "cool"), number(node, "then")) : null,
        node.path("once").asBoolean(false), source(node));
  }

  private static Source source(JsonNode node) {
    JsonNode words = Objects.requireNonNull(node.get("source"));
    return new Source(words.get(0).asString(), words.get(1).asString(), words.get(2).asString());
  }

  private static Temperature temperature(JsonNode node, String key) {
    return read(node, key, Temperature::read);
  }

  private static <T> T read(JsonNode node, String key, Function<String, Parsed<T>> reader) {
    return switch (reader.apply(text(node, key))) {
      case Parsed.Good<T>(var value) -> value;
      case Parsed.Bad<T> wrong -> throw new IllegalArgumentException(key + ": " + wrong);
    };
  }

  private static String text(JsonNode node, String key) {
    return Objects.requireNonNull(node.get(key), key).asString();
  }

  private static int number(JsonNode node, String key) {
    return Objects.requireNonNull(node.get(key), key).intValue();
  }
}
