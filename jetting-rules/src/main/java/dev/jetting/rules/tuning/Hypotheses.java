package dev.jetting.rules.tuning;

import dev.jetting.core.air.Air;
import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Whether the engine has a fault: a mixture of one hypothesis without and one for each fault that
 * changes the mixture, weighed by how well the readings fit each (Bayes' rule, on the log marginal
 * likelihood of the Gaussian processes). Two faults at once are left out.
 *
 * <p>A fault is not jetted around: parts are chosen for an engine without one. What the mixture
 * decides is where to read, when to look for a fault, and which risk is reported at the end.
 */
final class Hypotheses {

  /** The share of engines that have a given fault when nobody has looked for it (assumed). */
  private static final double SHARE = 0.01;

  /** Of those with a fault, the share on which a check misses it (assumed: one in five). */
  private static final double MISSED = 0.2;

  /** Less than this share of what is accepted cannot change what is decided. */
  private static final double NEGLIGIBLE = 0.01;

  /** A hypothesis and how likely it is, given the readings. */
  record Hypothesis(Optional<Fault> fault, double probability, Calibration calibration) {}

  private final RiskModel riskModel;
  private final List<Hypothesis> all;

  /**
   * Weighs the hypotheses.
   *
   * @param calibration what the readings teach if there is no fault
   * @param checks each entry a round of checks in which no fault was found
   */
  Hypotheses(RiskModel riskModel, Calibration calibration, List<Set<Check>> checks) {
    this.riskModel = riskModel;
    double without = calibration.logEvidence();
    List<Hypothesis> odds = new ArrayList<>();
    odds.add(new Hypothesis(Optional.empty(), 1, calibration));
    for (Fault fault : Fault.values()) {
      fault
          .disturbance()
          .map(calibration::assuming)
          .ifPresent(
              with -> {
                double prior = SHARE * missed(fault, checks);
                double fit = StrictMath.exp(with.logEvidence() - without);
                odds.add(new Hypothesis(Optional.of(fault), prior * fit, with));
              });
    }
    double sum = odds.stream().mapToDouble(Hypothesis::probability).sum();
    all =
        odds.stream()
            .map(one -> new Hypothesis(one.fault, one.probability / sum, one.calibration))
            .toList();
  }

  private static double missed(Fault fault, List<Set<Check>> checks) {
    long looked = checks.stream().filter(round -> round.contains(fault.settledBy())).count();
    return StrictMath.pow(MISSED, (double) looked);
  }

  /** The faults, the most likely first. */
  List<Hypothesis> faults() {
    return all.stream()
        .filter(one -> one.fault().isPresent())
        .sorted(Comparator.comparingDouble(Hypothesis::probability).reversed())
        .toList();
  }

  /** The faults at least so likely, the most likely first. */
  List<Fault> likely(double probability) {
    return faults().stream()
        .filter(one -> one.probability >= probability)
        .flatMap(one -> one.fault().stream())
        .toList();
  }

  /** The probability that the engine has one of the faults. */
  double anyFault() {
    return faults().stream().mapToDouble(Hypothesis::probability).sum();
  }

  /**
   * The lean risk at an opening over all hypotheses, on the day of the sheet where it is highest.
   */
  Probability leanRisk(SetupSheet sheet, ThrottleOpening throttle) {
    double negligible = NEGLIGIBLE * sheet.riding().acceptedRisk().value();
    double worst = 0;
    for (Air day : sheet.days()) {
      MixtureModel model = MixtureModel.of(sheet.setup().withAir(day));
      double risk = 0;
      for (Hypothesis one : all) {
        if (one.probability > negligible) {
          risk += one.probability * riskModel.leanRisk(one.calibration.on(model), throttle).value();
        }
      }
      worst = Math.max(worst, risk);
    }
    return Probability.of(Math.min(1, worst));
  }
}
