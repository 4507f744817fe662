package dev.jetting.rules.json;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import dev.jetting.rules.Ceiling;
import dev.jetting.rules.Measure;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.Waiver;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringReader;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class WaiversJsonTest {

  static final String DOCUMENT =
      """
      {
        "format": "jetting waivers",
        "schemaVersion": 1,
        "waivers": [
          {
            "ruleId": "lean-anywhere",
            "subject": "setting.mainJet",
            "author": "A. Weaver",
            "reason": "Ridden below half until the jet arrives.",
            "expires": "2027-03-31",
            "accepted": {
              "engine": "standard 180",
              "carburettor": "28 mm slide carburettor",
              "measured": {
                "value": 0.125,
                "unit": "lean risk"
              },
              "band": {
                "from": 0.75,
                "to": 1.0
              }
            }
          },
          {
            "ruleId": "clip-at-end",
            "subject": "setting.clip",
            "author": "A. Weaver",
            "reason": "The needle is on order."
          }
        ]
      }
      """;

  private static final List<Waiver> WAIVERS =
      List.of(
          new Waiver(
              "lean-anywhere",
              "setting.mainJet",
              "A. Weaver",
              "Ridden below half until the jet arrives.",
              Optional.of(LocalDate.of(2027, 3, 31)),
              Optional.of(
                  new Ceiling(
                      "standard 180",
                      "28 mm slide carburettor",
                      new Measure(0.125, Measure.LEAN_RISK),
                      ThrottleBand.eighths(6, 8)))),
          Waiver.ofRule("clip-at-end")
              .on("setting.clip")
              .by("A. Weaver")
              .because("The needle is on order."));

  @Test
  void read_isTheOppositeOfWrite_andFollowsTheSchema() throws IOException {
    assertThat(WaiversJson.read(DOCUMENT)).isEqualTo(WAIVERS);
    assertThat(WaiversJson.read(new StringReader(DOCUMENT))).isEqualTo(WAIVERS);
    assertThat(WaiversJson.read(new ByteArrayInputStream(DOCUMENT.getBytes(UTF_8))))
        .isEqualTo(WAIVERS);
    assertThat(WaiversJson.write(WAIVERS)).isEqualTo(DOCUMENT);
    assertThat(Validators.WAIVERS.complaints(DOCUMENT)).isEmpty();
  }

  @Test
  void wrongDocument_isRefusedWithThePlace() {
    refused("\"2027-03-31\"", "\"soon\"", "$.waivers[0]: expires \"soon\"");
    refused("\"A. Weaver\"", "\" \"", "$.waivers[0].author");
    refused("\"engine\"", "\"motor\"", "$.waivers[0].accepted.motor: unknown field \"motor\"");
    refused("jetting waivers", "jetting kit waivers", "\"jetting waivers\"");
  }

  private static void refused(String piece, String spoilt, String words) {
    String document = DOCUMENT.replace(piece, spoilt);
    assertThatExceptionOfType(JsonInputException.class)
        .isThrownBy(() -> WaiversJson.read(document))
        .withMessageContaining(words);
  }
}
