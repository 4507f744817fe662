package dev.jetting.rules;

import dev.jetting.core.air.Air;
import dev.jetting.core.engine.Engine;
import dev.jetting.core.engine.Exhaust;
import dev.jetting.core.engine.Induction;
import dev.jetting.core.engine.LoadLine;
import dev.jetting.core.engine.MixtureNeed;
import dev.jetting.core.engine.RpmCurve;
import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Carburettor;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.core.parts.FloatValve;
import dev.jetting.core.parts.FlowCoefficients;
import dev.jetting.core.parts.Intake;
import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.core.parts.PilotCircuit;
import dev.jetting.core.parts.Screw;
import dev.jetting.core.parts.Setting;
import dev.jetting.core.parts.Taper;
import dev.jetting.rules.risk.Riding;
import dev.jetting.rules.risk.RidingProfile;
import dev.jetting.units.Area;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.Cutaway;
import dev.jetting.units.Diameter;
import dev.jetting.units.Displacement;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.JetBore;
import dev.jetting.units.Length;
import dev.jetting.units.PremixRatio;
import dev.jetting.units.Pressure;
import dev.jetting.units.Probability;
import dev.jetting.units.RelativeHumidity;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ScrewTurns;
import dev.jetting.units.Temperature;
import java.util.List;

/**
 * The engine and carburettor on which facts of the trade are tried: about 200 cm³, a 30 mm slide
 * carburettor with a mixture screw. Needle and progression hole are invented so that the setting
 * which common practice calls all-round comes out clean; the rest is the model's reference
 * geometry.
 */
public final class TwoHundred {

  private TwoHundred() {}

  /** A standard engine with a simple expansion exhaust. */
  public static final Engine STANDARD =
      Engine.builder()
          .id("standard 200 with a simple expansion exhaust")
          .displacement(Displacement.ofCubicCentimetres(200))
          .deliveryRatio(RpmCurve.of(RpmCurve.Point.of(1400, 0.50), RpmCurve.Point.of(7500, 0.72)))
          .induction(valve("standard", 130, 55))
          .exhaust(Exhaust.reference("simple expansion exhaust"))
          .loadLine(new LoadLine(EngineSpeed.ofRpm(1400), EngineSpeed.ofRpm(7500)))
          .need(MixtureNeed.assumedMild())
          .build();

  private static Induction valve(String tune, double opens, double closes) {
    return Induction.rotaryValve("rotary valve, " + tune)
        .opens(Coefficient.assumed(opens, "°", "invented"))
        .closes(Coefficient.assumed(closes, "°", "invented"))
        .build();
  }

  /**
   * A tuned engine of 210 to 225 cm³: more delivery, at a higher speed, and an inlet open for
   * longer.
   *
   * @param cubicCentimetres displacement
   */
  public static Engine tuned(double cubicCentimetres) {
    return Engine.builder()
        .id("tuned engine")
        .displacement(Displacement.ofCubicCentimetres(cubicCentimetres))
        .deliveryRatio(
            RpmCurve.of(
                RpmCurve.Point.of(1400, 0.50),
                RpmCurve.Point.of(5000, 0.62),
                RpmCurve.Point.of(8500, 0.92)))
        .induction(valve("tuned", 135, 62))
        .exhaust(Exhaust.reference("tuned expansion exhaust"))
        .loadLine(new LoadLine(EngineSpeed.ofRpm(1500), EngineSpeed.ofRpm(8500)))
        .need(MixtureNeed.assumedTuned())
        .build();
  }

  /** A very mild engine with a restrictive exhaust. */
  public static final Engine VERY_MILD =
      Engine.builder()
          .id("very mild 200")
          .displacement(Displacement.ofCubicCentimetres(200))
          .deliveryRatio(
              RpmCurve.of(
                  RpmCurve.Point.of(1400, 0.50),
                  RpmCurve.Point.of(4000, 0.60),
                  RpmCurve.Point.of(6000, 0.55)))
          .induction(valve("very mild", 125, 50))
          .exhaust(
              new Exhaust(
                  "restrictive exhaust",
                  RpmCurve.of(RpmCurve.Point.of(3000, 1), RpmCurve.Point.of(6000, 0.85))))
          .loadLine(new LoadLine(EngineSpeed.ofRpm(1400), EngineSpeed.ofRpm(6000)))
          .need(MixtureNeed.assumedVeryMild())
          .build();

  /** A filter that costs some power. */
  public static final Intake FILTER = Intake.filter("filter", Area.ofSquareMillimetres(700));

