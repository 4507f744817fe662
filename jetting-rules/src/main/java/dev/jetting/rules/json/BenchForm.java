package dev.jetting.rules.json;

import dev.jetting.units.InvalidValueException;
import dev.jetting.units.JetCalibration;
import dev.jetting.units.Length;
import dev.jetting.units.Sentence;
import java.util.Optional;

/**
 * A test bench in JSON: one of two fields states the law of discharge.
 *
 * @param head the height of liquid above the jet
 * @param liquid what flows
 * @param dischargeCoefficient the same for every jet, above 0 up to 1; or the length
 * @param lengthToDiameter length of the bore by its diameter, 2 to 10, from which the coefficient
 *     follows as of a short orifice
 * @param relativeUncertainty standard uncertainty of a flow as a share of it, 0 to 0.5
 */
record BenchForm(
    Length head,
    JetCalibration.Liquid liquid,
    Optional<Double> dischargeCoefficient,
    Optional<Double> lengthToDiameter,
    double relativeUncertainty) {

  BenchForm {
    if (dischargeCoefficient.isPresent() == lengthToDiameter.isPresent()) {
      throw InvalidValueException.worded(
          Sentence.of("error.law-of-discharge"),
          Sentence.of("error.or")
              .with("first", "dischargeCoefficient")
              .with("second", "lengthToDiameter"));
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
