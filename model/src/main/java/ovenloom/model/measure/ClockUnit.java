package ovenloom.model.measure;

/** The units times are written in. A day here is 24 hours of elapsed time, a week seven of them. */
enum ClockUnit {
  SECOND(1, "s, sec, secs, second, seconds"), MINUTE(60, "min, mins, minute, minutes"), HOUR(3600,
      "h, hr, hrs, hour, hours"),
  DAY(86_400, "d, day, days"), WEEK(604_800, "wk, wks, week, weeks");

  static final Words<ClockUnit> WORDS = Words.of(values(), unit -> unit.words);

  private final int seconds;
  private final String words;

  ClockUnit(int seconds, String words) {
    this.seconds = seconds;
    this.words = words;
  }

  int seconds() {
    return seconds;
  }
}
