package ovenloom.solver.proof;

import ovenloom.model.kitchen.Vessel;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Size;
import ovenloom.model.menu.Filling;
import ovenloom.model.menu.Work;
import ovenloom.solver.place.Run;

/** How much of a rack the vessels of a step cover, those with a size, in square millimetres. */
record Areas(Work work) {

  long of(Run run) {
    long area = 0;
    for (Filling filling : work.fillingsOf(run.units().getFirst().index())) {
      Vessel vessel = work.event().kitchen().vessel(filling.vessel());
      Size size = vessel == null ? null : vessel.size();
      area += size == null ? 0 : filling.count() * of(size.width(), size.depth());
    }
    return area;
  }

  static long of(Length width, Length depth) {
    return (width.micrometres() / 1000) * (depth.micrometres() / 1000);
  }
}
