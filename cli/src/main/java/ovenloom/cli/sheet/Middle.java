package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import ovenloom.cli.sheet.Act.Turn;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Need;
import ovenloom.model.plan.HandsOn;
import ovenloom.model.plan.Placement;

/** What wants hands while a run goes on: a tray to be turned, a pot to be stirred. */
record Middle(Book book, Placement run) {

  /** A file says when a bake wants hands, and not what for; only of what is roasted it is known. */
  private static final Pattern ROAST = Pattern.compile("\\broast", Pattern.CASE_INSENSITIVE);

  private static final Set<String> MEAT = Set.of("raw meat", "raw poultry", "whole roast");

  List<DishAct> acts() {
    BatchStep step = book.steps(run).getFirst();
    List<HandsOn> work = run.hands().stream().filter(hands -> hands.act() == HandsOn.Act.WORK).toList();
    List<Need.Hands> needs = step.step().hands();
    List<DishAct> acts = new ArrayList<>();
    for (int i = 0; i < Math.min(work.size(), needs.size()); i++) {
      String words = words(needs.get(i).moment(), work.get(i), step);
      if (!words.isEmpty()) {
        acts.add(new DishAct(
            work.get(i).when().from(), Turn.WORK, work.get(i).cooks(), step, run.batches(), words,
            Places.at(Journey.spot(step, run))));
      }
    }
    return acts;
  }

  private String words(Need.Moment moment, HandsOn hands, BatchStep step) {
    return switch (moment) {
      case Need.Moment.Throughout() -> "";
      case Need.Moment.First(int minutes) -> "";
      case Need.Moment.Last(int minutes) -> handsOn(hands, step);
      case Need.Moment.At(int after, int minutes, boolean sharp) -> {
        String verb = verb(step);
        yield verb == null ? handsOn(hands, step) : verb + ": " + minutes + " min.";
      }
    };
  }

  private String handsOn(HandsOn hands, BatchStep step) {
    String until = new Clock(book.event().calendar()).time(hands.when().to(), hands.when().from());
    String what = Words.capital(step.step().name());
    return what + ": hands-on until " + until + ".";
  }

  private @Nullable String verb(BatchStep step) {
    Need.Bake bake = step.step().bake();
    if (bake != null && ROAST.matcher(step.step().name()).find()) {
      return isMeat(step.dish(), bake) ? "Turn or baste" : "Turn";
    }
    return step.step().burner() != null || book.isInIce(run) ? "Stir" : null;
  }

  private static boolean isMeat(Dish dish, Need.Bake bake) {
    return bake.stands() != null || dish.tags().stream().anyMatch(MEAT::contains);
  }
}
