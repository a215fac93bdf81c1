package ovenloom.solver.wish;

import java.util.BitSet;
import java.util.List;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.menu.Course;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Wish;

/** The last hours are calm: few hands in the last of them, a free pair in the last two, a short day. */
final class Calm implements WishPoints {

  private static final int LAST_HANDS = 60;
  private static final int LAST_CROWD = 120;
  private static final int MINUTES_A_POINT = 20;
  private static final int DAY = 24 * 60;

  private final BitSet lastHour;
  private final BitSet lastTwo;
  private final BitSet onTheDay = new BitSet();
  private final BitSet[] atWork;

  Calm(Event event) {
    lastHour = before(event, LAST_HANDS);
    lastTwo = before(event, LAST_CROWD);
    onTheDay.set(Math.max(0, -event.from()), DAY - event.from());
    atWork = new BitSet[event.cooks().size()];
    for (int cook = 0; cook < atWork.length; cook++) {
      atWork[cook] = atWork(event, event.cooks().get(cook));
    }
  }

  private static BitSet before(Event event, int minutes) {
    BitSet window = new BitSet();
    List<Course> courses = event.dishes().stream().map(event::courseOf).distinct().toList();
    for (Course course : courses) {
      int at = Math.max(0, course.at() - event.from());
      window.set(Math.max(0, at - minutes), at);
    }
    return window;
  }

  private static BitSet atWork(Event event, Cook cook) {
    BitSet minutes = new BitSet();
    cook.hours()
        .forEach(hours -> minutes.set(
            Math.max(0, hours.from() - event.from()), Math.max(0, hours.to() - event.from())));
    cook.breaks()
        .forEach(pause -> minutes.clear(
            Math.max(0, pause.from() - event.from()), Math.max(0, pause.to() - event.from())));
    return minutes;
  }

  @Override
  public Wish wish() {
    return Wish.CALM;
  }

  @Override
  public long of(Outcome outcome) {
    long lately = 0;
    long today = 0;
    BitSet crowded = (BitSet) lastTwo.clone();
    BitSet someone = new BitSet();
    for (int cook = 0; cook < atWork.length; cook++) {
      lately += common(outcome.busy[cook], lastHour);
      today += common(outcome.busy[cook], onTheDay);
      BitSet idle = (BitSet) atWork[cook].clone();
      idle.andNot(outcome.busy[cook]);
      crowded.andNot(idle);
      someone.or(atWork[cook]);
    }
    crowded.and(someone);
    return lately + 2L * crowded.cardinality() + today / MINUTES_A_POINT;
  }

  private static int common(BitSet one, BitSet other) {
    BitSet both = (BitSet) one.clone();
    both.and(other);
    return both.cardinality();
  }
}
