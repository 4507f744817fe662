package dev.jetting.rules.risk;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static dev.jetting.rules.TwoHundred.STANDARD;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import com.google.common.collect.Collections2;
import dev.jetting.core.calibration.CalibratedModel;
import dev.jetting.core.mixture.Circuit;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.Setup;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.TwoHundred;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.ThrottleOpening;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class MixtureSeriesTest {

  private static final AssessedSetting ASSESSED =
      AssessedSetting.of(TwoHundred.sheet(STANDARD, ALL_ROUND));
  private static final Setup SETUP = ASSESSED.setup();
  private static final RiskModel RISK = RiskModel.assumed();
  private static final MixtureModel MODEL = MixtureModel.of(SETUP);
  private static final MixtureSeries SERIES =
      MixtureSeries.of(ASSESSED.profile(), SETUP.engine().need());

  @Test
  void of_hasARowForEachPointWithItsNumbers() {
    List<RiskPoint> points = ASSESSED.profile().points();
    assertThat(SERIES.rows()).hasSameSizeAs(points);
    for (int i = 0; i < points.size(); i++) {
      MixtureSeries.Row row = SERIES.rows().get(i);
      RiskPoint point = points.get(i);
      assertThat(row.lambda()).isEqualTo(point.lambda());
      assertThat(row.leanRisk()).isEqualTo(point.leanRisk());
      assertThat(row.needed()).isEqualTo(SETUP.engine().need().at(row.throttle()));
      assertThat(row.limits().lean()).isEqualTo(point.leanLimit().value());
      assertThat(row.band().rich()).isLessThan(row.lambda().value());
      assertThat(row.band().lean()).isGreaterThan(row.lambda().value());
    }
  }

  @Test
  void shares_addUpToOne_andAreGreatestForTheCircuitInCharge() {
    for (int i = 0; i < SERIES.rows().size(); i++) {
      Map<Circuit, Double> shares = SERIES.rows().get(i).shares();
      assertThat(shares.values().stream().mapToDouble(d -> d).sum()).isCloseTo(1, within(1e-12));
      Circuit inCharge = ASSESSED.profile().points().get(i).inCharge();
      assertThat(shares.values()).allMatch(share -> share <= shares.get(inCharge) + 1e-12);
    }
  }

  /** A map of Java's own is in another order on each JVM, and so would be the row's text. */
  @Test
  void shares_areInTheOrderOfTheCircuits() {
    MixtureSeries.Row row = SERIES.rows().get(0);
    assertThat(row.shares()).isUnmodifiable();
    assertThat(row.shares().keySet()).containsExactly(Circuit.values());
    for (List<Circuit> order : Collections2.permutations(List.of(Circuit.values()))) {
      Map<Circuit, Double> shares = new LinkedHashMap<>();
      order.forEach(circuit -> shares.put(circuit, 0.25));
      assertThat(with(row, shares).toString())
          .endsWith("shares={PILOT=0.25, CUTAWAY=0.25, NEEDLE=0.25, MAIN=0.25}]");
    }
    assertThat(with(row, Map.of()).shares()).isEmpty();
  }

  private static MixtureSeries.Row with(MixtureSeries.Row row, Map<Circuit, Double> shares) {
    return new MixtureSeries.Row(
        row.throttle(),
        row.speed(),
        row.lambda(),
        row.band(),
        row.needed(),
        row.limits(),
        row.leanRisk(),
        shares);
  }

  @Test
  void csv_hasTheHeaderALineForEachRow_andReadsBackToFiveDigits() {
    List<String> lines = SERIES.csv().lines().toList();
    assertThat(lines.get(0)).isEqualTo(MixtureSeries.CSV_HEADER);
    assertThat(lines).hasSize(SERIES.rows().size() + 1);
    for (int i = 1; i < lines.size(); i++) {
      String[] cells = lines.get(i).split(",");
      assertThat(cells).hasSameSizeAs(MixtureSeries.CSV_HEADER.split(","));
      double lambda = SERIES.rows().get(i - 1).lambda().value();
      assertThat(Double.parseDouble(cells[2])).isCloseTo(lambda, within(lambda * 5e-5));
    }
  }

  @Test
  void map_onTheLoadLine_isTheSeriesOfTheProfile() {
    List<ThrottleOpening> throttles =
        List.of(ThrottleOpening.ofEighths(1), ThrottleOpening.ofEighths(4), ThrottleOpening.FULL);
    List<EngineSpeed> speeds = throttles.stream().map(SETUP.engine().loadLine()::at).toList();
    List<MixtureSeries.Row> map =
        MixtureSeries.map(RISK, RISK.untried().on(MODEL), speeds, throttles).rows();
    List<MixtureSeries.Row> profile =
        MixtureSeries.of(RISK.profile(MODEL, throttles), SETUP.engine().need()).rows();
    assertThat(map).hasSize(9);
    assertThat(List.of(map.get(0), map.get(4), map.get(8))).isEqualTo(profile);
  }

  @Test
  void map_offTheLoadLine_hasTheModelsMixture_andItsRisk() {
    ThrottleOpening half = ThrottleOpening.ofEighths(4);
    List<EngineSpeed> speeds = List.of(EngineSpeed.ofRpm(6000), EngineSpeed.ofRpm(3000));
    CalibratedModel engine = RISK.untried().on(MODEL);
    List<MixtureSeries.Row> rows = MixtureSeries.map(RISK, engine, speeds, List.of(half)).rows();
    for (int i = 0; i < speeds.size(); i++) {
      assertThat(rows.get(i).speed()).isEqualTo(speeds.get(i));
      assertThat(rows.get(i).lambda()).isEqualTo(MODEL.at(half, speeds.get(i)).lambda());
      assertThat(rows.get(i).leanRisk()).isEqualTo(RISK.leanRisk(engine, half, speeds.get(i)));
    }
  }

  @Test
  void csv_ofAMap_goesSpeedBySpeed() {
    List<ThrottleOpening> throttles = List.of(ThrottleOpening.ofEighths(1), ThrottleOpening.FULL);
    List<EngineSpeed> speeds = List.of(EngineSpeed.ofRpm(6000), EngineSpeed.ofRpm(3000));
    String csv = MixtureSeries.map(RISK, RISK.untried().on(MODEL), speeds, throttles).csv();
    assertThat(csv.lines().map(line -> line.replaceAll("^([^,]*,[^,]*),.*", "$1")))
        .containsExactly(
            "throttle_percent,speed_rpm", "12.5,6000", "100,6000", "12.5,3000", "100,3000");
  }

  @Test
  void map_ofNoSpeed_isRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                MixtureSeries.map(
                    RISK, RISK.untried().on(MODEL), List.of(), List.of(ThrottleOpening.FULL)))
        .withMessageContaining("at least one");
  }

  @Test
  void interval_withTheLeanerEndFirst_isRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new MixtureSeries.Interval(1.1, 0.9))
        .withMessageContaining("the richer first");
  }
}
