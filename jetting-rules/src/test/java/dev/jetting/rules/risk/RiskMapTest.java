package dev.jetting.rules.risk;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static dev.jetting.rules.TwoHundred.STANDARD;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.rules.TwoHundred;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import org.junit.jupiter.api.Test;

class RiskMapTest {

  private static final RiskModel RISK = RiskModel.assumed();
  private static final MixtureModel MODEL =
      MixtureModel.of(TwoHundred.sheet(STANDARD, ALL_ROUND).setup());
  private static final List<ThrottleOpening> THROTTLES =
      List.of(ThrottleOpening.ofEighths(1), ThrottleOpening.ofEighths(4), ThrottleOpening.FULL);

  @Test
  void of_onTheLoadLine_isTheProfilesRisk() {
    List<EngineSpeed> speeds =
        THROTTLES.stream().map(MODEL.setup().engine().loadLine()::at).toList();
    RiskMap map = RiskMap.of(RISK, MODEL, RISK.untried(), speeds, THROTTLES);
    RiskProfile profile = RISK.profile(MODEL, THROTTLES);
    for (int i = 0; i < THROTTLES.size(); i++) {
      assertThat(map.rows().get(i).get(i)).isEqualTo(profile.points().get(i).leanRisk());
    }
  }

  @Test
  void csv_namesSpeedAndThrottleOfEachRisk() {
    RiskMap map =
        RiskMap.of(RISK, MODEL, RISK.untried(), List.of(EngineSpeed.ofRpm(3000)), THROTTLES);
    assertThat(map.csv().lines().map(line -> line.replaceAll(",[^,]*$", "")))
        .containsExactly("speed_rpm,throttle_percent", "3000,12.5", "3000,50", "3000,100");
  }

  @Test
  void rowsThatDoNotMatch_areRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new RiskMap(List.of(EngineSpeed.ofRpm(3000)), THROTTLES, List.of()))
        .withMessageContaining("a row for each speed");
  }
}
