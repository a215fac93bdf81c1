package ovenloom.cli.sheet;

import java.util.List;
import ovenloom.cli.sheet.Act.Turn;
import ovenloom.model.measure.Stretch;

/** Washing up: a sinkful is one act. */
record WashActs(Book book) {

  List<Act> acts() {
    return Sinkful.of(book.plan().washes()).stream().map(this::act).toList();
  }

  private Act act(Sinkful sinkful) {
    Stretch when = sinkful.when();
    String what = Words
        .and(sinkful.washes().stream().map(wash -> Words.counted(wash.count(), wash.vessel())).toList());
    String until = when.minutes() + " min, until "
        + new Clock(book.event().calendar()).time(when.to(), when.from());
    return new Act(when.from(), Turn.WASH, List.of(sinkful.cook()), "Wash up",
        Words.capital(what) + ": " + until + ".");
  }
}
