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
      Setting.builder()
          .carburettor(TwoHundred.carburettor(ScrewKind.MIXTURE, 2.8))
          .intake(TwoHundred.FILTER)
          .pilotJet(JetBore.ofMillimetres(0.48))
          .screw(new Screw(ScrewKind.MIXTURE, ScrewTurns.of(2)))
          .cutaway(Cutaway.ofMillimetres(5))
          .idleLift(Length.ofMillimetres(1.5))
          .needleJet(TwoHundred.needleJet(2.68))
          .needle(TwoHundred.LEANER_NEEDLE)
          .clip(ClipPosition.fromTop(3, 5))
          .mainJet(JetBore.ofMillimetres(1.30))
          .build();

  static final SetupSheet SHEET =
      SetupSheet.builder()
          .title("odd")
          .setup(
              Setup.builder()
                  .engine(TwoHundred.tuned(221))
                  .setting(SETTING)
                  .air(COLD)
                  .fuel(Fuel.E10.withPremix(PremixRatio.ofPetrolToOil(30)))
                  .fuelWarmerBy(TemperatureDifference.ofKelvin(15))
                  .build())
          .riding(
              Riding.builder()
                  .acceptedRisk(Probability.of(0.05))
                  .profile(new RidingProfile(RidingProfile.assumedRoad().points().subList(1, 3)))
                  .coldest(COLD)
                  .hottest(HOT)
                  .speeds(new RiddenSpeeds(3))
                  .build())
          .parts(
              PartsAtHand.builder()
                  .pilotJets(List.of(JetBore.ofMillimetres(0.5)))
                  .cutaways(List.of())
                  .needleJets(List.of())
                  .needles(List.of())
                  .mainJets(List.of())
                  .build())
          .build();

  /** Every part, richer and leaner by its customary step. */
  static Stream<Trial> trials() {
    return Trial.eachPart(SHEET, CustomarySteps.assumed());
  }
}
