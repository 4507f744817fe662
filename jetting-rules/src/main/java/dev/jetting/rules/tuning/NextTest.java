package dev.jetting.rules.tuning;

import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.calibration.Normal;
import dev.jetting.core.calibration.Reading;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.MixturePoint;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Which throttle opening to test next: the one whose reading teaches most about the risk that
 * remains, in an order that starts safe: full throttle first, on a rich main jet, then downwards.
 *
 * @param throttle throttle opening to hold
 * @param speed engine speed there on the road
 * @param risk lean risk there as it stands
 * @param taught by how much a wideband reading there is expected to lessen what is open: the sum of
 *     risk times (1 − risk) over the openings, so that 0.25 is one even chance
 */
public record NextTest(
    ThrottleOpening throttle, EngineSpeed speed, Probability risk, double taught) {

  /** A reading that teaches less is not worth a run (assumed). */
  private static final double WORTH_TESTING = 0.01;

  /** From wide to shut: the order in which a throttle opening may be tested for the first time. */
  private static final List<ThrottleOpening> ORDER =
      List.of(8, 6, 4, 2, 1, 0).stream().map(ThrottleOpening::ofEighths).toList();

  /** How to do a plug chop. */
  public static final List<String> HOW_TO =
      List.of(
          "Off public roads, engine warm, a new plug of the right heat range in, tools and gloves at"
              + " hand.",
          "Hold the throttle opening steady for some ten seconds under load; mark it on the grip.",
          "Pull the clutch and cut the ignition at that very opening, then roll out: no closed"
              + " throttle against the engine, no idling home.",
          "Let plug and exhaust cool, or use gloves; read the insulator deep down, not its tip.",
          "Change one thing, from the rich side, and do it again.");

  /**
   * The next test, if one is safe and worth doing.
   *
   * @param session the session so far
   * @param riskModel limits, spreads and steps
   * @param meanings what colours and symptoms mean
   * @return the test; empty if none of the openings whose turn it is has an accepted risk (change
   *     first), or nothing is left to learn
   */
  public static Optional<NextTest> of(
      TuningSession session, RiskModel riskModel, Meanings meanings) {
    SetupSheet sheet = session.now();
    MixtureModel model = MixtureModel.of(sheet.setup());
    Calibration calibration = session.calibration(riskModel, meanings);
    RiskProfile profile = riskModel.profile(model, ORDER, calibration);
    Probability accepted = sheet.riding().acceptedRisk();
    NextTest best = null;
    for (RiskPoint point : due(session, profile)) {
      MixturePoint mixture = point.mixture();
      double taught = taught(profile, model, calibration, mixture);
      boolean safe = point.leanRisk().compareTo(accepted) <= 0;
      if (safe && taught > WORTH_TESTING && (best == null || taught > best.taught)) {
        best = new NextTest(mixture.throttle(), mixture.speed(), point.leanRisk(), taught);
      }
    }
    return Optional.ofNullable(best);
  }

  /** The openings that were seen before, and the widest that was not. */
  private static List<RiskPoint> due(TuningSession session, RiskProfile profile) {
    Set<ThrottleOpening> seen =
        session.steps().stream()
            .flatMap(step -> step.looks().stream())
            .map(Look::throttle)
            .collect(Collectors.toSet());
    List<RiskPoint> points = profile.points();
    int unseen = 0;
    while (unseen < points.size() && seen.contains(points.get(unseen).mixture().throttle())) {
      unseen++;
    }
    return points.subList(0, Math.min(unseen + 1, points.size()));
  }

  /** Σ p(1−p) (1 − σ'²/σ²): what a wideband reading at a point is expected to settle. */
  private static double taught(
      RiskProfile profile, MixtureModel model, Calibration calibration, MixturePoint at) {
    Reading imagined =
        Reading.measured(
            model.setup(), at.throttle(), at.speed(), at.lambda(), Seen.Wideband.DEVIATION);
    Calibration after = calibration.with(List.of(imagined));
    double settled = 0;
    for (RiskPoint point : profile.points()) {
      MixturePoint mixture = point.mixture();
      double risk = point.leanRisk().value();
      Normal old = calibration.lnLambda(model, mixture.throttle(), mixture.speed());
      Normal sharper = after.lnLambda(model, mixture.throttle(), mixture.speed());
      double ratio = old.deviation() == 0 ? 1 : sharper.deviation() / old.deviation();
      settled += risk * (1 - risk) * (1 - ratio * ratio);
    }
    return settled;
  }
}
