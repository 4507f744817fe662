package dev.jetting.core.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The limits of the fuel's inertia, and what lies between them. */
class PulsedFlowTest {

  private static final double ALPHA = 1e15;
  private static final double BETA = 4e7;
  private static final double PEAK = 6000;
  private static final double SHARE = 0.35;
  private static final Restriction PATH = new Restriction(ALPHA, BETA);

  @Test
  void fuelWithoutInertia_followsTheWave() {
    assertThat(flow(0)).isCloseTo(SHARE * PATH.flow(PEAK), within(1e-18));
  }

  /** The weight nears 1 with the square of the inertia. */
  @Test
  void fuelWithEndlessInertia_feelsTheMean() {
    double mean = PATH.flow(SHARE * PEAK);
    assertThat(flow(1e13)).isCloseTo(mean, within(1e-6 * mean));
  }

  /**
   * The column's own equation under a square wave, without friction: towards the wave's flow by
   * tanh, back by a hyperbola, in closed form by separation of variables; the turn that repeats is
   * found by trying many. Its edges are sharper than those of any wave of the cycle, for which the
   * weight was set: hence 8 per cent.
   */
  @ParameterizedTest
  @ValueSource(doubles = {2e8, 1e9, 3e9})
  void fuelBetween_isNearTheColumnUnderASquareWave(double inertia) {
    double settled = Math.sqrt(PEAK / ALPHA);
    double rate = Math.sqrt(ALPHA * PEAK) / inertia;
    double flow = 0;
    double volume = 0;
    for (int turn = 0; turn < 2000; turn++) {
      double phase = atanh(Math.min(flow / settled, 1 - 1e-15));
      double end = phase + rate * SHARE;
      volume = settled / rate * Math.log(Math.cosh(end) / Math.cosh(phase));
      double top = settled * Math.tanh(end);
      double fall = ALPHA * top / inertia * (1 - SHARE);
      volume += inertia / ALPHA * Math.log1p(fall);
      flow = top / (1 + fall);
    }
    double closed = PulsedFlow.flow(ALPHA, 0, SHARE, PEAK, SHARE * PEAK, inertia);
    assertThat(closed / volume).isCloseTo(1, within(0.08));
  }

  /**
   * A stream 1 + k sin t that does not turn back: fuel that follows at once is as rich as under the
   * steady stream, fuel that feels the mean richer by √(1 + k²/2). Known of carburettors of
   * single-cylinder engines (from memory), and derived: suction is as the square of the stream.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0.3, 0.7, 1})
  void fuelUnderASineStream_isRicherByTheInertialLimit(double k) {
    double mean = (1 + k * k / 2) * PEAK;
    double share = PEAK / mean; // of the square wave with the same mean and mean root
    double steady = new Restriction(ALPHA, 0).flow(PEAK);

    double quick = PulsedFlow.flow(ALPHA, 0, share, mean / share, mean, 0);
    double slow = PulsedFlow.flow(ALPHA, 0, share, mean / share, mean, 1e13);

    assertThat(quick / steady).isCloseTo(1, within(1e-9));
    assertThat(slow / steady).isCloseTo(Math.sqrt(1 + k * k / 2), within(1e-6));
  }

  /**
   * Where the two limits meet, the flow over the head has no edge: over a small step its curvature
   * is nothing beside its slope. With an edge the two would be alike at every step.
   */
  @ParameterizedTest
  @ValueSource(doubles = {1e6, 1e8, 1e9})
  void flow_whereTheLimitsMeet_hasNoEdge(double inertia) {
    double meeting = 0;
    double above = SHARE * PEAK;
    for (int i = 0;
        i < 100;
        i++) { // slow is above quick without a head, and nothing at the other end
      double middle = (meeting + above) / 2;
      if (PATH.flow(SHARE * PEAK - middle) > SHARE * PATH.flow(PEAK - middle)) {
        meeting = middle;
      } else {
        above = middle;
      }
    }
    double step = 1e-3;

    double less = flow(inertia, meeting - step);
    double middle = flow(inertia, meeting);
    double more = flow(inertia, meeting + step);

    assertThat(Math.abs(less - 2 * middle + more)).isLessThan(1e-3 * Math.abs(less - more));
  }

  @Test
  void headAbovePeak_stopsTheFuel() {
    assertThat(PulsedFlow.flow(ALPHA, BETA, SHARE, -1, -1, 1e9)).isZero();
  }

  private static double flow(double inertia) {
    return PulsedFlow.flow(ALPHA, BETA, SHARE, PEAK, SHARE * PEAK, inertia);
  }

  private static double flow(double inertia, double head) {
    return PulsedFlow.flow(ALPHA, BETA, SHARE, PEAK - head, SHARE * PEAK - head, inertia);
  }

  private static double atanh(double x) {
    return 0.5 * Math.log((1 + x) / (1 - x));
  }
}
