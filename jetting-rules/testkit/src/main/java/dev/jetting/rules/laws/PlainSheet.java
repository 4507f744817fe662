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
      Engine.builder()
          .id("plain 180")
          .displacement(Displacement.ofCubicCentimetres(180))
          .deliveryRatio(RpmCurve.of(RpmCurve.Point.of(1300, 0.48), RpmCurve.Point.of(7200, 0.74)))
          .induction(
              Induction.rotaryValve("plain")
                  .opens(Coefficient.assumed(130, "°", "invented"))
                  .closes(Coefficient.assumed(55, "°", "invented"))
                  .build())
          .exhaust(Exhaust.reference("plain exhaust"))
          .loadLine(new LoadLine(EngineSpeed.ofRpm(1300), EngineSpeed.ofRpm(7200)))
          .need(MixtureNeed.assumedMild())
          .build();

  private static final Carburettor CARBURETTOR =
      Carburettor.builder()
          .id("plain 28 mm carburettor")
          .bore(Diameter.ofMillimetres(28))
          .needleJetLength(Length.ofMillimetres(2.8))
          .needleJetHead(Length.ofMillimetres(11))
          .pilot(
              PilotCircuit.builder()
                  .screwKind(ScrewKind.MIXTURE)
                  .areaPerTurn(Area.ofSquareMillimetres(0.207))
                  .fixedArea(Area.ofSquareMillimetres(0.54))
                  .progressionHole(Area.ofSquareMillimetres(0.36))
                  .uncoversFrom(Length.ofMillimetres(0))
                  .uncoversTo(Length.ofMillimetres(2.1))
                  .head(Length.ofMillimetres(1))
                  .mostTurns(ScrewTurns.of(4))
                  .build())
          .floatValve(
              new FloatValve(
                  Diameter.ofMillimetres(2.4),
                  Length.ofMillimetres(150),
                  Coefficient.assumed(0.6, "1", "tap and hose included")))
          .flow(FlowCoefficients.assumed())
          .build();

  private static final Setting SETTING =
      Setting.builder()
          .carburettor(CARBURETTOR)
          .intake(Intake.openMouth())
          .pilotJet(JetBore.ofMillimetres(0.51))
          .screw(new Screw(ScrewKind.MIXTURE, ScrewTurns.of(1.75)))
          .cutaway(Cutaway.ofMillimetres(3.75))
          .idleLift(Length.ofMillimetres(1.8))
          .needleJet(NeedleJet.of(Diameter.ofMillimetres(2.49)))
          .needle(
              Needle.builder()
                  .id("plain needle")
                  .cylinder(Diameter.ofMillimetres(2.33))
                  .tapers(List.of(new Taper(Length.ofMillimetres(4.75), 0.0226)))
                  .grooves(5)
                  .groovePitch(Length.ofMillimetres(0.85))
                  .tip(Length.ofMillimetres(55))
                  .build())
          .clip(ClipPosition.fromTop(2, 5))
          .mainJet(JetBore.ofMillimetres(1.18))
          .build();

  private static final Air DAY =
      Air.of(
          Pressure.ofHectopascals(1013.25),
          Temperature.ofCelsius(15),
          RelativeHumidity.ofPercent(60));

  static final SetupSheet SHEET =
      SetupSheet.builder()
          .title("plain")
          .setup(
              Setup.builder()
                  .engine(ENGINE)
                  .setting(SETTING)
                  .air(DAY)
                  .fuel(Fuel.E5.withPremix(PremixRatio.ofPetrolToOil(50)))
                  .build())
          .riding(
              Riding.builder()
                  .acceptedRisk(Probability.of(0.1))
                  .profile(RidingProfile.assumedRoad())
                  .coldest(DAY)
                  .hottest(DAY)
                  .build())
          .build();
}
