package dev.jetting.rules.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.jetting.rules.Report;
import dev.jetting.rules.render.ReportText;
import dev.jetting.rules.text.Wording;
import java.io.IOException;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class ShortReportJsonTest {

  private static final Report REPORT = Reports.handmade();

  @Test
  void write_hasWhatAPageShows() throws IOException {
    JsonNode page = page(Wording.english());

    assertThat(page.at("/passes").booleanValue()).isFalse();
    assertThat(page.at("/verdict").textValue())
        .isEqualTo(ReportText.verdict(REPORT, Wording.english()))
        .isNotEmpty();
    assertThat(page.at("/worst/1/day").textValue()).isEqualTo("coldest");
    assertThat(page.at("/worst/1/leanRisk").doubleValue()).isEqualTo(0.5);
    assertThat(page.get("findings")).hasSameSizeAs(REPORT.findings());
    assertThat(page.at("/findings/0/text").textValue())
        .isEqualTo(REPORT.findings().get(0).finding().text());
    assertThat(page.at("/findings/0/worst/speed/value").doubleValue()).isEqualTo(7432);
    assertThat(page.at("/findings/2").has("worst")).isFalse();
    assertThat(page.at("/findings/0/waived").booleanValue()).isFalse();
    assertThat(page.at("/findings/1/waived").booleanValue()).isTrue();
    assertThat(page.at("/plan/steps/0").textValue()).contains("main 132");
    assertThat(page.at("/cautions/0").textValue()).isEqualTo("Mind the clutch.");
  }

  /** One set of numbers for one step, and a step towards lean with its condition. */
  @Test
  void write_stepsAreThoseOfThePages() throws IOException {
    Wording italian = Wording.of(Locale.ITALIAN);

    assertThat(page(italian).at("/plan/steps/0").textValue())
        .isEqualTo(italian.text(REPORT.plan().orElseThrow().steps().get(0).stepMessage()));
  }

  @Test
  void write_seriesHasANumberForEachOpening() throws IOException {
    JsonNode series = page(Wording.english()).get("series");

    assertThat(series.at("/throttle").toString()).isEqualTo("[0,1]");
    assertThat(series.at("/speed/values").toString()).isEqualTo("[4000,4000]");
    assertThat(series.at("/leanRisk").toString()).isEqualTo("[0.001,0.25]");
    assertThat(series.at("/leanEnd/0").doubleValue())
        .isBetween(0.9, REPORT.today().points().get(0).leanEnd() + 0.001);
  }

  @Test
  void write_inAnotherLanguage_isInItsWords() throws IOException {
    Wording german = Wording.of(Locale.GERMAN);

    assertThat(page(german).at("/verdict").textValue())
        .isEqualTo(ReportText.verdict(REPORT, german))
        .isNotEqualTo(ReportText.verdict(REPORT, Wording.english()));
  }

  @Test
  void write_isOneLine_andValid() {
    String page = ShortReportJson.write(REPORT);

    assertThat(page).doesNotContain("\n");
    assertThat(Validators.SHORT_REPORT.complaints(page)).isEmpty();
  }

  private static JsonNode page(Wording wording) throws IOException {
    return new ObjectMapper().readTree(ShortReportJson.write(REPORT, wording));
  }
}
