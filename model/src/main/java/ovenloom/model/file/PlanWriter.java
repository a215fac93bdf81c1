package ovenloom.model.file;

import java.util.List;
import java.util.Objects;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Batches;
import ovenloom.model.plan.Baking;
import ovenloom.model.plan.Bound;
import ovenloom.model.plan.HandsOn;
import ovenloom.model.plan.OvenLog;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Score;
import ovenloom.model.plan.ShelfPlace;
import ovenloom.model.plan.Spread;
import ovenloom.model.plan.Stay;
import ovenloom.model.plan.Wash;
import ovenloom.model.plan.Where;

/** Writes a plan. Times are minutes from the midnight that begins the day, as the plan counts them. */
final class PlanWriter {

  private PlanWriter() {}

  static Draft.Card draft(Plan plan) {
    Draft.Card card = new Draft.Card()
        .say(PlanReader.VERSION_KEY, PlanReader.VERSION)
        .say("files", Draft.Items.of(plan.sources(),
            source -> new Draft.Card().say("file", source.file()).say("sha256", source.sha256())))
        .say("score", score(plan.score()));
    Bound bound = plan.bound();
    if (bound != null) {
      card.say("bound", bound(bound));
    }
    return card.say("runs", Draft.Items.of(plan.placements(), PlanWriter::run))
        .say("stays", Draft.Items.of(plan.stays(), PlanWriter::stay))
        .say("ovens", Draft.Items.of(plan.ovens(), PlanWriter::log))
        .say("washes", Draft.Items.of(plan.washes(), PlanWriter::wash))
        .say("layouts", Draft.Items.of(plan.layouts(), PlanWriter::spread))
        .say("event", EventWriter.draft(plan.event()));
  }

  private static Draft bound(Bound bound) {
    return new Draft.Card().say("at the table", number(bound.atTheTable()))
        .say("wishes", number(bound.wishes()));
  }

  private static Draft run(Placement run) {
    Draft.Card card = of(run.dish(), run.step(), run.batches()).say("when", when(run.when()));
    Baking baking = run.baking();
    if (baking != null) {
      card.say("baking", baking(baking));
    }
    return card.each("burners", run.burners(), Draft.Text::new)
        .each("shelves", run.shelves(), PlanWriter::shelf)
        .each("hands", run.hands(), PlanWriter::hands);
  }

  private static Draft baking(Baking baking) {
    return new Draft.Card()
        .say("oven", baking.oven())
        .say("mode", baking.mode())
        .say("stages", Draft.Items.of(baking.stages(),
            stage -> new Draft.Card().say("mark", stage.mark().written()).say("when", when(stage.when()))))
        .say("racks", Draft.Items.of(baking.racks(), rack -> number(rack)))
        .say("state", Scalars.word(baking.state()));
  }

  private static Draft shelf(ShelfPlace place) {
    return new Draft.Card().say("store", place.store()).say("shelf", place.shelf());
  }

  private static Draft hands(HandsOn hands) {
    return new Draft.Card()
        .say("act", Scalars.word(hands.act()))
        .say("when", when(hands.when()))
        .say("cooks", Draft.Items.texts(hands.cooks()));
  }

  private static Draft stay(Stay stay) {
    return of(stay.dish(), stay.step(), stay.batches())
        .say("parts",
            Draft.Items.of(stay.parts(), part -> where(part.where()).say("when", when(part.when()))))
        .each("hands", stay.hands(), PlanWriter::hands);
  }

  private static Draft.Card where(Where where) {
    Draft.Card card = new Draft.Card();
    return switch (where) {
      case Where.Counter() -> card.say("on", "counter");
      case Where.OnShelf(String store, List<String> shelves) ->
        card.say("on", "shelf").say("store", store).say("shelves", Draft.Items.texts(shelves));
      case Where.InOven(String oven, Setting mark) ->
        card.say("on", "oven").say("oven", oven).say("mark", mark == null ? null : mark.written());
      case Where.OnBurner(List<String> burners) ->
        card.say("on", "burner").say("burners", Draft.Items.texts(burners));
    };
  }

  private static Draft log(OvenLog log) {
    return new Draft.Card().say("oven", log.oven())
        .say("spans", Draft.Items.of(log.spans(), span -> new Draft.Card()
            .say("doing", Scalars.word(span.doing()))
            .say("mark", span.mark().written())
            .say("mode", span.mode())
            .say("when", when(span.when()))));
  }

  private static Draft wash(Wash wash) {
    return new Draft.Card()
        .say("vessel", wash.vessel())
        .say("count", number(wash.count()))
        .say("when", when(wash.when()))
        .say("cook", wash.cook());
  }

  private static Draft spread(Spread spread) {
    return new Draft.Card()
        .say("place", spread.place())
        .say("level", number(spread.level()))
        .say("when", when(spread.when()))
        .say("spots", Draft.Items.of(spread.spots(), spot -> of(spot.dish(), spot.step(), spot.batches())
            .say("piece", number(spot.piece()))
            .say("left", spot.left().written())
            .say("front", spot.front().written())
            .yes("turned", spot.turned())));
  }

  private static Draft score(Score score) {
    Draft.Card table = new Draft.Card();
    score.atTheTable().forEach((dish, points) -> table.say(dish, number(points)));
    Draft.Card points = new Draft.Card();
    score.points().forEach((wish, some) -> points.say(Scalars.word(wish), number(some)));
    return new Draft.Card()
        .say("breaks", number(score.breaks()))
        .say("at the table", table)
        .say("points", points)
        .say("wishes", number(score.wishes()))
        .say("early", number(score.early()));
  }

  private static Draft.Card of(String dish, String step, Batches batches) {
    return new Draft.Card()
        .say("dish", dish)
        .say("step", step)
        .say("batches", Draft.Items.of(List.of(batches.first(), batches.last()), PlanWriter::number));
  }

  private static Draft when(Stretch when) {
    return Draft.Items.of(List.of(when.from(), when.to()), PlanWriter::number);
  }

  private static Draft number(Number number) {
    return new Draft.Text(Objects.toString(number));
  }
}
