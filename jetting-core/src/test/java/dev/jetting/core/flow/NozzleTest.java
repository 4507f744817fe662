package dev.jetting.core.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class NozzleTest {

  @Test
  void factor_goesFromClosedToOpen() {
    Nozzle nozzle = new Nozzle(0.1, 2.15, 0.86, 2, 0);

    assertThat(nozzle.factor(0)).isCloseTo(0.1, within(1e-15));
    assertThat(nozzle.factor(1)).isCloseTo(2.15, within(1e-15));
    assertThat(new Nozzle(0.1, 2.1, 1, 2, 0).factor(0.25)).isCloseTo(0.6, within(1e-15));
  }

  @Test
  void longerNeck_takesMostWhereTheSlideIsLow_andNothingWhenItIsUp() {
    Nozzle flush = new Nozzle(0.1, 2.15, 0.86, 2, 0);
    Nozzle longer = new Nozzle(0.1, 2.15, 0.86, 2, 0.1);

    // By hand: 1 − 2 · 0.1 · (1 − u)².
    assertThat(longer.factor(0.1) / flush.factor(0.1)).isCloseTo(0.838, within(1e-12));
    assertThat(longer.factor(0.5) / flush.factor(0.5)).isCloseTo(0.95, within(1e-12));
    assertThat(longer.factor(1)).isEqualTo(flush.factor(1));
  }

  @Test
  void neckOutOfTheStream_feelsNothing_butNeverLess() {
    assertThat(new Nozzle(0.1, 2.15, 0.86, 20, 1).factor(0.2)).isZero();
  }
}
