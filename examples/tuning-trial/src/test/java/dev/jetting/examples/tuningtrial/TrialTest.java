package dev.jetting.examples.tuningtrial;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.parts.Coefficient;
import dev.jetting.rules.risk.ModelUncertainty;
import dev.jetting.rules.risk.RiskModel;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The trial's short form, with margins for so few engines that a broken library would miss. */
class TrialTest {

  private static final List<Row> ROWS = Figures.shortFormOf(Trial.PUBLISHED);

  /** What the library did when the figures were published it does today. */
  @Test
  void shortForm_isAsRecorded() throws IOException {
    assertThat(ROWS)
        .as("after a change that moves figures run the trial's long form anew")
        .isEqualTo(Figures.published().shortForm());
  }

  @Test
  void library_hardlyEverStartsOrEndsLean_andStops() {
    assertThat(byLibrary())
        .allSatisfy(
            row -> {
              assertThat(row.leanAtStart()).isLessThanOrEqualTo(2);
              assertThat(row.leanAtEnd()).isLessThanOrEqualTo(1);
              assertThat(row.words().wentOn()).isZero();
              boolean one = row.engines() == 1;
              assertThat(row.tests()).isLessThan(new BigDecimal(one ? 60 : 30));
              assertThat(row.changes()).isLessThan(new BigDecimal(one ? 15 : 8));
            });
  }

  /** Of the published rows: four engines differ by more than a start from an end. */
  @Test
  void library_withASensor_endsNearerToWhatIsNeededThanItStartsAndThanHabitEnds()
      throws IOException {
    List<Row> published = Figures.published().rows();
    for (World world : World.TRIED_TWICE) {
      Row row = row(published, world, Way.LIBRARY_WIDEBAND);
      assertThat(row.richerAtEnd())
          .isLessThan(row.richerAtStart())
          .isLessThan(row(published, world, Way.HABIT).richerAtEnd());
    }
  }

  /** The openings of an engine go together, so four engines show the share to a fifth or so. */
  @Test
  void bands_whereEnginesAreAsAssumed_holdAboutNineInTen() {
    for (Way way : List.of(Way.LIBRARY_WIDEBAND, Way.LIBRARY_PLUG)) {
      Row row = row(ROWS, World.AS_ASSUMED, way);
      assertThat(row.heldAtStart()).isBetween(new BigDecimal("0.75"), BigDecimal.ONE);
      assertThat(row.heldAtEnd()).isBetween(new BigDecimal("0.75"), BigDecimal.ONE);
      assertThat(row.spreadAtStart()).isBetween(new BigDecimal("0.8"), new BigDecimal("1.2"));
    }
  }

  /** A library that knew its engines four times better than it does would be found out. */
  @Test
  void bands_ofAnOverconfidentModel_doNotHold() {
    RiskModel assumed = RiskModel.assumed();
    RiskModel sure =
        new RiskModel(assumed.limits(), quarter(assumed.uncertainty()), assumed.steps());
    Trial trial = new Trial(sure, assumed.uncertainty(), Trial.PUBLISHED.seed());
    Row row = trial.row(World.AS_ASSUMED, Way.LIBRARY_WIDEBAND, trial.machines(1), 12, 1);
    assertThat(row.heldAtStart()).isLessThan(new BigDecimal("0.7"));
  }

  private static ModelUncertainty quarter(ModelUncertainty all) {
    return ModelUncertainty.builder()
        .pilot(quarter(all.pilot()))
        .needle(quarter(all.needle()))
        .main(quarter(all.main()))
        .air(quarter(all.air()))
        .residual(quarter(all.residual()))
        .residualLength(all.residualLength())
        .pilotJetTolerance(quarter(all.pilotJetTolerance()))
        .mainJetTolerance(quarter(all.mainJetTolerance()))
        .needleJetTolerance(quarter(all.needleJetTolerance()))
        .needleTolerance(quarter(all.needleTolerance()))
        .guessed(Set.of())
        .build();
  }

  private static Coefficient quarter(Coefficient c) {
    return Coefficient.assumed(c.value() / 4, c.unit(), "too sure");
  }

  private static List<Row> byLibrary() {
    return ROWS.stream()
        .filter(row -> row.way().byLibrary() && World.TRIED_TWICE.contains(row.world()))
        .toList();
  }

  private static Row row(List<Row> rows, World world, Way way) {
    return rows.stream()
        .filter(row -> row.world() == world && row.way() == way && row.acceptedPercent() == 1)
        .findFirst()
        .orElseThrow();
  }
}
