package dev.jetting.rules.json;

import dev.jetting.core.fuel.FuelBlend;
import dev.jetting.core.fuel.FuelShare;
import java.util.List;

/**
 * A blend in JSON.
 *
 * @param basis whether the shares are by volume or by mass
 * @param shares the components with their shares, which sum up to 1
 */
record BlendForm(FuelBlend.Basis basis, List<FuelShare> shares) {

  static BlendForm of(FuelBlend blend) {
    return new BlendForm(blend.basis(), blend.shares());
  }

  FuelBlend blend() {
    return switch (basis) {
      case VOLUME -> FuelBlend.byVolume(shares);
      case MASS -> FuelBlend.byMass(shares);
    };
  }
}
