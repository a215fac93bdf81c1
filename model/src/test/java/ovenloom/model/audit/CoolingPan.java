package ovenloom.model.audit;

import java.util.List;
import ovenloom.model.heat.Body;
import ovenloom.model.heat.Kind;
import ovenloom.model.kitchen.Air;
import ovenloom.model.measure.Length;

/**
 * How long the middle of a pan of food takes to cool, by the first term of the series for a slab (Cengel and Ghajar, Heat and Mass Transfer,
 * chapter 4): reckoned apart from the layers by which the audit follows food.
 *
 * @param holds of the cold place, C
 */
record CoolingPan(Kind kind, Air air, double holds) {

  private static final int HALVINGS = 40;
  private static final double SECONDS_A_MINUTE = 60;

  /** From so many degrees Celsius to so many, in so many minutes at most. */
  record Limit(double from, double to, int minutes) {}

  /** FDA Food Code 2017, 3-501.14(A): 135 F to 70 F in 2 h, and to 41 F in 6 h in all. */
  private static final List<Limit> FOOD_CODE = List.of(new Limit(57.22, 21.11, 120),
      new Limit(57.22, 5, 360));

  /** Cook-chill practice of the trade. */
  private static final List<Limit> COOK_CHILL = List.of(new Limit(63, 8, 90));

  /** How deep a pan may be to take such a share of the time that its profile allows. */
  Length depth(String rules, double share) {
    double shallow = 1;
    double deep = 200;
    for (int i = 0; i < HALVINGS; i++) {
      double between = (shallow + deep) / 2;
      if (share(rules, between) > share) {
        deep = between;
      } else {
        shallow = between;
      }
    }
    return Length.mm(shallow);
  }

  private double share(String rules, double millimetres) {
    Body body = kind.body(Length.mm(millimetres));
    return (rules.equals("uk") ? COOK_CHILL : FOOD_CODE).stream()
        .mapToDouble(limit -> minutes(body, limit) / limit.minutes())
        .max()
        .orElseThrow();
  }

  private double minutes(Body body, Limit limit) {
    double root = root(air.coefficient() * body.half() / body.material().conductivity());
    double seconds = body.half() * body.half() / (body.material().diffusivity() * root * root);
    return seconds / SECONDS_A_MINUTE * Math.log((limit.from() - holds) / (limit.to() - holds));
  }

  /** Where {@code x tan x} is the Biot number. */
  private static double root(double biot) {
    double low = 0;
    double high = Math.PI / 2;
    for (int i = 0; i < HALVINGS; i++) {
      double between = (low + high) / 2;
      if (between * Math.tan(between) > biot) {
        high = between;
      } else {
        low = between;
      }
    }
    return low;
  }
}
