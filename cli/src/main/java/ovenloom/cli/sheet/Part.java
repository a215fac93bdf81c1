package ovenloom.cli.sheet;

import org.jspecify.annotations.Nullable;
import ovenloom.model.measure.Stretch;

/**
 * A part of a run sheet.
 *
 * @param when of its acts; absent where all the time is shown
 */
public record Part(View view, @Nullable Stretch when) {}
