package ovenloom.model.file;

import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.measure.Mass;
import ovenloom.model.measure.Parsed;
import ovenloom.model.measure.Temperature;
import ovenloom.model.safety.CoolDown;
import ovenloom.model.safety.HoldTime;
import ovenloom.model.safety.Profile;
import ovenloom.model.safety.Source;

/** Reads safety rules of one's own, which are laid out as those in the house. */
final class RulesReader {

  private static final Keys RULES = Keys.of("safety rules", "name", "cook", "roast oven", "reheat", "cool",
      "hot", "cold", "thawed", "days", "out", "time only");
  private static final Keys COOK = Keys.of("a limit to cook to", "food", "hold", "source");
  private static final Keys ROAST_OVEN = Keys.of("a limit to roast at", "mode", "under", "at", "source");
  private static final Keys REHEAT = Keys.of("a limit to heat again to", "hold", "from", "minutes", "source");
  private static final Keys ROW = Keys.of("a row", "at", "seconds");
  private static final Keys COOL = Keys.of("a limit to cool by", "from", "to", "minutes", "source");
  private static final Keys LIMIT = Keys.of("a limit", "at", "source");
  private static final Keys DAYS = Keys.of("a limit of days", "most", "source");
  private static final Keys OUT = Keys.of("a limit to leave out by", "from", "to", "minutes", "hot air",
      "then", "source");
  private static final Keys TIME = Keys.of("a limit by the clock", "cold", "hot", "after hot", "after cold",
      "cool", "then",
      "once", "source");

  private static final List<String> MODES = List.of(Oven.STILL, Oven.FAN);

  private final Desk desk;

  RulesReader(Desk desk) {
    this.desk = desk;
  }

  Profile profile(Written written, String called) {
    Fields rules = desk.fields(written, RULES);
    String name = rules.take("name", desk::name);
    if (rules.has("out") && rules.has("time only")) {
      desk.contradiction(rules.placeOf("time only"),
          "\"out\" and \"time only\" both say how long food may stand out",
          "one of the two");
    }
    return new Profile(name == null ? called : name, rules.each("cook", this::cook),
        rules.each("roast oven", this::roastOven),
        rules.each("reheat", this::reheat),
        rules.each("cool", this::cool), rules.each("hot", this::limit), rules.each("cold", this::limit),
        rules.each("thawed", this::limit),
        rules.each("days", this::days), rules.each("out", this::out),
        rules.each("time only", this::timeOnly));
  }

  private Profile.@Nullable Cook cook(Written written) {
    Fields cook = desk.fields(written, COOK);
    String food = cook.takeNeeded("food", desk::name);
    HoldTime hold = hold(cook);
    return food == null || hold == null ? null : new Profile.Cook(food, hold);
  }

  private Profile.@Nullable RoastOven roastOven(Written written) {
    Fields oven = desk.fields(written, ROAST_OVEN);
    String mode = oven.needed("mode", RulesReader::stillOrFan);
    Mass under = oven.read("under", StoreReader::someMass);
    Temperature at = oven.needed("at", Temperature::read);
    Source source = source(oven);
    return mode == null || at == null || source == null ? null
        : new Profile.RoastOven(mode, under, at, source);
  }

  /** A kitchen may call its other modes what it likes, so that a slip in one would make a limit that holds nowhere. */
  private static Parsed<String> stillOrFan(String text) {
    return MODES.contains(text) ? new Parsed.Good<>(text) : Scalars.oneOfThese(text, MODES);
  }

  private Profile.@Nullable Reheat reheat(Written written) {
    Fields reheat = desk.fields(written, REHEAT);
    HoldTime hold = hold(reheat);
    Temperature from = reheat.has("minutes") ? reheat.needed("from", Temperature::read) : null;
    Integer minutes = reheat.has("from") ? reheat.needed("minutes", Scalars::count) : null;
    return hold == null ? null
        : new Profile.Reheat(hold,
            from == null || minutes == null ? null : new Profile.Within(from, minutes));
  }

