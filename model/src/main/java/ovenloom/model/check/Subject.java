package ovenloom.model.check;

import java.util.ArrayList;
import java.util.List;

/**
 * What in an event a finding is about: a thing, or one key of it.
 *
 * @param path from the outside in, like {@code dish, Turkey, roast, bake}
 */
public record Subject(List<String> path) {

  public Subject {
    path = List.copyOf(path);
  }

  public static Subject course(String name) {
    return new Subject(List.of("course", name));
  }

  public static Subject cook(String name) {
    return new Subject(List.of("cook", name));
  }

  public static Subject dish(String name) {
    return new Subject(List.of("dish", name));
  }

  public static Subject step(String dish, String step) {
    return new Subject(List.of("dish", dish, step));
  }

  public static Subject oven(String name) {
    return new Subject(List.of("oven", name));
  }

  public static Subject appliance(String name) {
    return new Subject(List.of("appliance", name));
  }

  /** A key of it, as the file calls it. */
  public Subject key(String key) {
    List<String> longer = new ArrayList<>(path);
    longer.add("/" + key);
    return new Subject(longer);
  }

  /** Whether this is the other, or a part of it. */
  public boolean within(Subject other) {
    return path.size() >= other.path.size() && path.subList(0, other.path.size()).equals(other.path);
  }

  /** What it is a part of; a thing that is part of nothing is part of itself. */
  public Subject whole() {
    return path.size() <= 2 ? this : new Subject(path.subList(0, path.size() - 1));
  }
}
