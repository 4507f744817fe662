package dev.jetting.rules;

import dev.jetting.core.air.Air;
import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.MixturePoint;
import dev.jetting.core.mixture.Overrun;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.risk.MixtureSeries;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.rules.risk.WorstSpot;
import dev.jetting.rules.risk.WorstSpot.Day;
import dev.jetting.rules.tuning.Meanings;
import dev.jetting.units.ThrottleOpening;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A setup sheet with everything that rules look at: the lean risk over the throttle range today and
 * on the two extreme days, and the overrun.
 *
 * @param sheet the setup sheet
 * @param riskModel the limits, spreads and steps that were given; the spreads it was assessed with
 *     are those of {@link SetupSheet#riskModel}, wider by the sheet's typical values
 * @param profile the lean risk over the throttle range in the air of the day
 * @param coldest the same on the coldest day
 * @param hottest the same on the hottest day
 * @param overrun the closed throttle after a long open run, on the day when it is leanest
 */
public record AssessedSetting(
    SetupSheet sheet,
    RiskModel riskModel,
    RiskProfile profile,
    RiskProfile coldest,
    RiskProfile hottest,
    Overrun overrun) {

  /**
   * The throttle openings at which settings are assessed (assumed): by 1/128 up to 1/16, by 1/64 up
   * to 1/8, by 1/32 above. Where the slide has just left its stop, pilot, progression hole and
   * needle jet take turns within a millimetre of lift.
   */
  private static final List<ThrottleOpening> OPENINGS =
      IntStream.rangeClosed(0, 128)
          .filter(i -> i <= 8 || (i <= 16 && i % 2 == 0) || i % 4 == 0)
          .mapToObj(i -> ThrottleOpening.ofShare(i / 128.0))
          .toList();

  /**
   * Checks for nulls.
   *
   * @param sheet the setup sheet
   * @param riskModel the limits, spreads and steps that were given
   * @param profile the lean risk over the throttle range in the air of the day
   * @param coldest the same on the coldest day
   * @param hottest the same on the hottest day
   * @param overrun the closed throttle after a long open run, on the day when it is leanest
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
   * Assesses a setup sheet with what its provenance teaches, as {@link #known} returns it.
   *
   * @param sheet the sheet
   * @param riskModel limits, spreads and steps
   * @return the assessed setting
   */
  public static AssessedSetting of(SetupSheet sheet, RiskModel riskModel) {
    return of(sheet, riskModel, known(sheet, riskModel));
  }

  /**
   * Returns what is known of the engine of a sheet from the setup in which its setting was proven.
   * What was seen there counts as readings of that setup, so that the level of the mixture is the
   * proven one and only what changed since is computed. An engine that was changed since, or
   * another carburettor, is one that nobody has measured.
   *
   * @param sheet the sheet
   * @param riskModel limits, spreads and steps
   * @return the calibration; without readings where nothing was seen or it proves nothing here
   */
  public static Calibration known(SetupSheet sheet, RiskModel riskModel) {
    return known(sheet, riskModel, Meanings.assumed());
  }

  /**
   * Returns the same where colours and symptoms mean something else.
   *
   * @param sheet the sheet
   * @param riskModel limits, spreads and steps
   * @param meanings what colours and symptoms mean
   * @return the calibration; without readings where nothing was seen or it proves nothing here
   */
  public static Calibration known(SetupSheet sheet, RiskModel riskModel, Meanings meanings) {
    Calibration untried = sheet.riskModel(riskModel).untried();
    try {
      return untried.withProof(sheet.provenance().readings(sheet.setup(), meanings));
    } catch (IllegalArgumentException e) {
      return untried; // a proven setup that does not go together: a rule of danger names it
    }
  }

  /**
   * Assesses a setup sheet. Typical values of the sheet widen the spreads, here and nowhere else:
   * nobody has to widen the risk model or the calibration before.
   *
   * @param sheet the sheet
   * @param riskModel limits, spreads and steps
   * @param calibration what readings have taught about the engine
   * @return the assessed setting
   */
  public static AssessedSetting of(SetupSheet sheet, RiskModel riskModel, Calibration calibration) {
    Calibration begun = sheet.calibration(riskModel, calibration);
    Map<Air, RiskProfile> profiles = new HashMap<>();
    for (Air air : sheet.days()) {
      MixtureModel model = MixtureModel.of(sheet.setup().withAir(air));
      profiles.put(air, riskModel.profile(model, OPENINGS, begun, sheet.riding().speeds()));
    }
    return new AssessedSetting(
        sheet,
        riskModel,
        on(sheet.setup().air(), profiles),
        on(sheet.riding().coldest(), profiles),
        on(sheet.riding().hottest(), profiles),
        leanestOverrun(sheet, begun));
  }

  private static RiskProfile on(Air air, Map<Air, RiskProfile> profiles) {
    return Objects.requireNonNull(profiles.get(air));
  }

  /**
   * The closed throttle after a long open run, on the day of the sheet on which it is leanest. It
   * is computed for the engine as modelled and as read, and the leaner result counts. A reading at
   * an open throttle may show more signal than modelled, but that gives no fuel on the overrun.
   *
   * @param sheet the sheet
   * @param calibration what readings have taught about the engine
   * @return the leanest overrun; of equals that of today, or of the coldest day
   */
  public static Overrun leanestOverrun(SetupSheet sheet, Calibration calibration) {
    return sheet.days().stream()
        .map(air -> MixtureModel.of(sheet.setup().withAir(air)))
        .flatMap(model -> Stream.of(model, calibration.expected(model)).distinct())
        .map(MixtureModel::overrun)
        .reduce((a, b) -> b.lambda().isMoreThan(a.lambda()) ? b : a)
        .orElseThrow();
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

  /**
   * Whether a point that was assessed lies in a throttle band.
   *
   * @param band the band
   * @return true if at least one does, of those that this assessed setting has not been narrowed
   *     away from
   */
  public boolean looksInto(ThrottleBand band) {
    return profile.points().stream().anyMatch(p -> band.contains(p.mixture().throttle()));
  }

  private static RiskProfile narrowed(RiskProfile profile, ThrottleBand band) {
    List<RiskPoint> points =
        profile.points().stream().filter(p -> band.contains(p.mixture().throttle())).toList();
    return new RiskProfile(points.isEmpty() ? List.of(profile.nearest(band.from())) : points);
  }

  /** {@return where the lean risk is greatest, over all days, openings and ridden speeds} */
  public WorstSpot worst() {
    return WorstSpot.of(Map.of(Day.TODAY, profile, Day.COLDEST, coldest, Day.HOTTEST, hottest));
  }

  /** {@return the mixture over the throttle in the air of the day as rows for a chart, with CSV} */
  public MixtureSeries series() {
    return MixtureSeries.of(profile, sheet.setup().engine().need());
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
