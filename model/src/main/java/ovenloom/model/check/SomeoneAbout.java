package ovenloom.model.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** While something is on an oven or a burner someone is about, unless it may cook alone. */
final class SomeoneAbout implements Check {

  @Override
  public Set<Part> relyingOn() {
    return Set.of(Part.COOKS, Part.COURSES);
  }

  @Override
  public List<Finding> findings(Scene scene) {
    List<Finding> found = new ArrayList<>();
    scene.steps().filter(of -> of.step().cooks() && !of.step().unattended()).forEach(of -> {
      int longest = new Windows(scene.event().cooks(), scene.time(of.dish(), of.step().serve()))
          .longestWithSomeone();
      if (of.minutes() > longest) {
        found.add(Finding.fatal(of.subject().key("takes"), new Trouble.NobodyAbout(of.minutes(), longest)));
      }
    });
    return found;
  }
}
