package ovenloom.solver.exact;

import com.google.ortools.sat.Literal;
import org.jspecify.annotations.Nullable;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Size;

/**
 * A vessel that may stand on a rack or shelf for a while.
 *
 * @param here the choice that it does
 */
record Standing(Span when, @Nullable Size size, Literal here) {

  long height() {
    Length height = size == null ? null : size.height();
    return height == null ? 0 : height.micrometres();
  }
}
