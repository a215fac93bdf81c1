package ovenloom.model.check;

import ovenloom.model.measure.Length;
import ovenloom.model.measure.Size;

/** Whether a vessel can lie on a rack or shelf at all, turned or not. */
final class Fits {

  private Fits() {}

  static boolean lies(Size size, Length width, Length depth) {
    boolean straight = size.width().compareTo(width) <= 0 && size.depth().compareTo(depth) <= 0;
    boolean turned = size.depth().compareTo(width) <= 0 && size.width().compareTo(depth) <= 0;
    return straight || turned;
  }

  /** More than so many cannot lie there, since they would cover more than there is. */
  static long most(Size size, Length width, Length depth) {
    double one = (double) size.width().micrometres() * size.depth().micrometres();
    double all = (double) width.micrometres() * depth.micrometres();
    return one == 0 ? Long.MAX_VALUE : (long) (all / one + 1e-9);
  }
}
