package dev.jetting.rules.json;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.rules.tuning.NextStep;
import dev.jetting.rules.tuning.SessionText;
import dev.jetting.rules.tuning.Tuner;
import dev.jetting.rules.tuning.TuningSession;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** What a session and its tuner may say is what the next step can be computed from. */
class SessionCornersProperties {

  private static final int STEPS = 12;

  @Property(tries = 12)
  void sessionWithATunerAtTheCorners_hasANextStepAndAPageOfFiniteNumbers(@ForAll long seed) {
    CornerRuns.run(seed, random -> isAnswered(new SessionCorners(random).next()));
  }

  @Property(tries = 6)
  void sessionLedAlongByATunerAtTheCorners_hasANextStepEachTime(@ForAll long seed) {
    CornerRuns.run(seed, SessionCornersProperties::isLed);
  }

  private static boolean isLed(Random random) {
    String document = new SessionCorners(random).beginning();
    Tuner tuner;
    TuningSession session;
    try {
      session = SessionJson.read(document);
      tuner = SessionJson.readTuner(document, SessionCorners.RULES).orElseThrow();
    } catch (JsonInputException e) {
      CornerRuns.assertNamesAPlace(e);
      return false;
    }
    for (int i = 0; i < STEPS; i++) {
      NextStep step = tuner.next(session);
      CornerRuns.assertFinite(step.toString());
      session = SessionCorners.led(session, step, random);
      assertThat(SessionJson.read(SessionJson.write(session, tuner))).isEqualTo(session);
    }
    CornerRuns.assertFinite(SessionText.of(session, tuner));
    return true;
  }

  private static boolean isAnswered(String document) {
    TuningSession session;
    Tuner tuner;
    try {
      session = SessionJson.read(document);
      tuner = SessionJson.readTuner(document, SessionCorners.RULES).orElseThrow();
    } catch (JsonInputException e) {
      CornerRuns.assertNamesAPlace(e);
      return false;
    }
    CornerRuns.assertFinite(tuner.next(session).toString());
    CornerRuns.assertFinite(SessionText.of(session, tuner));
    CornerRuns.assertFinite(tuner.assess(session).profile().toString());
    CornerRuns.assertFinite(tuner.next(session.undone()).toString());
    assertThat(SessionJson.read(SessionJson.write(session, tuner))).isEqualTo(session);
    return true;
  }
}
