package dev.jetting.core.cycle;

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

/** An invented engine of 123 cm³ behind a 24 mm slide, on which the cycle is tried. */
final class Bench {

  static final Inlet.PistonPort PISTON_PORT = new Inlet.PistonPort(150, area(520));
  static final Inlet.RotaryValve ROTARY = new Inlet.RotaryValve(130, 60, 20, area(460));
  static final Inlet.Reed REED = new Inlet.Reed(area(560), Pressure.ofPascals(4000));

  /** Speed of the power peak, rpm. */
  static final double PEAK = 7000;

  private Bench() {}

  static Induction induction(SlideSignal.Kind kind, double opens, double closes) {
    return switch (kind) {
      case PISTON -> Induction.pistonPort("invented", angle(opens + closes));
      case ROTARY ->
          Induction.rotaryValve("invented").opens(angle(opens)).closes(angle(closes)).build();
      case REED -> Induction.reedValve("invented");
    };
  }

  private static Coefficient angle(double degrees) {
    return Coefficient.assumed(degrees, "°", "invented");
  }

  static Area area(double squareMillimetres) {
    return Area.ofSquareMillimetres(squareMillimetres);
  }

  static Crankcase crankcase(Inlet inlet) {
    return crankcase(inlet, tract(70, IntakeTract.Inertia.LEFT_OUT));
  }

  static Crankcase crankcase(Inlet inlet, IntakeTract tract) {
    return Crankcase.builder()
        .primaryCompression(1.4)
        .inlet(inlet)
        .transfer(new Transfer(120, area(500), Pressure.ofPascals(0)))
        .tract(tract)
        .build();
  }

  static IntakeTract tract(double millimetres, IntakeTract.Inertia inertia) {
    return new IntakeTract(Length.ofMillimetres(millimetres), area(450), inertia);
  }

  static Setup setup() {
    return setup(RpmCurve.of(RpmCurve.Point.of(1500, 0.5)), Induction.assumedMild());
  }

  static Setup setup(RpmCurve delivery, Induction induction) {
    return Setup.builder()
        .engine(
            Engine.builder()
                .id("invented 123")
                .displacement(Displacement.ofCubicCentimetres(123))
                .deliveryRatio(delivery)
                .induction(induction)
                .exhaust(Exhaust.reference("plain silencer"))
                .loadLine(new LoadLine(EngineSpeed.ofRpm(1500), EngineSpeed.ofRpm(PEAK)))
                .need(MixtureNeed.assumedMild())
                .build())
        .setting(setting())
        .air(
            Air.dry(Pressure.ofPascals(101_325), Temperature.ofKelvin(288.15))
                .withFormula(AirFormula.IDEAL_GAS))
        .fuel(
            Fuel.ofProperties(
                Density.ofKilogramsPerCubicMetre(740),
                DynamicViscosity.ofPascalSeconds(5e-4),
                AirFuelRatio.of(14.5)))
        .build();
  }

  private static Setting setting() {
    PilotCircuit pilot =
        PilotCircuit.builder()
            .screwKind(ScrewKind.MIXTURE)
            .areaPerTurn(area(0.13))
            .fixedArea(area(0.45))
            .progressionHole(area(0.38))
            .uncoversFrom(Length.ofMillimetres(0))
            .uncoversTo(Length.ofMillimetres(1.5))
            .head(Length.ofMillimetres(1))
            .mostTurns(ScrewTurns.of(4))
            .build();
    Carburettor carburettor =
        Carburettor.builder()
            .id("invented 24")
            .bore(Diameter.ofMillimetres(24))
            .needleJetLength(Length.ofMillimetres(2.5))
            .needleJetHead(Length.ofMillimetres(8))
            .pilot(pilot)
            .floatValve(
                new FloatValve(
                    Diameter.ofMillimetres(2),
                    Length.ofMillimetres(150),
                    Coefficient.assumed(0.6, "1", "plays no part here")))
            .flow(FlowCoefficients.assumed())
            .build();
    return Setting.builder()
        .carburettor(carburettor)
        .intake(Intake.openMouth())
        .pilotJet(JetBore.ofMillimetres(0.42))
        .screw(new Screw(ScrewKind.MIXTURE, ScrewTurns.of(1.5)))
        .cutaway(Cutaway.ofMillimetres(3))
        .idleLift(Length.ofMillimetres(1))
        .needleJet(NeedleJet.of(Diameter.ofMillimetres(2.15)))
        .needle(
            Needle.builder()
                .id("invented")
                .cylinder(Diameter.ofMillimetres(2.02))
                .tapers(List.of(new Taper(Length.ofMillimetres(3.6), 0.028)))
                .grooves(5)
                .groovePitch(Length.ofMillimetres(0.8))
                .tip(Length.ofMillimetres(60))
                .build())
        .clip(ClipPosition.fromTop(3, 5))
        .mainJet(JetBore.ofMillimetres(0.96))
        .build();
  }
}
