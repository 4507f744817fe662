package dev.jetting.rules.json;

import dev.jetting.core.mixture.CustomarySteps;
import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.rules.json.TunerForm.MarginsForm;
import dev.jetting.rules.json.TunerForm.SizeForm;
import dev.jetting.rules.json.TunerForm.SpreadsForm;
import dev.jetting.rules.risk.RiskModel;
import java.util.Arrays;
import java.util.List;

/**
 * Limits, spreads and steps, in JSON as in the tuner of a session.
 *
 * @param limits how lean and how rich is too much
 * @param spreads how far an engine may differ from the model
 * @param steps the customary step of each part, each once
 */
record RiskModelForm(MarginsForm limits, SpreadsForm spreads, List<SizeForm> steps) {

  RiskModelForm {
    TunerForm.all("steps", MeteringPart.class, steps.stream().map(SizeForm::part).toList());
  }

  static RiskModelForm of(RiskModel risk) {
    return new RiskModelForm(
        MarginsForm.of(risk.limits()),
        SpreadsForm.of(risk.uncertainty()),
        Arrays.stream(MeteringPart.values())
            .map(part -> new SizeForm(part, risk.steps().of(part)))
            .toList());
  }

  RiskModel risk() {
    CustomarySteps sizes = CustomarySteps.assumed();
    for (SizeForm step : steps) {
      sizes = sizes.with(step.part(), step.size());
    }
    return new RiskModel(limits.limits(), spreads.uncertainty(), sizes);
  }
}
