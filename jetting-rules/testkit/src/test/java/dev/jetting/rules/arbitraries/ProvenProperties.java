package dev.jetting.rules.arbitraries;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.engine.Exhaust;
import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.mixture.Setup;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.ProvenObservation;
import dev.jetting.rules.Provenance;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.laws.Laws;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.standard.StandardRulebook;
import dev.jetting.rules.tuning.Evidence;
import dev.jetting.units.AirFuelRatio;
import dev.jetting.units.Density;
import dev.jetting.units.DynamicViscosity;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** What a proven setting is worth as evidence, on random machines. */
class ProvenProperties {

  /** What ran well has a risk of its own, and openings that fit together badly add to it. */
  private static final double SAFE = 0.05;

  @Property
  void proof_ofTheSameSetup_isNeverLessSafeThanNone(
      @ForAll("plausible") SetupSheet sheet, @ForAll("openings") List<ThrottleOpening> any) {
    AssessedSetting without = AssessedSetting.of(sheet);
    List<ThrottleOpening> ridden =
        any.stream().filter(throttle -> isCredible(without, throttle)).toList();
    AssessedSetting with = AssessedSetting.of(sheet.withProvenance(ranWellAt(ridden)));

    for (ThrottleOpening throttle : ridden) {
      assertThat(risk(with, throttle))
          .as("at %s", throttle)
          .isLessThanOrEqualTo(Math.max(risk(without, throttle), SAFE));
    }
  }

  /** A fuel that needs less air is leaner by one share at every opening. */
  @Property
  void change_thatLeansEverywhere_raisesTheRisk(
      @ForAll("proven") SetupSheet sheet, @ForAll @DoubleRange(min = 0.01, max = 0.3) double by) {
    SetupSheet before = sheet.withSetup(sheet.setup().withFuel(needing(14.5)));
    SetupSheet after = before.withSetup(before.setup().withFuel(needing(14.5 / (1 + by))));
    AssessedSetting rich = AssessedSetting.of(before);
    AssessedSetting lean = AssessedSetting.of(after);

    for (RiskPoint point : rich.profile().points()) {
      ThrottleOpening throttle = point.mixture().throttle();
      assertThat(risk(lean, throttle))
          .as("at %s", throttle)
          .isGreaterThanOrEqualTo(point.leanRisk().value() - Laws.RISK_TOLERANCE);
    }
  }

  @Property
  void voidProof_leavesTheRiskAndNeverPasses(@ForAll("proven") SetupSheet sheet) {
    Exhaust other = Exhaust.reference("another exhaust");
    Setup changed = sheet.setup().withEngine(sheet.setup().engine().withExhaust(other));
    SetupSheet proven = sheet.withSetup(changed);
    SetupSheet unproven = sheet.withProvenance(Provenance.unknown()).withSetup(changed);

    assertThat(AssessedSetting.of(proven).profile())
        .isEqualTo(AssessedSetting.of(unproven).profile());
    assertThat(StandardRulebook.rulebook().evaluate(AssessedSetting.of(proven)).passes()).isFalse();
  }

  /** No engine ran well at an opening where the model holds that for impossible. */
  private static boolean isCredible(AssessedSetting setting, ThrottleOpening throttle) {
    double modelled = setting.mixture(throttle).lambda().value();
    double needed = setting.setup().engine().need().at(throttle).value();
    return Math.abs(StrictMath.log(modelled / needed)) < 0.15;
  }

  private static Provenance ranWellAt(List<ThrottleOpening> ridden) {
    return Provenance.builder()
        .observed(
            ridden.stream()
                .map(throttle -> new ProvenObservation(throttle, new Evidence.Proven()))
                .toList())
        .build();
  }

  private static Fuel needing(double airToFuel) {
    return Fuel.ofProperties(
        Density.ofKilogramsPerCubicMetre(745),
        DynamicViscosity.ofPascalSeconds(0.0005),
        AirFuelRatio.of(airToFuel));
  }

  private static double risk(AssessedSetting setting, ThrottleOpening throttle) {
    return setting.profile().nearest(throttle).leanRisk().value();
  }

  @Provide
  Arbitrary<SetupSheet> plausible() {
    return PlausibleArbitraries.sheets();
  }

  @Provide
  Arbitrary<SetupSheet> proven() {
    return PlausibleArbitraries.provenSheets();
  }

  @Provide
  Arbitrary<List<ThrottleOpening>> openings() {
    return Arbitraries.integers()
        .between(0, 8)
        .map(ThrottleOpening::ofEighths)
        .list()
        .ofMinSize(1)
        .ofMaxSize(4)
        .uniqueElements();
  }
}
