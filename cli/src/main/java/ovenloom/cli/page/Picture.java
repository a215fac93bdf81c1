package ovenloom.cli.page;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import ovenloom.cli.lane.Lane;
import ovenloom.model.measure.Stretch;
import ovenloom.model.plan.Plan;

/**
 * The kitchen over one stretch of time: on a screen, and on paper, where it is cut into rows, one under another.
 *
 * @param name a word without spaces, for links
 * @param pixels how wide it is on a screen at least
 * @param opens the moment it is moved to where it is too wide for a screen, in ISO 8601; its first where that is null
 */
public record Picture(String name, String heading, String pixels, @Nullable String opens, Panel screen,
    List<Panel> paper) {

  private static final int HOUR = 60;

  /** Pixels beside the names of lanes on A4, which is the narrower of two papers. */
  private static final double PAPER = 574;

  /** So wide a picture is made on a screen, in pixels, by wider minutes: what is done in few hours has room for words. */
  private static final double NARROWEST = 960;

  /** How large minutes are drawn. */
  enum Scale {
    LARGE(5, 2),
    SMALL(2, 6);

    /** No minute is wider on a screen. */
    private static final double WIDEST = 5;

    private final double minutePixels;
    private final int hoursOnPaper;

    /**
     * A size.
     *
     * @param minutePixels how wide a minute is on a screen at least
     * @param hoursOnPaper about so many are side by side on paper
     */
    Scale(double minutePixels, int hoursOnPaper) {
      this.minutePixels = minutePixels;
      this.hoursOnPaper = hoursOnPaper;
    }

    double minutePixels() {
      return minutePixels;
    }
  }

  public Picture {
    paper = List.copyOf(paper);
  }

  static Picture of(Plan plan, List<Lane> lanes, Stretch when, String name, String heading, Scale scale) {
    List<Panel> paper = rows(when, scale.hoursOnPaper).stream()
        .map(row -> Panel.of(plan, lanes, row, PAPER / row.minutes()))
        .toList();
    double minute = Math.clamp(NARROWEST / when.minutes(), scale.minutePixels, Scale.WIDEST);
    Panel screen = Panel.of(plan, lanes, when, minute);
    return new Picture(name, heading, String.format(Locale.ROOT, "%.0f", when.minutes() * minute), null,
        screen, paper);
  }

  /** The same, opening at a minute. */
  Picture opensAt(int minute) {
    return new Picture(name, heading, pixels, screen.window().iso(minute), screen, paper);
  }

  /** Of whole hours, as long as each other; an hour more than there should be makes no row of its own. */
  static List<Stretch> rows(Stretch when, int hours) {
    int all = Math.ceilDiv(when.minutes(), HOUR);
    int each = Math.ceilDiv(all, Math.ceilDiv(all, hours + 1)) * HOUR;
    return IntStream.iterate(when.from(), from -> from < when.to(), from -> from + each)
        .mapToObj(from -> new Stretch(from, Math.min(from + each, when.to())))
        .toList();
  }
}
