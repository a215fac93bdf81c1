package ovenloom.model.file;

/** Something wrong in a file, and where. {@link MistakeText} puts it into words. */
public record Mistake(Place place, Fault fault) {}
