package dev.jetting.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import org.junit.jupiter.api.Test;

class SentenceTest {

  @Test
  void values_areTyped_andShownAsTheyAreTypedIn() {
    Sentence range =
        Sentence.of("error.from-to").with("low", 0.5).with("high", new Sentence.Amount(10, "mm"));

    assertThat(range).hasToString("from 0.5 to 10 mm");
    assertThat(range.arguments())
        .containsEntry("low", 0.5)
        .containsEntry("high", new Sentence.Amount(10, "mm"));
    assertThat(Sentence.of("error.at-most").with("most", 5).arguments()).containsEntry("most", 5L);
    assertThat(Sentence.of("error.at-most").with("most", JetBore.ofMillimetres(1)).arguments())
        .containsEntry("most", JetBore.ofMillimetres(1));
    assertThat(Sentence.of("error.at-most").with("most", ScrewKind.AIR).arguments())
        .containsEntry("most", ScrewKind.AIR.toString());
  }

  @Test
  void sentences_standInOthers() {
    Sentence refused =
        Sentence.refused(
            Sentence.value(Sentence.name("jet bore"), "\"x\""), Sentence.of("error.finite"));

    assertThat(refused).hasToString("jet bore \"x\": allowed a finite number");
    assertThat(refused.part("allowed")).contains(Sentence.of("error.finite"));
    assertThat(refused.part("none")).isEmpty();
    assertThat(Sentence.of("error.at-most").with("most", 5).part("most")).isEmpty();
  }

  @Test
  void lists_areShownWithCommasOrWithOr() {
    assertThat(Sentence.of("error.decimal.with").with("units", List.of("mm", "m")))
        .hasToString("a decimal number with mm, m");
    assertThat(Sentence.or(List.of("a"))).hasToString("a");
    assertThat(Sentence.or(List.of("a", "b"))).hasToString("a or b");
    assertThat(Sentence.or(List.of("a", "b", "c"))).hasToString("a or b or c");
    assertThat(Sentence.or(List.of("a", "b", "c", "d"))).hasToString("a or b or c or d");
    assertThat(Sentence.oneOf(List.of("a"))).hasToString("a");
    assertThat(Sentence.oneOf(List.of("a", "b", "c"))).hasToString("a, b or c");
  }

  @Test
  void textOfOthers_staysOnOneLine_andFillsNoSlot() {
    assertThat(Sentence.of("error.value").with("what", "{value}\n").with("value", "$1"))
        .hasToString("{value}\\u000a $1");
    assertThat(Sentence.plain("{low}\u202e")).hasToString("{low}\\u202e");
  }

  @Test
  void nameWithoutWords_isPlain() {
    assertThat(Sentence.name("engine speed").key()).isEqualTo("error.name.engine-speed");
    assertThat(Sentence.name("length of a beard").key()).isEmpty();
    assertThat(Sentence.name("length of a beard")).hasToString("length of a beard");
  }

  @Test
  void unknownKey_isRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Sentence.of("error.no-such"))
        .withMessageContaining("error.no-such");
  }

  @Test
  void valueWithoutAPlace_isRefused() {
    Sentence range = Sentence.of("error.from-to");

    assertThatIllegalArgumentException()
        .isThrownBy(() -> range.with("most", 1))
        .withMessage("value most of the sentence \"from {low} to {high}\": allowed low, high");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Sentence.plain("{low}").with("low", 1))
        .withMessage("value low of the sentence \"{low}\": allowed none");
  }

  @Test
  void orOfNothing_isRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Sentence.or(List.of()))
        .withMessage("values of a sentence with \"or\": none, allowed at least one");
    assertThatIllegalArgumentException().isThrownBy(() -> Sentence.oneOf(List.of()));
  }

  @Test
  void equalSentences_areEqual() {
    assertThat(Sentence.of("error.at-most").with("most", 5))
        .isEqualTo(Sentence.of("error.at-most").with("most", 5L))
        .hasSameHashCodeAs(Sentence.of("error.at-most").with("most", 5L))
        .isNotEqualTo(Sentence.of("error.at-most").with("most", 6))
        .isNotEqualTo(Sentence.of("error.up-to").with("most", 5));
  }

  /** Each quantity's name has a key, so that other languages have words for it. */
  @Test
  void everyQuantity_hasAKeyForItsName() {
    assertThat(QuantityCatalogue.ALL)
        .allSatisfy(
            law -> {
              QuantityException e =
                  catchThrowableOfType(
                      QuantityException.class, () -> law.parse().apply("no quantity"));
              assertThat(Sentence.name(e.quantity()).key()).startsWith("error.name.");
              assertThat(e.sentence()).hasToString(e.getMessage());
            });
  }

  @Test
  void errorOfOthers_saysItsMessage() {
    assertThat(Refusal.of(new IllegalStateException("odd"))).isEqualTo(Sentence.plain("odd"));
  }

  @Test
  void fieldOfAValue_canBeLeftOut() {
    InvalidValueException e =
        InvalidValueException.at("setting.mainJet", "9 mm", Sentence.of("error.finite"));

    assertThat(e).hasMessage("setting.mainJet 9 mm: allowed a finite number");
    assertThat(e.withoutField()).hasToString("9 mm: allowed a finite number");
    assertThat(e.field()).isEqualTo("setting.mainJet");
    assertThat(e.value()).isEqualTo("9 mm");
    assertThat(e.problem()).isEqualTo("9 mm");
    assertThat(e.allowed()).isEqualTo("a finite number");
  }

  @Test
  void ownWords_areTheSameInEveryLanguage() {
    InvalidValueException e = InvalidValueException.of("size of a sidecar", "3 m", "at most 2 m");

    assertThat(e).hasMessage("size of a sidecar 3 m: allowed at most 2 m");
    assertThat(e.value()).isEqualTo("3 m");
    assertThat(e.withoutField()).isEqualTo(e.sentence());
  }
}
