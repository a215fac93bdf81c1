package ovenloom.solver.exact;

import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.Literal;
import java.util.List;

/**
 * A wash of one kind of vessel, if it is done.
 *
 * @param counts how many pieces each filling has that may be washed in it
 * @param takes the choice of each of those fillings
 */
record WashUp(String vessel, int minutes, IntVar start, Literal isDone, List<Integer> counts,
    List<Literal> takes) {}
