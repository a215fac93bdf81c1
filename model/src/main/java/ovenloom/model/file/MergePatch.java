package ovenloom.model.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Lays a patch over what is written, as JSON Merge Patch does (RFC 7396): keys are merged, {@code null} takes one out, anything else stands
 * in place of what was there. One thing is added: keys over a list whose members have names patch the members of these names.
 */
final class MergePatch {

  private static final String TAKES_OUT = "null";

  private final Desk desk;

  MergePatch(Desk desk) {
    this.desk = desk;
  }

  /** Whether a value says that what it stands for is to be taken out: the bare word, not in quotes. */
  static boolean takesOut(Written value) {
    return value instanceof Written.Words words && words.text().equals(TAKES_OUT) && words.isBare();
  }

  /** What comes of it. Nothing behind a key of the patch is a mistake. */
  Written over(Written target, Written patch) {
    if (!(patch instanceof Written.Keyed keys)) {
      return patch;
    }
    Members members = target instanceof Written.Many list ? Members.of(list) : null;
    if (members != null) {
      return over(members, keys, target.place());
    }
    return merged(
        target instanceof Written.Keyed old ? old : new Written.Keyed(List.of(), true, keys.place()), keys);
  }

  private Written.Keyed merged(Written.Keyed target, Written.Keyed patch) {
    Map<String, Written.Entry> entries = new LinkedHashMap<>();
    target.entries().forEach(entry -> entries.put(entry.key().text(), entry));
    for (Written.Entry change : patch.entries()) {
      String key = change.key().text();
      Written.Entry old = entries.get(key);
      if (change.value() instanceof Written.Nothing nothing) {
        desk.mistake(change.key().place(), nothing.fault(key));
      } else if (takesOut(change.value())) {
        entries.remove(key);
      } else {
        entries.put(key, old == null ? new Written.Entry(change.key(), over(nothing(change), change.value()))
            : new Written.Entry(change.value() instanceof Written.Keyed ? old.key() : change.key(),
                over(old.value(), change.value())));
      }
    }
    return new Written.Keyed(new ArrayList<>(entries.values()), target.whole() && patch.whole(),
        target.place());
  }

  private static Written nothing(Written.Entry change) {
    return new Written.Nothing(false, null, change.value().place());
  }

  private Written.Many over(Members members, Written.Keyed patch, Place place) {
    for (Written.Entry change : patch.entries()) {
      String name = change.key().text();
      Written old = members.called(name);
      Fault slip = old == null ? members.almostKnown(name, change.value()) : null;
      if (change.value() instanceof Written.Nothing nothing) {
        desk.mistake(change.key().place(), nothing.fault(name));
      } else if (takesOut(change.value()) && old == null) {
        desk.mistake(change.key().place(), members.unknown(name));
      } else if (takesOut(change.value())) {
        members.takeOut(name);
      } else if (old != null) {
        members.put(name, over(old, change.value()));
      } else if (slip != null) {
        desk.mistake(change.key().place(), slip);
      } else {
        members.add(change.key(), over(nothing(change), change.value()));
      }
    }
    return new Written.Many(members.all(), place);
  }
}
