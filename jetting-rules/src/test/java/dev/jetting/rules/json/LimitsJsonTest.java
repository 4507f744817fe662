package dev.jetting.rules.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.jetting.core.parts.Coefficient;
import dev.jetting.rules.standard.StandardRulebook;
import java.util.Map;
import org.junit.jupiter.api.Test;

class LimitsJsonTest {

  static final String DOCUMENT =
      """
      {
        "format": "jetting rule limits",
        "schemaVersion": 1,
        "limits": {
          "float valve capacity by full-throttle flow": {
            "value": 1.5,
            "unit": "1",
            "origin": "assumed",
            "note": "our hoses are long"
          }
        }
      }
      """;

  @Test
  void read_isTheOppositeOfWrite_andFollowsTheSchema() {
    Map<String, Coefficient> limits = LimitsJson.read(DOCUMENT);

    assertThat(limits)
        .containsEntry(
            "float valve capacity by full-throttle flow",
            Coefficient.assumed(1.5, "1", "our hoses are long"));
    assertThat(LimitsJson.write(limits)).isEqualTo(DOCUMENT);
    assertThat(Validators.RULE_LIMITS.complaints(DOCUMENT)).isEmpty();
  }

  @Test
  void limitsOfTheStandardRulebook_areADocument_thatChangesNothing() {
    var standard = StandardRulebook.rulebook();

    String json = LimitsJson.write(standard.assumptions());

    assertThat(Validators.RULE_LIMITS.complaints(json)).isEmpty();
    assertThat(standard.withLimits(LimitsJson.read(json)).edition()).isEqualTo(standard.edition());
  }

  @Test
  void read_ofAnotherDocument_isRefusedWithThePlace() {
    assertThatThrownBy(() -> LimitsJson.read(DOCUMENT.replace("1.5,", "\"much\",")))
        .isInstanceOf(JsonInputException.class)
        .hasMessageContaining("$.limits")
        .hasMessageContaining("a finite number");
    assertThatThrownBy(() -> LimitsJson.read(DOCUMENT.replace("rule limits", "kit")))
        .hasMessageContaining("jetting rule limits");
  }
}
