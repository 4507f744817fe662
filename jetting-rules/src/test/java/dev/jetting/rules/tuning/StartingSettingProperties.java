package dev.jetting.rules.tuning;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.arbitraries.PlausibleArbitraries;
import dev.jetting.rules.risk.RiskPoint;
import java.util.List;
import java.util.Set;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;

/** Any machine that a tuner would believe, with a typical drawer. */
class StartingSettingProperties {

  private static final Tuner TUNER = Tuner.readingWith(Set.of(Instrument.PLUG));

  @Property(tries = 12, shrinking = ShrinkingMode.OFF)
  void start_isSafeOnEveryDay_andRunsAtSmallOpenings(@ForAll("machines") SetupSheet sheet) {
    StartingSetting start = TUNER.start(sheet);
    AssessedSetting assessed =
        AssessedSetting.of(sheet.withSetup(sheet.setup().withSetting(start.setting())));
    if (start.safe()) {
      for (var day : List.of(assessed.profile(), assessed.coldest(), assessed.hottest())) {
        assertThat(day.worst().leanRisk()).isLessThanOrEqualTo(sheet.riding().acceptedRisk());
      }
    }
    if (start.clean()) {
      for (var held : List.of(Held.OPENINGS.get(0), Held.EIGHTH)) {
        RiskPoint there = assessed.profile().nearest(held);
        assertThat(there.lambda()).isGreaterThanOrEqualTo(there.richLimit());
      }
    }
    double turns = start.setting().screw().turns().turns();
    assertThat(turns).isBetween(0.75, 2.5);
  }

  @Provide
  Arbitrary<SetupSheet> machines() {
    return PlausibleArbitraries.sheets().map(Drawer::with);
  }
}
