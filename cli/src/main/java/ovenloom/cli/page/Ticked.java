package ovenloom.cli.page;

import ovenloom.cli.sheet.Act;

/**
 * A line of the run sheet with its box.
 *
 * @param key the same for the same line of the same plan
 * @param at when, in ISO 8601; with its offset where the event has a zone
 * @param time as the clock on the wall shows it
 */
public record Ticked(String key, String at, String time, Act act) {}
