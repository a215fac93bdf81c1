package ovenloom.model.kitchen;

import ovenloom.model.measure.Length;

/**
 * A rack in an oven.
 *
 * @param clear what stands on it may be this tall before it closes the rack above
 */
public record Rack(Length width, Length depth, Length clear) {}
