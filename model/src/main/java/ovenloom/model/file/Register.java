package ovenloom.model.file;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import ovenloom.model.check.Part;
import ovenloom.model.check.Subject;

/** Where each thing of an event stands in its file, and which of them were read without a mistake. */
final class Register {

  private final Map<Subject, Place> places = new HashMap<>();
  private final Set<Subject> spoilt = new HashSet<>();
  private int holes;
  private final Set<Part> sound = EnumSet.allOf(Part.class);

  void stands(Subject subject, Place place) {
    places.put(subject, place);
  }

  /** The thing has a mistake in it already, so that whatever else is said of it may not be so. */
  void spoil(Subject subject) {
    spoilt.add(subject);
  }

  void spoil(Part part) {
    sound.remove(part);
  }

  /** Something was written here that nobody could read, and its mistake has been noted long before. */
  void hole() {
    holes++;
  }

  int holes() {
    return holes;
  }

  /** Nothing of the event is to be looked at any more. */
  void spoilAll() {
    sound.clear();
  }

  Set<Part> sound() {
    return sound;
  }

  boolean isSpoilt(Subject subject) {
    return spoilt.stream().anyMatch(subject::within);
  }

  /** Whether it stands in the file in so many words. */
  boolean isWritten(Subject subject) {
    return places.containsKey(subject);
  }

  /** Where it stands, or else what it is a part of. */
  @Nullable
  Place place(Subject subject) {
    Place place = places.get(subject);
    return place != null || subject.equals(subject.whole()) ? place : place(subject.whole());
  }
}
