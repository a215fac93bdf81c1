package ovenloom.model.heat;

/**
 * The layers of food in which nothing is frozen, and what in solving for their temperatures stays the same from step to step: all but
 * the outermost, which asks what is around it.
 */
final class Layers {

  private final int last;
  private final double[] store;
  private final double[] inner;
  private final double[] inverse;
  private final double lastDiagonal;
  private final double[] factor;

  /**
   * Of some food, in so many layers of one thickness.
   *
   * @param seconds that a step takes
   */
  Layers(Body body, int count, double seconds) {
    last = count - 1;
    store = new double[count];
    inner = new double[count];
    inverse = new double[count];
    double diagonal = 0;
    factor = new double[count];
    Shape shape = body.shape();
    double thickness = body.half() / count;
    double held = body.material().density() * body.material().heatCapacity() * thickness / seconds;
    for (int i = 0; i < count; i++) {
      store[i] = held * shape.volume(i) / shape.sides();
      inner[i] = i == 0 ? 0 : shape.face(i) * body.material().conductivity() / thickness;
      double outer = i == last ? 0 : shape.face(i + 1) * body.material().conductivity() / thickness;
      diagonal = store[i] + inner[i] + outer - (i == 0 ? 0 : inner[i] * factor[i - 1]);
      inverse[i] = 1 / diagonal;
      factor[i] = outer / diagonal;
    }
    lastDiagonal = diagonal;
  }

  /**
   * Their temperatures after a step, C, in the place of those before it.
   *
   * @param through the heat that goes from the outermost to what is around it, W/(m2 K), times its face
   * @param towards what that goes to, C
   */
  void step(double[] celsius, double through, double towards) {
    double before = 0;
    for (int i = 0; i < last; i++) {
      before = (store[i] * celsius[i] + inner[i] * before) * inverse[i];
      celsius[i] = before;
    }
    celsius[last] = (store[last] * celsius[last] + inner[last] * before + through * towards)
        / (lastDiagonal + through);
    for (int i = last - 1; i >= 0; i--) {
      celsius[i] += factor[i] * celsius[i + 1];
    }
  }
}
