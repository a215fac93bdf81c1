package ovenloom.solver.place;

import ovenloom.model.menu.Link;

/**
 * A link between two runs.
 *
 * @param earlier the earlier run's number
 * @param later the later run's
 */
public record Tie(int earlier, int later, Link link) {}
