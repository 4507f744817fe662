package dev.jetting.rules.json;

import dev.jetting.core.engine.Exhaust;
import dev.jetting.core.engine.RpmCurve;
import java.util.Optional;

/**
 * An exhaust in JSON.
 *
 * @param id plain name
 * @param deliveryFactor factor on the delivery ratio over engine speed
 * @param blowbackFactor read and not used, in sheets of before mixture model 4
 */
record ExhaustForm(String id, RpmCurve deliveryFactor, Optional<Double> blowbackFactor) {

  static ExhaustForm of(Exhaust exhaust) {
    return new ExhaustForm(exhaust.id(), exhaust.deliveryFactor(), Optional.empty());
  }

  Exhaust exhaust() {
    return new Exhaust(id, deliveryFactor);
  }
}
