package ovenloom.model.file;

import java.util.List;
import java.util.function.UnaryOperator;

/** Puts what stands in a file, of a kitchen or a dish, in place of its name: the event or the patch that named it needs no file then. */
record InFull(Includes includes) {

  private static final String FROM = "from";

  Written of(Written eventOrPatch) {
    return eventOrPatch instanceof Written.Keyed keyed ? each(keyed, this::part) : eventOrPatch;
  }

  private Written.Entry part(Written.Entry part) {
    return switch (part.key().text()) {
      case "kitchen" -> new Written.Entry(part.key(), inFull(part.value(), true));
      case "dishes" -> new Written.Entry(part.key(), dishes(part.value()));
      default -> part;
    };
  }

  /** In an event they are listed, in a patch by their names. */
  private Written dishes(Written dishes) {
    return switch (dishes) {
      case Written.Many(List<Written> items, Place place) ->
        new Written.Many(items.stream().map(dish -> inFull(dish, false)).toList(), place);
      case Written.Keyed keyed ->
        each(keyed, dish -> new Written.Entry(dish.key(), inFull(dish.value(), false)));
      case Written.Words words -> words;
      case Written.Nothing nothing -> nothing;
    };
  }

  private Written inFull(Written thing, boolean isAKitchen) {
    return thing instanceof Written.Keyed keyed
        ? each(keyed, entry -> entry.key().text().equals(FROM) ? inFull(entry, isAKitchen) : entry) : thing;
  }

  private Written.Entry inFull(Written.Entry from, boolean ofAKitchen) {
    Written content = from.value() instanceof Written.Words name ? includes.content(name, ofAKitchen) : null;
    return content == null ? from : new Written.Entry(from.key(), content);
  }

  private static Written.Keyed each(Written.Keyed keyed, UnaryOperator<Written.Entry> change) {
    return new Written.Keyed(keyed.entries().stream().map(change).toList(), keyed.whole(), keyed.place());
  }
}
