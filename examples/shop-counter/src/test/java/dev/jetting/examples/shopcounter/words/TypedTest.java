package dev.jetting.examples.shopcounter.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.jetting.units.RiderInput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TypedTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"de | 3 von oben", "de | 3 Von Oben", "it | 3 dall'alto", "en | 3 from top"},
      quoteCharacter = '"')
  void clip_isReadInTheLanguageOfThePage(String tag, String text) {
    assertThat(RiderInput.clip(Typed.plain(Words.of(tag), text), 5).grooveFromTop()).isEqualTo(3);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"de | 2,15 mm", "it | 2,15", "en | 2.15 mm", "de | 2.15"})
  void decimal_isReadWithTheMarkOfTheLanguage(String tag, String text) {
    assertThat(RiderInput.diameter(Typed.plain(Words.of(tag), text)).millimetres()).isEqualTo(2.15);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"de | 1½ Umdrehungen", "it | 1½ giri", "de | 1,5", "en | 1½ turns"})
  void turns_areReadInTheLanguageOfThePage(String tag, String text) {
    assertThat(RiderInput.turns(Typed.plain(Words.of(tag), text)).turns()).isEqualTo(1.5);
  }

  /** To a German 1.500 m are fifteen hundred, to an Englishman one and a half. */
  @ParameterizedTest
  @ValueSource(strings = {"1.500 m", "1,500 m"})
  void thousandsWithAMark_haveTwoMeanings(String text) {
    for (String tag : Words.LANGUAGES) {
      assertThatThrownBy(() -> Typed.large(Words.of(tag), text))
          .isInstanceOf(Refusal.class)
          .hasMessageContaining(text);
    }
  }

  @Test
  void height_withADecimal_isRead() {
    String typed = Typed.large(Words.of("de"), "900,5 m");
    assertThat(RiderInput.altitude(typed).metres()).isEqualTo(900.5);
  }
}
