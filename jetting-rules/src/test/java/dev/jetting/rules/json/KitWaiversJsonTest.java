package dev.jetting.rules.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import dev.jetting.rules.Measure;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.kit.KitWaiver;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class KitWaiversJsonTest {

  static final String DOCUMENT =
      """
      {
        "format": "jetting kit waivers",
        "schemaVersion": 1,
        "waivers": [
          {
            "kit": "all-round",
            "machine": "tuned",
            "ruleId": "lean-anywhere",
            "subject": "setting.mainJet",
            "author": "A. Weaver",
            "reason": "Sold for a short track only.",
            "expires": "2027-03-31",
            "measured": {
              "value": 0.125,
              "unit": "lean risk"
            },
            "band": {
              "from": 0.75,
              "to": 1.0
            }
          }
        ]
      }
      """;

  private static final KitWaiver WAIVER =
      new KitWaiver(
          "all-round",
          "tuned",
          "lean-anywhere",
          "setting.mainJet",
          "A. Weaver",
          "Sold for a short track only.",
          Optional.of(LocalDate.of(2027, 3, 31)),
          new Measure(0.125, Measure.LEAN_RISK),
          ThrottleBand.eighths(6, 8));

  @Test
  void read_isTheOppositeOfWrite_andFollowsTheSchema() throws IOException {
    assertThat(KitWaiversJson.read(DOCUMENT)).containsExactly(WAIVER);
    assertThat(KitWaiversJson.read(new StringReader(DOCUMENT))).containsExactly(WAIVER);
    assertThat(
            KitWaiversJson.read(
                new ByteArrayInputStream(DOCUMENT.getBytes(StandardCharsets.UTF_8))))
        .containsExactly(WAIVER);
    assertThat(KitWaiversJson.write(List.of(WAIVER))).isEqualTo(DOCUMENT);
    assertThat(Validators.KIT_WAIVERS.complaints(DOCUMENT)).isEmpty();
  }

  @Test
  void wrongDocument_isRefusedWithThePlace() {
    refused("\"2027-03-31\"", "\"soon\"", "$.waivers[0]: expires \"soon\"");
    refused("\"A. Weaver\"", "\" \"", "$.waivers[0].author");
    refused("\"machine\"", "\"place\"", "$.waivers[0].place: unknown field \"place\"");
    refused("kit waivers", "kit", "\"jetting kit waivers\"");
  }

  private static void refused(String piece, String spoilt, String words) {
    assertThatExceptionOfType(JsonInputException.class)
        .isThrownBy(() -> KitWaiversJson.read(DOCUMENT.replace(piece, spoilt)))
        .withMessageContaining(words);
  }
}
