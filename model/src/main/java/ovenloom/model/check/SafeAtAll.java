package ovenloom.model.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import ovenloom.model.watch.Beforehand;
import ovenloom.model.watch.Unavoidable;

/** No food is sure to break a limit of its safety profile, whatever the plan; or unless it is baked for longer than it needs. */
final class SafeAtAll implements Check {

  /** Of a dish rather than of one of its steps. */
  private static final String DISH = "dish";

  @Override
  public Set<Part> relyingOn() {
    return Set.of(Part.COURSES, Part.KITCHEN, Part.RULES, Part.MENU);
  }

  @Override
  public List<Finding> findings(Scene scene) {
    List<Finding> found = new ArrayList<>(
        Beforehand.of(scene.work())
            .stream()
            .map(each -> Finding.fatal(subject(each), trouble(each)))
            .toList());
    Beforehand.unlessOverdone(scene.work())
        .stream()
        .filter(each -> found.stream().noneMatch(fatal -> fatal.subject().equals(subject(each))))
        .map(each -> Finding.note(subject(each), trouble(each)))
        .forEach(found::add);
    return found;
  }

  private static Trouble trouble(Unavoidable danger) {
    return new Trouble.NeverSafe(danger.what(), danger.source(), danger.help());
  }

  private static Subject subject(Unavoidable danger) {
    boolean ofDish = danger.keys().getFirst().equals(DISH);
    Subject subject = ofDish ? Subject.dish(danger.step().dish().name()) : Scene.subject(danger.step());
    for (String key : danger.keys()) {
      subject = ofDish && key.equals(DISH) ? subject : subject.key(key);
    }
    return subject;
  }
}
