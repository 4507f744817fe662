package dev.jetting.rules.tuning;

import dev.jetting.core.air.Air;
import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.Riding;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.tuning.Alternatives.Alternative;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Moves a finished setting to other air or another fuel: as rich there as where it was finished,
 * and safer where that is not enough. It is not made better on the way, for a move is no tuning.
 */
final class SettingMover {

  private static final int MOST_CHANGES = 20;

  private SettingMover() {}

  static MovedSetting move(
      SetupSheet sheet, Setup there, RiskModel riskModel, Calibration calibration) {
    SetupSheet now =
        there.air().equals(sheet.setup().air())
            ? sheet.withSetup(there)
            : sheet.toBuilder().setup(there).riding(onlyIn(there.air(), sheet.riding())).build();
    List<NextChange> changes = new ArrayList<>();
    for (Alternative change : new AsRich(sheet.setup(), there, sheet.parts()).changes()) {
      ChangeChooser chooser = new ChangeChooser(now, riskModel, calibration);
      changes.add(chooser.change(change, NextChange.Reason.AS_RICH));
      now = with(now, change.setting());
    }
    Optional<MovedSetting> safe = safe(now, there.setting(), changes, riskModel, calibration);
    SetupSheet asRich = now;
    return safe.orElseGet(() -> new MovedSetting(asRich.setup(), changes, false));
  }

  /** Made safer step by step; empty where no parts at hand make it safe. */
  private static Optional<MovedSetting> safe(
      SetupSheet sheet,
      Setting ridden,
      List<NextChange> before,
      RiskModel riskModel,
      Calibration calibration) {
    SetupSheet now = sheet;
    List<NextChange> changes = new ArrayList<>(before);
    ChangeChooser chooser = new ChangeChooser(now, ridden, riskModel, calibration);
    while (!chooser.accepts()) {
      Optional<NextChange> safer = chooser.safer(to -> true);
      if (safer.isEmpty() || changes.size() == MOST_CHANGES) {
        return Optional.empty();
      }
      changes.add(safer.get());
      now = with(now, safer.get().setting());
      chooser = new ChangeChooser(now, ridden, riskModel, calibration);
    }
    return Optional.of(new MovedSetting(now.setup(), changes, true));
  }

  private static SetupSheet with(SetupSheet sheet, Setting setting) {
    return sheet.withSetup(sheet.setup().withSetting(setting));
  }

  private static Riding onlyIn(Air air, Riding riding) {
    return riding.withDays(air, air);
  }
}
