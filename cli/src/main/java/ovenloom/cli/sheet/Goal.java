package ovenloom.cli.sheet;

import ovenloom.model.life.Served;
import ovenloom.model.menu.Arrives;

/**
 * How warm a dish is to be at the table.
 *
 * @param room C
 */
public record Goal(Arrives arrives, double room) {

  /** C; at least, for what is hot or warm, and at most for the others. */
  public double celsius() {
    return switch (arrives) {
      case HOT -> Served.HOT;
      case WARM -> Served.WARM;
      case COOL -> Served.coolIn(room);
      case COLD -> Served.COLD;
    };
  }

  /** {@code hot is 60 C or more} */
  public String words() {
    String name = switch (arrives) {
      case HOT -> "hot";
      case WARM -> "warm";
      case COOL -> "cool";
      case COLD -> "cold";
    };
    boolean isAtLeast = arrives == Arrives.HOT || arrives == Arrives.WARM;
    return name + " is " + Math.round(celsius()) + " C or " + (isAtLeast ? "more" : "less");
  }
}
