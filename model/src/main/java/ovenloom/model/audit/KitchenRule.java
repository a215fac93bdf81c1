package ovenloom.model.audit;

import java.util.List;

/** A rule that every plan obeys, checked on a finished plan. */
public interface KitchenRule {

  /** Its name, which is also the name of its page in docs/rules. */
  String id();

  /** What a cook would say. */
  String sentence();

  /** Every way in which the plan breaks it; none for a plan that keeps it. */
  List<Break> check(Case plan);
}
