package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import ovenloom.cli.sheet.Act.Turn;
import ovenloom.model.life.Life;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.safety.Profile;
import ovenloom.model.watch.Deadline;
import ovenloom.model.watch.Watch;

/** Where cooked food must cool in time: a thermometer when the time is over, or while someone is still there to read it. */
record CoolingActs(Book book, FreeHands hands, Life life) {

  /** What is probed so long before it is served can still be done something about, minutes. Common practice. */
  private static final int IN_TIME = 15;

  /** A moment at which steps of one dish are probed. */
  private record Look(int at, List<BatchStep> steps) {}

  List<DishAct> acts() {
    List<DishAct> acts = new ArrayList<>();
    looks().forEach((look, deadlines) -> {
      List<Deadline> unserved = deadlines.stream().filter(each -> each.by() < served(each)).toList();
      CoolingWords words = new CoolingWords(book.event(), look.at(), deadlines, unserved);
      Turn turn = words.reading().isEmpty() ? Turn.BY_ITSELF : Turn.PROBE;
      acts.addAll(acts(look.at(), turn, look.steps(), words.all()));
      words.last()
          .ifPresent(
              last -> acts
                  .addAll(acts(back(last), Turn.PROBE, look.steps(), CoolingWords.missed(last.limit()))));
    });
    return acts;
  }

  private List<DishAct> acts(int at, Turn turn, List<BatchStep> steps, String words) {
    return steps.stream()
        .map(step -> new DishAct(at, turn, List.of(), step, step.batches(), words,
            Places.at(Journey.of(book, step).before(at).spot())))
        .toList();
  }

  /** When somebody is back after the time is over, or the food is taken. */
  private int back(Deadline last) {
    return IntStream.rangeClosed(last.by(), last.span().to())
        .filter(hands::isAnyoneThere)
        .findFirst()
        .orElse(last.span().to());
  }

  private Map<Look, List<Deadline>> looks() {
    Map<Look, List<Deadline>> looks = new LinkedHashMap<>();
    List<Deadline> open = new ArrayList<>(Watch.cooling(Profile.of(book.event().rules()), life));
    while (!open.isEmpty()) {
      Deadline first = open.getFirst();
      int at = at(first);
      List<Deadline> same = open.stream().filter(other -> isReadWith(first, at, other)).toList();
      open.removeIf(other -> isReadWith(first, at, other));
      List<BatchStep> steps = same.stream().map(each -> each.step(at)).distinct().toList();
      looks.computeIfAbsent(new Look(at, steps), none -> new ArrayList<>()).addAll(same);
    }
    return looks;
  }

  /** Batches of a dish are probed together where the later ones are predicted to be there by then too. */
  private boolean isReadWith(Deadline first, int at, Deadline other) {
    boolean isThere = other.from() <= at && other.warmest(at) <= other.limit().to().inCelsius();
    return other.limit().equals(first.limit())
        && other.step(at).dish().name().equals(first.step(at).dish().name())
        && (isThere || at(other) == at);
  }

  /** When what is probed goes to the table as it is; never, for what goes on into something else. */
  private int served(Deadline deadline) {
    BatchStep step = deadline.step(deadline.by());
    return book.work().goesToTheTable(step.index()) ? book.event().due(step.dish(), step.batches().first())
        : Integer.MAX_VALUE;
  }

  /** The last minute with a cook there and the food not yet served, from the end of the heat on; where there is none, the end of the heat. */
  private int at(Deadline deadline) {
    int heated = deadline.span().from();
    int last = Math.max(heated, Math.min(deadline.by(), served(deadline) - IN_TIME));
    return IntStream.rangeClosed(0, last - heated)
        .map(before -> last - before)
        .filter(hands::isAnyoneThere)
        .findFirst()
        .orElse(heated);
  }
}
