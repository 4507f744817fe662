package dev.jetting.rules.laws;

import dev.jetting.core.air.Air;
import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.mixture.CustomarySteps;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Screw;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.PartsAtHand;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.TwoHundred;
import dev.jetting.rules.risk.RiddenSpeeds;
import dev.jetting.rules.risk.Riding;
import dev.jetting.rules.risk.RidingProfile;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.Cutaway;
import dev.jetting.units.JetBore;
import dev.jetting.units.Length;
import dev.jetting.units.PremixRatio;
import dev.jetting.units.Pressure;
import dev.jetting.units.Probability;
import dev.jetting.units.RelativeHumidity;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ScrewTurns;
import dev.jetting.units.Temperature;
import dev.jetting.units.TemperatureDifference;
import java.util.List;
import java.util.stream.Stream;

/** A sheet that differs from the plain one in every piece. */
final class Odd {

  private Odd() {}

  private static final Air COLD =
      Air.of(
          Pressure.ofHectopascals(1030), Temperature.ofCelsius(2), RelativeHumidity.ofPercent(80));

  private static final Air HOT =
      Air.of(
          Pressure.ofHectopascals(990), Temperature.ofCelsius(34), RelativeHumidity.ofPercent(50));

  static final Setting SETTING =
      new Setting(
          TwoHundred.carburettor(ScrewKind.MIXTURE, 2.8),
          TwoHundred.FILTER,
          JetBore.ofMillimetres(0.48),
          new Screw(ScrewKind.MIXTURE, ScrewTurns.of(2)),
          Cutaway.ofMillimetres(5),
          Length.ofMillimetres(1.5),
          TwoHundred.needleJet(2.68),
          TwoHundred.LEANER_NEEDLE,
          ClipPosition.fromTop(3, 5),
          JetBore.ofMillimetres(1.30));

  static final SetupSheet SHEET =
      SetupSheet.builder()
          .title("odd")
          .setup(
              new Setup(
                  TwoHundred.tuned(221),
                  SETTING,
                  COLD,
                  Fuel.E10.withPremix(PremixRatio.ofPetrolToOil(30)),
                  TemperatureDifference.ofKelvin(15)))
          .riding(
              new Riding(
                  Probability.of(0.05),
                  new RidingProfile(RidingProfile.assumedRoad().points().subList(1, 3)),
                  COLD,
                  HOT,
                  new RiddenSpeeds(3)))
          .parts(
              new PartsAtHand(
                  List.of(JetBore.ofMillimetres(0.5)), List.of(), List.of(), List.of(), List.of()))
          .build();

  /** Every part, richer and leaner by its customary step. */
  static Stream<Trial> trials() {
    return Trial.eachPart(SHEET, CustomarySteps.assumed());
  }
}
