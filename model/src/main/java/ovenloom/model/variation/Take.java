package ovenloom.model.variation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;

/** Which variations are asked for, in which order. Each is told by the place of its choice along each axis, from 0. */
public sealed interface Take {

  /** How many there are along these axes. */
  long size(List<Axis> axes);

  /** One of them, counted from 0. */
  List<Integer> picks(List<Axis> axes, long index);

  /** Every choice with every other; the last axis turns fastest. */
  record EachWithEach() implements Take {

    /** @throws ArithmeticException where there are more than can be counted */
    @Override
    public long size(List<Axis> axes) {
      return axes.stream().mapToLong(axis -> axis.choices().size()).reduce(1, Math::multiplyExact);
    }

    @Override
    public List<Integer> picks(List<Axis> axes, long index) {
      Integer[] picks = new Integer[axes.size()];
      long rest = index;
      for (int axis = axes.size() - 1; axis >= 0; axis--) {
        int choices = axes.get(axis).choices().size();
        picks[axis] = (int) (rest % choices);
        rest /= choices;
      }
      return Arrays.asList(picks);
    }
  }

  /** These and no others. */
  record Listed(List<List<Integer>> all) implements Take {

    public Listed {
      all = List.copyOf(all);
    }

    @Override
    public long size(List<Axis> axes) {
      return all.size();
    }

    @Override
    public List<Integer> picks(List<Axis> axes, long index) {
      return all.get(Math.toIntExact(index));
    }
  }

  /** So many of all there are, drawn by lot, none twice, in their order. */
  record Drawn(List<Long> indices) implements Take {

    public Drawn {
      indices = List.copyOf(indices);
    }

    /** The same for the same seed; all of them, where there are no more. */
    public static Drawn of(int count, long seed, long all) {
      SplittableRandom lot = new SplittableRandom(seed);
      Set<Long> drawn = new HashSet<>();
      for (long last = Math.max(0, all - count); last < all; last++) {
        long index = lot.nextLong(last + 1);
        drawn.add(drawn.contains(index) ? last : index);
      }
      List<Long> indices = new ArrayList<>(drawn);
      Collections.sort(indices);
      return new Drawn(indices);
    }

    @Override
    public long size(List<Axis> axes) {
      return indices.size();
    }

    @Override
    public List<Integer> picks(List<Axis> axes, long index) {
      return new EachWithEach().picks(axes, indices.get(Math.toIntExact(index)));
    }
  }
}
