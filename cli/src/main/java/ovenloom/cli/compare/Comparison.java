package ovenloom.cli.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import ovenloom.cli.compare.Contender.Planned;
import ovenloom.cli.sheet.Title;

/**
 * Two or more that are compared.
 *
 * @param all in their order; the others are compared with the first
 */
public record Comparison(String title, List<Contender> all) {

  /** What must be known to read the figures. */
  public static final String LEGEND = "Fewer points are better, first at the table; \"at least\" is proven.";

  private static final String NOT_ALIKE = "What is cooked, or for how many, is not the same: points at the table count portions.";

  public Comparison {
    all = List.copyOf(all);
  }

  public List<String> names() {
    return all.stream().map(Contender::name).toList();
  }

  public List<Row> rows() {
    return Rows.of(all);
  }

  /** Of each in turn that there is something to say of. */
  public List<Said> said() {
    Contender first = all.getFirst();
    List<Said> said = new ArrayList<>();
    if (first.planned() == null) {
      said.add(new Said(first.name(), first.why()));
    }
    for (Contender other : all.subList(1, all.size())) {
      Stream<String> words = Stream.of(VerdictText.of(first, other), Balance.sentence(first, other),
          Limit.sentence(first, other));
      said.add(new Said(other.name(),
          Stream.concat(words.filter(each -> !each.isEmpty()), other.why().stream()).toList()));
    }
    return said;
  }

  /** What would make the figures say too much; nothing where nothing does. */
  public List<String> cautions() {
    boolean alike = all.stream().allMatch(all.getFirst()::servesTheSame);
    return alike ? List.of() : List.of(NOT_ALIKE);
  }

  /** What all of them are, for how many and when; nothing where they are not one. */
  public String what() {
    List<String> titles = all.stream().map(each -> new Title(each.event()).sentence()).distinct().toList();
    return titles.size() == 1 ? titles.getFirst() : "";
  }

  /** Runs of steps that are not the same in all plans there are, in the order of their time; none where there is but one plan. */
  public List<Differing> differing() {
    return Differing.of(planned().stream().map(Planned::plan).toList());
  }

  /** The plans there are. */
  public List<Planned> planned() {
    List<Planned> planned = new ArrayList<>();
    for (Contender each : all) {
      Planned plan = each.planned();
      if (plan != null) {
        planned.add(plan);
      }
    }
    return planned;
  }
}
