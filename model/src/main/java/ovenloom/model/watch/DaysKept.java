package ovenloom.model.watch;

import java.time.temporal.ChronoUnit;
import java.util.List;
import ovenloom.model.life.Track;
import ovenloom.model.measure.Calendar;
import ovenloom.model.safety.Profile;

/** Calendar days from the first preparation to the table, the first counting as one; time in a freezer is not followed at all. */
record DaysKept(Profile profile, Calendar calendar) implements SafetyRule {

  private static final String HELP = "Make it later.";

  @Override
  public List<Concern> check(Track track) {
    int from = Perishable.from(track);
    if (from >= track.to()) {
      return List.of();
    }
    long days = 1
        + ChronoUnit.DAYS.between(calendar.at(from).toLocalDate(), calendar.at(track.to()).toLocalDate());
    return profile.days()
        .stream()
        .filter(limit -> days > limit.most())
        .map(limit -> new Concern(Concern.Rule.DAYS, track.at(from).step(), from,
            "Eaten on day " + days + ", at most on day " + limit.most() + ".", limit.source(), HELP))
        .toList();
  }
}
