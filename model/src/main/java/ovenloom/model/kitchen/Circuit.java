package ovenloom.model.kitchen;

import ovenloom.model.measure.Power;

/** A circuit, and what may be drawn on it at one moment. */
public record Circuit(String name, Power limit) {}
