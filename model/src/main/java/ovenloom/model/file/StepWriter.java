package ovenloom.model.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.kitchen.Store;
import ovenloom.model.measure.Setting;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Keeps;
import ovenloom.model.menu.Link;
import ovenloom.model.menu.Need;
import ovenloom.model.menu.Step;

/** Writes a step. */
record StepWriter(Kitchen kitchen, Dish dish) {

  /**
   * A step.
   *
   * @param before the one written before it
   */
  Draft step(Step step, @Nullable Step before) {
    Draft.Card card = new Draft.Card()
        .say("do", step.name())
        .say("takes", step.takes().written().written())
        .say("up to", Times.orAbsent(step.takes().upTo()))
        .yes("once", step.once())
        .sayUnless(1, "together", step.together().most(), String::valueOf)
        .yes("one vessel", step.together().oneVessel());
    Need.Bake bake = step.bake();
    if (bake != null) {
      bake(card, bake);
    }
    Need.OnBurner burner = step.burner();
    if (burner != null) {
      card.say("burner", Scalars.word(burner.atLeast()))
          .say("core", burner.core() == null ? null : Objects.requireNonNull(burner.core()).written());
    }
    card.some("appliance", step.appliances().stream().map(Need.OnAppliance::appliance).toList());
    vessels(card, step.vessels());
    Need.OnShelf shelf = step.shelf();
    if (shelf != null) {
      card.some(isHot(shelf) ? "hot" : "cold", shelf.stores());
    }
    hands(card, step.hands());
    Keeps keeps = step.keeps();
    if (keeps != null) {
      card.say("keeps", keeps(keeps));
    }
    links(card, step, before);
    return card
        .say("starts", step.starts() == null ? null : Scalars.word(Objects.requireNonNull(step.starts())))
        .say("covered", MatterWriter.yesOrNo(step.covered()))
        .yes("serve", step.serve())
        .yes("unattended", step.unattended())
        .yes("away", step.away());
  }

  private static void bake(Draft.Card card, Need.Bake bake) {
    List<Draft> stages = bake.stages().stream().map(StepWriter::stage).toList();
    card.say("bake", stages.size() == 1 ? stages.getFirst() : new Draft.Items(stages))
        .say("rack", bake.level() == null ? null : Scalars.word(Objects.requireNonNull(bake.level())))
        .sayUnless(1, "load", bake.load(), Times::written)
        .sayUnless(1, "unload", bake.unload(), Times::written)
        .say("stands", bake.stands() == null ? null : Objects.requireNonNull(bake.stands()).written())
        .say("core", bake.core() == null ? null : Objects.requireNonNull(bake.core()).written())
        .sayUnless(0, "door shut", bake.doorShut(),
            n -> n == Need.Bake.TO_THE_END ? BakeReader.THROUGHOUT : Times.written(n))
        .sayUnless(Need.Bake.OVERCOOK_PERCENT, "overcook", bake.overcookPercent(), n -> n + " %");
  }

  private static Draft stage(Need.Stage stage) {
    return new Draft.Card()
        .say("at", stage.written().written())
        .sayUnless(stage.written(), "from", stage.from(), Setting::written)
        .sayUnless(stage.written(), "to", stage.to(), Setting::written)
        .sayUnless(Oven.STILL, "mode", stage.mode(), mode -> mode)
        .say("for", Times.orAbsent(stage.minutes()));
  }

  private static void vessels(Draft.Card card, List<Need.InVessel> vessels) {
    if (vessels.stream().allMatch(need -> need.count() == 1)) {
      card.some("in", vessels.stream().map(Need.InVessel::vessel).toList());
    } else {
      List<Draft> all = vessels.stream()
          .<Draft>map(need -> new Draft.Card().say(need.vessel(), Integer.toString(need.count())))
          .toList();
      card.say("in", all.size() == 1 ? all.getFirst() : new Draft.Items(all));
    }
  }

