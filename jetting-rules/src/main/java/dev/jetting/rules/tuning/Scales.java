package dev.jetting.rules.tuning;

import dev.jetting.core.calibration.CalibratedModel;
import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Weighs settings of one sheet against each other. A sum over the throttle range is given up as
 * soon as it is sure to be above what the caller asks for: most settings fail early, and each
 * opening costs some thirty solutions of the model.
 */
final class Scales {

  private static final List<ThrottleOpening> OPENINGS = MixtureModel.evenOpenings(17);

  private final SetupSheet sheet;
  private final RiskModel riskModel;
  private final Calibration calibration;

  Scales(SetupSheet sheet, RiskModel riskModel, Calibration calibration) {
    this.sheet = sheet;
    this.riskModel = riskModel;
    this.calibration = calibration;
  }

  /** The setting of the sheet. */
  Setting setting() {
    return sheet.setup().setting();
  }

  RiskProfile profile(Setting setting) {
    return riskModel.profile(model(setting), OPENINGS, calibration);
  }

  /**
   * By how much the lean risks are above what is accepted, in sum, and ln λ on the overrun above
   * its limit: 0 where a setting is safe, falling with every opening that is made safer; empty
   * where it is above {@code most}.
   */
  OptionalDouble excess(Setting setting, double most) {
    MixtureModel model = model(setting);
    double sum = overrunExcess(model);
    double accepted = sheet.riding().acceptedRisk().value();
    for (int i = 0; i < OPENINGS.size() && sum <= most; i++) {
      RiskProfile point = riskModel.profile(model, List.of(OPENINGS.get(i)), calibration);
      sum += Math.max(0, point.worst().leanRisk().value() - accepted);
    }
    return atMost(most, sum);
  }

  /**
   * The mean of |ln (λ by λ needed)| over the riding, leaner than needed counting more; empty where
   * it is above {@code most}.
   */
  OptionalDouble distance(Setting setting, double most) {
    CalibratedModel engine = calibration.on(model(setting));
    double weights = OPENINGS.stream().mapToDouble(this::weight).sum();
    double sum = 0;
    for (int i = 0; i < OPENINGS.size() && !(sum / weights > most); i++) {
      ThrottleOpening throttle = OPENINGS.get(i);
      double need = sheet.setup().engine().need().at(throttle).value();
      double lean = StrictMath.log(engine.expected(throttle).value() / need);
      sum += weight(throttle) * (lean > 0 ? RiskProfile.LEAN_WEIGHT * lean : -lean);
    }
    return atMost(most, weights == 0 ? 0 : sum / weights);
  }

  /** Whether a setting is nowhere leaner than the sheet's by more than {@code most} in ln λ. */
  boolean leansAtMost(double most, Setting setting) {
    CalibratedModel now = calibration.on(model(setting()));
    CalibratedModel then = calibration.on(model(setting));
    return OPENINGS.stream()
        .allMatch(
            throttle ->
                StrictMath.log(then.expected(throttle).value() / now.expected(throttle).value())
                    <= most);
  }

  private static OptionalDouble atMost(double most, double value) {
    return value <= most ? OptionalDouble.of(value) : OptionalDouble.empty();
  }

  private double overrunExcess(MixtureModel model) {
    double limit = riskModel.limits().overrun(model.setup().engine().need()).value();
    return Math.max(0, StrictMath.log(model.overrun().lambda().value() / limit));
  }

  private double weight(ThrottleOpening throttle) {
    return sheet.riding().profile().weightAt(throttle);
  }

  private MixtureModel model(Setting setting) {
    return MixtureModel.of(sheet.setup().withSetting(setting));
  }
}
