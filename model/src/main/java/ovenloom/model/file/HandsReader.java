package ovenloom.model.file;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.measure.Parsed;
import ovenloom.model.menu.Need;

/** Reads when within a step hands are needed, how many, and what they must know. */
final class HandsReader {

  static final Keys HANDS = Keys.of("a moment of hands", "throughout", "first", "last", "at", "every", "for",
      "sharp",
      "cooks",
      "skill");
  private static final int MOST_MOMENTS = 200;
  static final String THROUGHOUT = "throughout";

  private final Desk desk;
  private final int minutes;

  /**
   * Reads hands of a step.
   *
   * @param minutes the step's, as written
   */
  HandsReader(Desk desk, int minutes) {
    this.desk = desk;
    this.minutes = minutes;
  }

  List<Need.Hands> hands(Fields step) {
    int cooks = step.read("cooks", Scalars::count, 1);
    String skill = step.take("skill", s -> desk.reference(s, Names.Kind.SKILL));
    Written written = step.value("hands");
    List<Need.Hands> all = new ArrayList<>();
    if (written != null) {
      desk.items(written).forEach(each -> all.addAll(hands(each, cooks, skill)));
    } else if (step.has("cooks") || step.has("skill")) {
      desk.contradiction(step.placeOf(step.has("cooks") ? "cooks" : "skill"),
          "this step needs cooks, but no hands",
          "\"hands:\" as well, like \"hands: throughout\"");
    }
    return all;
  }

  private List<Need.Hands> hands(Written written, int cooks, @Nullable String skill) {
    if (written instanceof Written.Words) {
      String word = desk.read(written,
          text -> text.equals(THROUGHOUT) ? new Parsed.Good<>(text)
              : Scalars.oneOfThese(text,
                  List.of(THROUGHOUT, "{first: 5 min}", "{last: 5 min}", "{at: 10 min, for: 2 min}")));
      return word == null ? List.of() : List.of(new Need.Hands(new Need.Moment.Throughout(), cooks, skill));
    }
    Fields fields = desk.fields(written, HANDS);
    int own = fields.read("cooks", Scalars::count, cooks);
    String ownSkill = fields.take("skill", s -> desk.reference(s, Names.Kind.SKILL));
    return moments(fields).stream()
        .map(moment -> new Need.Hands(moment, own, ownSkill == null ? skill : ownSkill))
        .toList();
  }

  private List<Need.Moment> moments(Fields fields) {
    Integer first = fields.read("first", Scalars::someMinutes);
    Integer last = fields.read("last", Scalars::someMinutes);
    if (fields.has("first") || fields.has("last")) {
      List<Need.Moment> ends = new ArrayList<>();
      if (first != null) {
        ends.add(new Need.Moment.First(inside(fields, "first", first)));
      }
      if (last != null) {
        ends.add(new Need.Moment.Last(inside(fields, "last", last)));
      }
      return ends;
    }
    if (fields.yes(THROUGHOUT)) {
      return List.of(new Need.Moment.Throughout());
    }
    return fields.has("every") ? every(fields) : at(fields);
  }

  private List<Need.Moment> at(Fields fields) {
    Integer at = fields.needed("at", Scalars::minutes);
    Integer lasting = fields.needed("for", Scalars::someMinutes);
    boolean sharp = fields.yes("sharp");
    if (at == null || lasting == null) {
      return List.of();
    }
    inside(fields, "at", at + lasting);
    return List.of(new Need.Moment.At(at, lasting, sharp));
  }

  private List<Need.Moment> every(Fields fields) {
    Integer every = fields.read("every", Scalars::someMinutes);
    Integer lasting = fields.needed("for", Scalars::someMinutes);
    boolean sharp = fields.yes("sharp");
    List<Need.Moment> moments = new ArrayList<>();
    if (every != null && lasting != null) {
      inside(fields, "every", every + lasting);
      if (minutes / every > MOST_MOMENTS) {
        desk.contradiction(fields.placeOf("every"),
            "hands every " + every + " min are more than " + MOST_MOMENTS + " times",
            "fewer, or \"throughout\"");
        return moments;
      }
      for (int at = every; at + lasting <= minutes; at += every) {
        moments.add(new Need.Moment.At(at, lasting, sharp));
      }
    }
    return moments;
  }

  /** A moment past the step's end is a slip of the pen. */
  private int inside(Fields fields, String key, int until) {
    if (minutes > 0 && until > minutes) {
      desk.contradiction(fields.placeOf(key),
          "these hands are needed until minute " + until + " of a step of " + minutes + " min",
          "hands inside the step");
    }
    return until;
  }
}
