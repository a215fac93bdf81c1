package ovenloom.model.menu;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A stretch of work, or of waiting that cooks.
 *
 * @param once done once for the dish; otherwise once for each batch
 * @param serve plating or carving at the pass: it runs from the table time on
 * @param unattended may cook while nobody is there
 * @param away whose hands it takes are out of the house: at a shop, say
 * @param together how many batches may share one run
 * @param needs what it must have for as long as it lasts; at most one bake, one burner, one shelf
 * @param after what must have been done before; complete, so that a first step has none
 * @param keeps how long its food stays good; absent: a quarter of an hour on the counter
 * @param starts how cold its food is when this is a first step; absent: rested
 * @param covered whether a lid or foil is on its food, in it and in the wait after it; absent: as its dish says
 */
public record Step(
    String name,
    Takes takes,
    boolean once,
    boolean serve,
    boolean unattended,
    boolean away,
    Together together,
    List<Need> needs,
    List<Link> after,
    @Nullable Keeps keeps,
    @Nullable StartState starts,
    @Nullable Boolean covered) {

  /**
   * How many batches may share one run: hands, minutes and appliance once, vessels and racks once a batch.
   *
   * @param oneVessel all of them in one vessel
   */
  public record Together(int most, boolean oneVessel) {

    /** Each batch by itself. */
    public static final Together APART = new Together(1, false);

    public Together {
      if (most < 1) {
        throw new IllegalArgumentException("together must be at least 1, was " + most);
      }
    }
  }

  public Step {
    needs = List.copyOf(needs);
    after = List.copyOf(after);
  }

  public Need.@Nullable Bake bake() {
    return first(Need.Bake.class);
  }

  public Need.@Nullable OnBurner burner() {
    return first(Need.OnBurner.class);
  }

  public Need.@Nullable OnShelf shelf() {
    return first(Need.OnShelf.class);
  }

  public List<Need.OnAppliance> appliances() {
    return all(Need.OnAppliance.class);
  }

  public List<Need.InVessel> vessels() {
    return all(Need.InVessel.class);
  }

  public List<Need.Hands> hands() {
    return all(Need.Hands.class);
  }

  /** On an oven or a burner. */
  public boolean cooks() {
    return bake() != null || burner() != null;
  }

  /** Whether its vessels stand somewhere of their own, so that it takes no landing space. */
  public boolean hasAPlace() {
    return cooks() || shelf() != null || !appliances().isEmpty();
  }

  private <N extends Need> @Nullable N first(Class<N> kind) {
    for (Need need : needs) {
      if (kind.isInstance(need)) {
        return kind.cast(need);
      }
    }
    return null;
  }

  private <N extends Need> List<N> all(Class<N> kind) {
    return needs.stream().filter(kind::isInstance).map(kind::cast).toList();
  }
}
