package dev.jetting.rules.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.ListResourceBundle;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WordingTest {

  private static final Message AIM =
      Message.of("remedy.aim.richer")
          .with("change", Argument.change(0.05))
          .with("throttle", Argument.throttle(ThrottleOpening.ofEighths(1)));

  @Test
  void message_isEnglishUnlessTheCallerNamesAWording() {
    assertThat(AIM.text()).isEqualTo("λ must fall by 5 % at 1/8 throttle.").hasToString(AIM.text());
    assertThat(Wording.of(Locale.GERMANY).text(AIM)).isEqualTo("Bei 1/8 Gas muss λ um 5 % sinken.");
    assertThat(Wording.of(Locale.forLanguageTag("it-CH")).text(AIM))
        .isEqualTo("A 1/8 di gas λ deve scendere di 5 %.");
  }

  /** Locales that print other digits, or fold case in their own way. */
  @ParameterizedTest
  @ValueSource(strings = {"ar-EG-u-nu-arab", "de-DE", "tr-TR", "th-TH-u-ca-buddhist-nu-thai"})
  void locale_ofTheMachinePlaysNoPart(String machine) {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag(machine));
      message_isEnglishUnlessTheCallerNamesAWording();
      assertThat(Message.named("unit", "TURNS IN").key()).isEqualTo("unit.turns-in");
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void language_thatTheLibraryDoesNotHave_isRefusedWithThoseThatItHas() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Wording.of(Locale.FRENCH))
        .withMessageContaining("\"fr\"")
        .withMessageContaining("en, de, it");
    assertThat(Wording.languages()).containsExactly(Locale.ENGLISH, Locale.GERMAN, Locale.ITALIAN);
  }

  @Test
  void shop_replacesWords() {
    Wording ours =
        Wording.of(Locale.GERMAN)
            .with(Map.of("remedy.aim.richer", "Bei {throttle} um {change} anfetten."));
    assertThat(ours.text(AIM)).isEqualTo("Bei 1/8 Gas um 5 % anfetten.");
    assertThat(ours.text(Message.of("side.leaner"))).isEqualTo("magerer");
  }

  @Test
  void shop_addsALanguageThatTakesTheRestFromEnglish() {
    Wording french =
        Wording.of(
            Locale.FRENCH,
            Map.of(
                "number.point",
                ",",
                "throttle.part",
                "{number} des gaz",
                "side.leaner",
                "plus pauvre"));
    assertThat(french.text(Message.of("side.leaner"))).isEqualTo("plus pauvre");
    assertThat(french.text(AIM)).isEqualTo("λ must fall by 5 % at 1/8 des gaz.");
    assertThat(french.has(AIM)).isFalse();
    assertThat(french.has(Message.of("side.leaner"))).isTrue();
    assertThat(french).hasToString("fr");
  }

  @Test
  void shop_bringsAResourceBundle() {
    var bundle =
        new ListResourceBundle() {
          @Override
          protected Object[][] getContents() {
            return new Object[][] {{"side.leaner", "zu mager"}};
          }
        };
    assertThat(Wording.of(Locale.GERMAN).with(bundle).text(Message.of("side.leaner")))
        .isEqualTo("zu mager");
  }

  @Test
  void shop_thatShowsAValueWhichTheLibraryDoesNotGive_isRefused() {
    Wording german = Wording.of(Locale.GERMAN);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> german.with(Map.of("remedy.aim.richer", "{lambda} bei {throttle}")))
        .withMessage("text of remedy.aim.richer that shows {lambda}: allowed [change, throttle]");
  }

  /** A wording may say it otherwise; it may not be silent about what was waived or changed. */
  @ParameterizedTest
  @CsvSource({
    "verdict.by-waiver, Alles gut mit {accepted}., {waived}",
    "verdict.as-of, ': {dangers}', {day}",
    "verdict.danger-accepted, '{rule}, {measured}, {waiver}', {subject}",
    "verdict.rulebook, Gut so., {changes}",
    "rulebook.changed, {rulebook}, {changes}",
    "versions, {model} {rulebook}, {digest}",
    "waiver.up-to, '{ceiling}, {author}{until}', {reason}",
    "notice.bold, Nur {usual}., {risk}"
  })
  void shop_thatLeavesOutWhatAVerdictRestsOn_isRefused(String key, String words, String missing) {
    Wording german = Wording.of(Locale.GERMAN);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> german.with(Map.of(key, words)))
        .withMessageStartingWith("text of " + key + " without " + missing + ": allowed texts");
  }

  @ParameterizedTest
  @ValueSource(strings = {"a\u202eb", "a\nb", "\u001b[31m", "\u2028", "\ud800"})
  void shop_thatSteersATerminal_isRefused(String words) {
    Wording german = Wording.of(Locale.GERMAN);
    for (String key : List.of("side.leaner", "shop.own")) {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> german.with(Map.of(key, words)))
          .withMessageStartingWith("text of " + key + " with the character U+")
          .satisfies(
              e -> assertThat(e.getMessage()).doesNotContainPattern("[\\p{Cntrl}\\p{Cf}\\p{Zl}]"));
    }
  }

  @Test
  void shop_thatIsSilentOrEndless_isRefused() {
    Wording german = Wording.of(Locale.GERMAN);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> german.with(Map.of("side.leaner", " ")))
        .withMessage("text of side.leaner is blank: allowed any text");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> german.with(Map.of("shop.own", "x".repeat(10_001))))
        .withMessage("text of shop.own of 10001 characters: allowed at most 10000");
  }

  @Test
  void shop_hasSentencesOfItsOwn() {
    Message own =
        Message.of("shop.reserve", "Only {left} left.").with("left", Argument.share(0.04));
    Wording german = Wording.of(Locale.GERMAN).with(Map.of("shop.reserve", "Nur {left} übrig."));
    assertThat(own.text()).isEqualTo("Only 4 % left.");
    assertThat(german.text(own)).isEqualTo("Nur 4 % übrig.");
    assertThat(Wording.of(Locale.ITALIAN).text(own)).isEqualTo("Only 4 % left.");
  }

  /** A report of another version may have another sentence under a key. */
  @Test
  void message_ofAnotherSentence_keepsItsOwn() {
    Message other = Message.of("side.leaner", "a touch leaner");
    assertThat(Wording.of(Locale.GERMAN).text(other)).isEqualTo("a touch leaner");
    assertThat(Wording.of(Locale.GERMAN).has(other)).isFalse();
  }

  @Test
  void count_choosesSingularOrPlural() {
    Message sizes = Message.of("sizes");
    Message one = sizes.with(Message.COUNT, Argument.count(1));
    Message three = sizes.with(Message.COUNT, Argument.count(3));
    assertThat(List.of(one.text(), three.text())).containsExactly("a size", "3 sizes");
    Wording german = Wording.of(Locale.GERMAN);
    assertThat(List.of(german.text(one), german.text(three)))
        .containsExactly("eine Größe", "3 Größen");
    Wording italian = Wording.of(Locale.ITALIAN);
    assertThat(List.of(italian.text(one), italian.text(three)))
        .containsExactly("una misura", "3 misure");
  }

  @Test
  void joined_leavesOutWhatIsEmpty() {
    Message a = Message.plain("A.");
    Message none = Message.plain("");
    assertThat(Message.joined(List.of(none, a))).isEqualTo(a);
    assertThat(Message.joined(List.of(a, none, AIM)).text())
        .isEqualTo("A. λ must fall by 5 % at 1/8 throttle.");
    assertThat(Message.joined(List.of()).isEmpty()).isTrue();
  }

  @Test
  void textFromOutside_isNeverAFormat() {
    Message message = Message.plain("{a} {b}").with("a", Argument.name("{b} $1 \\ %s"));
    assertThat(message.text()).isEqualTo("{b} $1 \\ %s {b}");
  }

  @ParameterizedTest
  @ValueSource(strings = {"Upper", "two words", "a..b", ".a", "a-"})
  void key_ofAnotherForm_isRefused(String key) {
    assertThatIllegalArgumentException().isThrownBy(() -> Message.of(key, "x"));
  }
}
