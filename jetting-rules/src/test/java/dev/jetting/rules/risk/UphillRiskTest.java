package dev.jetting.rules.risk;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static dev.jetting.rules.TwoHundred.STANDARD;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.core.air.Air;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.TwoHundred;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.Lambda;
import dev.jetting.units.Probability;
import dev.jetting.units.RelativeHumidity;
import dev.jetting.units.Temperature;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class UphillRiskTest {

  private static final SetupSheet SHEET = TwoHundred.sheet(STANDARD, ALL_ROUND);
  private static final AssessedSetting ASSESSED = AssessedSetting.of(SHEET);

  @Test
  void spread_isThatOfTheLevelAndAnEvenDoubtAboutTheChange() {
    MixtureModel model = MixtureModel.of(SHEET.setup());
    for (RiskPoint point : ASSESSED.profile().points()) {
      UphillRisk uphill = point.uphill();
      Lambda there = model.at(point.mixture().throttle(), uphill.speed()).lambda();
      double change = StrictMath.log(there.value() / point.mixture().lambda().value());

      assertThat(uphill.modelled()).isEqualTo(there);
      // An even distribution over −a to a has the variance a²/3.
      assertThat(uphill.spread())
          .isCloseTo(Math.hypot(point.spread(), change / Math.sqrt(3)), within(1e-12));
    }
  }

  @Test
  void doubt_neverLowersARiskThatIsAcceptable() {
    assertThat(ASSESSED.profile().points())
        .allSatisfy(
            point ->
                assertThat(point.uphill().leanRisk()).isGreaterThanOrEqualTo(point.leanRisk()));
    assertThat(ASSESSED.profile().points())
        .anySatisfy(
            point ->
                assertThat(point.uphill().leanRisk().value())
                    .isGreaterThan(1.2 * point.leanRisk().value()));
  }

  @Test
  void levelRoadOnly_addsNothing() {
    SetupSheet level =
        SetupSheet.builder()
            .title("level")
            .setup(SHEET.setup())
            .riding(SHEET.riding().withSpeeds(RiddenSpeeds.levelRoad()))
            .parts(SHEET.parts())
            .build();

    assertThat(AssessedSetting.of(level).profile().points())
        .allSatisfy(
            point -> {
              assertThat(point.uphill().leanRisk()).isEqualTo(point.leanRisk());
              assertThat(point.uphill().speed()).isEqualTo(point.mixture().speed());
              assertThat(point.uphill().modelled()).isEqualTo(point.mixture().lambda());
            });
  }

  @Test
  void worst_isTheGreatestRiskOfAllDaysOpeningsAndSpeeds() {
    SetupSheet swinging =
        SetupSheet.builder()
            .title("cold and hot")
            .setup(SHEET.setup())
            .riding(SHEET.riding().withDays(air(-5), air(30)))
            .parts(SHEET.parts())
            .build();
    AssessedSetting assessed = AssessedSetting.of(swinging);
    double greatest =
        Stream.of(assessed.profile(), assessed.coldest(), assessed.hottest())
            .map(RiskProfile::points)
            .flatMap(List::stream)
            .flatMap(point -> Stream.of(point.leanRisk(), point.uphill().leanRisk()))
            .mapToDouble(Probability::value)
            .max()
            .orElseThrow();

    WorstSpot worst = assessed.worst();
    assertThat(worst.leanRisk().value()).isEqualTo(greatest);
    assertThat(worst.day()).isEqualTo(WorstSpot.Day.COLDEST);
    RiskPoint there = assessed.coldest().nearest(worst.throttle());
    assertThat(worst.speed()).isEqualTo(there.uphill().speed());
    assertThat(worst.speed()).isLessThan(there.mixture().speed());
  }

  @Test
  void worst_ofEquals_isTodaysOnTheLevelRoad() {
    RiskProfile shut = new RiskProfile(ASSESSED.profile().points().subList(0, 1));

    WorstSpot worst =
        WorstSpot.of(
            Map.of(
                WorstSpot.Day.HOTTEST,
                shut,
                WorstSpot.Day.TODAY,
                shut,
                WorstSpot.Day.COLDEST,
                shut));
    assertThat(worst.day()).isEqualTo(WorstSpot.Day.TODAY);
    assertThat(worst.speed()).isEqualTo(shut.worst().mixture().speed());
  }

  @Test
  void spread_thatIsNone_isRefused() {
    assertThatThrownBy(
            () -> new UphillRisk(EngineSpeed.ofRpm(1), Lambda.of(1), -0.5, Probability.of(0)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("spread of ln λ uphill -0.5: allowed a finite number, 0 or more");
  }

  private static Air air(double celsius) {
    return Air.of(
        SHEET.setup().air().pressure(),
        Temperature.ofCelsius(celsius),
        RelativeHumidity.ofPercent(50));
  }
}
