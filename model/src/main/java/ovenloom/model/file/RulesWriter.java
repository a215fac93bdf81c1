package ovenloom.model.file;

import java.util.List;
import ovenloom.model.measure.Mass;
import ovenloom.model.safety.CoolDown;
import ovenloom.model.safety.HoldTime;
import ovenloom.model.safety.Profile;
import ovenloom.model.safety.Source;

/** Writes safety rules: those in the house by their name, one's own in full, so that a plan holds what it was judged by. */
final class RulesWriter {

  private RulesWriter() {}

  static Draft draft(Profile rules) {
    if (Profile.NAMES.contains(rules.name())) {
      return new Draft.Text(rules.name());
    }
    return new Draft.Card()
        .say("name", rules.name())
        .each("cook", rules.cook(), each -> hold(each.hold()).say("food", each.food()))
        .each("roast oven", rules.roastOven(), RulesWriter::roastOven)
        .each("reheat", rules.reheat(), RulesWriter::reheat)
        .each("cool", rules.cool(), RulesWriter::cool)
        .each("hot", rules.hot(), RulesWriter::limit)
        .each("cold", rules.cold(), RulesWriter::limit)
        .each("thawed", rules.thawed(), RulesWriter::limit)
        .each("days", rules.days(), each -> source(each.source()).say("most", String.valueOf(each.most())))
        .each("out", rules.out(), RulesWriter::out)
        .each("time only", rules.timeOnly(), RulesWriter::timeOnly);
  }

  private static Draft.Card source(Source source) {
    return new Draft.Card()
        .say("source", Draft.Items.texts(List.of(source.document(), source.edition(), source.section())));
  }

  private static Draft.Card hold(HoldTime hold) {
    return source(hold.source()).each("hold", hold.rows(), row -> new Draft.Card()
        .say("at", row.temperature().written())
        .say("seconds", String.valueOf(row.seconds())));
  }

  private static Draft roastOven(Profile.RoastOven oven) {
    Mass under = oven.under();
    return source(oven.source()).say("mode", oven.mode())
        .say("under", under == null ? null : under.written())
        .say("at", oven.at().written());
  }

  private static Draft reheat(Profile.Reheat reheat) {
    Draft.Card card = hold(reheat.hold());
    Profile.Within within = reheat.within();
    return within == null ? card
        : card.say("from", within.from().written()).say("minutes", String.valueOf(within.minutes()));
  }

  private static Draft cool(CoolDown cool) {
    return source(cool.source()).say("from", cool.from().written())
        .say("to", cool.to().written())
        .say("minutes", String.valueOf(cool.minutes()));
  }

  private static Draft limit(Profile.Limit limit) {
    return source(limit.source()).say("at", limit.temperature().written());
  }

  private static Draft out(Profile.OutOfTemperature out) {
    return source(out.source()).say("from", out.from().written())
        .say("to", out.to().written())
        .say("minutes", String.valueOf(out.minutes()))
        .say("hot air", out.hotAir().written())
        .say("then", String.valueOf(out.then()));
  }

  private static Draft timeOnly(Profile.TimeOnly limit) {
    Draft.Card card = source(limit.source()).say("cold", limit.cold().written())
        .say("hot", limit.hot().written())
        .say("after hot", String.valueOf(limit.afterHot()))
        .say("after cold", String.valueOf(limit.afterCold()))
        .yes("once", limit.once());
    Profile.Cool cool = limit.cool();
    return cool == null ? card
        : card.say("cool", cool.most().written()).say("then", String.valueOf(cool.minutes()));
  }
}
