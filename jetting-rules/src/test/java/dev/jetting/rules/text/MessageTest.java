package dev.jetting.rules.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Collections;
import org.junit.jupiter.api.Test;

/** However a message is put together, its text is not much longer than its parts. */
class MessageTest {

  private static Message twice(Message inner) {
    return Message.plain("{a}{a}").with("a", Argument.words(inner));
  }

  @Test
  void wordsTwiceInWordsTwiceInWords_areRefusedBeforeTheyAreLong() {
    Message fourfold = twice(twice(Message.plain("x".repeat(20))));
    assertThat(fourfold.text()).hasSize(80);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> twice(twice(twice(twice(fourfold)))))
        .withMessageContaining("characters: allowed at most ")
        .withMessageContaining(", of a template and values with ");
  }

  @Test
  void valueShownAgainAndAgain_isRefused() {
    Message many = Message.plain("{a}".repeat(40));
    assertThat(many.with("a", Argument.name("x")).text()).hasSize(40);
    Argument name = Argument.name("x".repeat(200));
    assertThatIllegalArgumentException().isThrownBy(() -> many.with("a", name));
    assertThat(Message.plain("{a}".repeat(10)).with("a", name).text()).hasSize(2000);
  }

  @Test
  void textLongerThanThirtyThousandCharacters_isRefused() {
    Argument items = Argument.items(Collections.nCopies(4, Argument.name("x".repeat(8000))));
    Message message = Message.plain("{a}");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> message.with("a", items))
        .withMessageContaining("allowed at most 30000");
  }

  @Test
  void wordsElevenDeep_areRefused() {
    Message deep = Message.plain("x");
    for (int i = 0; i < 10; i++) {
      deep = Message.plain("{a}").with("a", Argument.words(deep));
    }
    Argument deepest = Argument.words(deep);
    assertThat(deep.text()).isEqualTo("x");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Message.plain("{a}").with("a", deepest))
        .withMessage("words in others 11 deep: allowed at most 10");
  }

  /** A value is data: no placeholder in it is filled, and no backslash or dollar is read. */
  @Test
  void placeholderInAValue_staysAsItIs() {
    assertThat(
            Message.plain("{a} {b} %s {missing}")
                .with("a", Argument.name("{b}$1\\ %n"))
                .with("b", Argument.name("x"))
                .text())
        .isEqualTo("{b}$1\\ %n x %s {missing}");
  }
}
