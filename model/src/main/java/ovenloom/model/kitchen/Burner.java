package ovenloom.model.kitchen;

import org.jspecify.annotations.Nullable;
import ovenloom.model.measure.Power;

/**
 * A burner, with room for one pot.
 *
 * @param power while a pot is on it
 * @param circuit the circuit it hangs on, if that is limited
 */
public record Burner(String name, BurnerSize size, Power power, @Nullable String circuit,
    Availability open) {}
