package dev.jetting.rules;

import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.MixturePoint;
import dev.jetting.core.mixture.Overrun;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.risk.Riding;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.Objects;

/**
 * A setup sheet with everything that rules look at: the lean risk over the throttle range today and
 * on the two extreme days, and the overrun.
 *
 * @param sheet the setup sheet
 * @param riskModel the limits, spreads and steps that it was assessed with
 * @param profile the lean risk over the throttle range in the air of the day
 * @param coldest the same on the coldest day
 * @param hottest the same on the hottest day
 * @param overrun the closed throttle after a long open run
 */
public record AssessedSetting(
    SetupSheet sheet,
    RiskModel riskModel,
    RiskProfile profile,
    RiskProfile coldest,
    RiskProfile hottest,
    Overrun overrun) {

  /** The throttle openings at which settings are assessed: every thirty-second of the range. */
  private static final List<ThrottleOpening> OPENINGS = MixtureModel.evenOpenings(33);

  /**
   * Checks for nulls.
   *
   * @param sheet the setup sheet
   * @param riskModel the limits, spreads and steps that it was assessed with
   * @param profile the lean risk over the throttle range in the air of the day
   * @param coldest the same on the coldest day
   * @param hottest the same on the hottest day
   * @param overrun the closed throttle after a long open run
   */
  public AssessedSetting {
    Objects.requireNonNull(sheet, "sheet");
    Objects.requireNonNull(riskModel, "riskModel");
    Objects.requireNonNull(profile, "profile");
    Objects.requireNonNull(coldest, "coldest");
    Objects.requireNonNull(hottest, "hottest");
    Objects.requireNonNull(overrun, "overrun");
  }

  /** {@return the throttle openings at which settings are assessed, rising} */
  public static List<ThrottleOpening> openings() {
    return OPENINGS;
  }

  /**
   * Assesses a setup sheet with the library's own assumed limits, spreads and steps.
   *
   * @param sheet the sheet
   * @return the assessed setting
   */
  public static AssessedSetting of(SetupSheet sheet) {
    return of(sheet, RiskModel.assumed());
  }

  /**
   * Assesses a setup sheet, on an engine that nobody has measured.
   *
   * @param sheet the sheet
   * @param riskModel limits, spreads and steps
   * @return the assessed setting
   */
  public static AssessedSetting of(SetupSheet sheet, RiskModel riskModel) {
    return of(sheet, riskModel, riskModel.untried());
  }

  /**
   * Assesses a setup sheet.
   *
   * @param sheet the sheet
   * @param riskModel limits, spreads and steps
   * @param calibration what readings have taught about the engine
   * @return the assessed setting
   */
  public static AssessedSetting of(SetupSheet sheet, RiskModel riskModel, Calibration calibration) {
    Setup setup = sheet.setup();
    Riding riding = sheet.riding();
    MixtureModel today = MixtureModel.of(setup);
    return new AssessedSetting(
        sheet,
        riskModel,
        riskModel.profile(today, OPENINGS, calibration),
        riskModel.profile(MixtureModel.of(setup.withAir(riding.coldest())), OPENINGS, calibration),
        riskModel.profile(MixtureModel.of(setup.withAir(riding.hottest())), OPENINGS, calibration),
        today.overrun());
  }

  /**
   * This assessed setting narrowed to the points in a throttle band.
   *
   * @param band the band
   * @return the narrowed setting; where the band holds no assessed point, the point nearest to its
   *     smaller end
   */
  public AssessedSetting within(ThrottleBand band) {
    if (band.equals(ThrottleBand.WHOLE)) {
      return this;
    }
    return new AssessedSetting(
        sheet,
        riskModel,
        narrowed(profile, band),
        narrowed(coldest, band),
        narrowed(hottest, band),
        overrun);
  }

  private static RiskProfile narrowed(RiskProfile profile, ThrottleBand band) {
    List<RiskPoint> points =
        profile.points().stream().filter(p -> band.contains(p.mixture().throttle())).toList();
    return new RiskProfile(points.isEmpty() ? List.of(profile.nearest(band.from())) : points);
  }

  /** {@return the setup} */
  public Setup setup() {
    return sheet.setup();
  }

  /** {@return the setting of the carburettor} */
  public Setting setting() {
    return sheet.setup().setting();
  }

  /**
   * The mixture at the assessed throttle opening nearest to one.
   *
   * @param throttle throttle opening
   * @return the mixture there
   */
  public MixturePoint mixture(ThrottleOpening throttle) {
    return profile.nearest(throttle).mixture();
  }
}
