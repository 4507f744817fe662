package dev.jetting.rules.tuning;

import dev.jetting.core.air.Air;
import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.Riding;
import dev.jetting.rules.risk.RiskModel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Moves a finished setting to other air or another fuel. */
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
    Setting ridden = there.setting();
    Optional<NextChange> next = new ChangeChooser(now, ridden, riskModel, calibration).choose();
    while (next.isPresent() && changes.size() < MOST_CHANGES) {
      changes.add(next.get());
      now = now.withSetup(now.setup().withSetting(next.get().setting()));
      next = new ChangeChooser(now, ridden, riskModel, calibration).choose();
    }
    return new MovedSetting(
        now.setup(), changes, new ChangeChooser(now, riskModel, calibration).accepts());
  }

  private static Riding onlyIn(Air air, Riding riding) {
    return riding.withDays(air, air);
  }
}
