package dev.jetting.rules;

import dev.jetting.core.calibration.CalibratedModel;
import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.calibration.NormalCases;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.units.ThrottleOpening;
import dev.jetting.units.number.Decimals;
import java.util.List;
import java.util.Optional;

/**
 * What a proven setup did to an assessment, over the assessed throttle openings in the air of the
 * day.
 *
 * @param observations how many observations of the proven setup count as readings
 * @param bandWithout mean half width of the 90 % band of λ without them, as a share of λ
 * @param band the same with them
 * @param leaner mean by how much leaner λ is expected with them, in ln λ; below zero for richer
 */
public record ProofUse(int observations, double bandWithout, double band, double leaner) {

  private static final double NINETY_PERCENT = 1.645;

  static Optional<ProofUse> of(SetupSheet sheet, RiskModel riskModel) {
    Calibration known = AssessedSetting.known(sheet, riskModel);
    if (known.readings().isEmpty()) {
      return Optional.empty();
    }
    RiskModel wider = sheet.riskModel(riskModel);
    MixtureModel model = MixtureModel.of(sheet.setup());
    List<NormalCases> without = lnLambda(wider.untried().on(model), wider);
    List<NormalCases> with = lnLambda(known.on(model), wider);
    return Optional.of(
        new ProofUse(
            known.readings().size(),
            band(without),
            band(with),
            expected(with) - expected(without)));
  }

  private static List<NormalCases> lnLambda(CalibratedModel engine, RiskModel riskModel) {
    return AssessedSetting.openings().stream().map(at -> lnLambda(engine, riskModel, at)).toList();
  }

  private static NormalCases lnLambda(
      CalibratedModel engine, RiskModel riskModel, ThrottleOpening throttle) {
    return engine.lnLambda(
        throttle,
        engine.setup().engine().loadLine().at(throttle),
        there -> riskModel.uncertainty().partsVariance(there.sizes()));
  }

  private static double band(List<NormalCases> all) {
    return all.stream()
        .mapToDouble(one -> NINETY_PERCENT * one.deviation())
        .average()
        .orElseThrow();
  }

  private static double expected(List<NormalCases> all) {
    return all.stream().mapToDouble(one -> one.middle().mean()).average().orElseThrow();
  }

  /** {@return a sentence or two for people: that a proof was used, and what it did} */
  public String text() {
    double percent = 100 * (StrictMath.exp(Math.abs(leaner)) - 1);
    String shift = Decimals.fixed(percent, 0);
    return "The proven setting counts, by "
        + (observations == 1 ? "one observation" : observations + " observations")
        + ": on average the 90 % band of λ is ± "
        + Decimals.fixed(100 * band, 0)
        + " % instead of ± "
        + Decimals.fixed(100 * bandWithout, 0)
        + " %, and λ is expected "
        + (shift.equals("0")
            ? "as without it."
            : shift + " % " + (leaner > 0 ? "leaner" : "richer") + " than without it.");
  }
}
