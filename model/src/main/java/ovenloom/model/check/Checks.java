package ovenloom.model.check;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Work;

/** Everything that is looked at before any search. */
public final class Checks {

  private static final List<Check> ALL = List.of(new Marks(), new OvenRoom(), new ShelfRoom(),
      new BurnersEnough(), new HandsEnough(), new SomeoneAbout(), new SomeoneToServe(), new VesselsEnough(),
      new VesselsInHand(),
      new VesselsAtTheTable(),
      new TimeEnough(), new Serving(), new BakeInItself(), new CircuitsEnough(), new BreaksInHours(),
      new RawFood(), new NotFree(), new KnownAllergens(), new SafeAtAll());

  private Checks() {}

  /** What is wrong with an event, or worth a note. */
  public static List<Finding> of(Event event) {
    return of(event, EnumSet.allOf(Part.class));
  }

  /**
   * What is wrong with an event of which only some parts are to be relied on.
   *
   * @param sound the parts that are as their writer meant them
   */
  public static List<Finding> of(Event event, Set<Part> sound) {
    List<Finding> found = new ArrayList<>(new Circles().findings(new Scene(event, null)));
    Set<Part> reliable = EnumSet.noneOf(Part.class);
    reliable.addAll(sound);
    if (!found.isEmpty()) {
      reliable.remove(Part.MENU);
    }
    Scene scene = new Scene(event, work(event, reliable));
    for (Check check : ALL) {
      if (reliable.containsAll(check.relyingOn())) {
        found.addAll(check.findings(scene));
      }
    }
    return found.stream().distinct().toList();
  }

  private static @Nullable Work work(Event event, Set<Part> sound) {
    return sound.contains(Part.MENU) ? Work.of(event) : null;
  }
}
