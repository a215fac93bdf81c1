package ovenloom.cli.sheet;

import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import ovenloom.model.heat.TemperatureProfile;
import ovenloom.model.life.Leg;
import ovenloom.model.life.Track;
import ovenloom.model.plan.Plan;

/**
 * How warm one batch of a dish is along its life, drawn: its middle a full line, its surface a dashed one, a thin upright where
 * it comes to another place, and the limits between which food should not stay for long.
 */
public final class LifeDrawing {

  private static final int WIDTH = 960;
  private static final int HEIGHT = 420;
  private static final int LEFT = 50;
  private static final int TOP = 130;
  private static final int RIGHT = 20;
  private static final int BOTTOM = 40;
  private static final double COLDEST = -20;
  private static final double HOTTEST = 110;
  private static final List<Integer> DEGREES = List.of(0, 20, 40, 60, 80, 100);

  /** FDA Food Code 2017, 3-501.16(A): 41 F and 135 F. */
  private static final double COLD = 5;
  private static final double HOT = 57.2;

  private final Plan plan;
  private final List<Leg> legs;
  private final int from;
  private final int to;
  private final StringBuilder svg = new StringBuilder();

  private LifeDrawing(Plan plan, List<Leg> legs) {
    this.plan = plan;
    this.legs = legs.stream().filter(leg -> leg.when().minutes() > 0).toList();
    from = this.legs.stream().mapToInt(leg -> leg.when().from()).min().orElse(0);
    to = this.legs.stream().mapToInt(leg -> leg.when().to()).max().orElse(from + 1);
  }

  /** As SVG, with a title. */
  public static String of(Plan plan, Track track) {
    LifeDrawing drawing = new LifeDrawing(plan, track.legs());
    drawing.svg.append("""
        <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 %d %d" font-family="sans-serif" font-size="12">
        <title>%s</title>
        <rect width="100%%" height="100%%" fill="#fffdf7"/>
        """.formatted(WIDTH, HEIGHT, escaped(track.last().dish().name())));
    drawing.degrees();
    drawing.limit(COLD, "5 C");
    drawing.limit(HOT, "57 C");
    drawing.legs.forEach(drawing::leg);
    return drawing.svg.append("</svg>\n").toString();
  }

  private void degrees() {
    for (int celsius : DEGREES) {
      line(LEFT, y(celsius), WIDTH - RIGHT, y(celsius), "stroke=\"#d8d2c4\"");
      svg.append(text(8, y(celsius) + 4, celsius + " C"));
    }
  }

  private void limit(double celsius, String name) {
    line(LEFT, y(celsius), WIDTH - RIGHT, y(celsius), "stroke=\"#8a3b12\" stroke-dasharray=\"2 4\"");
    svg.append(text(WIDTH - RIGHT - 30, y(celsius) - 4, name));
  }

  private void leg(Leg leg) {
    double x = x(leg.when().from());
    line(x, TOP, x, HEIGHT - BOTTOM, "stroke=\"#9a958a\" stroke-width=\"0.6\"");
    String name = leg.waits() ? leg.where() : leg.step().step().name();
    String when = new Clock(plan.event().calendar()).column(leg.when().from());
    svg.append(String.format(Locale.ROOT, "<text transform=\"translate(%.1f %d) rotate(-45)\">%s %s</text>%n",
        x + 4, TOP - 6, when, escaped(name)));
    curve(leg, TemperatureProfile::surface, "stroke=\"#3f6f8f\" stroke-dasharray=\"6 3\"");
    curve(leg, TemperatureProfile::middle, "stroke=\"#1f2d3a\" stroke-width=\"2\"");
  }

  private void curve(Leg leg, ToDoubleFunction<TemperatureProfile> warm, String style) {
    StringBuilder points = new StringBuilder();
    for (int minute = leg.when().from(); minute <= leg.when().to(); minute++) {
      points
          .append(String.format(Locale.ROOT, "%.1f,%.1f ", x(minute), y(warm.applyAsDouble(leg.at(minute)))));
    }
    svg.append("<polyline fill=\"none\" ").append(style).append(" points=\"").append(points).append("\"/>\n");
  }

  private void line(double x1, double y1, double x2, double y2, String style) {
    svg.append(String.format(Locale.ROOT, "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" %s/>%n", x1,
        y1, x2, y2,
        style));
  }

  private static String text(double x, double y, String words) {
    return String.format(Locale.ROOT, "<text x=\"%.1f\" y=\"%.1f\">%s</text>%n", x, y, escaped(words));
  }

  private double x(int minute) {
    return LEFT + (WIDTH - LEFT - RIGHT) * (minute - from) / (double) (to - from);
  }

  private static double y(double celsius) {
    return HEIGHT - BOTTOM - (HEIGHT - BOTTOM - TOP) * (celsius - COLDEST) / (HOTTEST - COLDEST);
  }

  private static String escaped(String words) {
    return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
  }
}
