package dev.jetting.rules.search;

import dev.jetting.core.calibration.AirCase;
import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.calibration.FuelErrors;
import dev.jetting.core.engine.MixtureNeed;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.mixture.table.MixtureTable;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.need.NeedDistance;
import dev.jetting.rules.risk.ModelUncertainty;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import java.util.List;

/** SearchLimits, needs, weights and spreads as plain numbers, opening by opening. */
final class SearchLimits {

  final double accepted;
  final double overrun;
  final double[] lean;
  final double[] lnLean;
  final double[] rich;
  final double[] need;
  final double[] weight;
  final double weights;
  final double residualVariance;
  final double pilotSpread;
  private final double needleSpread;
  private final double mainSpread;
  final List<AirCase> airCases;

  /** By air case and opening; empty where nothing is known of the engine. */
  private final List<List<FuelErrors>> known;

  /**
   * @param calibration what is known of the engine from a proven setup
   */
  SearchLimits(
      SetupSheet sheet, RiskModel riskModel, Probability spendable, Calibration calibration) {
    Setup setup = sheet.setup();
    MixtureNeed needed = setup.engine().need();
    List<ThrottleOpening> openings = AssessedSetting.openings();
    int n = openings.size();
    lean = new double[n];
    lnLean = new double[n];
    rich = new double[n];
    need = new double[n];
    weight = new double[n];
    List<Double> byRiding = sheet.riding().profile().weights(openings);
    double sum = 0;
    for (int i = 0; i < n; i++) {
      ThrottleOpening opening = openings.get(i);
      lean[i] = riskModel.limits().lean(opening, needed).value();
      lnLean[i] = StrictMath.log(lean[i]);
      rich[i] = riskModel.limits().rich(opening, needed).value();
      need[i] = needed.at(opening).value();
      weight[i] = byRiding.get(i);
      sum += weight[i];
    }
    weights = sum;
    accepted = spendable.value();
    overrun = riskModel.limits().overrun(needed).value();
    ModelUncertainty uncertainty = riskModel.uncertainty();
    double residual = uncertainty.residual().value();
    residualVariance = residual * residual;
    airCases = calibration.airCases();
    known =
        (calibration.readings().isEmpty() ? List.<AirCase>of() : airCases)
            .stream()
                .map(
                    air ->
                        openings.stream()
                            .map(opening -> calibration.fuelErrors(air, opening))
                            .toList())
                .toList();
    int middle = airCases.size() / 2;
    double rests =
        airCases.subList(middle, airCases.size()).stream().mapToDouble(AirCase::probability).sum();
    if (airCases.get(middle).probability() < RiskLimit.MIDDLES_PROBABILITY
        || rests < RiskLimit.RESTS_PROBABILITY) {
      throw new IllegalStateException("air cases of other probabilities than the bounds rest on");
    }
    pilotSpread = uncertainty.pilot().value();
    needleSpread = uncertainty.needle().value();
    mainSpread = uncertainty.main().value();
  }

  /**
   * By how many standard deviations ln λ is below the lean limit at an opening, the air being
   * known, by the same steps as {@link RiskModel}.
   *
   * @param parts the spreads with the tolerances of the jets that are in
   */
  double deviationsAway(MixtureTable.Local there, int opening, ModelUncertainty parts) {
    double away = lnLean[opening] - there.lnLambda();
    double deviation = deviation(there, parts);
    if (deviation > 0) {
      return away / deviation;
    }
    return away < 0 ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
  }

  private double deviation(MixtureTable.Local there, ModelUncertainty parts) {
    double engine =
        Math.sqrt(
            residualVariance
                + pilotSpread * pilotSpread * there.pilot() * there.pilot()
                + needleSpread * needleSpread * there.needle() * there.needle()
                + mainSpread * mainSpread * there.main() * there.main());
    return Math.sqrt(engine * engine + parts.partsVariance(there.sizes()));
  }

  /** The same of an engine with a proven setup, in an air case. */
  double deviationsAwayKnown(
      MixtureTable.Local there, int opening, int airCase, ModelUncertainty parts) {
    FuelErrors errors = known.get(airCase).get(opening);
    double away = lnLean[opening] - expected(there, opening, airCase);
    double variance =
        errors.variance(there.pilot(), there.needle(), there.main())
            + parts.partsVariance(there.sizes());
    if (variance > 0) {
      return away / Math.sqrt(variance);
    }
    return away < 0 ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
  }

  /** ln λ as expected of such an engine in an air case. */
  double expected(MixtureTable.Local there, int opening, int airCase) {
    return there.lnLambda()
        + known.get(airCase).get(opening).mean(there.pilot(), there.needle(), there.main());
  }

  /** A setting's distance from need, by the same steps as {@link RiskProfile#distance}. */
  double distance(double[] lambda) {
    double sum = 0;
    for (int i = 0; i < need.length; i++) {
      sum += weight[i] * NeedDistance.of(lambda[i], need[i]);
    }
    return weights == 0 ? 0 : sum / weights;
  }
}
