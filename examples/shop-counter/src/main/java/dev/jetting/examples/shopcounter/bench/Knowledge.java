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
 * @param riskModel the same spreads, wider by what its typical values may be off
 * @param calibration what its readings taught
 */
record Knowledge(Tuner tuner, RiskModel riskModel, Calibration calibration) {

  static Knowledge of(Machine machine) {
    Tuner tuner = Tuner.readingWith(EnumSet.of(Instrument.PLUG, Instrument.FEEL));
    return new Knowledge(
        tuner,
        machine.sheet().riskModel(tuner.riskModel()),
        machine.sheet().calibration(tuner.riskModel(), tuner.calibration(machine.session())));
  }

  AssessedSetting assess(SetupSheet sheet) {
    return AssessedSetting.of(sheet, tuner.riskModel(), calibration);
  }

  /** The report on a setting with its plan: some hundred settings are assessed for it. */
  Report advise(SetupSheet sheet) {
    Adviser adviser = Adviser.of(StandardRulebook.rulebook());
    boolean read = !calibration.readings().isEmpty();
    return (read ? adviser.assessing(this::assess) : adviser).advise(assess(sheet));
  }
}
