package dev.jetting.rules.laws;

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
import dev.jetting.rules.SetupSheet;
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

/** The reference geometry of MODEL.md on an engine of its own: invented, and no machine's. */
final class PlainSheet {

  private PlainSheet() {}

  private static final Engine ENGINE =
      new Engine(
          "plain 180",
          Displacement.ofCubicCentimetres(180),
          RpmCurve.of(RpmCurve.Point.of(1300, 0.48), RpmCurve.Point.of(7200, 0.74)),
          Induction.rotaryValve(
              "plain",
              Coefficient.assumed(130, "°", "invented"),
              Coefficient.assumed(55, "°", "invented")),
          Exhaust.reference("plain exhaust"),
          new LoadLine(EngineSpeed.ofRpm(1300), EngineSpeed.ofRpm(7200)),
          MixtureNeed.assumedMild());

  private static final Carburettor CARBURETTOR =
      new Carburettor(
          "plain 28 mm carburettor",
          Diameter.ofMillimetres(28),
          Length.ofMillimetres(2.8),
          Length.ofMillimetres(11),
          new PilotCircuit(
              ScrewKind.MIXTURE,
              Area.ofSquareMillimetres(0.207),
              Area.ofSquareMillimetres(0.54),
              Area.ofSquareMillimetres(0.36),
              Length.ofMillimetres(0),
              Length.ofMillimetres(2.1),
              Length.ofMillimetres(1),
              ScrewTurns.of(4)),
          new FloatValve(
              Diameter.ofMillimetres(2.4),
              Length.ofMillimetres(150),
              Coefficient.assumed(0.6, "1", "tap and hose included")),
          FlowCoefficients.assumed());

  private static final Setting SETTING =
      new Setting(
          CARBURETTOR,
          Intake.openMouth(),
          JetBore.ofMillimetres(0.51),
          new Screw(ScrewKind.MIXTURE, ScrewTurns.of(1.75)),
          Cutaway.ofMillimetres(3.75),
          Length.ofMillimetres(1.8),
          NeedleJet.of(Diameter.ofMillimetres(2.49)),
          new Needle(
              "plain needle",
              Diameter.ofMillimetres(2.33),
              List.of(new Taper(Length.ofMillimetres(4.75), 0.0226)),
              5,
              Length.ofMillimetres(0.85),
              Length.ofMillimetres(55)),
          ClipPosition.fromTop(2, 5),
          JetBore.ofMillimetres(1.18));

  private static final Air DAY =
      Air.of(
          Pressure.ofHectopascals(1013.25),
          Temperature.ofCelsius(15),
          RelativeHumidity.ofPercent(60));

  static final SetupSheet SHEET =
      SetupSheet.builder()
          .title("plain")
          .setup(new Setup(ENGINE, SETTING, DAY, Fuel.E5.withPremix(PremixRatio.ofPetrolToOil(50))))
          .riding(new Riding(Probability.of(0.1), RidingProfile.assumedRoad(), DAY, DAY))
          .build();
}
