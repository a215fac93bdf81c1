package ovenloom.model.chill;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ovenloom.model.kitchen.Store;
import ovenloom.model.measure.Length;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Matter;

/**
 * What a cook can change in a problem file, and has not tried there, so that the food of a step cools faster.
 *
 * @param card the step, and the ways that were too slow
 * @param tried the places that were
 * @param says its {@code chill by}, or that a card without one has a place for it
 */
public record Advice(Event event, ChillCard card, Set<Store> tried, Says says) {

  /** How a card says where food cools. */
  public enum Says {
    CHILL_BY,
    COLD
  }

  public Advice {
    tried = Set.copyOf(tried);
  }

  /** On a card that says {@code chill by}. */
  public static Advice onWays(Event event, ChillCard card) {
    Set<Store> tried = card.ways()
        .stream()
        .flatMap(way -> way.stores(event.kitchen()).stream())
        .collect(Collectors.toSet());
    return new Advice(event, card, tried, Says.CHILL_BY);
  }

  /** On a card that says {@code takes} and {@code cold}. */
  public static Advice onPlaces(Event event, String dish, String step, List<Store> tried) {
    List<WayToChill> ways = tried.stream().map(store -> new WayToChill(store.name(), null)).toList();
    return new Advice(event, new ChillCard(dish, step, ways), Set.copyOf(tried), Says.COLD);
  }

  /** In a sentence. */
  public String text() {
    List<String> all = new ArrayList<>();
    Set<String> others = others();
    if (!others.isEmpty()) {
      all.add("\"chill by:\" with " + or(others)
          + (says == Says.CHILL_BY ? " too" : ", in place of \"takes:\" and \"cold:\""));
    }
    all.add(thinner());
    if (matter().kind() == null) {
      all.add("\"kind:\", which nothing says");
    }
    if (isInColdAir()) {
      all.addAll(inColdAir());
    }
    return "You could change: " + String.join("; ", all) + ". Or serve it hot.";
  }

  /** Cold places of the kitchen, pans and ice. */
  private Set<String> others() {
    Set<String> others = new LinkedHashSet<>();
    event.kitchen()
        .stores()
        .stream()
        .filter(place -> place.kind().isCold() && !tried.contains(place))
        .forEach(place -> others.add(place.name()));
    Stream.of(WayToChill.SHALLOW_PANS, WayToChill.ICE_BATH)
        .filter(name -> card.ways().stream().noneMatch(way -> way.name().equals(name)))
        .map(name -> new WayToChill(name, null))
        .filter(this::isToBeHad)
        .forEach(way -> others.add(way.name()));
    return others;
  }

  /** An ice bath that the kitchen has is one of its places. */
  private boolean isToBeHad(WayToChill way) {
    boolean isThere = !way.stores(event.kitchen()).isEmpty();
    return way.name().equals(WayToChill.ICE_BATH) ? !isThere
        : isThere && Rewritten.of(event, card, way) != null;
  }

  private Matter matter() {
    return event.dish(card.dish()).matter();
  }

  private String thinner() {
    Length thick = matter().thick();
    return "\"thick:\" for a thinner layer or smaller pieces"
        + (thick == null ? "" : ", now " + thick.written());
  }

  private boolean isInColdAir() {
    return tried.stream().anyMatch(place -> place.kind() != Store.Kind.ICE_BATH);
  }

  private List<String> inColdAir() {
    Boolean own = event.dish(card.dish()).step(card.step()).covered();
    boolean isUnderALid = Boolean.TRUE.equals(own == null ? matter().covered() : own);
    String place = "\"holds:\" and \"air:\" of the place, where it is colder or its air moves more";
    return isUnderALid ? List.of("\"covered: no\" in the cold", place) : List.of(place);
  }

  private static String or(Set<String> names) {
    return names.stream().map(name -> "\"" + name + "\"").collect(Collectors.joining(" or "));
  }
}
