package dev.jetting.rules.risk;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static dev.jetting.rules.TwoHundred.STANDARD;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.core.mixture.Circuit;
import dev.jetting.core.mixture.Setup;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.TwoHundred;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ThrottleSeriesTest {

  private static final AssessedSetting ASSESSED =
      AssessedSetting.of(TwoHundred.sheet(STANDARD, ALL_ROUND));
  private static final Setup SETUP = ASSESSED.setup();
  private static final ThrottleSeries SERIES =
      ThrottleSeries.of(ASSESSED.profile(), SETUP.engine().need());

  @Test
  void of_hasARowForEachPointWithItsNumbers() {
    List<RiskPoint> points = ASSESSED.profile().points();
    assertThat(SERIES.rows()).hasSameSizeAs(points);
    for (int i = 0; i < points.size(); i++) {
      ThrottleSeries.Row row = SERIES.rows().get(i);
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

  @Test
  void csv_hasTheHeaderALineForEachRow_andReadsBackToFiveDigits() {
    List<String> lines = SERIES.csv().lines().toList();
    assertThat(lines.get(0)).isEqualTo(ThrottleSeries.CSV_HEADER);
    assertThat(lines).hasSize(SERIES.rows().size() + 1);
    for (int i = 1; i < lines.size(); i++) {
      String[] cells = lines.get(i).split(",");
      assertThat(cells).hasSameSizeAs(ThrottleSeries.CSV_HEADER.split(","));
      double lambda = SERIES.rows().get(i - 1).lambda().value();
      assertThat(Double.parseDouble(cells[2])).isCloseTo(lambda, within(lambda * 5e-5));
    }
  }

  @Test
  void interval_withTheLeanerEndFirst_isRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new ThrottleSeries.Interval(1.1, 0.9))
        .withMessageContaining("the richer first");
  }
}
