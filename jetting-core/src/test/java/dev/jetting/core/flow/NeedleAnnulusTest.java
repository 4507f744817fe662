package dev.jetting.core.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NeedleAnnulusTest {

  private static final double JET = 2.66e-3;
  private static final double LENGTH = 3e-3;
  private static final double DENSITY = 740;
  private static final double VISCOSITY = 5e-4;

  /**
   * Laminar flow between two cylinders, exact: Darcy's f times Re on the hydraulic diameter is 64
   * (1−k)²/(1 + k² − (1−k²)/ln(1/k)), k the ratio of the radii (White, Viscous Fluid Flow, from
   * memory; {@link #exactFriction_isThatOfTheVelocityProfile} derives it again). The narrow gap has
   * the limit of k = 1, which is 96.
   */
  private static double exactFriction(double k) {
    return 64 * (1 - k) * (1 - k) / (1 + k * k - (1 - k * k) / Math.log(1 / k));
  }

  @ParameterizedTest
  @CsvSource({"0.5, 95.250", "0.9, 95.982"})
  void exactFriction_isThePublished(double k, double published) {
    // White, Viscous Fluid Flow, laminar concentric annulus (from memory).
    assertThat(exactFriction(k)).isCloseTo(published, within(5e-4));
  }

  @ParameterizedTest
  @CsvSource({"0.5", "0.9", "0.94"})
  void exactFriction_isThatOfTheVelocityProfile(double k) {
    // (r u')' = −r between u(k) = 0 and u(1) = 0, by finite differences on 4000 steps.
    int n = 4000;
    double h = (1 - k) / n;
    double[] upper = new double[n + 1];
    double[] right = new double[n + 1];
    for (int i = 1; i < n; i++) {
      double r = k + i * h;
      double below = r - h / 2;
      double above = r + h / 2;
      double pivot = -(below + above) - below * upper[i - 1];
      upper[i] = above / pivot;
      right[i] = (-r * h * h - below * right[i - 1]) / pivot;
    }
    double flow = 0;
    double u = 0;
    for (int i = n - 1; i > 0; i--) {
      u = right[i] - upper[i] * u;
      flow += 2 * u * (k + i * h) * h;
    }
    double mean = flow / (1 - k * k);
    // With dp/dx and μ of one: f Re = 2 D_h²/mean, D_h = 2 (1 − k) in outer radii.
    double friction = 2 * Math.pow(2 * (1 - k), 2) / mean;

    assertThat(friction / exactFriction(k)).isCloseTo(1, within(1e-6));
  }

  /** 96 against the exact factor: from the design of the needle in its jet to a bare half. */
  @ParameterizedTest
  @CsvSource({"0.98, 0.001", "0.94, 0.007", "0.9, 0.019", "0.8, 0.083", "0.5, 0.788"})
  void narrowGap_isThisMuchTooStiff(double k, double percent) {
    double area = Math.PI / 4 * JET * JET * (1 - k * k);
    double hydraulic = JET * (1 - k);
    double exact = exactFriction(k) * VISCOSITY * LENGTH / (2 * hydraulic * hydraulic * area);

    double ratio = centred().restriction(JET, k * JET, DENSITY, VISCOSITY).beta() / exact;
    assertThat(100 * (ratio - 1)).isCloseTo(percent, within(1e-3));
    assertThat(ratio).isCloseTo(96 / exactFriction(k), within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"0.3", "0.95", "1"})
  void eccentricity_easesTheFlow_asTheMeanCubeOfTheGap(double e) {
    // Each strip of a narrow gap passes as the cube of its width, which is g (1 + e cos φ).
    double meanCube =
        IntStream.range(0, 360)
            .mapToDouble(i -> Math.pow(1 + e * Math.cos(Math.toRadians(i)), 3))
            .average()
            .orElseThrow();
    double centred = centred().restriction(JET, 2.5e-3, DENSITY, VISCOSITY).beta();
    double aside =
        new NeedleAnnulus(LENGTH, 1.05, e).restriction(JET, 2.5e-3, DENSITY, VISCOSITY).beta();

    assertThat(centred / aside).isCloseTo(meanCube, within(1e-12));
  }

  @Test
  void entryLoss_isThatOfAnOrificeOfTheRing() {
    double area = Math.PI / 4 * (JET * JET - 2.5e-3 * 2.5e-3);

    // One velocity head times K: Δp = K ρ V²/2.
    double alpha = centred().restriction(JET, 2.5e-3, DENSITY, VISCOSITY).alpha();
    assertThat(alpha / (1.05 * DENSITY / 2 / area / area)).isCloseTo(1, within(1e-12));
  }

  @Test
  void needleThatFillsTheJet_closesIt() {
    Restriction closed = centred().restriction(JET, JET, DENSITY, VISCOSITY);

    assertThat(closed.flow(1000)).isZero();
    assertThat(closed.then(new Restriction(1, 1)).passing(1.1).flow(1000)).isZero();
  }

  private static NeedleAnnulus centred() {
    return new NeedleAnnulus(LENGTH, 1.05, 0);
  }
}
