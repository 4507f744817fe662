package dev.jetting.rules.tuning;

import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.PartsAtHand;
import dev.jetting.rules.SetupSheet;
import dev.jetting.units.Cutaway;
import dev.jetting.units.JetBore;
import java.util.List;

/**
 * The refusals of the trade for a step towards lean: one size at a time, and never back to what a
 * sign asked to leave. Nor does it go back to a setting that was left.
 */
final class LeanStep {

  /** More than this in ln λ at any opening is no single step towards lean (assumed). */
  static final double MOST_LEANING = 0.12;

  /** In ln λ: what a pilot jet does at full throttle (assumed). */
  private static final double HARDLY_LEANER = 0.01;

  private final Setup setup;
  private final Setting now;
  private final PartsAtHand parts;
  private final SettingScorer scorer;
  private final Findings findings;

  LeanStep(SetupSheet sheet, SettingScorer scorer, Findings findings) {
    setup = sheet.setup();
    now = setup.setting();
    parts = sheet.parts();
    this.scorer = scorer;
    this.findings = findings;
  }

  boolean allows(Setting to) {
    return isOneSize(now.mainJet(), to.mainJet(), parts.mainJets())
        && isOneSize(now.pilotJet(), to.pilotJet(), parts.pilotJets())
        && isOneSize(to)
        && findings.keepsWhatWasAsked(to)
        && isWorthWhile(to)
        && (!findings.wasLeft(to) || scorer.leansAtMost(SignedChange.NO_LEANER, to));
  }

  /** A brown plug is the end of it there: nobody looks for the size at which it turns pale. */
  boolean keepsWhatIsBrown(Setting to) {
    return findings.trail().brown().stream()
        .allMatch(
            seen -> seen.lnLambda(setup.withSetting(to)) - seen.lnLambda(setup) <= HARDLY_LEANER);
  }

  /** Where leaner parts made no difference, no further one is tried. */
  private boolean isWorthWhile(Setting to) {
    return findings.trail().richForGood().stream()
        .allMatch(
            seen -> seen.lnLambda(setup.withSetting(to)) - seen.lnLambda(setup) <= HARDLY_LEANER);
  }

  /** A bigger jet, or the next smaller one. */
  private static boolean isOneSize(JetBore own, JetBore other, List<JetBore> jets) {
    return jets.stream().noneMatch(jet -> jet.compareTo(own) < 0 && jet.compareTo(other) > 0);
  }

  /** A slide with less cutaway or the next with more, and the next smaller needle jet. */
  private boolean isOneSize(Setting to) {
    Cutaway own = now.cutaway();
    return parts.cutaways().stream()
            .noneMatch(slide -> slide.compareTo(own) > 0 && slide.compareTo(to.cutaway()) < 0)
        && parts.needleJets().stream()
            .noneMatch(
                jet ->
                    jet.bore().compareTo(now.needleJet().bore()) < 0
                        && jet.bore().compareTo(to.needleJet().bore()) > 0);
  }
}
