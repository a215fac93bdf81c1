package ovenloom.cli.sheet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import ovenloom.model.measure.Temperature;
import ovenloom.model.menu.Event;
import ovenloom.model.safety.CoolDown;
import ovenloom.model.safety.Profile;
import ovenloom.model.watch.Deadline;

/**
 * What to read at a minute in food that cools, and what to do if it is warmer. That it is heated and cooled again, or after the last limit
 * thrown away, is common practice.
 *
 * @param deadlines in the order of time
 * @param unserved those of them that end before the food is served
 */
record CoolingWords(Event event, int at, List<Deadline> deadlines, List<Deadline> unserved) {

  private static final int BOILING = 100;

  String all() {
    return Stream.of(reading(), whenNobodyIsHere())
        .filter(words -> !words.isEmpty())
        .collect(Collectors.joining(" "));
  }

  /** Nothing before the food has cooled to where the first limit begins: there is nothing yet to read. */
  String reading() {
    List<Deadline> due = firsts().filter(each -> each.by() == at).toList();
    if (!due.isEmpty()) {
      return due(due.getLast().limit());
    }
    return at < deadlines.getFirst().from() ? "" : onTheWay();
  }

  /** Of each limit the first. */
  private Stream<Deadline> firsts() {
    Map<CoolDown, Deadline> firsts = new LinkedHashMap<>();
    deadlines.forEach(each -> firsts.putIfAbsent(each.limit(), each));
    return firsts.values().stream();
  }

  private String due(CoolDown limit) {
    Profile profile = Profile.of(event.rules());
    boolean isLast = profile.cool().stream().noneMatch(other -> other.to().compareTo(limit.to()) < 0);
    return probe(celsius(limit.to()), isLast || profile.reheat().isEmpty() ? "throw it away"
        : "heat it to " + hot(profile) + " C again and cool it faster, in smaller pans, or throw it away");
  }

  /** Whole degrees that are hot enough for what was cooled, of every limit, in a minute. */
  private static int hot(Profile profile) {
    return IntStream.range(0, BOILING)
        .filter(celsius -> profile.reheat().stream().allMatch(each -> each.hold().isMetInAMinute(celsius)))
        .findFirst()
        .orElse(BOILING);
  }

  /** What is as predicted, or cold enough already, will do to be there in time. */
  private String onTheWay() {
    double predicted = deadlines.stream().mapToDouble(each -> each.warmest(at)).max().orElseThrow();
    long coldest = deadlines.stream().mapToLong(each -> celsius(each.limit().to())).min().orElseThrow();
    return probe(Math.max(coldest, (long) Math.ceil(predicted)),
        "cool it faster, in smaller pans or ice water");
  }

  private static String probe(long celsius, String remedy) {
    return "Probe the middle: " + celsius + " C or less. If it is warmer, " + remedy + ".";
  }

  private String whenNobodyIsHere() {
    Clock clock = new Clock(event.calendar());
    List<String> limits = later().stream()
        .map(each -> celsius(each.limit().to()) + " C or less by " + clock.time(each.by(), at))
        .toList();
    return limits.isEmpty() ? "" : "Must be " + Words.and(limits) + ", when nobody is here.";
  }

  private List<Deadline> later() {
    return firsts().filter(each -> each.by() > at && unserved.contains(each)).toList();
  }

  /** The last of those that end when nobody is here. */
  Optional<Deadline> last() {
    return later().stream().reduce((before, last) -> last);
  }

  /** What to read when somebody is back after the time of a limit is over. */
  static String missed(CoolDown limit) {
    return probe(celsius(limit.to()), "throw it away");
  }

  private static long celsius(Temperature temperature) {
    return Math.round(temperature.inCelsius());
  }
}
