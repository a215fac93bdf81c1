package ovenloom.solver.bench;

import java.util.concurrent.Callable;

/** One thing to measure; its name is its own among those of its {@link Sheet}. */
record Row(String name, Callable<Measured> measuring) {}
