package dev.jetting.examples.shopcounter.bench;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.examples.shopcounter.words.Words;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.json.SheetJson;
import dev.jetting.rules.tuning.Check;
import dev.jetting.rules.tuning.Evidence;
import dev.jetting.rules.tuning.Instrument;
import dev.jetting.rules.tuning.NextChange;
import dev.jetting.rules.tuning.Observation;
import dev.jetting.rules.tuning.PlugColour;
import dev.jetting.rules.tuning.Tuner;
import dev.jetting.rules.tuning.TuningSession;
import dev.jetting.units.ThrottleOpening;
import dev.jetting.units.TradeStyle;
import java.io.IOException;
import java.io.InputStream;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;

class StepViewTest {

  private static final Tuner TUNER = Tuner.readingWith(Set.of(Instrument.PLUG));

  /** The risks of a change are those of the verdict, not those of today's level road. */
  @Test
  void of_change_namesTheWorstOfAnyDayAndClimb() throws IOException {
    TuningSession session = palePlugAtFull();
    NextChange change = StepView.changeOf(TUNER.next(session)).orElseThrow();
    AssessedSetting now = TUNER.assess(session);
    AssessedSetting then =
        AssessedSetting.of(
            session.now().withSetup(session.now().setup().withSetting(change.setting())),
            TUNER.riskModel(),
            TUNER.calibration(session));

    String said = StepView.of(session, TUNER, Words.english()).howTo().get(0);

    assertThat(said).contains(risk(now), risk(then));
    assertThat(now.worst().leanRisk()).isGreaterThan(change.before().worst().leanRisk());
    assertThat(risk(now)).isNotEqualTo(TradeStyle.probability(change.before().worst().leanRisk()));
  }

  private static String risk(AssessedSetting assessed) {
    return TradeStyle.probability(
        assessed.worst().leanRisk(), assessed.sheet().riding().acceptedRisk());
  }

  private static TuningSession palePlugAtFull() throws IOException {
    SetupSheet sheet = sheet();
    return TuningSession.beginning(sheet)
        .checking(Set.of(Check.values()))
        .observing(
            new Observation(
                ThrottleOpening.FULL,
                sheet.setup().engine().loadLine().at(ThrottleOpening.FULL),
                new Evidence.Colour(PlugColour.PALE)));
  }

  private static SetupSheet sheet() throws IOException {
    String demo = "/dev/jetting/examples/shopcounter/demo/lean-in-the-middle.json";
    try (InputStream in = Objects.requireNonNull(StepViewTest.class.getResourceAsStream(demo))) {
      return SheetJson.read(in);
    }
  }
}
