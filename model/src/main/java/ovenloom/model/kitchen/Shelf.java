package ovenloom.model.kitchen;

import ovenloom.model.measure.Length;

/** A shelf, as wide, deep and high as the room that is free on it. */
public record Shelf(String name, Length width, Length depth, Length height, Availability open) {}
