package ovenloom.cli.command;

import java.util.List;
import java.util.Optional;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Plan;
import ovenloom.solver.batch.Outcome;
import ovenloom.solver.place.Extents;
import ovenloom.solver.proof.Clash;
import ovenloom.solver.proof.Proof;
import ovenloom.solver.proof.WindowLoads;
import ovenloom.solver.search.Found;
import ovenloom.solver.search.Search;

/** Plans an event for somebody who waits for it: with a line of progress, until the time is over or Ctrl-C. */
record Planning(Kit kit, SearchOptions search) {

  /**
   * What comes of it.
   *
   * @param which of several it is, to stand before its progress; empty for the only one
   */
  Outcome of(Event event, List<Plan.Source> sources, String which) {
    Extents extents = Extents.of(event);
    Optional<Clash> clash = WindowLoads.of(extents);
    if (clash.isPresent()) {
      return new Outcome.TooMuch(clash.get());
    }
    Proving proving = search.proving(new Proof(extents));
    return Outcome.of(find(event, sources, proving, which), proving.proof());
  }

  private Found find(Event event, List<Plan.Source> sources, Proving proving, String which) {
    ProgressLine progress = new ProgressLine(kit, which);
    kit.stop().listen();
    try {
      return proving.beside(progress, kit.stop(),
          (told, stop) -> Search.find(event, sources, search.budget(), told, stop));
    } finally {
      kit.stop().stopListening();
      progress.clear();
    }
  }
}
