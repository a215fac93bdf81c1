package ovenloom.model.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Link;
import ovenloom.model.menu.Step;

/** Serving fits into the time a dish is served over, and nothing comes after it that must be done before. */
final class Serving implements Check {

  @Override
  public Set<Part> relyingOn() {
    return Set.of(Part.COURSES);
  }

  @Override
  public List<Finding> findings(Scene scene) {
    List<Finding> found = new ArrayList<>();
    Event event = scene.event();
    scene.steps().forEach(of -> {
      int servedOver = event.servedOver(of.dish());
      if (of.step().serve() && of.minutes() > servedOver) {
        found.add(
            Finding.fatal(of.subject().key("serve"), new Trouble.ServedTooLong(of.minutes(), servedOver)));
      }
      for (Link link : of.step().serve() ? List.<Link>of() : of.step().after()) {
        boolean served = link.dish().equals(of.dish().name()) && of.dish()
            .steps()
            .stream()
            .filter(Step::serve)
            .anyMatch(step -> step.name().equals(link.step()));
        if (served && link.kind() != Link.Kind.ALONGSIDE) {
          found.add(Finding.fatal(of.subject().key("after"), new Trouble.AfterServing(link.step())));
        }
      }
    });
    return found;
  }
}
