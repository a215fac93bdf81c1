package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.List;
import ovenloom.model.measure.Stretch;
import ovenloom.model.plan.Wash;

/** What one cook washes without a pause. */
public record Sinkful(List<Wash> washes) {

  public Sinkful {
    washes = List.copyOf(washes);
  }

  /** All washing up, in the order it begins. */
  public static List<Sinkful> of(List<Wash> washes) {
    List<Wash> open = new ArrayList<>(washes);
    List<Sinkful> all = new ArrayList<>();
    while (!open.isEmpty()) {
      List<Wash> sinkful = new ArrayList<>(List.of(open.removeFirst()));
      for (Wash wash : List.copyOf(open)) {
        if (wash.cook().equals(sinkful.getLast().cook())
            && wash.when().from() == sinkful.getLast().when().to()) {
          sinkful.add(wash);
          open.remove(wash);
        }
      }
      all.add(new Sinkful(sinkful));
    }
    return all;
  }

  public String cook() {
    return washes.getFirst().cook();
  }

  public Stretch when() {
    return new Stretch(washes.getFirst().when().from(), washes.getLast().when().to());
  }
}
