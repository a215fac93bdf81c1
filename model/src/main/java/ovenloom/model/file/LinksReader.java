package ovenloom.model.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import ovenloom.model.menu.Link;

/** Reads what a step comes after. */
final class LinksReader {

  static final Keys GAP = Keys.of("a gap", "least", "most");
  static final String NOTHING = "nothing";

  private final Desk desk;
  private final StepNames names;
  private final String dish;
  private final boolean food;

  /**
   * Reads the links of a dish's steps.
   *
   * @param food whether the dish is food; a chore's steps only follow one another
   */
  LinksReader(Desk desk, StepNames names, String dish, boolean food) {
    this.desk = desk;
    this.names = names;
    this.dish = dish;
    this.food = food;
  }

  /**
   * All links into a step.
   *
   * @param before the step written before it, which it follows unless it says what it comes after
   */
  List<Link> links(Fields step, @Nullable String before) {
    List<Link> all = new ArrayList<>();
    Link.Kind follows = food ? Link.Kind.FOOD : Link.Kind.ORDER_ONLY;
    if (!step.has("after") && before != null) {
      all.add(new Link(follows, dish, before, 0, null));
    }
    all.addAll(links(step, "after", follows, () -> names.of(dish)));
    all.addAll(links(step, "uses", Link.Kind.FOOD, () -> names.others(dish)));
    all.addAll(links(step, "alongside", Link.Kind.ALONGSIDE, () -> names.known(dish)));
    all.addAll(links(step, "order only", Link.Kind.ORDER_ONLY, () -> names.known(dish)));
    return all;
  }

  private List<Link> links(Fields step, String key, Link.Kind kind, Supplier<Set<String>> names) {
    Written written = step.value(key);
    if (written == null
        || (key.equals("after") && written instanceof Written.Words words && words.text().equals(NOTHING))) {
      return List.of();
    }
    Set<String> known = names.get();
    List<Link> links = new ArrayList<>();
    for (Written each : desk.items(written)) {
      if (each instanceof Written.Keyed keyed) {
        keyed.entries().forEach(entry -> add(links, link(entry.key(), entry.value(), kind, known)));
      } else {
        add(links, link(each, null, kind, known));
      }
    }
    return links;
  }

  private static void add(List<Link> links, @Nullable Link link) {
    if (link != null) {
      links.add(link);
    }
  }

  private @Nullable Link link(Written name, @Nullable Written gap, Link.Kind kind, Set<String> known) {
    String written = desk.reference(name, "step", known);
    StepNames.Ref ref = written == null ? null : names.ref(dish, written);
    Fields limits = gap == null ? null : desk.fields(gap, GAP);
    Integer least = limits == null ? null : limits.read("least", Scalars::minutes);
    Integer most = limits == null ? null : limits.read("most", Scalars::minutes);
    int from = least == null ? 0 : least;
    if (limits != null && most != null && most < from) {
      desk.contradiction(limits.placeOf("most"),
          "a gap of at least " + from + " and at most " + most + " min",
          "the shorter time as \"least\"");
      return null;
    }
    return ref == null ? null : new Link(kind, ref.dish(), ref.step(), from, most);
  }
}
