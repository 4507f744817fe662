package dev.jetting.rules.json;

import dev.jetting.units.JetCalibration;
import dev.jetting.units.Length;
import java.util.Optional;

/** A test bench in JSON: one of two fields tells the law of discharge. */
record BenchForm(
    Length head,
    JetCalibration.Liquid liquid,
    Optional<Double> dischargeCoefficient,
    Optional<Double> lengthToDiameter,
    double relativeUncertainty) {

  BenchForm {
    if (dischargeCoefficient.isPresent() == lengthToDiameter.isPresent()) {
      throw new IllegalArgumentException(
          "law of discharge told twice or not at all: allowed dischargeCoefficient or"
              + " lengthToDiameter");
    }
  }

  static BenchForm of(JetCalibration bench) {
    return bench.law() instanceof JetCalibration.ShortOrifice orifice
        ? new BenchForm(
            bench.head(),
            bench.liquid(),
            Optional.empty(),
            Optional.of(orifice.lengthToDiameter()),
            bench.relativeUncertainty())
        : new BenchForm(
            bench.head(),
            bench.liquid(),
            Optional.of(bench.law().coefficient(1)),
            Optional.empty(),
            bench.relativeUncertainty());
  }

  JetCalibration bench() {
    JetCalibration.DischargeLaw law =
        dischargeCoefficient
            .<JetCalibration.DischargeLaw>map(JetCalibration.ConstantCoefficient::new)
            .or(() -> lengthToDiameter.map(JetCalibration.ShortOrifice::new))
            .orElseThrow();
    return new JetCalibration(head, liquid, law, relativeUncertainty);
  }
}
