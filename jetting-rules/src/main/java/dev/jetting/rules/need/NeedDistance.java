package dev.jetting.rules.need;

/** How far one mixture is from what the engine needs: the one formula of profile and searches. */
public final class NeedDistance {

  /** How much more leaner than needed counts than richer than needed (assumed). */
  public static final double LEAN_WEIGHT = 2;

  private NeedDistance() {}

  /**
   * The distance of a mixture from the one needed: |ln (λ by λ needed)|, leaner than needed
   * counting twice.
   *
   * @param lambda λ of the mixture, more than 0
   * @param needed λ that the engine needs, more than 0
   * @return zero or more
   */
  public static double of(double lambda, double needed) {
    double lean = StrictMath.log(lambda / needed);
    return lean > 0 ? LEAN_WEIGHT * lean : -lean;
  }
}
