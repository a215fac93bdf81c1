package ovenloom.solver.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;
import ovenloom.solver.order.Meeting;
import ovenloom.solver.order.Turn;
import ovenloom.solver.place.BakeChoice;
import ovenloom.solver.place.Decoder;
import ovenloom.solver.place.Runs;

/** Lists what there is to decide about an event: a turn for each step, and the bakes that may meet in an oven. */
final class Turns {

  private final Runs runs;
  private final Decoder decoder;
  private final Map<List<String>, Integer> kinds = new HashMap<>();

  Turns(Runs runs, Decoder decoder) {
    this.runs = runs;
    this.decoder = decoder;
  }

  /** A turn for each step, by its index, with all choices open. */
  List<Turn> open() {
    return runs.work().steps().stream().map(this::turn).toList();
  }

  private Turn turn(BatchStep unit) {
    int step = unit.index();
    return new Turn(step, kind(unit), taker(step), unit.step().serve(), decoder.startsOf(step),
        decoder.waysToBake(step).size(), decoder.waysToWait(step), mostTogether(unit));
  }

  private int kind(BatchStep unit) {
    return kinds.computeIfAbsent(List.of(unit.dish().name(), unit.step().name()), none -> unit.index());
  }

  private int taker(int step) {
    return runs.work()
        .outOf(step)
        .stream()
        .filter(BatchLink::carriesFood)
        .map(BatchLink::to)
        .findFirst()
        .orElse(Turn.THE_TABLE);
  }

  private int mostTogether(BatchStep unit) {
    boolean first = !unit.step().once() && unit.batches().first() == 1;
    return first ? Math.min(unit.step().together().most(), unit.dish().batches()) : 1;
  }

  List<Meeting> meetings() {
    List<Meeting> meetings = new ArrayList<>();
    for (int step = 0; step < runs.work().steps().size(); step++) {
      for (int other = 0; other < runs.work().steps().size(); other++) {
        if (step != other) {
          addMeetings(meetings, step, other);
        }
      }
    }
    return meetings;
  }

  private void addMeetings(List<Meeting> meetings, int step, int other) {
    List<BakeChoice> ways = decoder.waysToBake(step);
    List<BakeChoice> others = decoder.waysToBake(other);
    for (int way = 0; way < ways.size(); way++) {
      for (int othersWay = 0; othersWay < others.size(); othersWay++) {
        if (ways.get(way).goesWith(others.get(othersWay))) {
          meetings.add(new Meeting(step, way, other, othersWay));
        }
      }
    }
  }
}
