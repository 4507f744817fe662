package dev.jetting.rules.tuning;

import dev.jetting.core.air.Air;
import dev.jetting.core.calibration.CalibratedModel;
import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.RiddenSpeeds;
import dev.jetting.rules.risk.Riding;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/**
 * Whether the engine has a fault. There is one hypothesis without a fault, and one for each fault
 * that changes the mixture. Each is weighed by how well the readings fit it (Bayes' rule, on the
 * log marginal likelihood of the Gaussian processes) and by signs that are no readings. Two faults
 * at once are left out.
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

  /** The sum of all probabilities is off by less. */
  private static final double ROUNDING = 1e-12;

  /** Of what is accepted, as much as a step towards lean spends without any fault. */
  private static final double HALF = ChangeChooser.SHARE_FOR_NEARER;

  /** A hypothesis and how likely it is, given the readings. */
  record Hypothesis(Optional<Fault> fault, double probability, Calibration calibration) {}

  private final RiskModel riskModel;
  private final List<Hypothesis> all;

  /**
   * Weighs the hypotheses.
   *
   * @param calibration what the readings teach if there is no fault
   * @param checks each entry a round of checks in which no fault was found
   * @param likelier how much likelier signs that are no readings are with a fault than without
   */
  Hypotheses(
      RiskModel riskModel,
      Calibration calibration,
      List<Set<Check>> checks,
      ToDoubleFunction<Fault> likelier) {
    this.riskModel = riskModel;
    double without = calibration.logEvidence();
    List<Hypothesis> odds = new ArrayList<>();
    odds.add(new Hypothesis(Optional.empty(), 1, calibration));
    for (Fault fault : Fault.values()) {
      List<Calibration> sizes = fault.on(calibration);
      for (Calibration with : sizes) {
        double prior = SHARE * missed(fault, checks) * likelier.applyAsDouble(fault) / sizes.size();
        double fit = StrictMath.exp(with.logEvidence() - without);
        odds.add(new Hypothesis(Optional.of(fault), prior * fit, with));
      }
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

  /** The faults at least so likely, whatever their size, the most likely first. */
  List<Fault> likely(double probability) {
    Map<Fault, Double> sums = new EnumMap<>(Fault.class);
    faults()
        .forEach(one -> one.fault().ifPresent(f -> sums.merge(f, one.probability, Double::sum)));
    return sums.entrySet().stream()
        .filter(sum -> sum.getValue() >= probability)
        .sorted(Map.Entry.<Fault, Double>comparingByValue().reversed())
        .map(Map.Entry::getKey)
        .toList();
  }

  /** The probability that the engine has one of the faults. */
  double anyFault() {
    return faults().stream().mapToDouble(Hypothesis::probability).sum();
  }

  /**
   * The highest lean risk at any opening, on any day of the sheet, climbs included, over all
   * hypotheses.
   */
  RiskLeft riskLeft(SetupSheet sheet) {
    double highest =
        Arrays.stream(leanRisks(sheet, AssessedSetting.openings())).max().orElseThrow();
    return new RiskLeft(Probability.of(highest), sheet.riding().acceptedRisk());
  }

  /**
   * Whether that is accepted, for less work: an opening is settled as soon as the hypotheses that
   * are left cannot change the answer.
   */
  boolean leaveAccepted(SetupSheet sheet) {
    return sheet.days().stream()
        .map(day -> MixtureModel.of(sheet.setup().withAir(day)))
        .allMatch(model -> leaveAccepted(sheet, model));
  }

  private boolean leaveAccepted(SetupSheet sheet, MixtureModel model) {
    List<Hypothesis> counting = counting(sheet);
    double accepted = sheet.riding().acceptedRisk().value();
    double left = counting.stream().mapToDouble(Hypothesis::probability).sum();
    List<ThrottleOpening> open = AssessedSetting.openings();
    double[] risks = new double[open.size()];
    for (Hypothesis one : counting) {
      CalibratedModel engine = one.calibration.on(model);
      left -= one.probability;
      List<ThrottleOpening> unsettled = new ArrayList<>();
      for (int i = 0; i < open.size(); i++) {
        double risk = risks[i] + one.probability * risk(engine, open.get(i), sheet);
        if (risk > accepted) {
          return false;
        }
        if (risk + left > accepted - ROUNDING) {
          risks[unsettled.size()] = risk;
          unsettled.add(open.get(i));
        }
      }
      open = unsettled;
      if (open.isEmpty()) {
        return true;
      }
    }
    return true;
  }

  /** Those that can change what is decided. */
  private List<Hypothesis> counting(SetupSheet sheet) {
    double negligible = NEGLIGIBLE * sheet.riding().acceptedRisk().value();
    return all.stream().filter(one -> one.probability > negligible).toList();
  }

  /** Whether what is left on the level road alone is accepted. */
  boolean acceptOnTheLevel(SetupSheet sheet) {
    Riding riding = sheet.riding();
    return leaveAccepted(sheet.withRiding(riding.withSpeeds(RiddenSpeeds.levelRoad())));
  }

  /**
   * Whether the faults leave a setting accepted whose risk without any is half of what is accepted
   * at most; without working it out where all faults together are no likelier than the other half.
   */
  boolean accept(SetupSheet sheet) {
    return anyFault() <= HALF * sheet.riding().acceptedRisk().value() || leaveAccepted(sheet);
  }

  /** The opening of the highest lean risk over all hypotheses. */
  ThrottleOpening worst(SetupSheet sheet) {
    double[] risks = leanRisks(sheet, AssessedSetting.openings());
    int worst = 0;
    for (int i = 1; i < risks.length; i++) {
      worst = risks[i] > risks[worst] ? i : worst;
    }
    return AssessedSetting.openings().get(worst);
  }

  /**
   * The lean risk at an opening over all hypotheses, on the day of the sheet where it is highest.
   */
  Probability leanRisk(SetupSheet sheet, ThrottleOpening throttle) {
    return Probability.of(leanRisks(sheet, List.of(throttle))[0]);
  }

  private double[] leanRisks(SetupSheet sheet, List<ThrottleOpening> openings) {
    List<Hypothesis> counting = counting(sheet);
    double[] worst = new double[openings.size()];
    for (Air day : sheet.days()) {
      MixtureModel model = MixtureModel.of(sheet.setup().withAir(day));
      double[] risks = new double[openings.size()];
      for (Hypothesis one : counting) {
        CalibratedModel engine = one.calibration.on(model);
        for (int i = 0; i < risks.length; i++) {
          risks[i] += one.probability * risk(engine, openings.get(i), sheet);
        }
      }
      for (int i = 0; i < risks.length; i++) {
        worst[i] = Math.min(1, Math.max(worst[i], risks[i]));
      }
    }
    return worst;
  }

  private double risk(CalibratedModel engine, ThrottleOpening throttle, SetupSheet sheet) {
    return riskModel.leanRisk(engine, throttle, sheet.riding().speeds()).value();
  }
}
