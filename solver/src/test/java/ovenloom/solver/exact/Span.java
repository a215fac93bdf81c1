package ovenloom.solver.exact;

import com.google.ortools.sat.LinearArgument;

/**
 * A stretch whose ends the model chooses.
 *
 * @param id unlike that of any other
 * @param canBeEmpty whether it may have no minutes
 */
record Span(int id, LinearArgument from, LinearArgument to, boolean canBeEmpty) {}
