package dev.jetting.rules.tuning;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.parts.Screw;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.TwoHundred;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.JetBore;
import dev.jetting.units.Lambda;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ScrewTurns;
import java.util.Set;
import org.junit.jupiter.api.Test;

class SessionTextTest {

  private static final Tuner PLUG = Tuner.readingWith(Set.of(Instrument.PLUG));
  private static final Tuner SENSOR = Tuner.readingWith(Set.of(Instrument.WIDEBAND));

  @Test
  void of_nothingSeen_tellsTheTestAndHowToDoIt() {
    String text = text(begin(ALL_ROUND));
    assertThat(text)
        .contains("Setting: main 126, pilot 55, ")
        .contains("10 % accepted.")
        .contains("Test next: full throttle\n- The test: full throttle at about 7500 rpm.")
        .contains("Off public roads", "clutch covered", "no closed throttle")
        .doesNotContain("What the readings tell");
  }

  @Test
  void of_readingsThere_tellsTheCorrectionsInPercent() {
    TuningSession session =
        begin(ALL_ROUND)
            .observing(Workshop.observation(8, 7500, new Evidence.Wideband(Lambda.of(0.86))));
    assertThat(text(session))
        .containsPattern("The main jet passes [0-9]+ ± [0-9]+ % less fuel than the model says\\.");
  }

  @Test
  void of_leanSetting_tellsTheChangeWithLambdaBeforeAndAfter() {
    assertThat(text(begin(ALL_ROUND.withMainJet(JetBore.ofMillimetres(1.12)))))
        .containsPattern("Change next: main 1[1-9][0-9]\n")
        .containsPattern("- full throttle: λ 0\\.[0-9]+ becomes λ 0\\.[0-9]+, lean risk ");
  }

  /** Clip and screw as rich as they go, and no other part in the drawer. */
  @Test
  void of_leanSettingThatNothingAtHandMends_saysNotToRideIt() {
    Setting lean =
        ALL_ROUND
            .withMainJet(JetBore.ofMillimetres(1.0))
            .withClip(ClipPosition.fromTop(5, 5))
            .withScrew(new Screw(ScrewKind.MIXTURE, ScrewTurns.of(3)));
    TuningSession session = TuningSession.beginning(TwoHundred.sheet(TwoHundred.STANDARD, lean));
    String text = SessionText.of(session, SENSOR);
    assertThat(text).contains("Do not ride it").doesNotContain("Nothing to test or change");
    assertThat(PLUG.accepts(session)).isFalse();
  }

  @Test
  void of_sessionLedToItsEnd_saysThatNothingIsLeft() {
    TuningSession session = begin(ALL_ROUND.withMainJet(JetBore.ofMillimetres(1.36)));
    String text = text(session);
    for (int i = 0; i < 40 && !text.contains("Nothing to test or change"); i++) {
      session = next(session);
      text = text(session);
    }
    assertThat(text).contains("Nothing to test or change\n- No single part at hand");
    assertThat(PLUG.accepts(session)).isTrue();
  }

  @Test
  void of_lastSettingUnread_asksForTheTestThatConfirmsIt() {
    String text = SessionText.of(NextStepTest.UNREAD, SENSOR);
    assertThat(text)
        .contains("\nTest next: closed throttle\n- Nothing is left to change as far as is known")
        .contains("this one is to confirm it")
        .contains("- The test: closed throttle");
  }

  /** On an engine that is as the model says. */
  private static TuningSession next(TuningSession session) {
    NextStep step = PLUG.next(session);
    if (step instanceof NextStep.Ride ride) {
      NextTest test = ride.test();
      MixtureModel model = MixtureModel.of(session.now().setup());
      Lambda lambda = model.at(test.throttle(), test.speed()).lambda();
      return session.observing(
          new Observation(test.throttle(), test.speed(), new Evidence.Wideband(lambda)));
    }
    NextChange change = ((NextStep.Change) step).change();
    return session.changing(session.now().setup().withSetting(change.setting()));
  }

  @Test
  void warnings_crispPingingAndWhite_areTold() {
    TuningSession session =
        begin(ALL_ROUND)
            .observing(Workshop.observation(2, 4400, new Evidence.Felt(Symptom.CRISP)))
            .observing(Workshop.observation(6, 6700, new Evidence.Felt(Symptom.PINGS)))
            .observing(Workshop.observation(8, 7500, new Evidence.Colour(PlugColour.WHITE)))
            .observing(Workshop.observation(4, 5700, new Evidence.Colour(PlugColour.BROWN)));
    assertThat(Warnings.of(session, PLUG.calibration(session)))
        .satisfiesExactly(
            crisp -> assertThat(crisp).startsWith("At 1/4 throttle: crisp is no proof"),
            pings -> assertThat(pings).startsWith("At 3/4 throttle").contains("go richer"),
            white -> assertThat(white).startsWith("At full throttle").contains("go richer"));
    assertThat(text(session)).contains("Be wary\n- At 1/4 throttle: crisp");
  }

  @Test
  void warnings_readingThatDisagrees_isTold() {
    TuningSession session = begin(ALL_ROUND);
    double[] lambdas = {0.80, 0.92, 0.92, 0.60};
    int[] eighths = {8, 6, 4, 5};
    for (int i = 0; i < eighths.length; i++) {
      session =
          session.observing(
              Workshop.observation(eighths[i], 6500, new Evidence.Wideband(Lambda.of(lambdas[i]))));
    }
    assertThat(Warnings.of(session, PLUG.calibration(session)))
        .singleElement()
        .asString()
        .startsWith("λ 0.6 read at 5/8 throttle disagrees");
  }

  /** Titles come from outside. */
  @Test
  void of_titleThatSteersTheTerminal_isMadeHarmless() {
    SetupSheet sheet = Workshop.sheet(ALL_ROUND);
    SetupSheet spoilt =
        new SetupSheet(
            "\u001b[2Jtitle\n", sheet.setup(), sheet.riding(), sheet.parts(), sheet.provenance());
    assertThat(text(TuningSession.beginning(spoilt))).startsWith("\uFFFD[2Jtitle\uFFFD\n");
  }

  private static TuningSession begin(Setting setting) {
    return TuningSession.beginning(Workshop.sheet(setting));
  }

  private static String text(TuningSession session) {
    return SessionText.of(session, PLUG);
  }
}
