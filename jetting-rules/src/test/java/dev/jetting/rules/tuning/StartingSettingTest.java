package dev.jetting.rules.tuning;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.RiddenSpeeds;
import dev.jetting.units.Probability;
import java.util.Set;
import org.junit.jupiter.api.Test;

class StartingSettingTest {

  private static final Tuner TUNER = Tuner.readingWith(Set.of(Instrument.PLUG));

  /** On steep climbs the setting for level roads is too lean: a start is safe on both. */
  @Test
  void start_forSteepClimbs_isRicherThanForLevelRoads_andSafeOnThem() {
    StartingSetting level = TUNER.start(climbing(1));
    StartingSetting steep = TUNER.start(climbing(3));

    assertThat(worst(level, climbing(3))).isGreaterThan(climbing(3).riding().acceptedRisk());
    assertThat(worst(steep, climbing(3))).isLessThanOrEqualTo(climbing(3).riding().acceptedRisk());
    assertThat(level.safe()).isTrue();
    assertThat(steep.safe()).isTrue();
  }

  @Test
  void start_profile_isThatOfAReportOnIt() {
    StartingSetting start = TUNER.start(climbing(1.5));
    assertThat(start.profile()).isEqualTo(assessed(start, climbing(1.5)).profile());
  }

  private static Probability worst(StartingSetting start, SetupSheet sheet) {
    return assessed(start, sheet).worst().leanRisk();
  }

  private static AssessedSetting assessed(StartingSetting start, SetupSheet sheet) {
    return AssessedSetting.of(sheet.withSetup(sheet.setup().withSetting(start.setting())));
  }

  private static SetupSheet climbing(double load) {
    SetupSheet sheet = Workshop.sheet(ALL_ROUND);
    return sheet.withRiding(
        sheet
            .riding()
            .withSpeeds(new RiddenSpeeds(load))
            .withAcceptedRisk(Probability.ofPercent(1)));
  }
}
