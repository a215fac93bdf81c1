package ovenloom.solver.timeline;

import static org.assertj.core.api.Assertions.assertThat;

/** Holds a layout against the surface: everything on it, and a gap between any two. */
final class LayoutCheck {

  private LayoutCheck() {}

  static void holds(
      Layout layout, Footprints footprints, int[] shapes, int width, int depth, int gap) {
    int[] x = new int[shapes.length];
    int[] y = new int[shapes.length];
    int[] right = new int[shapes.length];
    int[] far = new int[shapes.length];
    assertThat(layout.spots()).hasSameSizeAs(shapes);
    for (int i = 0; i < shapes.length; i++) {
      var spot = layout.spots().get(i);
      int longer = footprints.longSide(shapes[i]);
      int shorter = footprints.shortSide(shapes[i]);
      x[i] = spot.x();
      y[i] = spot.y();
      right[i] = spot.x() + (spot.turned() ? shorter : longer);
      far[i] = spot.y() + (spot.turned() ? longer : shorter);
      assertThat(x[i]).isNotNegative();
      assertThat(y[i]).isNotNegative();
      assertThat(right[i]).isLessThanOrEqualTo(width);
      assertThat(far[i]).isLessThanOrEqualTo(depth);
    }
    for (int i = 0; i < shapes.length; i++) {
      for (int j = 0; j < i; j++) {
        boolean apart = right[i] + gap <= x[j]
            || right[j] + gap <= x[i]
            || far[i] + gap <= y[j]
            || far[j] + gap <= y[i];
        assertThat(apart).as("%s and %s of %s", j, i, layout).isTrue();
      }
    }
  }
}
