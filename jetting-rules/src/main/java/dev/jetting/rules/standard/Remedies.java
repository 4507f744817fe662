package dev.jetting.rules.standard;

import dev.jetting.units.Lambda;
import dev.jetting.units.number.Decimals;

/** Numbers as findings show them. */
final class Remedies {

  private Remedies() {}

  static String lambda(Lambda lambda) {
    return lambda(lambda, 2);
  }

  /** With enough decimals to distinguish it from another. */
  static String lambda(Lambda lambda, Lambda other) {
    int decimals = 2;
    while (decimals < 6 && lambda(lambda, decimals).equals(lambda(other, decimals))) {
      decimals++;
    }
    return lambda(lambda, decimals);
  }

  private static String lambda(Lambda lambda, int decimals) {
    return "λ " + Decimals.fixed(lambda.value(), decimals);
  }

  static String percent(double share) {
    return Decimals.fixed(share * 100, 0) + " %";
  }
}
