package dev.jetting.core.mixture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

class SensitivitiesTest {

  @Test
  void to_aSourceThatIsNotThere_isZero() {
    assertThat(new Sensitivities(Map.of()).to(ErrorSource.AIR)).isZero();
    assertThat(new Sensitivities(Map.of(ErrorSource.MAIN, -0.5)).to(ErrorSource.MAIN))
        .isEqualTo(-0.5);
  }

  @Test
  void bySource_isACopyThatNobodyCanChange() {
    Map<ErrorSource, Double> mine = new HashMap<>(Map.of(ErrorSource.MAIN, -0.5));
    Sensitivities slopes = new Sensitivities(mine);
    mine.put(ErrorSource.AIR, 1.0);

    assertThat(slopes.bySource()).containsExactly(Map.entry(ErrorSource.MAIN, -0.5));
    assertThatThrownBy(() -> slopes.bySource().put(ErrorSource.AIR, 1.0))
        .isInstanceOf(UnsupportedOperationException.class);
  }
}
