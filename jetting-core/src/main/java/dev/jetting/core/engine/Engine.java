package dev.jetting.core.engine;

import dev.jetting.core.checks.Checks;
import dev.jetting.units.Displacement;
import dev.jetting.units.EngineSpeed;
import java.util.Objects;

/**
 * A crankcase-scavenged two-stroke engine as its carburettor sees it: one cylinder, one
 * carburettor.
 *
 * <p>Not for four-strokes, and not for two cylinders on one carburettor, whose pulsation is
 * another.
 *
 * @param id plain name
 * @param displacement swept volume, more than zero
 * @param deliveryRatio fresh charge drawn a turn by what the displacement would hold at ambient
 *     density, over engine speed, throttle open, with the exhaust it is given for
 * @param induction how the inlet breathes
 * @param exhaust the exhaust fitted
 * @param loadLine engine speed by throttle on the road
 * @param need the mixture the engine should get
 */
public record Engine(
    String id,
    Displacement displacement,
    RpmCurve deliveryRatio,
    Induction induction,
    Exhaust exhaust,
    LoadLine loadLine,
    MixtureNeed need) {

  /** No two-stroke draws more than twice its displacement a turn (assumed). */
  private static final double GREATEST_DELIVERY = 2;

  /**
   * Checks the numbers.
   *
   * @param id plain name
   * @param displacement swept volume, more than zero
   * @param deliveryRatio fresh charge drawn a turn by what the displacement would hold at ambient
   *     density, over engine speed, throttle open, with the exhaust it is given for
   * @param induction how the inlet breathes
   * @param exhaust the exhaust fitted
   * @param loadLine engine speed by throttle on the road
   * @param need the mixture the engine should get
   * @throws IllegalArgumentException if the id is blank or the delivery ratio is somewhere zero, or
   *     with the exhaust more than 2, which most likely is a slipped decimal point
   */
  public Engine {
    Checks.id("engine", id);
    Objects.requireNonNull(induction, "induction");
    Objects.requireNonNull(exhaust, "exhaust");
    Objects.requireNonNull(loadLine, "loadLine");
    Objects.requireNonNull(need, "need");
    Objects.requireNonNull(displacement, "displacement");
    Checks.that(
        allAboveZero(deliveryRatio) && allAboveZero(exhaust.deliveryFactor()),
        "delivery ratio of engine " + id,
        0,
        "more than 0 at every speed");
    checkDelivery(id, deliveryRatio, deliveryRatio, exhaust.deliveryFactor());
    checkDelivery(id, exhaust.deliveryFactor(), deliveryRatio, exhaust.deliveryFactor());
  }

  /** Between the points of the two curves their product is at most a little more. */
  private static void checkDelivery(String id, RpmCurve places, RpmCurve ratio, RpmCurve factor) {
    for (RpmCurve.Point point : places.points()) {
      double delivery = ratio.at(point.speed()) * factor.at(point.speed());
      Checks.that(
          delivery <= GREATEST_DELIVERY,
          "delivery ratio of engine " + id + ", exhaust included, at " + point.speed(),
          delivery,
          "more than 0, at most 2");
    }
  }

  /**
   * Delivery ratio with the exhaust fitted.
   *
   * @param speed engine speed
   * @return η, a plain number
   */
  public double deliveryRatioAt(EngineSpeed speed) {
    return deliveryRatio.at(speed) * exhaust.deliveryFactor().at(speed);
  }

  /** {@return β₁ with the exhaust fitted, a plain number} */
  public double blowback() {
    return induction.blowback().value() * exhaust.blowbackFactor();
  }

  /**
   * This engine with another exhaust.
   *
   * @param other the exhaust
   * @return the changed engine
   */
  public Engine withExhaust(Exhaust other) {
    return new Engine(id, displacement, deliveryRatio, induction, other, loadLine, need);
  }

  private static boolean allAboveZero(RpmCurve curve) {
    return curve.points().stream().allMatch(p -> p.value() > 0);
  }
}
