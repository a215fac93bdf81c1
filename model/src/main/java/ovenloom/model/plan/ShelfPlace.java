package ovenloom.model.plan;

/** A shelf of a cold or hot place, by their names. */
public record ShelfPlace(String store, String shelf) {}
