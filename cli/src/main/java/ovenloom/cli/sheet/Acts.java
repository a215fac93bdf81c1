package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.List;
import ovenloom.model.life.Life;
import ovenloom.model.plan.OvenLog;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;

/** All that is to be done for a plan, as its run sheet tells it. */
public final class Acts {

  private Acts() {}

  /**
   * In the order in which one does them, each with somebody to do it where somebody is there.
   *
   * @param plan one that has passed the audit
   * @param life of its food
   */
  public static List<Act> of(Plan plan, Life life) {
    Book book = Book.of(plan);
    FreeHands hands = new FreeHands(plan);
    List<Act> acts = new ArrayList<>(
        DishAct.told(onFood(book, hands, life), new Leaving(book, new Words(plan.event().kitchen()))));
    acts.addAll(onThings(book, hands));
    return hands.named(InOrder.of(acts));
  }

  private static List<DishAct> onFood(Book book, FreeHands hands, Life life) {
    Words words = new Words(book.event().kitchen());
    GoesInHot hot = new GoesInHot(life);
    List<DishAct> acts = new ArrayList<>();
    for (Armful armful : Armful.of(book)) {
      acts.addAll(new Start(book, words, hot, armful).acts());
    }
    for (Placement run : book.plan().placements()) {
      acts.addAll(new Middle(book, run).acts());
      acts.addAll(new ProbeActs(book, hands, run).acts());
    }
    acts.addAll(new CoolingActs(book, hands, life).acts());
    FoodActs food = new FoodActs(book, words, hot);
    book.work().steps().forEach(step -> acts.addAll(food.after(step)));
    return acts;
  }

  private static List<Act> onThings(Book book, FreeHands hands) {
    Words words = new Words(book.event().kitchen());
    List<Act> acts = new ArrayList<>();
    for (OvenLog log : book.plan().ovens()) {
      acts.addAll(new OvenActs(book, words, log).acts());
    }
    acts.addAll(new PlaceActs(book, hands).acts());
    acts.addAll(new WashActs(book).acts());
    acts.addAll(new TableActs(book.event()).acts());
    return acts;
  }
}
