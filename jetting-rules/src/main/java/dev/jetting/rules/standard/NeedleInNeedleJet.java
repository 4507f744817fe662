package dev.jetting.rules.standard;

import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Margin;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.Rule;
import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.risk.ModelUncertainty;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The needle must hang in the needle jet at every lift, and hang free. */
final class NeedleInNeedleJet {

  static final Rule RULE =
      RulePages.draft("needle-in-needle-jet", "parts")
          .severity(Severity.DANGER)
          .limit(RuleLimits.CLEARANCE.name(), RuleLimits.CLEARANCE.number())
          .judgingBy(NeedleInNeedleJet::judge);

  private NeedleInNeedleJet() {}

  private static Outcome judge(AssessedSetting setting, Map<String, Coefficient> limits) {
    Margin length = length(setting.setting());
    Margin ring = ring(setting, limits);
    return Outcome.of(
        Stream.of(
                Optional.of(length)
                    .filter(Margin::fails)
                    .map(margin -> pulledOut(margin, setting.setting())),
                Optional.of(ring)
                    .filter(Margin::fails)
                    .map(margin -> filled(margin, setting.setting())))
            .flatMap(Optional::stream)
            .toList(),
        List.of(length, ring));
  }

  /**
   * How far the tip is in the jet at full lift, from where it leaves the jet on. The limit is
   * fixed, so a waiver's ceiling covers no needle that is hung higher.
   */
  private static Margin length(Setting setting) {
    double bore = setting.carburettor().bore().millimetres();
    double tip = setting.needle().tip().millimetres();
    double idle = setting.idleLift().millimetres();
    double hung = hung(setting);
    double leaves = Math.min(1, Math.max(0, (tip - hung - idle) / (bore - idle)));
    return Margin.atLeast(
        "setting.needle",
        new Measure(tip - (bore + hung), "mm"),
        new Measure(0, "mm"),
        new ThrottleBand(ThrottleOpening.ofShare(leaves), ThrottleOpening.FULL));
  }

  private static Finding pulledOut(Margin margin, Setting setting) {
    ThrottleOpening throttle = margin.band().from();
    return margin
        .finding()
        .with("needle", setting.needle().id())
        .with("throttle", Argument.throttle(throttle))
        .says(
            Message.of("rule.needle-in-needle-jet.finding.out"),
            Remedy.Aim.other(throttle, Message.of("rule.needle-in-needle-jet.remedy.out")));
  }

  /** A needle gets thinner downwards, so the ring is narrowest with the slide on its stop. */
  private static Margin ring(AssessedSetting assessed, Map<String, Coefficient> limits) {
    Setting setting = assessed.setting();
    Needle needle = setting.needle();
    double idle = setting.idleLift().millimetres();
    double jet = setting.needleJet().bore().millimetres();
    double clearance = jet - needle.diameterAt(idle + hung(setting));
    double limit = RuleLimits.CLEARANCE.in(limits) * tolerance(assessed.riskModel().uncertainty());
    return Margin.atLeast(
        "setting.needleJet",
        new Measure(clearance, "mm"),
        new Measure(limit, "mm"),
        ThrottleBand.at(ThrottleOpening.CLOSED));
  }

  private static Finding filled(Margin margin, Setting setting) {
    return margin
        .finding()
        .with("needle", setting.needle().id())
        .with("needleJet", Argument.diameter(setting.needleJet().bore()))
        .with("clearance", margin.measured())
        .says(
            Message.of("rule.needle-in-needle-jet.finding.filled"),
            Remedy.Aim.other(
                ThrottleOpening.CLOSED, Message.of("rule.needle-in-needle-jet.remedy.filled")));
  }

  private static double hung(Setting setting) {
    return (setting.clip().grooveFromTop() - 1) * setting.needle().groovePitch().millimetres();
  }

  private static double tolerance(ModelUncertainty uncertainty) {
    double jet = uncertainty.tolerance(MeteringPart.NEEDLE_JET);
    double needle = uncertainty.tolerance(MeteringPart.NEEDLE_DIAMETER);
    return Math.sqrt(jet * jet + needle * needle);
  }
}
