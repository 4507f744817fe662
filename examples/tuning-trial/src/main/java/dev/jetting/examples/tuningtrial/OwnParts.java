package dev.jetting.examples.tuningtrial;

import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.risk.ModelUncertainty;
import dev.jetting.units.Diameter;
import dev.jetting.units.JetBore;

/**
 * The parts that one rider owns: each is off its nominal size by its own error, and is so again
 * whenever it is put back in.
 */
final class OwnParts {

  private final long seed;
  private final ModelUncertainty tolerances;

  OwnParts(long seed, ModelUncertainty tolerances) {
    this.seed = seed;
    this.tolerances = tolerances;
  }

  Setting in(Setting nominal) {
    NeedleJet needleJet = nominal.needleJet();
    Needle needle = nominal.needle();
    double tube = needleJet.bore().millimetres();
    double tubeError = error("needle jet", tube, tolerances.needleJetTolerance().value());
    double needleError = error("needle " + needle.id(), 0, tolerances.needleTolerance().value());
    Needle own =
        Needle.builder()
            .id(needle.id())
            .cylinder(Diameter.ofMillimetres(needle.cylinder().millimetres() + needleError))
            .tapers(needle.tapers())
            .grooves(needle.grooves())
            .groovePitch(needle.groovePitch())
            .tip(needle.tip())
            .build();
    return nominal
        .withMainJet(off("main jet", nominal.mainJet(), tolerances.mainJetTolerance().value()))
        .withPilotJet(off("pilot jet", nominal.pilotJet(), tolerances.pilotJetTolerance().value()))
        .withNeedleJet(new NeedleJet(Diameter.ofMillimetres(tube + tubeError), needleJet.neck()))
        .withNeedle(own, nominal.clip());
  }

  private JetBore off(String what, JetBore nominal, double tolerance) {
    double size = nominal.millimetres();
    return JetBore.ofMillimetres(size + error(what, size, tolerance));
  }

  private double error(String what, double size, double tolerance) {
    return Chance.of(seed, what, Math.rint(size * 1e4)).normal(tolerance);
  }
}
