package ovenloom.cli.sheet;

import java.util.List;
import ovenloom.cli.sheet.Journey.Leg;

/** How long food waits in one place, where not all of it may be taken at once. */
record Until(Book book, Journey journey) {

  /** {@code until 12:30}; {@code until 12:30, the last of it until 12:45}. */
  String of(Leg leg, int now) {
    Clock clock = new Clock(book.event().calendar());
    List<Integer> takings = book.fedBy(journey.step())
        .stream()
        .map(taker -> book.run(taker).when().from())
        .filter(minute -> now < minute && leg.when().from() <= minute && minute < leg.when().to())
        .sorted()
        .toList();
    String last = clock.time(leg.when().to(), now);
    return takings.isEmpty() ? "until " + last
        : "until " + clock.time(takings.getFirst(), now) + ", the last of it until " + last;
  }
}
