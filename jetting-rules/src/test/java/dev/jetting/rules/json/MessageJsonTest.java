package dev.jetting.rules.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.Report;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.advice.Adviser;
import dev.jetting.rules.render.ReportText;
import dev.jetting.rules.standard.RulePages;
import dev.jetting.rules.standard.StandardRulebook;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.rules.text.Wording;
import dev.jetting.units.Lambda;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The key and the typed values of a sentence stand in JSON beside its text. */
class MessageJsonTest {

  private static final ObjectMapper MAPPER = new ObjectMapper().registerModule(new JettingModule());

  private static final Finding FINDING =
      Finding.above(
              "setting.mainJet", Measure.ratio(2), Measure.ratio(1), ThrottleBand.eighths(6, 8))
          .with("throttle", Argument.throttle(ThrottleOpening.ofEighths(6)))
          .with("lambda", Argument.lambda(Lambda.of(1.08), Lambda.of(1.1)))
          .with("limit", Argument.lambda(Lambda.of(1.1)))
          .with("risk", Argument.risk(Probability.of(0.53), Probability.of(0.1)))
          .with("accepted", Argument.risk(Probability.of(0.1)))
          .says(
              Message.of("rule.lean-anywhere.finding"),
              Remedy.Aim.richer(ThrottleOpening.ofEighths(6), 0.1)
                  .saying(Message.of("rule.pilot-on-overrun.remedy")));

  @Test
  void finding_hasItsKeyAndTypedArgumentsBesideItsText() throws JsonProcessingException {
    JsonNode written = MAPPER.readTree(MAPPER.writeValueAsString(FINDING));
    assertThat(written.get("key").textValue()).isEqualTo("rule.lean-anywhere.finding");
    assertThat(written.get("message").textValue()).startsWith("At {throttle} the mixture is");
    assertThat(written.at("/attributes/throttle").textValue()).isEqualTo("3/4 throttle");
    assertThat(written.at("/arguments/throttle/amount/style").textValue()).isEqualTo("throttle");
    assertThat(written.at("/arguments/throttle/amount/value").doubleValue()).isEqualTo(0.75);
    assertThat(written.at("/arguments/risk/amount/beside").doubleValue()).isEqualTo(0.1);
    assertThat(written.at("/remedy/aim/words").textValue()).startsWith("Never ride down");
    assertThat(written.at("/remedy/aim/wordsMessage/key").textValue())
        .isEqualTo("rule.pilot-on-overrun.remedy");
    assertThat(MAPPER.readValue(written.toString(), Finding.class)).isEqualTo(FINDING);
  }

  @Test
  void everyKindOfArgument_isReadBack() throws JsonProcessingException {
    Message message =
        Message.plain("{a}{b}{c}{d}{e}{f}")
            .with("a", Argument.share(0.25))
            .with("b", Argument.measured(1.5, "mm"))
            .with("c", Argument.exact(19.5, "mm"))
            .with("d", Argument.name("slide-24"))
            .with("e", Argument.words(Message.of("sizes").with("count", Argument.count(1))))
            .with("f", Argument.items(List.of(Argument.word("side.leaner"), Argument.name("x"))));
    assertThat(MAPPER.readValue(MAPPER.writeValueAsString(message), Message.class))
        .isEqualTo(message);
  }

  /** What an older version wrote has no keys. */
  @Test
  void finding_withoutKeyAndArguments_hasItsAttributesAsNames() throws JsonProcessingException {
    var old = MAPPER.readTree(MAPPER.writeValueAsString(FINDING));
    ((ObjectNode) old).remove(List.of("key", "arguments"));
    Finding read = MAPPER.readValue(old.toString(), Finding.class);
    assertThat(read.text()).isEqualTo(FINDING.text());
    assertThat(read.attributes()).isEqualTo(FINDING.attributes());
    assertThat(read.words().key()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{}",
        "{\"name\": \"a\", \"exact\": {\"value\": 1, \"unit\": \"mm\"}}",
        "{\"amount\": {\"style\": \"throttle\", \"value\": 2}}",
        "{\"amount\": {\"style\": \"hue\", \"value\": 2}}"
      })
  void argument_ofNoKindOrOfAWrongNumber_isRefused(String json) {
    assertThatThrownBy(() -> MAPPER.readValue(json, Argument.class))
        .isInstanceOfAny(JsonProcessingException.class, IllegalArgumentException.class);
  }

  /** Each doubles the one inside: thirty of them would be a text of ten thousand million. */
  @Test
  void wordsThatGrow_areRefused() {
    String json = "{\"template\": \"0123456789\"}";
    for (int i = 0; i < 30; i++) {
      json = "{\"template\": \"{a}{a}\", \"arguments\": {\"a\": {\"words\": " + json + "}}}";
    }
    String grown = json;
    assertThatThrownBy(() -> MAPPER.readValue(grown, Message.class))
        .hasMessageContaining("characters: allowed at most ");
  }

  /** A report that was kept can be printed in a language that nobody thought of then. */
  @ParameterizedTest
  @ValueSource(strings = {"en", "de", "it"})
  void report_readBack_isPrintedInEachLanguageAsBefore(String language) {
    Report report =
        Adviser.of(StandardRulebook.rulebook())
            .advise(AssessedSetting.of(SheetJson.read(RulePages.baseSheet())));
    Wording wording = Wording.of(Locale.forLanguageTag(language));
    assertThat(ReportText.inFull(ReportJson.read(ReportJson.write(report)), wording))
        .isEqualTo(ReportText.inFull(report, wording));
  }
}
