package dev.jetting.rules.risk;

import dev.jetting.core.parts.Coefficient;

/** Range checks of the coefficients in this package. */
final class Margins {

  private Margins() {}

  /** Refuses a coefficient that does not lie strictly between two numbers. */
  static void check(String what, Coefficient c, int above, int below) {
    if (!(c.value() > above && c.value() < below)) {
      throw new IllegalArgumentException(
          what + " " + c + ": allowed above " + above + " and below " + below);
    }
  }
}
