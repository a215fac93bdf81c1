package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.List;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.Link;
import ovenloom.model.plan.Placement;

/** Each step comes after what it needs done, no sooner and no later than it may. */
record Links() implements KitchenRule {

  @Override
  public String id() {
    return "links";
  }

  @Override
  public String sentence() {
    return "Each step comes after what it needs done, no sooner and no later than it may.";
  }

  @Override
  public List<Break> check(Case plan) {
    List<Break> breaks = new ArrayList<>();
    for (BatchLink link : plan.work().links()) {
      Placement earlier = plan.run(link.from());
      Placement later = plan.run(link.to());
      if (earlier != null && later != null) {
        check(plan, earlier, later, link.link(), breaks);
      }
    }
    return breaks.stream().distinct().toList();
  }

  private void check(Case plan, Placement earlier, Placement later, Link link, List<Break> breaks) {
    int start = later.when().from();
    switch (link.kind()) {
      case FOOD, ORDER_ONLY -> {
        int gap = start - earlier.when().to();
        add(plan, earlier, later, link.least() - gap, "the gap is " + gap + " min, at least " + link.least(),
            breaks);
        Integer most = link.most();
        if (most != null) {
          add(plan, earlier, later, gap - most, "the gap is " + gap + " min, at most " + most, breaks);
        }
      }
      case ALONGSIDE -> {
        int before = earlier.when().from() - start;
        int after = start - (earlier.when().to() - 1);
        add(plan, earlier, later, before, "it starts " + before + " min before what it runs beside", breaks);
        add(plan, earlier, later, after, "it starts " + after + " min too late to run beside", breaks);
      }
    }
  }

  private void add(
      Case plan, Placement earlier, Placement later, int off, String what, List<Break> breaks) {
    if (off > 0) {
      int one = earlier.when().to();
      int other = later.when().from();
      Stretch between = new Stretch(Math.min(one, other), Math.max(one, other));
      breaks.add(Break.of(this, List.of(plan.name(earlier), plan.name(later)), between, off,
          Break.Unit.MINUTES, what));
    }
  }
}
