package ovenloom.model.plan;

import ovenloom.model.measure.Stretch;

/** Dirty vessels of one kind made clean. */
public record Wash(String vessel, int count, Stretch when, String cook) {}
