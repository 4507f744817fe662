package dev.jetting.rules.json;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.rules.tuning.SessionText;
import dev.jetting.rules.tuning.Tuner;
import dev.jetting.rules.tuning.TuningSession;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** What a session and its tuner may say is what the next step can be computed from. */
class SessionCornersProperties {

  @Property(tries = 8)
  void sessionWithATunerAtTheCorners_hasANextStepAndAPageOfFiniteNumbers(@ForAll long seed) {
    CornerRuns.run(seed, random -> isAnswered(new SessionCorners(random).next()));
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
