package dev.jetting.core.engine;

import java.util.List;
import java.util.function.ToDoubleFunction;

/** Straight lines between points, held at the ends. */
final class Piecewise {

  private Piecewise() {}

  static <P> double linear(
      List<P> points, double x, ToDoubleFunction<P> xOf, ToDoubleFunction<P> yOf) {
    P before = points.get(0);
    if (x <= xOf.applyAsDouble(before)) {
      return yOf.applyAsDouble(before);
    }
    for (P next : points) {
      if (x <= xOf.applyAsDouble(next)) {
        double from = xOf.applyAsDouble(before);
        double share = (x - from) / (xOf.applyAsDouble(next) - from);
        double y = yOf.applyAsDouble(before);
        return y + share * (yOf.applyAsDouble(next) - y);
      }
      before = next;
    }
    return yOf.applyAsDouble(before);
  }
}
