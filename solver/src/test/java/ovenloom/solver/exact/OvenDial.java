package ovenloom.solver.exact;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.measure.Temperature;

/** One oven's dial: its uses in blocks of one mark, one block after the other. */
final class OvenDial {

  private final Cp cp;
  private final Oven oven;
  private final List<OvenUse> uses;
  private final List<OvenBlock> blocks = new ArrayList<>();

  OvenDial(Cp cp, Oven oven, List<Bake> bakes) {
    this.cp = cp;
    this.oven = oven;
    uses = OvenUse.all(cp, oven, bakes);
    for (int i = 0; i < uses.size(); i++) {
      blocks.add(block(i));
    }
    for (int i = 0; i < uses.size(); i++) {
      isInOneBlock(i);
      for (int j = 0; j < i; j++) {
        shareAMode(uses.get(i), uses.get(j));
      }
    }
    for (int i = 0; i < blocks.size(); i++) {
      beginsAndEndsWithAUse(blocks.get(i));
      hasNoHole(blocks.get(i));
      if (i > 0) {
        follows(blocks.get(i - 1), blocks.get(i));
      }
    }
  }

  Oven oven() {
    return oven;
  }

  List<OvenUse> uses() {
    return uses;
  }

  List<OvenBlock> blocks() {
    return blocks;
  }

  /** Every mark anything may be at. */
  List<Temperature> marks() {
    return uses.stream().flatMap(use -> use.at().keySet().stream()).distinct().sorted().toList();
  }

  private OvenBlock block(int number) {
    BoolVar isThere = cp.choice("block " + number);
    Map<Temperature, Literal> at = new TreeMap<>();
    marks().forEach(mark -> at.put(mark, cp.choice("block " + number + " at " + mark)));
    cp.equal(Cp.sum(at.values()), isThere);
    List<Literal> holds = new ArrayList<>();
    uses.forEach(use -> holds.add(cp.choice("held in block " + number)));
    OvenBlock block = new OvenBlock(isThere, at, cp.minute("block from"), cp.minute("block to"), holds);
    cp.model().addGreaterOrEqual(block.from(), cp.to()).onlyEnforceIf(isThere.not());
    cp.atMost(block.from(), block.to());
    return block;
  }

  private void isInOneBlock(int number) {
    OvenUse use = uses.get(number);
    List<Literal> in = blocks.stream().map(block -> block.holds().get(number)).toList();
    cp.equal(Cp.sum(in), Cp.sum(use.at().values()));
    for (OvenBlock block : blocks) {
      Literal held = block.holds().get(number);
      cp.model().addImplication(held, block.isThere());
      cp.atMost(block.from(), use.when().from(), held);
      cp.atMost(use.when().to(), block.to(), held);
      block.at()
          .forEach((mark, at) -> cp
              .oneOf(use.at().containsKey(mark) ? List.of(use.at().get(mark)) : List.of(), held, at));
    }
  }

  private void shareAMode(OvenUse one, OvenUse other) {
    if (one.bake().equals(other.bake())) {
      return;
    }
    for (String mode : oven.modes()) {
      for (String another : oven.modes()) {
        Literal here = one.bake().in(oven, mode);
        Literal there = other.bake().in(oven, another);
        if (!mode.equals(another)) {
          cp.keepApart(one.when(), other.when(), present(one, here), present(other, there));
        }
      }
    }
  }

  private Literal present(OvenUse use, Literal here) {
    return use.isAWait() ? cp.both(here, cp.any(use.at().values())) : here;
  }

  private void beginsAndEndsWithAUse(OvenBlock block) {
    List<Literal> first = new ArrayList<>();
    List<Literal> last = new ArrayList<>();
    for (int i = 0; i < uses.size(); i++) {
      BoolVar begins = cp.choice("begins");
      cp.model().addImplication(begins, block.holds().get(i));
      cp.equal(block.from(), uses.get(i).when().from(), begins);
      first.add(begins);
      BoolVar ends = cp.choice("ends");
      cp.model().addImplication(ends, block.holds().get(i));
      cp.equal(block.to(), uses.get(i).when().to(), ends);
      last.add(ends);
    }
    cp.oneOf(first, block.isThere());
    cp.oneOf(last, block.isThere());
  }

  /** Each use begins the block, or is reached by one that began before it, or with it and stands before it. */
  private void hasNoHole(OvenBlock block) {
    for (int i = 0; i < uses.size(); i++) {
      List<Literal> reached = new ArrayList<>();
      BoolVar begins = cp.choice("begins");
      cp.equal(uses.get(i).when().from(), block.from(), begins);
      reached.add(begins);
      for (int j = 0; j < uses.size(); j++) {
        if (j != i) {
          BoolVar reaches = cp.choice("reaches");
          cp.model().addImplication(reaches, block.holds().get(j));
          cp.atMost(Cp.plus(uses.get(j).when().from(), j < i ? 0 : 1), uses.get(i).when().from(), reaches);
          cp.atMost(uses.get(i).when().from(), uses.get(j).when().to(), reaches);
          reached.add(reaches);
        }
      }
      cp.oneOf(reached, block.holds().get(i));
    }
  }

  /** Two blocks that touch at one mark would be one. */
  private void follows(OvenBlock earlier, OvenBlock later) {
    cp.model().addImplication(later.isThere(), earlier.isThere());
    cp.atMost(earlier.to(), later.from());
    earlier.at()
        .forEach((mark, at) -> cp.atMost(Cp.plus(earlier.to(), 1), later.from(), at,
            Objects.requireNonNull(later.at().get(mark))));
  }
}
