package ovenloom.solver.order;

import ai.timefold.solver.core.preview.api.domain.metamodel.GenuineEntityMetaModel;
import ai.timefold.solver.core.preview.api.domain.metamodel.PlanningListVariableMetaModel;
import ai.timefold.solver.core.preview.api.domain.metamodel.PlanningVariableMetaModel;
import ai.timefold.solver.core.preview.api.domain.metamodel.PositionInList;
import ai.timefold.solver.core.preview.api.move.Move;
import ai.timefold.solver.core.preview.api.move.builtin.Moves;
import ai.timefold.solver.core.preview.api.neighborhood.BiMoveConstructor;
import ai.timefold.solver.core.preview.api.neighborhood.MoveProvider;
import ai.timefold.solver.core.preview.api.neighborhood.Neighborhood;
import ai.timefold.solver.core.preview.api.neighborhood.NeighborhoodBuilder;
import ai.timefold.solver.core.preview.api.neighborhood.NeighborhoodProvider;
import ai.timefold.solver.core.preview.api.neighborhood.stream.joiner.BiNeighborhoodsJoiner;
import ai.timefold.solver.core.preview.api.neighborhood.stream.joiner.NeighborhoodsJoiners;
import java.util.List;
import java.util.Objects;
import java.util.function.BiFunction;
import java.util.function.Supplier;

/** All ways from one order to the next. */
public class Neighbourhoods implements NeighborhoodProvider<Order> {

  @Override
  public Neighborhood defineNeighborhood(NeighborhoodBuilder<Order> builder) {
    GenuineEntityMetaModel<Order, Turn> turn = builder.getSolutionMetaModel().genuineEntity(Turn.class);
    PlanningListVariableMetaModel<Order, Queue, Turn> queue = builder.getSolutionMetaModel()
        .genuineEntity(Queue.class)
        .listVariable("turns", Turn.class);
    PlanningVariableMetaModel<Order, Turn, Integer> bake = turn.basicVariable(Option.BAKE, Integer.class);
    PlanningVariableMetaModel<Order, Turn, Integer> start = turn.basicVariable(Option.START, Integer.class);
    PlanningVariableMetaModel<Order, Turn, Integer> stay = turn.basicVariable(Option.STAY, Integer.class);
    PlanningVariableMetaModel<Order, Turn, Integer> earlier = turn.basicVariable("earlier", Integer.class);
    NudgeOfMore several = new NudgeOfMore(queue, earlier);
    ToMend mend = new ToMend(queue, earlier);
    AsABatch alike = new AsABatch(queue, List.of(earlier, start, bake, stay));
    NeighborhoodBuilder<Order> all = builder;
    all = more(all, 4, () -> shift(queue));
    all = more(all, 2, () -> swap(queue));
    all = more(all, 4, () -> nudge((one, nudge) -> nudge.of(earlier, one)));
    all = more(all, 2, () -> nudge(several::withTaker));
    all = more(all, 1, () -> nudge(several::withNext));
    all = more(all, 1, () -> nudge(several::withBatches));
    all = more(all, 2, () -> nudge(mend::nudge));
    all = more(all, 2, () -> ahead(mend));
    all = more(all, 1, () -> chooseBake(bake, start));
    all = more(all, 1, () -> choose(stay, Option.STAY));
    all = more(all, 1, () -> choose(turn.basicVariable(Option.TOGETHER, Integer.class), Option.TOGETHER));
    all = more(all, 1, () -> alike(alike, NeighborhoodsJoiners.lessThan(Turn::getStep)));
    all = more(all, 1, () -> alike(alike, NeighborhoodsJoiners.greaterThan(Turn::getStep)));
    return more(all, 1, () -> meet(queue, bake)).build();
  }

  /** A provider is picked as often as any other; so a move that is worth more gets more of them. */
  private static NeighborhoodBuilder<Order> more(
      NeighborhoodBuilder<Order> all, int weight, Supplier<MoveProvider<Order>> move) {
    NeighborhoodBuilder<Order> more = all;
    for (int i = 0; i < weight; i++) {
      more = more.add(move.get());
    }
    return more;
  }

