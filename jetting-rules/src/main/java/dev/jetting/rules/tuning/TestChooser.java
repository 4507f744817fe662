package dev.jetting.rules.tuning;

import static java.util.Comparator.comparing;
import static java.util.Comparator.comparingDouble;

import dev.jetting.core.calibration.CalibratedModel;
import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.calibration.Reading;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.MixturePoint;
import dev.jetting.core.mixture.Setup;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Chooses the test that teaches most about the risk that remains, in an order that starts safe:
 * full throttle first, on a rich main jet, then downwards. No opening is tested twice on the same
 * setup: what was wrong with the first reading would be wrong with the second.
 */
final class TestChooser {

  /** A reading that teaches less, by the accepted risk, is not worth a run (assumed). */
  private static final double WORTH_TESTING = 0.1;

  /** From wide to shut: the order in which a throttle opening may be tested for the first time. */
  private static final List<ThrottleOpening> ORDER =
      List.of(8, 6, 4, 2, 1, 0).stream().map(ThrottleOpening::ofEighths).toList();

  private final Tuner tuner;
  private final TuningSession session;
  private final Calibration calibration;

  TestChooser(Tuner tuner, TuningSession session, Calibration calibration) {
    this.tuner = tuner;
    this.session = session;
    this.calibration = calibration;
  }

  /**
   * The next test that is safe and worth doing: empty if none of the openings whose turn it is has
   * an accepted risk (change first), or nothing is left to learn.
   */
  Optional<NextTest> mostInstructive() {
    double worth = WORTH_TESTING * session.now().riding().acceptedRisk().value();
    return tests(due())
        .filter(test -> test.taught() > worth)
        .max(comparingDouble(NextTest::taught).thenComparing(NextTest::throttle));
  }

  /** The test at the opening with the highest risk of those that are accepted. */
  Optional<NextTest> riskiest() {
    return tests(ORDER).max(comparing(NextTest::risk).thenComparing(NextTest::throttle));
  }

  /** The tests at some openings that are safe and were not done on this setup. */
  private Stream<NextTest> tests(List<ThrottleOpening> openings) {
    Meanings meanings = tuner.meanings();
    Instrument sharpest =
        Collections.min(tuner.instruments(), comparingDouble(i -> i.deviation(meanings)));
    SetupSheet sheet = session.now();
    List<Day> days =
        sheet.days().stream()
            .map(air -> Day.of(sheet.setup().withAir(air), tuner.riskModel(), calibration))
            .toList();
    Probability accepted = sheet.riding().acceptedRisk();
    Set<ThrottleOpening> done = session.last().openings();
    return days.get(0).profile.points().stream()
        .filter(point -> openings.contains(point.mixture().throttle()))
        .filter(point -> !done.contains(point.mixture().throttle()))
        .filter(point -> point.leanRisk().compareTo(accepted) <= 0)
        .map(
            point -> {
              MixturePoint mixture = point.mixture();
              Reading imagined =
                  Reading.measured(
                      sheet.setup(),
                      mixture.throttle(),
                      mixture.speed(),
                      mixture.lambda(),
                      sharpest.deviation(meanings));
              Calibration after = calibration.with(List.of(imagined));
              double taught =
                  days.stream()
                      .mapToDouble(day -> day.taught(calibration, after))
                      .max()
                      .orElseThrow();
              return new NextTest(
                  mixture.throttle(), mixture.speed(), sharpest, point.leanRisk(), taught);
            });
  }

  /** The openings that were tested before, on any setup, and the widest that was not. */
  private List<ThrottleOpening> due() {
    Set<ThrottleOpening> seen = new HashSet<>();
    session.steps().forEach(step -> seen.addAll(step.openings()));
    int unseen = 0;
    while (unseen < ORDER.size() && seen.contains(ORDER.get(unseen))) {
      unseen++;
    }
    return ORDER.subList(0, Math.min(unseen + 1, ORDER.size()));
  }

  /** A day of the sheet: a reading of today is of use for it as well. */
  private record Day(MixtureModel model, RiskProfile profile) {

    static Day of(Setup setup, RiskModel riskModel, Calibration calibration) {
      MixtureModel model = MixtureModel.of(setup);
      List<ThrottleOpening> rising = ORDER.stream().sorted().toList();
      return new Day(model, riskModel.profile(model, rising, calibration));
    }

    /** Σ p(1−p) (1 − σ'²/σ²): what a reading is expected to settle. */
    double taught(Calibration before, Calibration after) {
      CalibratedModel blunter = before.on(model);
      CalibratedModel sharper = after.on(model);
      double settled = 0;
      for (RiskPoint point : profile.points()) {
        MixturePoint mixture = point.mixture();
        double risk = point.leanRisk().value();
        double old = blunter.lnLambda(mixture.throttle(), mixture.speed()).deviation();
        double now = sharper.lnLambda(mixture.throttle(), mixture.speed()).deviation();
        double ratio = old == 0 ? 1 : now / old;
        settled += risk * (1 - risk) * (1 - ratio * ratio);
      }
      return settled;
    }
  }
}
