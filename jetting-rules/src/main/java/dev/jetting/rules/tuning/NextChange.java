package dev.jetting.rules.tuning;

import static java.util.Comparator.comparingDouble;

import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.rules.tuning.Alternatives.Alternative;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What to change next: one part out of those at hand.
 *
 * <p>Where the risk is above what is accepted, at any throttle opening or on the overrun, the
 * change that brings it down, and of those that bring it down far enough the one that comes nearest
 * to what the engine needs. Where it is not, the change that comes nearer to what the engine needs
 * without taking the risk above what is accepted and without a great move towards lean; none if
 * there is no such change: then the setting is as good as these parts make it.
 *
 * <p>How near: {@link RiskProfile#distance}.
 *
 * @param part what is changed
 * @param what the new part, in trade style
 * @param setting the setting after the change
 * @param before the lean risk over the throttle range as it is
 * @param after the same after the change, as predicted
 * @param why one sentence
 */
public record NextChange(
    MeteringPart part,
    String what,
    Setting setting,
    RiskProfile before,
    RiskProfile after,
    String why) {

  /** Below this gain a change is not worth its risk of a mistake (assumed). */
  private static final double WORTH_CHANGING = 0.01;

  /** More than this in ln λ at any opening is no single step towards lean (assumed). */
  private static final double MOST_LEANING = 0.12;

  private static final List<ThrottleOpening> OPENINGS = MixtureModel.evenOpenings(17);

  /**
   * Checks for nulls.
   *
   * @param part what is changed
   * @param what the new part, in trade style
   * @param setting the setting after the change
   * @param before the lean risk over the throttle range as it is
   * @param after the same after the change, as predicted
   * @param why one sentence
   */
  public NextChange {
    Objects.requireNonNull(part, "part");
    Objects.requireNonNull(what, "what");
    Objects.requireNonNull(setting, "setting");
    Objects.requireNonNull(before, "before");
    Objects.requireNonNull(after, "after");
    Objects.requireNonNull(why, "why");
  }

  /**
   * The next change on a session's setting.
   *
   * @param session the session so far
   * @param riskModel limits, spreads and steps
   * @param meanings what colours and symptoms mean
   * @return the change; empty where no single part at hand makes it better
   */
  public static Optional<NextChange> of(
      TuningSession session, RiskModel riskModel, Meanings meanings) {
    return of(session.now(), riskModel, session.calibration(riskModel, meanings));
  }

  /**
   * The next change on a setting.
   *
   * @param sheet the setting, the riding and the parts at hand
   * @param riskModel limits, spreads and steps
   * @param calibration what is known of the engine
   * @return the change; empty where no single part at hand makes it better
   */
  public static Optional<NextChange> of(
      SetupSheet sheet, RiskModel riskModel, Calibration calibration) {
    Weighed now = Weighed.of(sheet, sheet.setup().setting(), riskModel, calibration);
    List<Weighed> others =
        Alternatives.to(sheet.setup().setting(), sheet.parts()).stream()
            .map(a -> Weighed.of(sheet, a, riskModel, calibration))
            .toList();
    return now.isSafe() ? nearer(now, others) : safer(now, others);
  }

  /** Whether a setting needs no safer one. */
  static boolean isSafe(SetupSheet sheet, RiskModel riskModel, Calibration calibration) {
    return Weighed.of(sheet, sheet.setup().setting(), riskModel, calibration).isSafe();
  }

  private static Optional<NextChange> safer(Weighed now, List<Weighed> others) {
    Comparator<Weighed> best =
        comparingDouble(Weighed::excess)
            .thenComparingDouble(Weighed::distance)
            .thenComparing(Weighed::what);
    return others.stream()
        .filter(other -> other.excess() < now.excess())
        .min(best)
        .map(
            other ->
                other.change(
                    now,
                    other.isSafe()
                        ? "It brings the lean risk to what is accepted and stays nearest to what is needed."
                        : "It takes most off the lean risk; more changes must follow."));
  }

  private static Optional<NextChange> nearer(Weighed now, List<Weighed> others) {
    return others.stream()
        .filter(Weighed::isSafe)
        .filter(other -> other.distance() < now.distance() - WORTH_CHANGING)
        .filter(other -> other.leaning(now) <= MOST_LEANING)
        .min(comparingDouble(Weighed::distance).thenComparing(Weighed::what))
        .map(
            other ->
                other.change(
                    now,
                    "It comes nearer to what the engine needs; the risk stays within what is"
                        + " accepted."));
  }

  /** A setting with its risk and its distance from what is needed. */
  private record Weighed(
      MeteringPart part,
      String what,
      Setting setting,
      RiskProfile profile,
      double accepted,
      double overrunExcess,
      double distance) {

    static Weighed of(
        SetupSheet sheet, Setting setting, RiskModel riskModel, Calibration calibration) {
      Alternative same = new Alternative(MeteringPart.MAIN_JET, "", setting);
      return of(sheet, same, riskModel, calibration);
    }

    static Weighed of(
        SetupSheet sheet, Alternative alternative, RiskModel riskModel, Calibration calibration) {
      MixtureModel model = MixtureModel.of(sheet.setup().withSetting(alternative.setting()));
      RiskProfile profile = riskModel.profile(model, OPENINGS, calibration);
      return new Weighed(
          alternative.part(),
          alternative.what(),
          alternative.setting(),
          profile,
          sheet.riding().acceptedRisk().value(),
          overrunExcess(model, riskModel),
          profile.distance(sheet.riding().profile(), sheet.setup().engine().need()));
    }

    /** By how much ln λ on the overrun is above its limit; zero if it is not. */
    private static double overrunExcess(MixtureModel model, RiskModel riskModel) {
      double limit = riskModel.limits().overrun(model.setup().engine().need()).value();
      return Math.max(0, StrictMath.log(model.overrun().lambda().value() / limit));
    }

    Probability worst() {
      return profile.worst().leanRisk();
    }

    boolean isSafe() {
      return worst().value() <= accepted && overrunExcess == 0;
    }

    /** Σ of what is above its limit: falls with every opening that is made safer. */
    double excess() {
      return overrunExcess
          + profile.points().stream()
              .mapToDouble(point -> Math.max(0, point.leanRisk().value() - accepted))
              .sum();
    }

    /** The most by which any opening is leaner than with another setting, in ln λ. */
    double leaning(Weighed now) {
      double most = 0;
      for (int i = 0; i < profile.points().size(); i++) {
        double then = profile.points().get(i).lambda().value();
        double before = now.profile.points().get(i).lambda().value();
        most = Math.max(most, StrictMath.log(then / before));
      }
      return most;
    }

    NextChange change(Weighed now, String why) {
      return new NextChange(part, what, setting, now.profile, profile, why);
    }
  }
}
