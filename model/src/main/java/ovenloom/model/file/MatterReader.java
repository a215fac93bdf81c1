package ovenloom.model.file;

import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import ovenloom.model.heat.Component;
import ovenloom.model.heat.Composition;
import ovenloom.model.heat.Kind;
import ovenloom.model.measure.Conductivity;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Parsed;
import ovenloom.model.measure.Percent;
import ovenloom.model.menu.Matter;

/** Reads what a dish is as heat meets it. */
final class MatterReader {

  static final Keys MADE_OF = Keys.of("what a dish is made of", "water", "protein", "fat", "carbohydrate",
      "fibre", "ash");

  private final Desk desk;

  MatterReader(Desk desk) {
    this.desk = desk;
  }

  Matter matter(Fields dish) {
    return new Matter(dish.read("kind", Scalars.oneOf(Kind.class)),
        dish.read("thick", MatterReader::thickness),
        dish.take("made of", this::composition), dish.read("conducts", Conductivity::read),
        dish.read("covered", Scalars::yesOrNo));
  }

  private static Parsed<Length> thickness(String text) {
    return Scalars.checked(Length.read(text), text, thick -> thick.micrometres() > 0 ? thick : null,
        "more than nothing, like \"4 cm\"");
  }

  private @Nullable Composition composition(Written written) {
    int faults = desk.faults();
    Fields fields = desk.fields(written, MADE_OF);
    Map<Component, Double> shares = new EnumMap<>(Component.class);
    double all = 0;
    for (Component component : Composition.SAID) {
      double share = fields.read(Scalars.word(component), Percent::read, Percent.of(0)).share();
      shares.put(component, share);
      all += share;
    }
    if (desk.faults() > faults) {
      return null;
    }
    if (!Composition.isWhole(all)) {
      desk.contradiction(fields.place(), "these shares add up to " + Math.round(all * 1000) / 10.0 + " %",
          "100 %");
      return null;
    }
    return Composition.of(shares);
  }
}
