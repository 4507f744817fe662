package dev.jetting.examples.shopcounter.bench;

import dev.jetting.core.calibration.Calibration;
import dev.jetting.examples.shopcounter.store.Machine;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Report;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.advice.Adviser;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.standard.StandardRulebook;
import dev.jetting.rules.tuning.Instrument;
import dev.jetting.rules.tuning.Tuner;
import java.util.EnumSet;

/**
 * What is known of a machine's engine.
 *
 * @param tuner limits, spreads and instruments
 * @param calibration what its readings taught
 */
record Knowledge(Tuner tuner, Calibration calibration) {

  static Knowledge of(Machine machine) {
    RiskModel risk = RiskModel.assumed().withGuesses(machine.sheet().setup(), machine.typical());
    Tuner tuner =
        Tuner.readingWith(EnumSet.of(Instrument.PLUG, Instrument.FEEL)).withRiskModel(risk);
    return new Knowledge(tuner, tuner.calibration(machine.session()));
  }

  RiskModel riskModel() {
    return tuner.riskModel();
  }

  AssessedSetting assess(SetupSheet sheet) {
    return AssessedSetting.of(sheet, riskModel(), calibration);
  }

  /** The report on a setting with its plan: some hundred settings are assessed for it. */
  Report advise(SetupSheet sheet) {
    Adviser adviser = Adviser.of(StandardRulebook.rulebook());
    boolean read = !calibration.readings().isEmpty();
    return (read ? adviser.assessing(this::assess) : adviser).advise(assess(sheet));
  }
}
