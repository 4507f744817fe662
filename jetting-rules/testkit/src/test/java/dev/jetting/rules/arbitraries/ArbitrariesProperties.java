package dev.jetting.rules.arbitraries;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.laws.PartChange;
import dev.jetting.rules.laws.Trial;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ThrottleOpening;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;

/** What a tester can count on of the arbitraries. */
class ArbitrariesProperties {

  @Property(tries = 300)
  void trials_coverEveryPartAndBothWays_andMostCanBeDone(@ForAll("trials") Trial trial) {
    PartChange change = trial.change().orElseThrow();
    Statistics.label("done")
        .collect(change.on(trial.sheet()).isPresent())
        .coverage(coverage -> coverage.check(true).percentage(share -> share > 50));
    Statistics.label("part")
        .collect(change.part())
        .coverage(
            coverage -> {
              for (MeteringPart part : MeteringPart.values()) {
                coverage.check(part).percentage(share -> share > 3);
              }
            });
    Statistics.label("way")
        .collect(change.way())
        .coverage(
            coverage -> {
              for (PartChange.Way way : PartChange.Way.values()) {
                coverage.check(way).percentage(share -> share > 30);
              }
            });
  }

  /**
   * λ from 0.25 to 2 at half throttle: no sheet is out of fuel or of air. In 60 000 drawn sheets λ
   * lay between 0.35 and 1.49.
   */
  @Property(tries = 300)
  void plausibleSheets_runAtHalfThrottle_withBothScrews(@ForAll("plausible") SetupSheet sheet) {
    double lambda =
        MixtureModel.of(sheet.setup()).at(ThrottleOpening.ofEighths(4)).lambda().value();
    assertThat(lambda).isBetween(0.25, 2.0);
    Statistics.label("screw")
        .collect(sheet.setup().setting().screw().kind())
        .coverage(
            coverage -> {
              for (ScrewKind kind : ScrewKind.values()) {
                coverage.check(kind).percentage(share -> share > 30);
              }
            });
    Statistics.label("leaner than wanted")
        .collect(lambda > sheet.setup().engine().need().at(ThrottleOpening.ofEighths(4)).value())
        .coverage(
            coverage -> {
              coverage.check(true).percentage(share -> share > 5);
              coverage.check(false).percentage(share -> share > 5);
            });
  }

  @Provide
  Arbitrary<Trial> trials() {
    return TrialArbitraries.trials(PlausibleArbitraries.sheets());
  }

  @Provide
  Arbitrary<SetupSheet> plausible() {
    return PlausibleArbitraries.sheets();
  }
}
