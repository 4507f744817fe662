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
import java.util.Objects;
import java.util.Optional;

/**
 * A setting to start with on an engine that nobody has measured, out of the parts at hand: begun on
 * the biggest jets there are, then made leaner one part at a time as long as the lean risk stays
 * within a fifth of what is accepted, on each of the days that are ridden in.
 *
 * @param setting the setting
 * @param profile its lean risk over the throttle range in the air of the day
 * @param safe whether its lean risk is within what is accepted, and its overrun not too lean, on
 *     each of the days
 * @param haveAtHand what to have at hand before the first ride, of the parts there are: the next
 *     two bigger main jets and the next bigger pilot jet
 */
public record StartingSetting(
    Setting setting, RiskProfile profile, boolean safe, List<String> haveAtHand) {

  private static final int MOST_CHANGES = 60;

  /** By how much less risk is accepted before anybody has ridden (assumed). */
  private static final double CAUTION = 0.2;

  /**
   * Copies the list.
   *
   * @param setting the setting
   * @param profile its lean risk over the throttle range in the air of the day
   * @param safe whether its lean risk is within what is accepted, and its overrun not too lean
   * @param haveAtHand what to have at hand before the first ride
   */
  public StartingSetting {
    Objects.requireNonNull(setting, "setting");
    Objects.requireNonNull(profile, "profile");
    haveAtHand = List.copyOf(haveAtHand);
  }

  /**
   * The starting setting of a machine.
   *
   * @param sheet the machine with any setting of its carburettor, the riding, and the parts there
   *     are
   * @param riskModel limits, spreads and steps
   * @return the setting; where the way down from the richest comes to none that is safe, what it
   *     ends with, and not to be ridden
   */
  public static StartingSetting of(SetupSheet sheet, RiskModel riskModel) {
    SetupSheet now = cautious(sheet).withSetup(sheet.setup().withSetting(richest(sheet)));
    for (int i = 0; i < MOST_CHANGES; i++) {
      Optional<NextChange> change = NextChange.of(now, riskModel, riskModel.untried(), 1);
      if (change.isEmpty()) {
        break;
      }
      now = now.withSetup(now.setup().withSetting(change.get().setting()));
    }
    Setting found = now.setup().setting();
    RiskProfile profile =
        riskModel.profile(MixtureModel.of(now.setup()), AssessedSetting.openings());
    SetupSheet accepting = sheet.withSetup(now.setup());
    boolean safe = NextChange.isSafe(accepting, riskModel, riskModel.untried());
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
