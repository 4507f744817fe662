package dev.jetting.rules.risk;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static dev.jetting.rules.TwoHundred.STANDARD;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.core.air.Air;
import dev.jetting.rules.TwoHundred;
import dev.jetting.units.Cutaway;
import dev.jetting.units.Pressure;
import dev.jetting.units.Probability;
import dev.jetting.units.RelativeHumidity;
import dev.jetting.units.Temperature;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import org.junit.jupiter.api.Test;

class RiskProfileTest {

  private static final RelativeHumidity HALF = RelativeHumidity.ofPercent(50);

  private static final RiskProfile LEAN =
      TwoHundred.assessed(STANDARD, ALL_ROUND.withCutaway(Cutaway.ofMillimetres(5))).profile();

  @Test
  void worst_isTheGreatestRisk() {
    assertThat(LEAN.points())
        .allSatisfy(
            point -> assertThat(point.leanRisk()).isLessThanOrEqualTo(LEAN.worst().leanRisk()));
  }

  @Test
  void mean_allWeightOnOneOpening_isTheRiskThere() {
    ThrottleOpening quarter = ThrottleOpening.ofEighths(2);
    RidingProfile spike =
        new RidingProfile(
            List.of(
                new RidingProfile.Point(ThrottleOpening.ofShare(7 / 32.0), 0),
                new RidingProfile.Point(quarter, 1),
                new RidingProfile.Point(ThrottleOpening.ofShare(9 / 32.0), 0)));
    assertThat(LEAN.mean(spike)).isEqualTo(LEAN.nearest(quarter).leanRisk());
  }

  @Test
  void mean_evenWeights_isTheAreaUnderTheRisks() {
    RidingProfile even =
        new RidingProfile(List.of(new RidingProfile.Point(ThrottleOpening.CLOSED, 7)));
    double area = 0; // trapezium by trapezium: the openings are not evenly spaced
    for (int i = 1; i < LEAN.points().size(); i++) {
      RiskPoint one = LEAN.points().get(i - 1);
      RiskPoint next = LEAN.points().get(i);
      area +=
          (next.mixture().throttle().share() - one.mixture().throttle().share())
              * (one.leanRisk().value() + next.leanRisk().value())
              / 2;
    }
    assertThat(LEAN.mean(even).value()).isCloseTo(area, within(1e-12));
  }

  @Test
  void above_keepsOnlyWhatExceedsTheAcceptedRisk() {
    Probability accepted = Probability.of(0.1);
    List<RiskPoint> above = LEAN.above(accepted);
    assertThat(above).isNotEmpty().hasSizeLessThan(LEAN.points().size());
    assertThat(above).allMatch(point -> point.leanRisk().value() > 0.1);
  }

  @Test
  void weightAt_isStraightBetweenPointsAndHeldAtTheEnds() {
    RidingProfile profile =
        new RidingProfile(
            List.of(
                new RidingProfile.Point(ThrottleOpening.ofEighths(2), 1),
                new RidingProfile.Point(ThrottleOpening.ofEighths(4), 3)));
    assertThat(profile.weightAt(ThrottleOpening.CLOSED)).isEqualTo(1);
    assertThat(profile.weightAt(ThrottleOpening.ofEighths(3))).isEqualTo(2);
    assertThat(profile.weightAt(ThrottleOpening.FULL)).isEqualTo(3);
  }

  @Test
  void profile_withoutWeight_isRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> new RidingProfile(List.of(new RidingProfile.Point(ThrottleOpening.CLOSED, 0))))
        .withMessageContaining("weight above 0");
  }

  @Test
  void riding_coldestDayThinnerThanTheHottest_isRefused() {
    Air cold = Air.of(Pressure.ofHectopascals(1013), Temperature.ofCelsius(0), HALF);
    Air hot = Air.of(Pressure.ofHectopascals(1013), Temperature.ofCelsius(30), HALF);
    Probability accepted = Probability.of(0.05);

    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                Riding.builder()
                    .acceptedRisk(accepted)
                    .profile(RidingProfile.assumedRoad())
                    .coldest(hot)
                    .hottest(cold)
                    .build())
        .withMessageContaining("are the two days swapped?");
    assertThat(
            Riding.builder()
                .acceptedRisk(accepted)
                .profile(RidingProfile.assumedRoad())
                .coldest(cold)
                .hottest(cold)
                .build()
                .hottest())
        .isEqualTo(cold);
  }
}