  private static MoveProvider<Order> shift(PlanningListVariableMetaModel<Order, Queue, Turn> queue) {
    return moves -> moves.pick(moves.forEachUnfiltered(Turn.class, false))
        .pick(moves.forEachUnfiltered(Shift.class, false))
        .asMove(with((turn, shift) -> shift.of(queue, turn)));
  }

  private static MoveProvider<Order> ahead(ToMend mend) {
    return moves -> moves.pick(moves.forEachUnfiltered(Turn.class, false))
        .pick(moves.forEachUnfiltered(Shift.class, false))
        .asMove(with(mend::ahead));
  }

  private static MoveProvider<Order> swap(PlanningListVariableMetaModel<Order, Queue, Turn> queue) {
    return moves -> moves.pick(moves.forEachUnfiltered(Turn.class, false))
        .pick(moves.forEachUnfiltered(Turn.class, false), NeighborhoodsJoiners.lessThan(Turn::getStep))
        .asMove(with((one, other) -> view -> {
          PositionInList at = view.getPositionOf(queue, one).ensureAssigned();
          int to = view.getPositionOf(queue, other).ensureAssigned().index();
          view.swapValuesInList(queue, at.<Queue>entity(), at.index(), to);
        }));
  }

  private static MoveProvider<Order> alike(
      AsABatch alike, BiNeighborhoodsJoiner<Turn, Turn> earlierOrLater) {
    return moves -> moves.pick(moves.forEachUnfiltered(Turn.class, false))
        .pick(moves.forEachUnfiltered(Turn.class, false), NeighborhoodsJoiners.equal(Turn::choices),
            earlierOrLater)
        .asMove(with(alike::of));
  }

  private static MoveProvider<Order> nudge(BiFunction<Turn, Nudge, Move<Order>> move) {
    return moves -> moves.pick(moves.forEachUnfiltered(Turn.class, false))
        .pick(moves.forEachUnfiltered(Nudge.class, false))
        .asMove(with(move));
  }

  private static MoveProvider<Order> choose(
      PlanningVariableMetaModel<Order, Turn, Integer> variable, String name) {
    return moves -> moves.pick(
        moves.forEachUnfiltered(Option.class, false)
            .filter((view, option) -> option != null && option.variable().equals(name)))
        .pick(moves.forEachUnfiltered(Turn.class, false),
            NeighborhoodsJoiners.equal(Option::step, Turn::getStep))
        .asMove(with((option, turn) -> Moves.change(variable, turn, option.value())));
  }

  /** Where it is baked, or how cold it goes in. */
  private static MoveProvider<Order> chooseBake(
      PlanningVariableMetaModel<Order, Turn, Integer> bake,
      PlanningVariableMetaModel<Order, Turn, Integer> start) {
    return moves -> moves.pick(
        moves.forEachUnfiltered(Option.class, false)
            .filter((view, option) -> option != null && option.isOfABake()))
        .pick(moves.forEachUnfiltered(Turn.class, false),
            NeighborhoodsJoiners.equal(Option::step, Turn::getStep))
        .asMove(with((option, turn) -> Moves
            .change(option.variable().equals(Option.START) ? start : bake, turn, option.value())));
  }

  private static MoveProvider<Order> meet(
      PlanningListVariableMetaModel<Order, Queue, Turn> queue,
      PlanningVariableMetaModel<Order, Turn, Integer> bake) {
    return moves -> moves.pick(moves.forEachUnfiltered(Meeting.class, false))
        .pick(moves.forEachUnfiltered(Turn.class, false),
            NeighborhoodsJoiners.equal(Meeting::step, Turn::getStep))
        .asMove(with((meeting, turn) -> meeting.of(queue, bake, turn)));
  }

  private static <A, B> BiMoveConstructor<Order, A, B> with(BiFunction<A, B, Move<Order>> move) {
    return (view, one, other) -> move.apply(Objects.requireNonNull(one), Objects.requireNonNull(other));
  }
}
