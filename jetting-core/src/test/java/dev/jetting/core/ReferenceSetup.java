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
    return new Setup(engine(), setting(), air(), fuel());
  }

  public static Engine engine() {
    return new Engine(
        "reference-180",
        Displacement.ofCubicCentimetres(180),
        RpmCurve.of(RpmCurve.Point.of(1300, 0.48), RpmCurve.Point.of(7200, 0.74)),
        Induction.rotaryValve(
            "reference",
            Coefficient.assumed(130, "°", "invented"),
            Coefficient.assumed(55, "°", "invented")),
        Exhaust.reference("reference"),
        new LoadLine(EngineSpeed.ofRpm(1300), EngineSpeed.ofRpm(7200)),
        MixtureNeed.assumedMild());
  }

  public static Setting setting() {
    return new Setting(
        carburettor(pilot(ScrewKind.MIXTURE)),
        Intake.openMouth(),
        JetBore.ofMillimetres(0.51),
        new Screw(ScrewKind.MIXTURE, ScrewTurns.of(1.75)),
        Cutaway.ofMillimetres(3.75),
        Length.ofMillimetres(1.8),
        NeedleJet.of(Diameter.ofMillimetres(2.49)),
        needle(55),
        ClipPosition.fromTop(2, 5),
        JetBore.ofMillimetres(1.18));
  }

  /** The reference needle, ending at a place that the model lets a caller choose. */
  public static Needle needle(double tip) {
    return new Needle(
        "reference needle",
        Diameter.ofMillimetres(2.33),
        List.of(new Taper(Length.ofMillimetres(4.75), 0.0226)),
        5,
        Length.ofMillimetres(0.85),
        Length.ofMillimetres(tip));
  }

  /** The same setting with an air screw, which the reference does not have. */
  public static Setting airScrewSetting() {
    Setting s = setting();
    return new Setting(
        carburettor(pilot(ScrewKind.AIR)),
        s.intake(),
        s.pilotJet(),
        new Screw(ScrewKind.AIR, ScrewTurns.of(1.75)),
        s.cutaway(),
        s.idleLift(),
        s.needleJet(),
        s.needle(),
        s.clip(),
        s.mainJet());
  }

  public static Carburettor carburettor(PilotCircuit pilot) {
    return new Carburettor(
        "reference-28",
        Diameter.ofMillimetres(28),
        Length.ofMillimetres(2.8),
        Length.ofMillimetres(11),
        pilot,
        new FloatValve(
            Diameter.ofMillimetres(1.8),
            Length.ofMillimetres(150),
            Coefficient.assumed(0.5, "1", "plays no part in the mixture")),
        FlowCoefficients.assumed());
  }

  public static PilotCircuit pilot(ScrewKind kind) {
    return new PilotCircuit(
        kind,
        Area.ofSquareMillimetres(0.207),
        Area.ofSquareMillimetres(0.54),
        Area.ofSquareMillimetres(0.36),
        Length.ofMillimetres(0),
        Length.ofMillimetres(2.1),
        Length.ofMillimetres(1.0),
        ScrewTurns.of(4));
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
