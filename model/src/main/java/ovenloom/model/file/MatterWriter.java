package ovenloom.model.file;

import org.jspecify.annotations.Nullable;
import ovenloom.model.heat.Component;
import ovenloom.model.heat.Composition;
import ovenloom.model.heat.Kind;
import ovenloom.model.measure.Conductivity;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Percent;
import ovenloom.model.menu.Matter;

/** Writes what a dish is as heat meets it, so that the reader understands it. */
final class MatterWriter {

  private static final double HUNDREDTHS_OF_A_PERCENT = 10_000;

  private MatterWriter() {}

  static void say(Draft.Card card, Matter matter) {
    Kind kind = matter.kind();
    Length thick = matter.thick();
    Composition madeOf = matter.madeOf();
    Conductivity conducts = matter.conducts();
    card.say("kind", kind == null ? null : Scalars.word(kind))
        .say("thick", thick == null ? null : thick.written());
    if (madeOf != null) {
      card.say("made of", shares(madeOf));
    }
    card.say("conducts", conducts == null ? null : conducts.written())
        .say("covered", yesOrNo(matter.covered()));
  }

  static @Nullable String yesOrNo(@Nullable Boolean is) {
    return is == null ? null : is ? "yes" : "no";
  }

  private static Draft.Card shares(Composition madeOf) {
    Draft.Card shares = new Draft.Card();
    for (Component component : Composition.SAID) {
      Percent share = new Percent((int) Math.round(madeOf.share(component) * HUNDREDTHS_OF_A_PERCENT));
      shares.sayUnless(Percent.of(0), Scalars.word(component), share, Percent::written);
    }
    return shares;
  }
}
