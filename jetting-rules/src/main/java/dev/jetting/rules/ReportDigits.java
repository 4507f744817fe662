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
import dev.jetting.units.number.Decimals;
import java.util.List;

/**
 * The numbers of a profile as a report states them. A λ, a spread or a speed has six digits, a flow
 * or a depression four, and what a part does has three. That is more than the model knows, and a
 * page prints the same. Openings and lean risks keep all of their digits, because the verdict
 * follows from them.
 */
final class ReportDigits {

  private static final int PRINTED = 6;
  private static final int INSIDE = 4;
  private static final int EFFECT = 3;

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
        point.leanRisk(),
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
        uphill.leanRisk());
  }

  private static List<PartEffect> effects(List<PartEffect> effects) {
    return PartEffect.sharing(
        effects.stream()
            .map(
                e ->
                    new PartEffect(
                        e.part(),
                        Decimals.rounded(e.richer(), EFFECT),
                        Decimals.rounded(e.leaner(), EFFECT),
                        0))
            .toList());
  }

  private static EngineSpeed rounded(EngineSpeed speed) {
    return EngineSpeed.ofRpm(rounded(speed.rpm()));
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
