package dev.jetting.examples.quickstart;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ColourTest {

  @Test
  void of_addsNothingButEscapes() {
    String text = Run.with().out();
    String coloured = Colour.of(text);
    assertThat(coloured).isNotEqualTo(text).contains("\u001b[1;38;5;202mDANGER\u001b[0m");
    assertThat(coloured.replaceAll("\u001b\\[[0-9;]*m", "")).isEqualTo(text);
  }

  @Test
  void of_partOfAWord_isLeftAlone() {
    assertThat(Colour.of("CLEANER, λ 0.9")).isEqualTo("CLEANER, λ 0.9");
  }
}
