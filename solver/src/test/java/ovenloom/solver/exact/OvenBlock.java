package ovenloom.solver.exact;

import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.Literal;
import java.util.List;
import java.util.Map;
import ovenloom.model.measure.Temperature;

/**
 * Uses at one mark that overlap or touch, if there is such a block.
 *
 * @param at its mark
 * @param holds by use, in their order
 */
record OvenBlock(Literal isThere, Map<Temperature, Literal> at, IntVar from, IntVar to,
    List<Literal> holds) {}
