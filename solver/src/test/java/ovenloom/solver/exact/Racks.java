package ovenloom.solver.exact;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.kitchen.Rack;
import ovenloom.model.kitchen.Vessel;
import ovenloom.model.measure.Length;

/** What is baked stands on racks, beside one another and below the rack above. */
final class Racks {

  /** A vessel of a bake, and the choice of each rack of an oven. */
  private record Stood(Bake bake, int piece, Oven oven, int rack, Standing standing, long height) {}

  private final Cp cp;
  private final Steps steps;
  private final List<Stood> all = new ArrayList<>();

  Racks(Cp cp, Steps steps, List<Bake> bakes) {
    this.cp = cp;
    this.steps = steps;
    for (Bake bake : bakes) {
      for (Oven oven : steps.event().kitchen().ovens()) {
        if (bake.canBeIn(oven)) {
          stand(bake, oven);
        }
      }
    }
    fit();
    all.forEach(this::reach);
  }

  /** For each vessel of a bake in the oven, the choice of each rack. */
  List<List<Literal>> of(Bake bake, Oven oven) {
    Map<Integer, List<Literal>> racks = new HashMap<>();
    for (Stood stood : all) {
      if (stood.bake.equals(bake) && stood.oven.equals(oven)) {
        racks.computeIfAbsent(stood.piece, piece -> new ArrayList<>()).add(stood.standing.here());
      }
    }
    return List.copyOf(racks.values());
  }

  private void stand(Bake bake, Oven oven) {
    List<Vessel> vessels = Pieces.of(steps, bake.step().index());
    for (int piece = 0; piece < vessels.size(); piece++) {
      Vessel vessel = vessels.get(piece);
      List<Literal> racks = new ArrayList<>();
      for (int rack = 0; rack < oven.racks().size(); rack++) {
        BoolVar here = cp.choice(bake.step() + " on rack " + rack);
        racks.add(here);
        Standing standing = new Standing(bake.inside(), Objects.requireNonNull(vessel.size()), here);
        Length stands = bake.need().stands();
        long height = Math.max(standing.height(), stands == null ? 0 : stands.micrometres());
        all.add(new Stood(bake, piece, oven, rack, standing, height));
        if (bake.need().level() != null && !oven.isAt(rack, bake.need().level())) {
          cp.model().addImplication(here, here.not());
        }
      }
      cp.equal(Cp.sum(racks), bake.in(oven));
    }
  }

  private void fit() {
    for (Oven oven : steps.event().kitchen().ovens()) {
      for (int rack = 0; rack < oven.racks().size(); rack++) {
        Rack here = oven.racks().get(rack);
        int level = rack;
        Crowding.forbid(cp, new Fit(here.width(), here.depth(), steps.event().kitchen().gap()),
            all.stream()
                .filter(each -> each.oven.equals(oven) && each.rack == level)
                .map(Stood::standing)
                .toList());
      }
    }
  }

  /** What is tall closes the racks it reaches through. */
  private void reach(Stood tall) {
    long missing = tall.height;
    int top = tall.rack;
    for (; top < tall.oven.racks().size() && missing > 0; top++) {
      missing -= tall.oven.racks().get(top).clear().micrometres();
    }
    if (missing > 0) {
      cp.model().addImplication(tall.standing.here(), tall.standing.here().not());
    }
    for (Stood other : all) {
      boolean closed = other.oven.equals(tall.oven) && other.rack > tall.rack && other.rack < top;
      if (closed && other.bake.equals(tall.bake)) {
        cp.model().addBoolOr(new Literal[]{tall.standing.here().not(), other.standing.here().not()});
      } else if (closed) {
        cp.keepApart(tall.bake.inside(), other.bake.inside(), tall.standing.here(), other.standing.here());
      }
    }
  }
}
