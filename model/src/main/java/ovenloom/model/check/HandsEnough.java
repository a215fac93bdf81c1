package ovenloom.model.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Need;

/** Each stretch of hands has cooks who are there from end to end of it. */
final class HandsEnough implements Check {

  /** Who is asked for, and within which time. */
  private record Asked(int cooks, @Nullable String skill, Stretch time) {}

  @Override
  public Set<Part> relyingOn() {
    return Set.of(Part.COOKS, Part.COURSES);
  }

  @Override
  public List<Finding> findings(Scene scene) {
    List<Finding> found = new ArrayList<>();
    Map<Asked, Integer> longest = new HashMap<>();
    scene.steps().forEach(of -> {
      for (Need.Hands hands : of.step().hands()) {
        Trouble trouble = trouble(scene, of, hands, longest);
        if (trouble != null) {
          String key = trouble instanceof Trouble.TooFewCooks ? "cooks" : "hands";
          found.add(Finding.fatal(of.subject().key(key), trouble));
        }
      }
    });
    return found;
  }

  private static @Nullable Trouble trouble(
      Scene scene, Scene.Of of, Need.Hands hands, Map<Asked, Integer> known) {
    int there = scene.event().cooks().size();
    if (hands.cooks() > there) {
      return new Trouble.TooFewCooks(hands.cooks(), there);
    }
    int minutes = minutes(of, hands.moment());
    var asked = new Asked(hands.cooks(), hands.skill(), scene.time(of.dish(), of.step().serve()));
    int longest = known.computeIfAbsent(asked,
        each -> new Windows(scene.event().cooks(), each.time()).longestTogether(each.cooks(), each.skill()));
    return minutes <= longest ? null
        : new Trouble.NobodySoLong(minutes, hands.cooks(), hands.skill(), longest);
  }

  private static int minutes(Scene.Of of, Need.Moment moment) {
    return switch (moment) {
      case Need.Moment.Throughout all -> of.minutes();
      case Need.Moment.First(int minutes) -> minutes;
      case Need.Moment.Last(int minutes) -> minutes;
      case Need.Moment.At(int after, int minutes, boolean sharp) -> minutes;
    };
  }
}
