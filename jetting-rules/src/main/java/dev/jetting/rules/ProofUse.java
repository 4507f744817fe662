package dev.jetting.rules;

import dev.jetting.core.calibration.CalibratedModel;
import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.calibration.NormalCases;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
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

  /** {@return a sentence for people: that a proof was used, and what it did} */
  public Message message() {
    double shift = StrictMath.exp(Math.abs(leaner)) - 1;
    boolean none = Decimals.fixed(100 * shift, 0).equals("0");
    Message seen = Message.of("observations").with(Message.COUNT, Argument.count(observations));
    Message proof =
        Message.of(none ? "proof" : leaner > 0 ? "proof.leaner" : "proof.richer")
            .with("observations", Argument.words(seen))
            .with("band", Argument.share(band))
            .with("bandWithout", Argument.share(bandWithout));
    return none ? proof : proof.with("shift", Argument.share(shift));
  }

  /** {@return a sentence in English: that a proof was used, and what it did} */
  public String text() {
    return message().text();
  }
}
