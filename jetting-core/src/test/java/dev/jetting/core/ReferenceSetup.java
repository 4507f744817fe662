package dev.jetting.core;

import dev.jetting.core.air.Air;
import dev.jetting.core.air.AirFormula;
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
import dev.jetting.units.AirFuelRatio;
import dev.jetting.units.Area;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.Cutaway;
import dev.jetting.units.Density;
import dev.jetting.units.Diameter;
import dev.jetting.units.Displacement;
import dev.jetting.units.DynamicViscosity;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.JetBore;
import dev.jetting.units.Length;
import dev.jetting.units.Pressure;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ScrewTurns;
import dev.jetting.units.Temperature;
import java.util.List;

/** The reference setting of MODEL.md, with which an implementation is checked; invented. */
public final class ReferenceSetup {

  private ReferenceSetup() {}

  /** The whole of it. */
  public static Setup setup() {
    return Setup.builder().engine(engine()).setting(setting()).air(air()).fuel(fuel()).build();
  }

  public static Engine engine() {
    return Engine.builder()
        .id("reference-180")
        .displacement(Displacement.ofCubicCentimetres(180))
        .deliveryRatio(RpmCurve.of(RpmCurve.Point.of(1300, 0.48), RpmCurve.Point.of(7200, 0.74)))
        .induction(
            Induction.rotaryValve("reference")
                .opens(Coefficient.assumed(130, "°", "invented"))
                .closes(Coefficient.assumed(55, "°", "invented"))
                .build())
        .exhaust(Exhaust.reference("reference"))
        .loadLine(new LoadLine(EngineSpeed.ofRpm(1300), EngineSpeed.ofRpm(7200)))
        .need(MixtureNeed.assumedMild())
        .build();
  }

  public static Setting setting() {
    return Setting.builder()
        .carburettor(carburettor(pilot(ScrewKind.MIXTURE)))
        .intake(Intake.openMouth())
        .pilotJet(JetBore.ofMillimetres(0.51))
        .screw(new Screw(ScrewKind.MIXTURE, ScrewTurns.of(1.75)))
        .cutaway(Cutaway.ofMillimetres(3.75))
        .idleLift(Length.ofMillimetres(1.8))
        .needleJet(NeedleJet.of(Diameter.ofMillimetres(2.49)))
        .needle(needle(55))
        .clip(ClipPosition.fromTop(2, 5))
        .mainJet(JetBore.ofMillimetres(1.18))
        .build();
  }

  /** The reference needle, ending at a place that the model lets a caller choose. */
  public static Needle needle(double tip) {
    return Needle.builder()
        .id("reference needle")
        .cylinder(Diameter.ofMillimetres(2.33))
        .tapers(List.of(new Taper(Length.ofMillimetres(4.75), 0.0226)))
        .grooves(5)
        .groovePitch(Length.ofMillimetres(0.85))
        .tip(Length.ofMillimetres(tip))
        .build();
  }

  /** The same setting with an air screw, which the reference does not have. */
  public static Setting airScrewSetting() {
    Setting s = setting();
    return Setting.builder()
        .carburettor(carburettor(pilot(ScrewKind.AIR)))
        .intake(s.intake())
        .pilotJet(s.pilotJet())
        .screw(new Screw(ScrewKind.AIR, ScrewTurns.of(1.75)))
        .cutaway(s.cutaway())
        .idleLift(s.idleLift())
        .needleJet(s.needleJet())
        .needle(s.needle())
        .clip(s.clip())
        .mainJet(s.mainJet())
        .build();
  }

  public static Carburettor carburettor(PilotCircuit pilot) {
    return Carburettor.builder()
        .id("reference-28")
        .bore(Diameter.ofMillimetres(28))
        .needleJetLength(Length.ofMillimetres(2.8))
        .needleJetHead(Length.ofMillimetres(11))
        .pilot(pilot)
        .floatValve(
            new FloatValve(
                Diameter.ofMillimetres(1.8),
                Length.ofMillimetres(150),
                Coefficient.assumed(0.5, "1", "plays no part in the mixture")))
        .flow(FlowCoefficients.assumed())
        .build();
  }

  public static PilotCircuit pilot(ScrewKind kind) {
    return PilotCircuit.builder()
        .screwKind(kind)
        .areaPerTurn(Area.ofSquareMillimetres(0.207))
        .fixedArea(Area.ofSquareMillimetres(0.54))
        .progressionHole(Area.ofSquareMillimetres(0.36))
        .uncoversFrom(Length.ofMillimetres(0))
        .uncoversTo(Length.ofMillimetres(2.1))
        .head(Length.ofMillimetres(1.0))
        .mostTurns(ScrewTurns.of(4))
        .build();
  }

  public static Air air() {
    return air(288.15);
  }

  /** Dry sea-level air of some temperature, as an ideal gas of R 287.05287 J/(kg K). */
  public static Air air(double kelvin) {
    return Air.dry(Pressure.ofPascals(101_325), Temperature.ofKelvin(kelvin))
        .withFormula(AirFormula.IDEAL_GAS);
  }

  public static Fuel fuel() {
    return Fuel.ofProperties(
        Density.ofKilogramsPerCubicMetre(740),
        DynamicViscosity.ofPascalSeconds(5e-4),
        AirFuelRatio.of(14.5));
  }
}
