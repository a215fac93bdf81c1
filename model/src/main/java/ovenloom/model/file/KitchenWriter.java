package ovenloom.model.file;

import ovenloom.model.kitchen.Air;
import ovenloom.model.kitchen.Appliance;
import ovenloom.model.kitchen.Burner;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.kitchen.Circuit;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.kitchen.Pans;
import ovenloom.model.kitchen.Rack;
import ovenloom.model.kitchen.Shelf;
import ovenloom.model.kitchen.Store;
import ovenloom.model.kitchen.Vessel;
import ovenloom.model.kitchen.Warmth;
import ovenloom.model.measure.Mass;
import ovenloom.model.measure.Power;
import ovenloom.model.measure.Size;

/** Writes a kitchen. */
record KitchenWriter(HoursWriter hours) {

  Draft.Card kitchen(Kitchen kitchen) {
    Draft.Card card = new Draft.Card()
        .say("room", kitchen.room().written())
        .say("landing", Integer.toString(kitchen.landing()))
        .say("gap", kitchen.gap().written())
        .each("ovens", kitchen.ovens(), this::oven)
        .each("burners", kitchen.burners(), this::burner)
        .each("cold", kitchen.stores().stream().filter(store -> store.kind().isCold()).toList(), this::store)
        .each("hot", kitchen.stores().stream().filter(store -> !store.kind().isCold()).toList(), this::store);
    Draft.Card vessels = new Draft.Card();
    kitchen.vessels().forEach(vessel -> vessels.say(vessel.name(), vessel(vessel)));
    Draft.Card appliances = new Draft.Card();
    kitchen.appliances().forEach(appliance -> appliances.say(appliance.name(), appliance(appliance)));
    Draft.Card circuits = new Draft.Card();
    for (Circuit circuit : kitchen.circuits()) {
      circuits.say(circuit.name(), circuit.limit().written());
    }
    return card.sayAny("vessels", vessels).sayAny("appliances", appliances).sayAny("circuits", circuits);
  }

  private Draft oven(Oven oven) {
    Warmth warmth = oven.warmth();
    Draft.Card card = new Draft.Card()
        .say("name", oven.name())
        .say("dial", oven.dial().lowest().written() + " to " + oven.dial().highest().written());
    switch (oven.dial().unit()) {
      case CELSIUS -> card.say("step", oven.dial().step() + " C");
      case FAHRENHEIT -> card.say("step", oven.dial().step() + " F");
      case GAS -> {
      }
    }
    card.say("modes", Draft.Items.texts(oven.modes()))
        .say("heats", warmth.heatsTo().written() + " in " + Times.written(warmth.heatsIn()))
        .say("cools", warmth.coolsFrom().written() + " to " + warmth.coolsTo().written() + " in "
            + Times.written(warmth.coolsIn()))
        .say("hold", oven.hold().written())
        .each("racks", Draft.counted(oven.racks()), KitchenWriter::rack)
        .say("heating", oven.heating().written())
        .say("holding", oven.holding().written())
        .say("circuit", oven.circuit());
    hours.say(card, oven.open());
    return card;
  }

  private static Draft rack(Draft.Counted<Rack> racks) {
    Rack rack = racks.thing();
    return new Draft.Card()
        .sayUnless(1, "count", racks.count(), String::valueOf)
        .say("size", new Size(rack.width(), rack.depth()).written())
        .say("clear", rack.clear().written());
  }

  private Draft burner(Burner burner) {
    Draft.Card card = new Draft.Card()
        .say("name", burner.name())
        .say("size", Scalars.word(burner.size()))
        .say("power", burner.power().written())
        .say("circuit", burner.circuit());
    hours.say(card, burner.open());
    return card;
  }

  private Draft store(Store store) {
    Draft.Card card = new Draft.Card()
        .say("name", store.name())
        .say("holds", store.holds().written())
        .sayUnless(Air.STILL, "air", store.air(), Scalars::word);
    Mass warmLoad = store.warmLoad();
    if (warmLoad != null && !warmLoad.equals(Store.usualWarmLoad(store.kind(), store.air()))) {
      card.say("warm load", warmLoad.written());
    }
    card.each("shelves", store.shelves(), this::shelf);
    hours.say(card, store.open());
    return card;
  }

  private Draft shelf(Shelf shelf) {
    Draft.Card card = new Draft.Card()
        .say("name", shelf.name())
        .say("size", new Size(shelf.width(), shelf.depth(), shelf.height()).written());
    hours.say(card, shelf.open());
    return card;
  }

  private Draft vessel(Vessel vessel) {
    Size size = vessel.size();
    Size usual = Pans.size(vessel.name());
    Draft.Card card = new Draft.Card().say("count", Integer.toString(vessel.count()));
    if (size == null) {
      card.say("size", usual == null ? null : VesselReader.UNKNOWN);
    } else if (!size.equals(usual)) {
      card.say("size", size.written());
    }
    card.sayUnless(BurnerSize.SMALL, "burner", vessel.burner(), Scalars::word)
        .sayUnless(Vessel.WASH_MINUTES, "wash", vessel.wash(), Times::written);
    hours.say(card, vessel.open());
    return shortest(card);
  }

  private Draft appliance(Appliance appliance) {
    Draft.Card card = new Draft.Card()
        .say("count", Integer.toString(appliance.count()))
        .sayUnless(1, "places", appliance.places(), String::valueOf)
        .yes("heats", appliance.heats())
        .sayUnless(new Power(0), "draws", appliance.draws(), Power::written)
        .say("circuit", appliance.circuit());
    hours.say(card, appliance.open());
    return shortest(card);
  }

  /** A count alone needs no key. */
  private static Draft shortest(Draft.Card card) {
    Draft count = card.said().get("count");
    return card.said().size() == 1 && count != null ? count : card;
  }
}
