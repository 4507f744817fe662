package dev.jetting.rules.json;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static dev.jetting.rules.TwoHundred.STANDARD;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Report;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.TwoHundred;
import dev.jetting.rules.render.ReportText;
import dev.jetting.rules.text.Wording;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A rule file brings its texts by language. */
class RuleFileTextsTest {

  private static final String FILE =
      """
      {
        "format": "jetting rule file",
        "schemaVersion": 1,
        "name": "shop",
        "version": "1",
        "rules": [
          {
            "id": "shop-main-jet",
            "title": "Main jet beyond the shelf",
            "rationale": "The shelf ends there.",
            "severity": "warning",
            "require": {"measure": "setting.mainJet", "atMost": "1.20 mm"},
            "message": "The main jet of {measured} is bigger than {limit}.",
            "remedy": "Order one above {limit}.",
            "texts": {
              "de": {
                "title": "Hauptdüse größer als im Regal",
                "rationale": "Dort endet das Regal.",
                "message": "Die Hauptdüse mit {measured} ist größer als {limit}.",
                "remedy": "Eine über {limit} bestellen."
              }
            }
          }
        ]
      }
      """;

  private static final RuleFile RULES = RuleFile.read(FILE);

  private static Report report() {
    return Rulebook.of("shop", "1", RULES.rules())
        .evaluate(AssessedSetting.of(TwoHundred.sheet(STANDARD, ALL_ROUND)));
  }

  @Test
  void page_hasTheTextsOfTheLanguage_withItsNumbers() {
    Wording german = Wording.of(Locale.GERMAN).with(RULES.texts(Locale.GERMANY));
    assertThat(ReportText.of(report(), german))
        .contains("Die Hauptdüse mit 1,26 mm ist größer als 1,20 mm.")
        .contains("Eine über 1,20 mm bestellen.");
    assertThat(RULES.rules().get(0).title(german)).isEqualTo("Hauptdüse größer als im Regal");
  }

  @Test
  void page_inALanguageThatTheFileDoesNotHave_keepsItsOwn() {
    assertThat(RULES.texts(Locale.ITALIAN)).isEmpty();
    assertThat(ReportText.of(report(), Wording.of(Locale.ITALIAN)))
        .contains("The main jet of 1,26 mm is bigger than 1,20 mm.");
    assertThat(ReportText.of(report())).contains("The main jet of 1.26 mm is bigger than 1.20 mm.");
  }

  /** What a rule is called in another language says nothing about its outcomes. */
  @Test
  void digest_isTheSameWithoutTheTexts() {
    RuleFile bare = RuleFile.read(FILE.replaceAll("(?s),\\s*\"texts\".*?}\\s*}\\s*}", "}"));
    assertThat(bare).isNotEqualTo(RULES);
    assertThat(Rulebook.of("shop", "1", bare.rules()).edition().digest())
        .isEqualTo(Rulebook.of("shop", "1", RULES.rules()).edition().digest());
  }

  @Test
  void file_isWrittenAndReadBackWithItsTexts() {
    assertThat(RuleFile.read(RULES.toJson())).isEqualTo(RULES);
    assertThat(RULES.toJson()).contains("Dort endet das Regal.");
  }

  @ParameterizedTest
  @CsvSource({
    "\"de\":, \"German\":, rules[0].texts.German",
    "mit {measured}, mit {mesured}, rules[0].texts.de.message",
    "Dort endet das Regal., ' ', rules[0].texts.de.rationale"
  })
  void texts_thatCannotBe_areRefusedWithTheirPlace(String part, String other, String place) {
    assertThatThrownBy(() -> RuleFile.read(FILE.replace(part, other)))
        .isInstanceOfSatisfying(
            JsonInputException.class, e -> assertThat(e.path()).contains(place));
    assertThat(List.of(FILE)).allMatch(file -> file.contains(part));
  }
}
