package ovenloom.cli.stand;

import java.util.List;
import ovenloom.model.measure.Stretch;

/** A stretch in which nothing on a rack or shelf changes, and what stands there in it; nothing, perhaps. */
public record Scene(Stretch when, List<Stood> there) {

  public Scene {
    there = List.copyOf(there);
  }
}
