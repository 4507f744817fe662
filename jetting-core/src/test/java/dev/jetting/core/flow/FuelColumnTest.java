package dev.jetting.core.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class FuelColumnTest {

  private static final FuelColumn COLUMN = new FuelColumn(0.030, 0.003, 2);

  /** By hand: a main jet of 1.23 mm, 25 mm of 2.67 mm, 3 mm round a needle of 1.83 mm. */
  @Test
  void column_isThatOfTheThreeParts() {
    double jet = 2 * 1.23e-3 / disc(1.23e-3);
    double below = 25e-3 / disc(2.67e-3);
    double ring = 3e-3 / (disc(2.67e-3) - disc(1.83e-3));
    assertThat(COLUMN.lengthByArea(0.030)).isCloseTo(jet + below + ring, within(1e-9 * below));
  }

  /** The needle thins with the lift, so the ring widens and the column is lighter. */
  @Test
  void lift_makesTheColumnLighter() {
    assertThat(COLUMN.lengthByArea(0.002))
        .isGreaterThan(1.2 * COLUMN.lengthByArea(0.015))
        .isFinite();
    assertThat(COLUMN.lengthByArea(0.015)).isGreaterThan(COLUMN.lengthByArea(0.030));
  }

  private static double disc(double diameter) {
    return Math.PI / 4 * diameter * diameter;
  }
}
