package dev.jetting.examples.advicecount;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The short form of the count. */
class AdviceCountTest {

  @Test
  void count_ofAFewSettings_findsNoCircleNoNewDangerAndNoContradiction() {
    Counts counts = AdviceCount.count(6);

    assertThat(counts.cycles()).isZero();
    assertThat(counts.dangers()).isZero();
    assertThat(counts.bothWays()).isZero();
    assertThat(counts.missed()).isZero();
    assertThat(counts.document()).contains("| settings drawn | 200 | 6 |");
  }
}
