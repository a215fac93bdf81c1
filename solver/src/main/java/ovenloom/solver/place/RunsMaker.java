package ovenloom.solver.place;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import ovenloom.model.kitchen.Vessel;
import ovenloom.model.life.BakeMinutes;
import ovenloom.model.measure.Size;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Batches;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Filling;
import ovenloom.model.menu.Keeps;
import ovenloom.model.menu.Step;
import ovenloom.model.menu.Work;
import ovenloom.solver.timeline.Footprints;

/** Turns an event into {@link Runs}. */
final class RunsMaker {

  private final Event event;
  private final BakeMinutes minutes;
  private final Work work;
  private final Footprints footprints = new Footprints();
  private final List<List<BatchStep>> groups = new ArrayList<>();
  private final int[] runOf;
  private final RawFood raw;
  private final MadeOn madeOn;
  private final IntUnaryOperator together;

  RunsMaker(Event event, BakeMinutes minutes, IntUnaryOperator together) {
    this.event = event;
    this.minutes = minutes;
    this.together = together;
    work = Work.of(event);
    runOf = new int[work.steps().size()];
    raw = new RawFood(minutes.cards());
    madeOn = new MadeOn(minutes.cards());
    group();
  }

  Runs runs() {
    List<Run> runs = groups.stream().map(this::run).toList();
    return new Runs(event, work, footprints, runs, IntStream.of(runOf).boxed().toList(), ties(), waits(),
        fillings(), minutes);
  }

  private void group() {
    int firstBatch = 0;
    for (BatchStep unit : work.steps()) {
      List<BatchStep> last = groups.isEmpty() ? List.of() : groups.getLast();
      boolean next = !last.isEmpty() && areOfOneStep(last.getFirst(), unit);
      firstBatch = next ? firstBatch : unit.index();
      int most = Math.min(unit.step().together().most(), together.applyAsInt(firstBatch));
      if (next && last.size() < most) {
        last.add(unit);
      } else {
        groups.add(new ArrayList<>(List.of(unit)));
      }
      runOf[unit.index()] = groups.size() - 1;
    }
  }

  private static boolean areOfOneStep(BatchStep one, BatchStep other) {
    return one.step().equals(other.step()) && one.dish().equals(other.dish());
  }

  private Run run(List<BatchStep> units) {
    BatchStep first = units.getFirst();
    BatchStep last = units.getLast();
    int due = event.due(first.dish(), (first.step().serve() ? last : first).batches().first());
    return new Run(
        runOf[first.index()],
        units,
        first.minutes(),
        first.mostMinutes(),
        units.stream().mapToInt(unit -> madeOn.notBefore(unit.index())).max().orElse(MadeOn.ANY_DAY),
        due,
        event.endOfService(first.dish()),
        piecesOf(units),
        HandsNeeds.of(first.step(), first.minutes(), first.minutes()),
        Footing.of(first.step()),
        raw.requires(first.index()));
  }

  private List<Piece> piecesOf(List<BatchStep> units) {
    Step step = units.getFirst().step();
    List<BatchStep> apart = step.together().oneVessel() ? units.subList(0, 1) : units;
    List<Piece> pieces = new ArrayList<>();
    for (BatchStep unit : apart) {
      for (Filling filling : work.fillingsOf(unit.index())) {
        Piece piece = piece(Objects.requireNonNull(event.kitchen().vessel(filling.vessel())), step);
        for (int i = 0; i < filling.count(); i++) {
          pieces.add(piece);
        }
      }
    }
    return pieces;
  }

  private Piece piece(Vessel vessel, Step step) {
    Size size = vessel.size();
    if (size == null) {
      return new Piece(Piece.NO_ROOM, false, 0, vessel.burner());
    }
    int shape = footprints.number((int) size.width().micrometres(), (int) size.depth().micrometres());
    long height = size.height() == null ? 0 : size.height().micrometres();
    var bake = step.bake();
    if (bake != null && bake.stands() != null) {
      height = Math.max(height, bake.stands().micrometres());
    }
    return new Piece(shape, size.depth().compareTo(size.width()) > 0, height, vessel.burner());
  }

  private List<Tie> ties() {
    Set<Tie> ties = new LinkedHashSet<>();
    for (BatchLink link : work.links()) {
      ties.add(new Tie(runOf[link.from()], runOf[link.to()], link.link()));
    }
    return List.copyOf(ties);
  }

  private List<Wait> waits() {
    List<Wait> waits = new ArrayList<>();
    for (List<BatchStep> group : groups) {
      if (group.getFirst().step().together().oneVessel()) {
        addWait(waits, group);
      } else {
        group.forEach(unit -> addWait(waits, List.of(unit)));
      }
    }
    return waits;
  }

  private void addWait(List<Wait> waits, List<BatchStep> units) {
    Set<Wait.Taker> takers = new LinkedHashSet<>();
    for (BatchStep unit : units) {
      if (work.leavesAStay(unit.index())) {
        takers.addAll(takersOf(unit));
      }
    }
    if (!takers.isEmpty()) {
      BatchStep first = units.getFirst();
      Keeps keeps = first.step().keeps();
      waits.add(new Wait(
          runOf[first.index()],
          new Batches(first.batches().first(), units.getLast().batches().last()),
          piecesOf(units),
          List.copyOf(takers),
          keeps == null ? Keeps.HARDLY : keeps));
    }
  }

  private List<Wait.Taker> takersOf(BatchStep unit) {
    if (work.goesToTheTable(unit.index())) {
      return List.of(new Wait.Taker(Wait.TABLE, event.due(unit.dish(), unit.batches().first()), null));
    }
    return work.outOf(unit.index())
        .stream()
        .filter(BatchLink::makesAStay)
        .map(link -> new Wait.Taker(runOf[link.to()], 0, link.link().most()))
        .toList();
  }

  private List<Fill> fillings() {
    Map<Object, Fill> fills = new LinkedHashMap<>();
    for (int i = 0; i < work.fillings().size(); i++) {
      Filling filling = work.fillings().get(i);
      Object key = inOneVessel(filling) ? List.of(runOf[filling.first()], filling.vessel()) : i;
      fills.merge(key, fill(filling), RunsMaker::joined);
    }
    return List.copyOf(fills.values());
  }

  private boolean inOneVessel(Filling filling) {
    return work.steps().get(filling.first()).step().together().oneVessel();
  }

  private Fill fill(Filling filling) {
    Set<Integer> users = new LinkedHashSet<>();
    filling.steps().forEach(step -> users.add(runOf[step]));
    filling.movers().forEach(step -> users.add(runOf[step]));
    int vessel = event.kitchen().vessels().indexOf(event.kitchen().vessel(filling.vessel()));
    int end = filling.toTheTable()
        ? event.endOfService(work.steps().get(filling.steps().getLast()).dish())
        : Fill.EMPTIED;
    return new Fill(vessel, filling.count(), users, end);
  }

  private static Fill joined(Fill one, Fill other) {
    Set<Integer> users = new LinkedHashSet<>(one.users());
    users.addAll(other.users());
    return new Fill(one.vessel(), one.count(), users, Math.max(one.endOfService(), other.endOfService()));
  }
}
