package dev.jetting.rules.tuning;

import dev.jetting.core.air.Air;
import dev.jetting.core.calibration.CalibratedModel;
import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.need.NeedDistance;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.units.Lambda;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleBiFunction;

/**
 * Weighs settings of one sheet against each other: how safe by all days of the sheet, as a report
 * judges them, how near to what is needed by today's. A sum over the throttle range is given up as
 * soon as it is sure to be above what the caller asks for. Most settings fail early, and each
 * opening costs some ten solutions of the model.
 */
final class SettingScorer {

  private static final List<ThrottleOpening> OPENINGS = AssessedSetting.openings();

  /** Where richer parts soon leave an engine that does not run. */
  private static final List<ThrottleOpening> SMALL = List.of(ThrottleOpening.CLOSED, Held.EIGHTH);

  /**
   * A rise of the risk that is none, by what is accepted (assumed): most parts have a hair of a say
   * at every opening.
   */
  private static final double TRIFLE = 0.01;

  private final SetupSheet sheet;
  private final RiskModel riskModel;
  private final Calibration calibration;
  private final List<Double> weights;

  SettingScorer(SetupSheet sheet, RiskModel riskModel, Calibration calibration) {
    this.sheet = sheet;
    this.riskModel = riskModel;
    this.calibration = calibration;
    weights = sheet.riding().profile().weights(OPENINGS);
  }

  /** The setting of the sheet. */
  Setting setting() {
    return sheet.setup().setting();
  }

  RiskProfile profile(Setting setting) {
    return riskModel.profile(
        model(setting, sheet.setup().air()), OPENINGS, calibration, sheet.riding().speeds());
  }

  /**
   * By how much the lean risks, climbs included, are above what is accepted, in sum over openings
   * and days, and ln λ on the overrun above its limit. It is 0 where a setting is safe, and falls
   * with every opening that is made safer; empty where it is above {@code most}.
   */
  OptionalDouble excess(Setting setting, double most) {
    double sum = overrunExcess(setting);
    double accepted = sheet.riding().acceptedRisk().value();
    for (Air day : sheet.days()) {
      CalibratedModel engine = calibration.on(model(setting, day));
      for (int i = 0; i < OPENINGS.size() && sum <= most; i++) {
        sum += Math.max(0, risk(engine, OPENINGS.get(i)) - accepted);
      }
    }
    return atMost(most, sum);
  }

  private double risk(CalibratedModel engine, ThrottleOpening throttle) {
    return riskModel.leanRisk(engine, throttle, sheet.riding().speeds()).value();
  }

  /** Whether nothing is above what is accepted, except on climbs. */
  boolean isAcceptedOnTheLevel(Setting setting) {
    return isAccepted(setting, OPENINGS, (engine, at) -> riskModel.leanRisk(engine, at).value());
  }

  /** Whether nothing from an opening up is above what is accepted, climbs and overrun included. */
  boolean isAcceptedFrom(ThrottleOpening from, Setting setting) {
    List<ThrottleOpening> above = OPENINGS.stream().filter(at -> at.compareTo(from) >= 0).toList();
    return isAccepted(setting, above, this::risk);
  }

  private boolean isAccepted(
      Setting setting,
      List<ThrottleOpening> openings,
      ToDoubleBiFunction<CalibratedModel, ThrottleOpening> risk) {
    double accepted = sheet.riding().acceptedRisk().value();
    return overrunExcess(setting) == 0
        && sheet.days().stream()
            .map(day -> calibration.on(model(setting, day)))
            .allMatch(
                engine ->
                    openings.stream().noneMatch(at -> risk.applyAsDouble(engine, at) > accepted));
  }

  /**
   * Whether a setting takes no lean risk above a share of what is accepted that the sheet's setting
   * does not have there already.
   */
  boolean keepsInHand(Setting setting, double share) {
    double accepted = sheet.riding().acceptedRisk().value();
    double most = share * accepted;
    double trifle = TRIFLE * accepted;
    for (Air day : sheet.days()) {
      CalibratedModel now = calibration.on(model(setting(), day));
      CalibratedModel then = calibration.on(model(setting, day));
      for (ThrottleOpening throttle : OPENINGS) {
        double risk = risk(then, throttle);
        if (risk > most && risk > risk(now, throttle) + trifle) {
          return false;
        }
      }
    }
    return true;
  }

  /** The point of the highest lean risk on any day, climbs included. */
  RiskPoint worst(Setting setting) {
    return sheet.days().stream()
        .flatMap(
            day ->
                riskModel
                    .profile(model(setting, day), OPENINGS, calibration, sheet.riding().speeds())
                    .points()
                    .stream())
        .reduce((a, b) -> b.riddenRisk().isMoreThan(a.riddenRisk()) ? b : a)
        .orElseThrow();
  }

  /**
   * The mean of |ln (λ by λ needed)| over the riding, leaner than needed counting more; empty where
   * it is above {@code most}.
   */
  OptionalDouble distance(Setting setting, double most) {
    CalibratedModel engine = calibration.on(model(setting, sheet.setup().air()));
    double all = weights.stream().mapToDouble(weight -> weight).sum();
    double sum = 0;
    for (int i = 0; i < OPENINGS.size() && !(sum / all > most); i++) {
      ThrottleOpening throttle = OPENINGS.get(i);
      double need = sheet.setup().engine().need().at(throttle).value();
      sum += weights.get(i) * NeedDistance.of(engine.expected(throttle).value(), need);
    }
    return atMost(most, all == 0 ? 0 : sum / all);
  }

  /** Whether idle and an eighth are not too rich to run, or no richer than the sheet's. */
  boolean runs(Setting setting) {
    CalibratedModel now = calibration.on(model(setting(), sheet.setup().air()));
    CalibratedModel then = calibration.on(model(setting, sheet.setup().air()));
    return SMALL.stream()
        .allMatch(
            held -> {
              Lambda rich = riskModel.limits().rich(held, sheet.setup().engine().need());
              Lambda lambda = then.expected(held);
              return !lambda.isLessThan(rich) || !lambda.isLessThan(now.expected(held));
            });
  }

  /** Whether a setting is nowhere leaner than the sheet's by more than {@code most} in ln λ. */
  boolean leansAtMost(double most, Setting setting) {
    CalibratedModel now = calibration.on(model(setting(), sheet.setup().air()));
    CalibratedModel then = calibration.on(model(setting, sheet.setup().air()));
    return OPENINGS.stream()
        .allMatch(
            throttle ->
                StrictMath.log(then.expected(throttle).value() / now.expected(throttle).value())
                    <= most);
  }

  private static OptionalDouble atMost(double most, double value) {
    return value <= most ? OptionalDouble.of(value) : OptionalDouble.empty();
  }

  double overrunExcess(Setting setting) {
    SetupSheet other = sheet.withSetup(sheet.setup().withSetting(setting));
    double limit = riskModel.limits().overrun(sheet.setup().engine().need()).value();
    double lambda = AssessedSetting.leanestOverrun(other, calibration).lambda().value();
    return Math.max(0, StrictMath.log(lambda / limit));
  }

  private MixtureModel model(Setting setting, Air day) {
    return MixtureModel.of(sheet.setup().withSetting(setting).withAir(day));
  }
}
