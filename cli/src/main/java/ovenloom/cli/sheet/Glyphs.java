package ovenloom.cli.sheet;

/**
 * The letters strips of time are drawn with, beside those of the dishes.
 *
 * @param free nothing is there
 * @param rule what the ruler is made of
 * @param on an oven that is on, with nothing in it
 * @param wash somebody washes up
 * @param rest somebody has a break
 * @param sitting all sit down
 */
public record Glyphs(char free, char rule, char on, char wash, char rest, char sitting) {

  public static final Glyphs ASCII = new Glyphs('.', '-', '~', '%', '=', '!');
  public static final Glyphs BLOCKS = new Glyphs('\u00b7', '\u2500', '\u2591', '\u2593', '\u254c', '\u25bc');
}
