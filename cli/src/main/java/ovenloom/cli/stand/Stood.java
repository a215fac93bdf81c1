package ovenloom.cli.stand;

import ovenloom.model.menu.Batches;

/**
 * A vessel on a rack or shelf, seen from above.
 *
 * @param left micrometres from the left wall to its left side
 * @param front micrometres from the front edge to its front side
 * @param width micrometres from its left to its right side, as it stands
 * @param depth micrometres from its front to its back, as it stands
 */
public record Stood(String dish, String step, Batches batches, String vessel, long left, long front,
    long width,
    long depth) {}
