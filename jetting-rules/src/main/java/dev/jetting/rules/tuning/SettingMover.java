package dev.jetting.rules.tuning;

import dev.jetting.core.air.Air;
import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.Riding;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.tuning.Alternatives.Alternative;
import dev.jetting.units.ThrottleOpening;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Moves a finished setting to other air or another fuel: as rich there as where it was finished,
 * and safer where that is not enough. It is not made better on the way, for a move is no tuning.
 */
final class SettingMover {

  private static final int MOST_CHANGES = 20;

  /** An opening that stays leaner than at home by more than this in ln λ is named (assumed). */
  private static final double WORTH_NAMING = 0.04;

  /** Idle that is richer than it was by less in ln λ still idles (assumed: two quarter turns). */
  private static final double LITTLE = 0.12;

  private SettingMover() {}

  static MovedSetting move(
      SetupSheet sheet, Setup there, RiskModel riskModel, Calibration calibration) {
    SetupSheet now =
        there.air().equals(sheet.setup().air())
            ? sheet.withSetup(there)
            : sheet.toBuilder().setup(there).riding(onlyIn(there.air(), sheet.riding())).build();
    AsRich asRich = new AsRich(sheet.setup(), there, sheet.parts());
    List<NextChange> changes = new ArrayList<>();
    for (Alternative change : asRich.changes()) {
      ChangeChooser chooser = new ChangeChooser(now, riskModel, calibration);
      changes.add(chooser.change(change, NextChange.Reason.AS_RICH));
      now = with(now, change.setting());
    }
    Optional<List<NextChange>> safe = safe(now, asRich, changes, riskModel, calibration);
    List<NextChange> all = safe.orElse(changes);
    Setting last = all.isEmpty() ? there.setting() : all.get(all.size() - 1).setting();
    return new MovedSetting(
        there.withSetting(last), all, safe.isPresent(), leftLeaner(asRich, last));
  }

  /** The openings that a rider holds which are leaner than at home, the leanest first. */
  private static List<MovedSetting.LeftLeaner> leftLeaner(AsRich asRich, Setting setting) {
    return Held.MARKS.stream()
        .map(held -> new MovedSetting.LeftLeaner(held, asRich.leaner(held, setting)))
        .filter(left -> left.lnLambda() > WORTH_NAMING)
        .sorted(Comparator.comparingDouble(MovedSetting.LeftLeaner::lnLambda).reversed())
        .toList();
  }

  /** What makes it safe, step by step; empty where no parts at hand do. */
  private static Optional<List<NextChange>> safe(
      SetupSheet sheet,
      AsRich asRich,
      List<NextChange> before,
      RiskModel riskModel,
      Calibration calibration) {
    SetupSheet now = sheet;
    List<NextChange> changes = new ArrayList<>(before);
    ChangeChooser chooser =
        new ChangeChooser(now, asRich.there().setting(), riskModel, calibration);
    while (!chooser.accepts()) {
      Optional<NextChange> safer = safer(chooser, asRich);
      if (safer.isEmpty() || changes.size() == MOST_CHANGES) {
        return Optional.empty();
      }
      changes.add(safer.get());
      now = with(now, safer.get().setting());
      chooser = new ChangeChooser(now, asRich.there().setting(), riskModel, calibration);
    }
    return Optional.of(changes);
  }

  /**
   * One on which the engine runs goes first; then one that makes idle little richer than it was.
   */
  private static Optional<NextChange> safer(ChangeChooser chooser, AsRich asRich) {
    return chooser
        .safer(chooser.scorer()::runs)
        .or(() -> chooser.safer(to -> asRich.leaner(ThrottleOpening.CLOSED, to) >= -LITTLE));
  }

  private static SetupSheet with(SetupSheet sheet, Setting setting) {
    return sheet.withSetup(sheet.setup().withSetting(setting));
  }

  private static Riding onlyIn(Air air, Riding riding) {
    return riding.withDays(air, air);
  }
}
