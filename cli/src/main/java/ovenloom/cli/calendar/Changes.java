package ovenloom.cli.calendar;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.zone.ZoneOffsetTransition;
import java.time.zone.ZoneRules;
import java.util.ArrayList;
import java.util.List;
import net.fortuna.ical4j.model.ComponentList;
import net.fortuna.ical4j.model.component.Daylight;
import net.fortuna.ical4j.model.component.Observance;
import net.fortuna.ical4j.model.component.Standard;
import net.fortuna.ical4j.model.component.VTimeZone;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.TzId;
import net.fortuna.ical4j.model.property.TzOffsetFrom;
import net.fortuna.ical4j.model.property.TzOffsetTo;

/** How the clocks of a zone go while a plan lasts, as Java knows it, so that no program needs to know better. */
record Changes(ZoneId zone, Instant from, Instant to) {

  VTimeZone card() {
    VTimeZone card = new VTimeZone();
    card.add(new TzId(zone.getId()));
    card.setComponentList(new ComponentList<>(observances()));
    return card;
  }

  /** The one that holds when it begins, and each after it. */
  private List<Observance> observances() {
    ZoneRules rules = zone.getRules();
    List<Observance> all = new ArrayList<>();
    ZoneOffsetTransition change = rules.previousTransition(from.plusNanos(1));
    if (change == null) {
      ZoneOffset offset = rules.getOffset(from);
      all.add(observance(LocalDateTime.ofEpochSecond(0, 0, ZoneOffset.UTC), offset, offset, false));
      change = rules.nextTransition(from);
    }
    while (change != null && !change.getInstant().isAfter(to)) {
      all.add(observance(change.getDateTimeBefore(), change.getOffsetBefore(), change.getOffsetAfter(),
          rules.isDaylightSavings(change.getInstant())));
      change = rules.nextTransition(change.getInstant());
    }
    return all;
  }

  private static Observance observance(
      LocalDateTime onset, ZoneOffset before, ZoneOffset after, boolean isSummer) {
    Observance observance = isSummer ? new Daylight() : new Standard();
    observance.add(new DtStart<>(onset));
    observance.add(new TzOffsetFrom(before));
    observance.add(new TzOffsetTo(after));
    return observance;
  }
}
