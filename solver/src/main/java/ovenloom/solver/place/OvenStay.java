package ovenloom.solver.place;

/**
 * Food stays in the oven it was baked in.
 *
 * @param until when it is taken out
 * @param off whether the oven is switched off; else its dial stands at its holding mark
 */
record OvenStay(int until, boolean off) {}
