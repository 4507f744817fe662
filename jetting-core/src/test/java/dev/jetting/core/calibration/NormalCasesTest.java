package dev.jetting.core.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.core.calibration.NormalCases.Case;
import java.util.List;
import org.junit.jupiter.api.Test;

class NormalCasesTest {

  private static final NormalCases TWO =
      new NormalCases(List.of(new Case(0.25, new Normal(-3, 1)), new Case(0.75, new Normal(1, 2))));

  @Test
  void meanAndDeviation_areThoseOfTheWhole() {
    // By hand: the mean is 0; the variance ¼ (1 + 9) + ¾ (4 + 1) = 6.25.
    assertThat(TWO.mean()).isCloseTo(0, within(1e-15));
    assertThat(TWO.deviation()).isCloseTo(2.5, within(1e-15));
  }

  @Test
  void above_isTheSumOverTheCases() {
    // By hand from the table of the normal distribution: ¼ P(Z > 4) + ¾ P(Z > 0) at 1, where
    // P(Z > 4) is 3.167e-5.
    assertThat(TWO.above(1)).isCloseTo(0.25 * 3.167e-5 + 0.375, within(1e-9));
  }

  @Test
  void plus_addsVariances() {
    assertThat(new Normal(1, 2).plus(5)).isEqualTo(new Normal(1, 3));
  }

  @Test
  void probabilities_thatDoNotMakeOne_areRefused() {
    Normal normal = new Normal(0, 1);
    for (List<Case> wrong :
        List.of(
            List.<Case>of(),
            List.of(new Case(0.5, normal)),
            List.of(new Case(0.75, normal), new Case(0.5, normal)))) {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> new NormalCases(wrong))
          .withMessageContaining("probabilities of the cases, sum")
          .withMessageContaining("allowed 1");
    }
  }

  @Test
  void probability_thatIsNone_isRefused() {
    for (double wrong : new double[] {0, -0.5, 1.5, Double.NaN}) {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> new Case(wrong, new Normal(0, 1)))
          .withMessageStartingWith("probability of a case");
    }
  }
}
