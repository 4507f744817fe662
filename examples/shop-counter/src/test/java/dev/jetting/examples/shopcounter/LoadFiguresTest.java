package dev.jetting.examples.shopcounter;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.examples.shopcounter.load.LoadFigures;
import java.time.Duration;
import org.junit.jupiter.api.Test;

class LoadFiguresTest {

  @Test
  void measure_answersEachKindOfRequest() throws Exception {
    assertThat(LoadFigures.measure(Duration.ofMillis(1)))
        .hasSize(5)
        .allSatisfy((what, figure) -> assertThat(figure.perSecond()).isPositive());
  }
}
