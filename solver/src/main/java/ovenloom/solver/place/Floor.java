package ovenloom.solver.place;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import ovenloom.model.kitchen.Appliance;
import ovenloom.model.kitchen.Availability;
import ovenloom.model.kitchen.Burner;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.kitchen.Rack;
import ovenloom.model.kitchen.Shelf;
import ovenloom.model.kitchen.Store;
import ovenloom.model.kitchen.Vessel;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Event;
import ovenloom.solver.timeline.CountTimeline;
import ovenloom.solver.timeline.DialTimeline;
import ovenloom.solver.timeline.Footprints;
import ovenloom.solver.timeline.Presence;
import ovenloom.solver.timeline.RackFit;

/** Everything in the kitchen that can be taken, over time. */
final class Floor {

  final int from;
  final int to;
  final Crew crew;
  final DialTimeline[] dials;
  final Tiers[] racks;
  final CountTimeline[] burners;
  final CountTimeline[] appliances;
  final Tiers[] stores;
  final CountTimeline landing;

  /** One for each kind of vessel of which there may be too few; null for the others. */
  final VesselPool[] vessels;

  private final BurnerSize[] sizes;
  private final Footprints footprints;
  private final int gap;

  Floor(Runs runs) {
    Event event = runs.event();
    Kitchen kitchen = event.kitchen();
    from = event.from();
    to = event.to();
    footprints = runs.footprints();
    gap = micrometres(kitchen.gap());
    crew = new Crew(event.cooks(), from, to);
    dials = kitchen.ovens().stream().map(this::dial).toArray(DialTimeline[]::new);
    racks = kitchen.ovens().stream().map(this::racks).toArray(Tiers[]::new);
    sizes = kitchen.burners().stream().map(Burner::size).toArray(BurnerSize[]::new);
    burners = kitchen.burners().stream().map(this::burner).toArray(CountTimeline[]::new);
    appliances = kitchen.appliances().stream().map(this::appliance).toArray(CountTimeline[]::new);
    stores = kitchen.stores().stream().map(this::shelves).toArray(Tiers[]::new);
    landing = new CountTimeline(from, to, kitchen.landing());
    vessels = new VesselPool[kitchen.vessels().size()];
    for (int i = 0; i < vessels.length; i++) {
      Vessel vessel = kitchen.vessels().get(i);
      int number = i;
      List<Fill> fills = runs.fillings().stream().filter(fill -> fill.vessel() == number).toList();
      if (isShort(vessel, fills)) {
        vessels[i] = new VesselPool(i, vessel.count(), vessel.wash(), fills.size(), crew,
            vessel.open().taken(), closed(hours(vessel.open())));
      }
    }
  }

  private static boolean isShort(Vessel vessel, List<Fill> fills) {
    int filled = fills.stream().mapToInt(Fill::count).sum();
    int taken = vessel.open().taken().stream().mapToInt(Availability.Taken::count).sum();
    return filled + taken > vessel.count() || !vessel.open().hours().isEmpty();
  }

  /** The size of a burner, by its number. */
  BurnerSize size(int burner) {
    return sizes[burner];
  }

  /** The vessels of a filling of which there are too few. */
  VesselPool pool(Fill fill) {
    return Objects.requireNonNull(vessels[fill.vessel()]);
  }

  private DialTimeline dial(Oven oven) {
    return new DialTimeline(from, to, new DialHeat(oven, crew.there()), open(oven.open()), crew.there());
  }

  private Presence hours(Availability availability) {
    Presence open = availability.hours().isEmpty() ? Presence.between(from, to) : Presence.never();
    for (Stretch hours : availability.hours()) {
      open = open.and(hours.from(), hours.to());
    }
    return open;
  }

  private Presence open(Availability availability) {
    Presence open = hours(availability);
    for (Availability.Taken taken : availability.taken()) {
      open = open.except(taken.when().from(), taken.when().to());
    }
    return open;
  }

  private Tiers racks(Oven oven) {
    List<RackFit> fits = new ArrayList<>();
    for (Rack rack : oven.racks()) {
      fits.add(new RackFit(footprints, micrometres(rack.width()), micrometres(rack.depth()), gap));
    }
    long[] clear = oven.racks().stream().mapToLong(rack -> rack.clear().micrometres()).toArray();
    return new Tiers(from, to, fits, clear, true);
  }

  private Tiers shelves(Store store) {
    List<RackFit> fits = new ArrayList<>();
    for (Shelf shelf : store.shelves()) {
      fits.add(new RackFit(footprints, micrometres(shelf.width()), micrometres(shelf.depth()), gap));
    }
    long[] clear = store.shelves().stream().mapToLong(shelf -> shelf.height().micrometres()).toArray();
    Tiers shelves = new Tiers(from, to, fits, clear, false);
    IntStream.range(0, store.shelves().size()).forEach(tier -> {
      closed(open(store.open())).forEach(each -> shelves.close(tier, each.from(), each.to()));
      closed(open(store.shelves().get(tier).open()))
          .forEach(each -> shelves.close(tier, each.from(), each.to()));
    });
    return shelves;
  }

  /** When something is not open. */
  private List<Stretch> closed(Presence open) {
    List<Stretch> closed = new ArrayList<>();
    int last = from;
    for (int i = 0; i < open.stretches(); i++) {
      addNotEmpty(closed, last, open.opens(i));
      last = Math.max(last, open.closes(i));
    }
    addNotEmpty(closed, last, to);
    return closed;
  }

  private static void addNotEmpty(List<Stretch> all, int from, int to) {
    if (from < to) {
      all.add(new Stretch(from, to));
    }
  }

  private CountTimeline burner(Burner burner) {
    return pool(1, burner.open());
  }

  private CountTimeline appliance(Appliance appliance) {
    return pool(appliance.capacity(), appliance.open());
  }

  private CountTimeline pool(int capacity, Availability availability) {
    CountTimeline pool = new CountTimeline(from, to, capacity);
    closed(hours(availability)).forEach(each -> pool.reduce(each.from(), each.to(), capacity));
    for (Availability.Taken taken : availability.taken()) {
      reduce(pool, Math.max(from, taken.when().from()), Math.min(to, taken.when().to()), taken.count());
    }
    return pool;
  }

  private static void reduce(CountTimeline pool, int from, int to, int by) {
    if (from < to) {
      pool.reduce(from, to, by);
    }
  }

  private static int micrometres(Length length) {
    return (int) length.micrometres();
  }

  /** Gives everything back. */
  void clear() {
    crew.clear();
    landing.clear();
    for (DialTimeline dial : dials) {
      dial.clear();
    }
    for (Tiers tiers : racks) {
      tiers.clear();
    }
    for (Tiers tiers : stores) {
      tiers.clear();
    }
    for (CountTimeline burner : burners) {
      burner.clear();
    }
    for (CountTimeline appliance : appliances) {
      appliance.clear();
    }
    for (VesselPool pool : vessels) {
      if (pool != null) {
        pool.clear();
      }
    }
  }
}
