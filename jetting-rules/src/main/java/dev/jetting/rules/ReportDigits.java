package dev.jetting.rules;

import dev.jetting.core.mixture.MixturePoint;
import dev.jetting.core.mixture.PartEffect;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.rules.risk.UphillRisk;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.Lambda;
import dev.jetting.units.Length;
import dev.jetting.units.MassFlow;
import dev.jetting.units.Pressure;
import dev.jetting.units.Probability;
import dev.jetting.units.number.Decimals;
import java.util.List;

/**
 * The numbers of a profile as a report states them. A λ or a spread has five digits, a speed or a
 * lean risk six, and a flow or a depression three. What a part does has four decimals. That is more
 * than the model knows, and a page prints the same. A risk is rounded down, so that what a waived
 * finding measured covers it. Openings keep all of their digits.
 */
final class ReportDigits {

  private static final int PRINTED = 5;
  private static final int INSIDE = 3;
  private static final double EFFECT = 1e4;
  private static final int EXACT = 6;

  private ReportDigits() {}

  /** With what each part does. */
  static RiskProfile today(RiskProfile profile) {
    return new RiskProfile(
        profile.points().stream().map(point -> point(point, effects(point.effects()))).toList());
  }

  /** Without what each part does, which the air hardly changes. */
  static RiskProfile otherDay(RiskProfile profile) {
    return new RiskProfile(
        profile.points().stream().map(point -> point(point, List.of())).toList());
  }

  private static RiskPoint point(RiskPoint point, List<PartEffect> effects) {
    return new RiskPoint(
        mixture(point.mixture()),
        rounded(point.lambda()),
        rounded(point.spread()),
        rounded(point.leanLimit()),
        rounded(point.richLimit()),
        rounded(point.leanRisk()),
        uphill(point.uphill()),
        effects);
  }

  private static MixturePoint mixture(MixturePoint mixture) {
    return new MixturePoint(
        mixture.throttle(),
        rounded(mixture.speed()),
        Length.ofMillimetres(Decimals.rounded(mixture.lift().millimetres(), INSIDE)),
        Decimals.rounded(mixture.chargeShare(), INSIDE),
        rounded(mixture.depression()),
        rounded(mixture.needleJetSuction()),
        rounded(mixture.wellDepression()),
        Decimals.rounded(mixture.openShare(), INSIDE),
        rounded(mixture.airFlow()),
        rounded(mixture.mainFuelFlow()),
        rounded(mixture.pilotFuelFlow()),
        rounded(mixture.lambda()));
  }

  private static UphillRisk uphill(UphillRisk uphill) {
    return new UphillRisk(
        rounded(uphill.speed()),
        rounded(uphill.modelled()),
        rounded(uphill.spread()),
        rounded(uphill.leanRisk()));
  }

  private static List<PartEffect> effects(List<PartEffect> effects) {
    return PartEffect.sharing(
        effects.stream()
            .map(e -> new PartEffect(e.part(), effect(e.richer()), effect(e.leaner()), 0))
            .toList());
  }

  /** With the margins of what passed; findings keep their numbers, which waivers accept. */
  static List<RuleResult> results(List<RuleResult> results) {
    return results.stream().map(result -> result.withOutcome(outcome(result.outcome()))).toList();
  }

  private static Outcome outcome(Outcome outcome) {
    return new Outcome(
        outcome.status(),
        outcome.findings(),
        outcome.why(),
        outcome.branches().stream()
            .map(branch -> new Outcome.Branch(branch.ruleId(), outcome(branch.outcome())))
            .toList(),
        outcome.margin().map(ReportDigits::margin));
  }

  /** What is left is the difference of the two numbers that stand beside it. */
  private static Margin margin(Margin margin) {
    Measure measured = rounded(margin.measured());
    Measure limit = rounded(margin.limit());
    double left = margin.left().value();
    double between = Math.abs(limit.value() - measured.value());
    return new Margin(
        margin.subject(),
        measured,
        limit,
        rounded(new Measure(left < 0 ? left : between, margin.left().unit())),
        margin.band());
  }

  private static Measure rounded(Measure measure) {
    return new Measure(Decimals.rounded(measure.value(), EXACT), measure.unit());
  }

  private static Probability rounded(Probability risk) {
    return Probability.of(Decimals.roundedDown(risk.value(), EXACT));
  }

  private static double effect(double change) {
    return Math.rint(change * EFFECT) / EFFECT + 0.0; // −0.0 becomes 0.0
  }

  private static EngineSpeed rounded(EngineSpeed speed) {
    return EngineSpeed.ofRpm(Decimals.rounded(speed.rpm(), EXACT));
  }

  private static Pressure rounded(Pressure pressure) {
    return Pressure.ofPascals(Decimals.rounded(pressure.pascals(), INSIDE));
  }

  private static MassFlow rounded(MassFlow flow) {
    return MassFlow.ofGramsPerSecond(Decimals.rounded(flow.gramsPerSecond(), INSIDE));
  }

  private static Lambda rounded(Lambda lambda) {
    return Lambda.of(rounded(lambda.value()));
  }

  private static double rounded(double number) {
    return Decimals.rounded(number, PRINTED);
  }
}
