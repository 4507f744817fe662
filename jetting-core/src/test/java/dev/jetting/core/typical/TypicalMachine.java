package dev.jetting.core.typical;

import dev.jetting.core.ReferenceSetup;
import dev.jetting.core.engine.Engine;
import dev.jetting.core.engine.InductionKind;
import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.core.parts.Screw;
import dev.jetting.core.parts.Setting;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.Cutaway;
import dev.jetting.units.Diameter;
import dev.jetting.units.Displacement;
import dev.jetting.units.JetBore;
import dev.jetting.units.PremixRatio;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ScrewTurns;

/** Typical machines for tests: jets that grow with the bore. */
final class TypicalMachine {

  private TypicalMachine() {}

  static TypicalEngine engine(double cubicCentimetres, StateOfTune tune) {
    return TypicalEngine.builder()
        .displacement(Displacement.ofCubicCentimetres(cubicCentimetres))
        .tune(tune)
        .cooling(Cooling.FAN)
        .induction(InductionKind.ROTARY_VALVE)
        .build();
  }

  static Setup setup(TypicalEngine typical, double bore, ScrewKind kind) {
    TypicalCarburettor carburettor = new TypicalCarburettor(Diameter.ofMillimetres(bore), kind);
    Engine engine = typical.engine();
    double scale = bore / 30;
    return Setup.builder()
        .engine(engine)
        .setting(
            Setting.builder()
                .carburettor(carburettor.carburettor())
                .intake(carburettor.filter())
                .pilotJet(JetBore.ofMillimetres(0.55 * scale))
                .screw(new Screw(kind, ScrewTurns.of(1.5)))
                .cutaway(Cutaway.ofMillimetres(4 * scale))
                .idleLift(carburettor.idleLift(engine))
                .needleJet(NeedleJet.of(Diameter.ofMillimetres(2.66 * scale)))
                .needle(carburettor.needle("needle", Diameter.ofMillimetres(2.5 * scale), 5))
                .clip(ClipPosition.fromTop(2, 5))
                .mainJet(JetBore.ofMillimetres(1.26 * scale))
                .build())
        .air(ReferenceSetup.air())
        .fuel(Fuel.E5.withPremix(PremixRatio.ofPetrolToOil(50)))
        .build();
  }
}
