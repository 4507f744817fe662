package dev.jetting.rules.json;

import com.google.common.collect.ImmutableMap;
import dev.jetting.core.engine.Induction;
import dev.jetting.core.engine.MixtureNeed;
import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.fuel.FuelBlend;
import dev.jetting.core.fuel.FuelComponent;
import dev.jetting.core.parts.FlowCoefficients;
import dev.jetting.core.parts.Intake;
import dev.jetting.rules.risk.RidingProfile;
import java.util.Map;

/** Names that may be written in place of an object. They are read, never written. */
final class Shorthands {

  private static final Map<String, Fuel> FUELS =
      ImmutableMap.of("petrol", Fuel.PETROL, "E5", Fuel.E5, "E10", Fuel.E10, "E85", Fuel.E85);

  private static final Map<Class<?>, Map<String, ?>> BY_TYPE =
      ImmutableMap.<Class<?>, Map<String, ?>>builder()
          .put(FlowCoefficients.class, Map.of("assumed", FlowCoefficients.assumed()))
          .put(
              Induction.class,
              ImmutableMap.of("mild", Induction.assumedMild(), "tuned", Induction.assumedTuned()))
          .put(
              MixtureNeed.class,
              ImmutableMap.of(
                  "very mild", MixtureNeed.assumedVeryMild(),
                  "mild", MixtureNeed.assumedMild(),
                  "tuned", MixtureNeed.assumedTuned()))
          .put(Intake.class, Map.of("open mouth", Intake.openMouth()))
          .put(Fuel.class, FUELS)
          .put(FuelBlend.class, blends())
          .put(
              FuelComponent.class,
              ImmutableMap.of(
                  "petrol", FuelComponent.PETROL,
                  "ethanol", FuelComponent.ETHANOL,
                  "methanol", FuelComponent.METHANOL,
                  "two-stroke-oil", FuelComponent.TWO_STROKE_OIL))
          .put(RidingProfile.class, Map.of("assumed road", RidingProfile.assumedRoad()))
          .buildOrThrow();

  private Shorthands() {}

  static Map<String, ?> of(Class<?> type) {
    return BY_TYPE.getOrDefault(type, Map.of());
  }

  private static Map<String, FuelBlend> blends() {
    ImmutableMap.Builder<String, FuelBlend> blends = ImmutableMap.builder();
    FUELS.forEach((name, fuel) -> blends.put(name, fuel.blend().orElseThrow()));
    return blends.buildOrThrow();
  }
}
