package dev.jetting.rules.tuning;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.parts.Setting;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.units.JetBore;
import dev.jetting.units.Lambda;
import dev.jetting.units.ThrottleOpening;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class NextTestTest {

  @Test
  void of_nothingSeen_isFullThrottleFirst() {
    assertThat(next(begin(ALL_ROUND)).orElseThrow().throttle()).isEqualTo(ThrottleOpening.FULL);
  }

  @Test
  void of_fullThrottleSeen_mayGoDownOneOpeningAndNoFurther() {
    TuningSession session =
        begin(ALL_ROUND).seeing(Workshop.look(8, 7500, new Seen.Wideband(Lambda.of(0.80))));
    next(session)
        .ifPresent(
            test ->
                assertThat(test.throttle()).isGreaterThanOrEqualTo(ThrottleOpening.ofEighths(6)));
  }

  /** The first plug chop is not done on a main jet that is likely to be lean: change it first. */
  @Test
  void of_fullThrottleLikelyLean_isNone() {
    Setting lean = ALL_ROUND.withMainJet(JetBore.ofMillimetres(1.12));
    assertThat(next(begin(lean))).isEmpty();
  }

  @Test
  void of_everythingWellKnownAndRich_isNone() {
    TuningSession session = begin(ALL_ROUND.withMainJet(JetBore.ofMillimetres(1.34)));
    for (int eighths : new int[] {8, 6, 4, 2, 1, 0}) {
      session =
          session.seeing(
              Workshop.look(eighths, 1400 + 760 * eighths, new Seen.Wideband(Lambda.of(0.72))));
    }
    assertThat(next(session)).isEmpty();
  }

  @Test
  void howTo_tellsTheCautions() {
    assertThat(String.join(" ", NextTest.HOW_TO))
        .contains("Off public roads", "closed", "clutch", "cool", "rich side");
  }

  private static TuningSession begin(Setting setting) {
    return TuningSession.beginning(Workshop.sheet(setting));
  }

  private static Optional<NextTest> next(TuningSession session) {
    return NextTest.of(session, RiskModel.assumed(), Meanings.assumed());
  }
}