  private @Nullable HoldTime hold(Fields of) {
    List<HoldTime.Row> rows = of.someNeeded("hold", this::row);
    Source source = source(of);
    for (int i = 1; i < rows.size(); i++) {
      if (rows.get(i).temperature().compareTo(rows.get(i - 1).temperature()) <= 0
          || rows.get(i).seconds() >= rows.get(i - 1).seconds()) {
        desk.contradiction(of.placeOf("hold"),
            "row " + (i + 1) + " is not hotter and shorter than the one before",
            "rows from the coolest to the hottest, each with less time");
        return null;
      }
    }
    return rows.isEmpty() || source == null ? null : new HoldTime(rows, source);
  }

  private HoldTime.@Nullable Row row(Written written) {
    Fields row = desk.fields(written, ROW);
    Temperature at = row.needed("at", Temperature::read);
    Integer seconds = row.needed("seconds", Scalars::countOrNone);
    return at == null || seconds == null ? null : new HoldTime.Row(at, seconds);
  }

  private @Nullable CoolDown cool(Written written) {
    Fields cool = desk.fields(written, COOL);
    Temperature from = cool.needed("from", Temperature::read);
    Temperature to = cool.needed("to", Temperature::read);
    Integer minutes = cool.needed("minutes", Scalars::count);
    Source source = source(cool);
    if (from == null || to == null || minutes == null || source == null || !isAbove(cool, "from", from, to)) {
      return null;
    }
    return new CoolDown(from, to, minutes, source);
  }

  private Profile.@Nullable Limit limit(Written written) {
    Fields limit = desk.fields(written, LIMIT);
    Temperature at = limit.needed("at", Temperature::read);
    Source source = source(limit);
    return at == null || source == null ? null : new Profile.Limit(at, source);
  }

  private Profile.@Nullable Days days(Written written) {
    Fields days = desk.fields(written, DAYS);
    Integer most = days.needed("most", Scalars::count);
    Source source = source(days);
    return most == null || source == null ? null : new Profile.Days(most, source);
  }

  private Profile.@Nullable OutOfTemperature out(Written written) {
    Fields out = desk.fields(written, OUT);
    Temperature from = out.needed("from", Temperature::read);
    Temperature to = out.needed("to", Temperature::read);
    Integer minutes = out.needed("minutes", Scalars::count);
    Temperature hotAir = out.needed("hot air", Temperature::read);
    Integer then = out.needed("then", Scalars::count);
    Source source = source(out);
    if (from == null || to == null || minutes == null || hotAir == null || then == null || source == null
        || !isAbove(out, "to", to, from)) {
      return null;
    }
    return new Profile.OutOfTemperature(from, to, minutes, hotAir, then, source);
  }

  private Profile.@Nullable TimeOnly timeOnly(Written written) {
    Fields limit = desk.fields(written, TIME);
    Temperature cold = limit.needed("cold", Temperature::read);
    Temperature hot = limit.needed("hot", Temperature::read);
    Integer afterHot = limit.needed("after hot", Scalars::count);
    Integer afterCold = limit.needed("after cold", Scalars::count);
    Temperature most = limit.has("then") ? limit.needed("cool", Temperature::read) : null;
    Integer then = limit.has("cool") ? limit.needed("then", Scalars::count) : null;
    Source source = source(limit);
    if (cold == null || hot == null || afterHot == null || afterCold == null || source == null
        || !isAbove(limit, "hot", hot, cold)) {
      return null;
    }
    return new Profile.TimeOnly(cold, hot, afterHot, afterCold,
        most == null || then == null ? null : new Profile.Cool(most, then), limit.yes("once"), source);
  }

  private boolean isAbove(Fields of, String key, Temperature above, Temperature below) {
    if (above.compareTo(below) > 0) {
      return true;
    }
    desk.contradiction(of.placeOf(key), above.written() + " is not above " + below.written(),
        "the hotter of the two");
    return false;
  }

  /** A limit that can hurt someone says where it is from. */
  private @Nullable Source source(Fields of) {
    Written written = of.needed("source");
    if (written == null) {
      return null;
    }
    List<String> words = desk.each(written, this::text);
    if (words.size() != 3) {
      desk.contradiction(written.place(), "a list of " + words.size() + " is no source",
          "document, edition and section, like \"[FDA Food Code, '2017', 3-501.14(A)]\"");
      return null;
    }
    return new Source(words.getFirst(), words.get(1), words.getLast());
  }

  private @Nullable String text(Written written) {
    Written.Words words = desk.words(written);
    return words == null ? null : words.text();
  }
}
