package ovenloom.model.file;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Level;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Parsed;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Temperature;
import ovenloom.model.menu.Need;

/** Reads what a step asks of an oven: its settings, one after the other, and how it stands in it. */
final class BakeReader {

  static final Keys STAGE = Keys.of("a bake", "at", "from", "to", "mode", "for", "rack", "load", "unload");

  /** A door that stays shut all the time. */
  static final String THROUGHOUT = "throughout";

  private final Desk desk;

  BakeReader(Desk desk) {
    this.desk = desk;
  }

  Need.@Nullable Bake bake(Fields step, Written written) {
    List<Written> all = desk.items(written);
    List<Need.Stage> stages = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      Need.Stage stage = stage(all.get(i), i == all.size() - 1);
      if (stage != null) {
        stages.add(stage);
      }
    }
    Fields inside = written instanceof Written.Keyed keyed
        ? new Fields(new Desk(), keyed, STAGE)
        : step;
    Level level = either(inside, step, "rack", Scalars.oneOf(Level.class));
    Integer load = either(inside, step, "load", Scalars::someMinutes);
    Integer unload = either(inside, step, "unload", Scalars::someMinutes);
    Length stands = step.read("stands", Length::read);
    Temperature core = step.read("core", Temperature::read);
    int overcook = step.read("overcook", Scalars::percent, Need.Bake.OVERCOOK_PERCENT);
    int shut = step.read("door shut", BakeReader::doorShut, 0);
    return stages.isEmpty() ? null
        : new Need.Bake(stages, level, stands, load == null ? 1 : load, unload == null ? 1 : unload, shut,
            core,
            overcook);
  }

  private <T> @Nullable T either(Fields inside, Fields step, String key,
      Function<String, Parsed<T>> reader) {
    Written value = inside.value(key);
    Written other = value == null ? step.value(key) : value;
    return other == null ? null : desk.read(other, reader);
  }

  private static Parsed<Integer> doorShut(String text) {
    return text.equals(THROUGHOUT) ? new Parsed.Good<>(Need.Bake.TO_THE_END) : Scalars.minutes(text);
  }

  private Need.@Nullable Stage stage(Written written, boolean last) {
    if (written instanceof Written.Words) {
      Setting at = desk.read(written, Setting::read);
      return at == null ? null : new Need.Stage(at, at, at, Oven.STILL, null);
    }
    Fields stage = desk.fields(written, STAGE);
    Setting at = stage.needed("at", Setting::read);
    Setting from = stage.read("from", Setting::read);
    Setting to = stage.read("to", Setting::read);
    String mode = stage.take("mode", desk::name);
    Integer minutes = last ? null : stage.needed("for", Scalars::someMinutes);
    if (last && stage.has("for")) {
      desk.contradiction(stage.placeOf("for"), "the last stage of a bake says how long it lasts",
          "no \"for\" here, since the last stage takes what is left of the step");
    }
    return at == null ? null
        : checked(stage, new Need.Stage(at, from == null ? at : from, to == null ? at : to,
            mode == null ? Oven.STILL : mode, minutes));
  }

  private Need.Stage checked(Fields stage, Need.Stage read) {
    Temperature at = read.written().temperature();
    if (read.from().temperature().compareTo(at) > 0) {
      desk.contradiction(stage.placeOf("from"),
          "it may bake from " + read.from() + ", but is written at " + read.written(),
          "a setting of at most " + read.written());
    }
    if (read.to().temperature().compareTo(at) < 0) {
      desk.contradiction(stage.placeOf("to"),
          "it may bake at up to " + read.to() + ", but is written at " + read.written(),
          "a setting of at least " + read.written());
    }
    return read;
  }
}
