package ovenloom.solver.exact;

import com.google.ortools.sat.Literal;
import java.util.List;
import ovenloom.model.kitchen.Store;
import ovenloom.model.menu.BatchStep;

/**
 * Food that may be in a cold or hot place for a while, in a step or waiting after it.
 *
 * @param there the choice that it is
 * @param places for each vessel, or for all of it where it has none, the choice of each shelf
 */
record Shelved(BatchStep step, boolean waits, Store store, Span when, Literal there,
    List<List<Literal>> places) {}