  private boolean isHot(Need.OnShelf shelf) {
    Store store = kitchen.store(shelf.stores().getFirst());
    return store != null && !store.kind().isCold();
  }

  private static void hands(Draft.Card card, List<Need.Hands> hands) {
    if (hands.size() == 1 && hands.getFirst().moment() instanceof Need.Moment.Throughout) {
      Need.Hands all = hands.getFirst();
      card.say("hands", HandsReader.THROUGHOUT)
          .sayUnless(1, "cooks", all.cooks(), String::valueOf)
          .say("skill", all.skill());
    } else {
      card.each("hands", hands, StepWriter::hands);
    }
  }

  private static Draft hands(Need.Hands hands) {
    Draft.Card card = new Draft.Card();
    switch (hands.moment()) {
      case Need.Moment.Throughout all -> card.say(HandsReader.THROUGHOUT, "yes");
      case Need.Moment.First(int minutes) -> card.say("first", Times.written(minutes));
      case Need.Moment.Last(int minutes) -> card.say("last", Times.written(minutes));
      case Need.Moment.At(int after, int minutes, boolean sharp) ->
        card.say("at", Times.written(after)).say("for", Times.written(minutes)).yes("sharp", sharp);
    }
    return card.sayUnless(1, "cooks", hands.cooks(), String::valueOf).say("skill", hands.skill());
  }

  private static Draft keeps(Keeps keeps) {
    Draft.Card card = new Draft.Card()
        .say(KeepsReader.COUNTER, Times.orAbsent(keeps.counter()))
        .say(KeepsReader.OVEN, Times.orAbsent(keeps.oven()))
        .say(KeepsReader.BURNER, Times.orAbsent(keeps.burner()));
    keeps.stores().forEach((store, minutes) -> card.say(store, Times.written(minutes)));
    return card;
  }

  private void links(Draft.Card card, Step step, @Nullable Step before) {
    Link.Kind follows = dish.food() ? Link.Kind.FOOD : Link.Kind.ORDER_ONLY;
    List<Link> after = linked(step, follows, true);
    List<Link> usual = before == null ? List.of()
        : List.of(new Link(follows, dish.name(), before.name(), 0, null));
    if (after.isEmpty() && before != null) {
      card.say("after", LinksReader.NOTHING);
    } else if (!after.equals(usual)) {
      say(card, "after", after);
    }
    say(card, "uses", linked(step, Link.Kind.FOOD, false));
    List<Link> alongside = new ArrayList<>(linked(step, Link.Kind.ALONGSIDE, true));
    alongside.addAll(linked(step, Link.Kind.ALONGSIDE, false));
    say(card, "alongside", alongside);
    List<Link> order = new ArrayList<>(dish.food() ? linked(step, Link.Kind.ORDER_ONLY, true) : List.of());
    order.addAll(linked(step, Link.Kind.ORDER_ONLY, false));
    say(card, "order only", order);
  }

  private List<Link> linked(Step step, Link.Kind kind, boolean own) {
    return step.after()
        .stream()
        .filter(link -> link.kind() == kind && link.dish().equals(dish.name()) == own)
        .toList();
  }

  private void say(Draft.Card card, String key, List<Link> links) {
    if (links.stream().allMatch(link -> link.least() == 0 && link.most() == null)) {
      card.some(key, links.stream().map(this::name).toList());
    } else if (links.stream().map(this::name).distinct().count() == links.size()) {
      Draft.Card gaps = new Draft.Card();
      links.forEach(link -> gaps.say(name(link), gap(link)));
      card.say(key, gaps);
    } else {
      card.each(key, links, link -> new Draft.Card().say(name(link), gap(link)));
    }
  }

  private static Draft gap(Link link) {
    return new Draft.Card()
        .sayUnless(0, "least", link.least(), Times::written)
        .say("most", Times.orAbsent(link.most()));
  }

  private String name(Link link) {
    return link.dish().equals(dish.name()) ? link.step() : link.dish() + "/" + link.step();
  }
}
