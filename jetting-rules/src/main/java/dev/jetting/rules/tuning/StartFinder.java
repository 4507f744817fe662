package dev.jetting.rules.tuning;

import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.PartsAtHand;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.Riding;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.units.Cutaway;
import dev.jetting.units.JetBore;
import dev.jetting.units.Probability;
import dev.jetting.units.TradeStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds the setting to start with: begins on the biggest jets there are, then makes it leaner one
 * part at a time as long as the lean risk stays within a fifth of what is accepted, on each of the
 * days that are ridden in.
 */
final class StartFinder {

  private static final int MOST_CHANGES = 60;

  /** By how much less risk is accepted before anybody has ridden (assumed). */
  private static final double CAUTION = 0.2;

  private StartFinder() {}

  static StartingSetting find(SetupSheet sheet, RiskModel riskModel) {
    SetupSheet now = cautious(sheet).withSetup(sheet.setup().withSetting(richest(sheet)));
    for (int i = 0; i < MOST_CHANGES; i++) {
      Optional<NextChange> change = ChangeChooser.choose(now, riskModel, riskModel.untried(), 1);
      if (change.isEmpty()) {
        break;
      }
      now = now.withSetup(now.setup().withSetting(change.get().setting()));
    }
    Setting found = now.setup().setting();
    RiskProfile profile =
        riskModel.profile(MixtureModel.of(now.setup()), AssessedSetting.openings());
    SetupSheet accepting = sheet.withSetup(now.setup());
    boolean safe = ChangeChooser.accepts(accepting, riskModel, riskModel.untried());
    return new StartingSetting(found, profile, safe, nextRicher(found, sheet.parts()));
  }

  private static SetupSheet cautious(SetupSheet sheet) {
    Riding riding = sheet.riding();
    Probability accepted = Probability.of(riding.acceptedRisk().value() * CAUTION);
    return new SetupSheet(
        sheet.title(),
        sheet.setup(),
        new Riding(accepted, riding.profile(), riding.coldest(), riding.hottest()),
        sheet.parts(),
        sheet.provenance());
  }

  private static Setting richest(SetupSheet sheet) {
    Setting setting = sheet.setup().setting();
    PartsAtHand parts = sheet.parts();
    for (JetBore main : parts.mainJets()) {
      setting = main.compareTo(setting.mainJet()) > 0 ? setting.withMainJet(main) : setting;
    }
    for (JetBore pilot : parts.pilotJets()) {
      setting = pilot.compareTo(setting.pilotJet()) > 0 ? setting.withPilotJet(pilot) : setting;
    }
    for (NeedleJet jet : parts.needleJets()) {
      boolean bigger = jet.bore().compareTo(setting.needleJet().bore()) > 0;
      setting = bigger ? setting.withNeedleJet(jet) : setting;
    }
    for (Cutaway cutaway : parts.cutaways()) {
      boolean lower = cutaway.compareTo(setting.cutaway()) < 0;
      setting = lower ? setting.withCutaway(cutaway) : setting;
    }
    return setting;
  }

  private static List<String> nextRicher(Setting setting, PartsAtHand parts) {
    List<String> names = new ArrayList<>();
    parts.mainJets().stream()
        .filter(jet -> jet.compareTo(setting.mainJet()) > 0)
        .sorted()
        .limit(2)
        .forEach(jet -> names.add(TradeStyle.main(jet)));
    parts.pilotJets().stream()
        .filter(jet -> jet.compareTo(setting.pilotJet()) > 0)
        .sorted()
        .limit(1)
        .forEach(jet -> names.add(TradeStyle.pilot(jet)));
    return names;
  }
}
