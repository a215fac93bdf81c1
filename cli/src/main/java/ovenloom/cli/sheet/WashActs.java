package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.List;
import ovenloom.cli.sheet.Act.Turn;
import ovenloom.model.plan.Wash;

/** Washing up: what one cook washes without a pause is one act. */
record WashActs(Book book) {

  List<Act> acts() {
    List<Wash> open = new ArrayList<>(book.plan().washes());
    List<Act> acts = new ArrayList<>();
    while (!open.isEmpty()) {
      List<Wash> sinkful = new ArrayList<>(List.of(open.removeFirst()));
      for (Wash wash : List.copyOf(open)) {
        if (wash.cook().equals(sinkful.getLast().cook())
            && wash.when().from() == sinkful.getLast().when().to()) {
          sinkful.add(wash);
          open.remove(wash);
        }
      }
      acts.add(act(sinkful));
    }
    return acts;
  }

  private Act act(List<Wash> sinkful) {
    int from = sinkful.getFirst().when().from();
    int to = sinkful.getLast().when().to();
    String what = Words
        .and(sinkful.stream().map(wash -> Words.counted(wash.count(), wash.vessel())).toList());
    String until = (to - from) + " min, until " + new Clock(book.event().calendar()).time(to, from);
    return new Act(from, Turn.WASH, List.of(sinkful.getFirst().cook()), "Wash up",
        Words.capital(what) + ": " + until + ".");
  }
}
