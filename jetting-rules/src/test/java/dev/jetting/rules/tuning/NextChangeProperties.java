package dev.jetting.rules.tuning;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static net.jqwik.api.Combinators.combine;
import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.air.Air;
import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Present;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.TwoHundred;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.units.Altitude;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.Cutaway;
import dev.jetting.units.JetBore;
import dev.jetting.units.Lambda;
import dev.jetting.units.Probability;
import dev.jetting.units.RelativeHumidity;
import dev.jetting.units.Temperature;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** Whatever is in the carburettor and whatever was read. */
class NextChangeProperties {

  private static final RiskModel RISK = RiskModel.assumed();

  /** One part at a time: so never two moves towards lean at once. */
  @Property(tries = 40)
  void change_isOnePart(@ForAll("sessions") TuningSession session) {
    Present.often(
        change(session),
        change ->
            assertThat(Alternatives.partsChanged(session.now().setup().setting(), change.setting()))
                .isEqualTo(1));
  }

  /** From the rich side: what is safe stays within the accepted risk, as predicted. */
  @Property(tries = 40)
  void change_ofASafeSetting_staysWithinTheAcceptedRisk(@ForAll("sessions") TuningSession session) {
    double accepted = session.now().riding().acceptedRisk().value();
    Present.often(
        change(session).filter(change -> isSafe(session, change.before())),
        change -> {
          assertThat(change.after().worst().leanRisk().value()).isLessThanOrEqualTo(accepted);
          assertThat(overrunIsSafe(session, change.setting())).isTrue();
        });
  }

  /** And the whole report agrees, which looks at the coldest and the hottest day as well. */
  @Property(tries = 60)
  void change_ofASafeSetting_isSafeOnEveryDay(
      @ForAll("sessions") TuningSession session,
      @ForAll @DoubleRange(min = 0, max = 15) double coldest,
      @ForAll @DoubleRange(min = 20, max = 35) double hottest) {
    SetupSheet now = Workshop.sheet(session.now().setup().setting(), day(coldest), day(hottest));
    var calibration = calibration(session);
    Present.often(
        Optional.of(now)
            .filter(sheet -> isSafe(AssessedSetting.of(sheet, RISK, calibration)))
            .flatMap(sheet -> new ChangeChooser(sheet, RISK, calibration).choose()),
        change -> {
          SetupSheet then = now.withSetup(now.setup().withSetting(change.setting()));
          assertThat(isSafe(AssessedSetting.of(then, RISK, calibration))).isTrue();
        });
  }

  private static boolean isSafe(AssessedSetting assessed) {
    Probability accepted = assessed.sheet().riding().acceptedRisk();
    Lambda limit = RISK.limits().overrun(assessed.setup().engine().need());
    return Stream.of(assessed.profile(), assessed.coldest(), assessed.hottest())
            .noneMatch(day -> day.worst().leanRisk().isMoreThan(accepted))
        && !assessed.overrun().lambda().isMoreThan(limit);
  }

  private static Air day(double celsius) {
    return Air.at(
        Altitude.ofMetres(0), Temperature.ofCelsius(celsius), RelativeHumidity.ofPercent(50));
  }

  /** What is not safe gets safer, in sum over the throttle range and on the overrun. */
  @Property(tries = 40)
  void change_ofAnUnsafeSetting_takesRiskAway(@ForAll("sessions") TuningSession session) {
    SetupSheet now = session.now();
    var calibration = calibration(session);
    SettingScorer scorer = new SettingScorer(now, RISK, calibration);
    double before = scorer.excess(now.setup().setting(), Double.MAX_VALUE).orElseThrow();
    Present.often(
        change(session).filter(change -> before > 0),
        change ->
            assertThat(scorer.excess(change.setting(), Double.MAX_VALUE).orElseThrow())
                .isLessThan(before));
  }

  /** Giving up early on a sum changes nothing in what is kept. */
  @Property(tries = 20)
  void scales_givenUpOrNot_sayTheSame(@ForAll("sessions") TuningSession session) {
    SetupSheet now = session.now();
    SettingScorer scorer = new SettingScorer(now, RISK, calibration(session));
    Setting setting = now.setup().setting();
    double excess = scorer.excess(setting, Double.MAX_VALUE).orElseThrow();
    double distance = scorer.distance(setting, Double.MAX_VALUE).orElseThrow();
    assertThat(scorer.excess(setting, excess)).hasValue(excess);
    assertThat(scorer.distance(setting, distance)).hasValue(distance);
    assertThat(scorer.distance(setting, Math.nextDown(distance))).isEmpty();
    assertThat(scorer.excess(setting, excess - 1e-6)).isEmpty();
  }

  private static Calibration calibration(TuningSession session) {
    return Tuner.readingWith(Set.of(Instrument.PLUG)).calibration(session);
  }

  private static Optional<NextChange> change(TuningSession session) {
    return new ChangeChooser(session.now(), RISK, calibration(session)).choose();
  }

  private static boolean isSafe(TuningSession session, RiskProfile profile) {
    SetupSheet now = session.now();
    return profile.worst().leanRisk().compareTo(now.riding().acceptedRisk()) <= 0
        && overrunIsSafe(session, now.setup().setting());
  }

  private static boolean overrunIsSafe(TuningSession session, Setting setting) {
    var setup = session.now().setup().withSetting(setting);
    Lambda limit = RISK.limits().overrun(setup.engine().need());
    return MixtureModel.of(setup).overrun().lambda().compareTo(limit) <= 0;
  }

  @Provide
  Arbitrary<TuningSession> sessions() {
    return combine(settings(), observations().list().ofMaxSize(3))
        .as(
            (setting, observations) -> {
              TuningSession session = TuningSession.beginning(Workshop.sheet(setting));
              for (Observation observation : observations) {
                session = session.observing(observation);
              }
              return session;
            });
  }

  private static Arbitrary<Setting> settings() {
    return combine(
            Arbitraries.integers().between(58, 80).map(i -> JetBore.ofHundredths(2 * i)),
            Arbitraries.integers().between(24, 31).map(i -> JetBore.ofHundredths(2 * i)),
            Arbitraries.of(3.0, 3.5, 4.0, 4.5).map(Cutaway::ofMillimetres),
            Arbitraries.of(2.64, 2.66, 2.68, 2.70).map(TwoHundred::needleJet),
            Arbitraries.integers().between(1, 5).map(i -> ClipPosition.fromTop(i, 5)))
        .as(
            (main, pilot, cutaway, needleJet, clip) ->
                ALL_ROUND
                    .withMainJet(main)
                    .withPilotJet(pilot)
                    .withCutaway(cutaway)
                    .withNeedleJet(needleJet)
                    .withClip(clip));
  }

  private static Arbitrary<Observation> observations() {
    List<Evidence> seen =
        List.of(
            new Evidence.Wideband(Lambda.of(0.78)),
            new Evidence.Wideband(Lambda.of(0.95)),
            new Evidence.Colour(PlugColour.BROWN),
            new Evidence.Colour(PlugColour.DARK),
            new Evidence.Colour(PlugColour.PALE),
            new Evidence.Felt(Symptom.CRISP),
            new Evidence.Felt(Symptom.FOUR_STROKES));
    return combine(Arbitraries.of(8, 6, 4, 2, 1), Arbitraries.of(seen))
        .as((eighths, s) -> Workshop.observation(eighths, 1400 + 760 * eighths, s));
  }
}
