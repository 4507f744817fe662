package dev.jetting.rules.json;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.text.Message;
import dev.jetting.rules.text.Wording;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Measures and conditions of rule files in each language. */
class MeasureWordsTest {

  private static final Path ENGLISH =
      Path.of("src/main/resources/dev/jetting/rules/text/measures_en.properties");

  @Test
  void everyMeasure_hasWordsInEachLanguage_andNoOther() throws IOException {
    Set<Message> measures =
        MeasureDefinitions.all().stream()
            .map(definition -> Message.named("measure", definition.words()))
            .collect(Collectors.toSet());

    for (Locale language : Wording.languages()) {
      assertThat(measures).allMatch(Wording.of(language)::has);
    }
    assertThat(measures)
        .extracting(message -> message.key() + "=" + message.template())
        .containsExactlyInAnyOrderElementsOf(
            Files.readAllLines(ENGLISH, UTF_8).stream()
                .filter(line -> line.startsWith("measure."))
                .toList());
  }

  @Test
  void condition_isPrintedInEachLanguage() {
    Condition.Source risk =
        new Condition.Source(
            (MeasureDefinition.Numeric) MeasureDefinitions.named("mixture.leanRisk").orElseThrow(),
            Take.HIGHEST,
            ThrottleBand.WHOLE);
    MeasureDefinition.Word carburettor =
        (MeasureDefinition.Word) MeasureDefinitions.named("setting.carburettor.id").orElseThrow();
    Message words =
        new Condition.All(
                List.of(
                    new Condition.Bound(risk, true, new Condition.Fixed(0.125)),
                    new Condition.OneOf(carburettor, List.of("slide-24", "slide-30"))))
            .words();

    assertThat(words.text())
        .isEqualTo(
            "(highest lean risk at any throttle at most 12.5 % and"
                + " carburettor is slide-24 or slide-30)");
    assertThat(Wording.of(Locale.GERMAN).text(words))
        .isEqualTo(
            "(Magerrisiko (größter Wert im ganzen Gasbereich) höchstens 12,5 % und"
                + " Vergaser ist slide-24 oder slide-30)");
  }
}
