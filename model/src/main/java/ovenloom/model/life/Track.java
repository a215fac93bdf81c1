package ovenloom.model.life;

import java.util.List;
import java.util.stream.IntStream;
import ovenloom.model.heat.TemperatureProfile;
import ovenloom.model.menu.BatchStep;

/**
 * One way of food from a first step to the table, as it goes from step to step; each leg as long as the food of this way is in
 * it.
 */
public record Track(List<Leg> legs) {

  public Track {
    legs = List.copyOf(legs);
  }

  /** Its first minute. */
  public int from() {
    return legs.getFirst().when().from();
  }

  /** The minute in which it ends, which is when its dish has been served. */
  public int to() {
    return legs.getLast().when().to();
  }

  /** The leg the food is in at a minute; the later one where it goes from one to the next. */
  public Leg at(int minute) {
    Leg now = legs.getFirst();
    for (Leg leg : legs) {
      now = leg.when().from() <= minute ? leg : now;
    }
    return now;
  }

  /** How warm its warmest part is, C, by the minute, from one to another and both of them. */
  public double[] warmest(int from, int to) {
    return IntStream.rangeClosed(from, to).mapToDouble(minute -> at(minute).warmest(minute)).toArray();
  }

  /** How warm its coldest part is. */
  public double[] coldest(int from, int to) {
    return IntStream.rangeClosed(from, to).mapToDouble(minute -> at(minute).coldest(minute)).toArray();
  }

  /** The food in a minute. */
  public TemperatureProfile food(int minute) {
    return at(minute).at(minute);
  }

  /** The dish it is served as. */
  public BatchStep last() {
    return legs.getLast().step();
  }
}
