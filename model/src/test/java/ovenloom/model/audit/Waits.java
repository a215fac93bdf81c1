package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.List;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Batches;
import ovenloom.model.plan.HandsOn;
import ovenloom.model.plan.Stay;
import ovenloom.model.plan.Where;

/** Stays for tests: batch 1 unless it says otherwise, part after part. */
public final class Waits {

  private final String dish;
  private final String step;
  private int from;
  private Batches batches = Batches.only(1);
  private final List<Stay.Part> parts = new ArrayList<>();
  private final List<HandsOn> hands = new ArrayList<>();

  private Waits(String dish, String step, int from) {
    this.dish = dish;
    this.step = step;
    this.from = from;
  }

  /** {@code aStay("soup", "simmer", "17:00").counter("17:15").shelf("18:40", "fridge", "top")}. */
  public static Waits aStay(String dish, String step, String from) {
    return aStay(dish, step, Clock.at(from));
  }

  public static Waits aStay(String dish, String step, int from) {
    return new Waits(dish, step, from);
  }

  public Waits batch(int batch) {
    return batches(batch, batch);
  }

  public Waits batches(int first, int last) {
    batches = new Batches(first, last);
    return this;
  }

  public Waits counter(String until) {
    return in(new Where.Counter(), Clock.at(until));
  }

  public Waits shelf(String until, String store, String... shelves) {
    return in(new Where.OnShelf(store, List.of(shelves)), Clock.at(until));
  }

  public Waits oven(String until, String oven, int celsius) {
    return in(new Where.InOven(oven, Setting.celsius(celsius)), Clock.at(until));
  }

  public Waits ovenThatIsOff(String until, String oven) {
    return in(new Where.InOven(oven, null), Clock.at(until));
  }

  public Waits burners(String until, String... burners) {
    return in(new Where.OnBurner(List.of(burners)), Clock.at(until));
  }

  public Waits in(Where where, int until) {
    parts.add(new Stay.Part(where, new Stretch(from, until)));
    from = until;
    return this;
  }

  /** In the last minute. */
  public Waits unload(String cook) {
    hands.add(new HandsOn(HandsOn.Act.UNLOAD, new Stretch(from - 1, from), List.of(cook)));
    return this;
  }

  public Stay stay() {
    return new Stay(dish, step, batches, parts, hands);
  }
}