  private static final Carburettor CARBURETTOR = carburettor(ScrewKind.MIXTURE, 2.5);

  /** The needle of the all-round setting. */
  public static final Needle NEEDLE = needle("needle", 2.50);

  /** A needle a hundredth of a millimetre thicker. */
  public static final Needle LEANER_NEEDLE = needle("leaner needle", 2.51);

  /** The setting that common practice calls all-round. */
  public static final Setting ALL_ROUND =
      Setting.builder()
          .carburettor(CARBURETTOR)
          .intake(Intake.openMouth())
          .pilotJet(JetBore.ofMillimetres(0.55))
          .screw(new Screw(ScrewKind.MIXTURE, ScrewTurns.of(1.5)))
          .cutaway(Cutaway.ofMillimetres(4))
          .idleLift(Length.ofMillimetres(2))
          .needleJet(needleJet(2.66))
          .needle(NEEDLE)
          .clip(ClipPosition.fromTop(2, 5))
          .mainJet(JetBore.ofMillimetres(1.26))
          .build();

  /** A mild spring day at the sea. */
  public static final Air DAY =
      Air.of(
          Pressure.ofHectopascals(1013.25),
          Temperature.ofCelsius(15),
          RelativeHumidity.ofPercent(60));

  /** Petrol with 5 % ethanol and oil at 50:1. */
  public static final Fuel FUEL = Fuel.E5.withPremix(PremixRatio.ofPetrolToOil(50));

  /** A carburettor of the reference geometry. */
  public static Carburettor carburettor(ScrewKind kind, double floatValveSeat) {
    return Carburettor.builder()
        .id("30 mm slide carburettor")
        .bore(Diameter.ofMillimetres(30))
        .needleJetLength(Length.ofMillimetres(3))
        .needleJetHead(Length.ofMillimetres(12))
        .pilot(
            PilotCircuit.builder()
                .screwKind(kind)
                .areaPerTurn(Area.ofSquareMillimetres(0.286))
                .fixedArea(Area.ofSquareMillimetres(0.62))
                .progressionHole(Area.ofSquareMillimetres(0.413))
                .uncoversFrom(Length.ofMillimetres(0))
                .uncoversTo(Length.ofMillimetres(2.25))
                .head(Length.ofMillimetres(1))
                .mostTurns(ScrewTurns.of(3))
                .build())
        .floatValve(
            new FloatValve(
                Diameter.ofMillimetres(floatValveSeat),
                Length.ofMillimetres(150),
                Coefficient.assumed(0.6, "1", "tap and hose included")))
        .flow(FlowCoefficients.assumed())
        .build();
  }

  /** A carburettor of the reference geometry with another bore. */
  public static Carburettor carburettor(Diameter bore) {
    return Carburettor.builder()
        .id("slide carburettor of another bore")
        .bore(bore)
        .needleJetLength(CARBURETTOR.needleJetLength())
        .needleJetHead(CARBURETTOR.needleJetHead())
        .pilot(CARBURETTOR.pilot())
        .floatValve(CARBURETTOR.floatValve())
        .flow(CARBURETTOR.flow())
        .build();
  }

  /** A needle jet with the reference neck. */
  public static NeedleJet needleJet(double millimetres) {
    return NeedleJet.of(Diameter.ofMillimetres(millimetres));
  }

  /** A needle of the invented shape. */
  public static Needle needle(String id, double cylinder) {
    return Needle.builder()
        .id(id)
        .cylinder(Diameter.ofMillimetres(cylinder))
        .tapers(List.of(new Taper(Length.ofMillimetres(5.1), 0.0226)))
        .grooves(5)
        .groovePitch(Length.ofMillimetres(0.9))
        .tip(Length.ofMillimetres(45))
        .build();
  }

  /** The setting on the engine, on the mild day, one risk in ten accepted. */
  public static SetupSheet sheet(Engine engine, Setting setting) {
    return SetupSheet.builder()
        .title("facts of the trade")
        .setup(Setup.builder().engine(engine).setting(setting).air(DAY).fuel(FUEL).build())
        .riding(
            Riding.builder()
                .acceptedRisk(Probability.of(0.1))
                .profile(RidingProfile.assumedRoad())
                .coldest(DAY)
                .hottest(DAY)
                .build())
        .build();
  }

  /** The assessed setting on the engine. */
  public static AssessedSetting assessed(Engine engine, Setting setting) {
    return AssessedSetting.of(sheet(engine, setting));
  }
}
