package dev.jetting.core.mixture;

import dev.jetting.core.ReferenceSetup;
import dev.jetting.core.engine.Engine;
import dev.jetting.core.engine.Exhaust;
import dev.jetting.core.engine.Induction;
import dev.jetting.core.engine.LoadLine;
import dev.jetting.core.engine.MixtureNeed;
import dev.jetting.core.engine.RpmCurve;
import dev.jetting.core.parts.Carburettor;
import dev.jetting.core.parts.Intake;
import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.core.parts.PilotCircuit;
import dev.jetting.core.parts.Screw;
import dev.jetting.core.parts.Setting;
import dev.jetting.core.parts.Taper;
import dev.jetting.units.Area;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.Cutaway;
import dev.jetting.units.Diameter;
import dev.jetting.units.Displacement;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.JetBore;
import dev.jetting.units.Length;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ScrewTurns;
import java.util.List;

/** An all-round setting for a 30 mm carburettor on 200 cm³ (common practice, no source). */
final class CommonPractice {

  private CommonPractice() {}

  static Setup setup() {
    return new Setup(engine(), setting(), ReferenceSetup.air(), ReferenceSetup.fuel());
  }

  private static Engine engine() {
    return new Engine(
        "common-practice-200",
        Displacement.ofCubicCentimetres(200),
        RpmCurve.of(RpmCurve.Point.of(1400, 0.50), RpmCurve.Point.of(7500, 0.72)),
        Induction.assumedMild(),
        Exhaust.reference("simple expansion"),
        new LoadLine(EngineSpeed.ofRpm(1400), EngineSpeed.ofRpm(7500)),
        MixtureNeed.assumedMild());
  }

  private static Setting setting() {
    return new Setting(
        carburettor(),
        Intake.openMouth(),
        JetBore.ofMillimetres(0.55),
        new Screw(ScrewKind.MIXTURE, ScrewTurns.of(1.5)),
        Cutaway.ofMillimetres(4),
        Length.ofMillimetres(1.3),
        NeedleJet.of(Diameter.ofMillimetres(2.66)),
        new Needle(
            "invented needle",
            Diameter.ofMillimetres(2.5),
            List.of(new Taper(Length.ofMillimetres(5), 0.029)),
            5,
            Length.ofMillimetres(0.9),
            Length.ofMillimetres(60)),
        ClipPosition.fromTop(2, 5),
        JetBore.ofMillimetres(1.26));
  }

  private static Carburettor carburettor() {
    Carburettor reference = ReferenceSetup.setting().carburettor();
    return new Carburettor(
        "common-practice-30",
        Diameter.ofMillimetres(30),
        Length.ofMillimetres(3),
        Length.ofMillimetres(12),
        new PilotCircuit(
            ScrewKind.MIXTURE,
            Area.ofSquareMillimetres(0.184),
            Area.ofSquareMillimetres(0.62),
            Area.ofSquareMillimetres(0.62),
            Length.ofMillimetres(0.5),
            Length.ofMillimetres(2.5),
            Length.ofMillimetres(1),
            ScrewTurns.of(4)),
        reference.floatValve(),
        reference.flow());
  }
}
