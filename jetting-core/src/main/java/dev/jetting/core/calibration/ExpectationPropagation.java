package dev.jetting.core.calibration;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Conditions a Gaussian process on observed intervals by expectation propagation. A noisy
 * observation of a value replaces each interval. Beside all the others, it gives the same mean and
 * variance there.
 *
 * <p>Source: Rasmussen and Williams 2006, section 3.6, with the moments of a normal distribution
 * cut to an interval that is itself blurred by normal noise. All intervals are updated at once,
 * damped. Likelihoods of this kind are log-concave, so the noise of the stand-ins is never
 * negative. How near it comes to numerical integration is checked in the tests.
 */
final class ExpectationPropagation {

  private static final int MOST_SWEEPS = 500;

  /** A sweep over n intervals takes some n³ multiplications; this is the most that is spent. */
  static final double MOST_WORK = 5e6;

  private static final double SETTLED = 1e-10;
  private static final double DAMPING = 0.8;

  /** Below this probability an interval contradicts all the rest; it then teaches nothing. */
  private static final double IMPOSSIBLE = 1e-250;

  /** Below this precision a stand-in is left out: an interval so wide says nothing. */
  private static final double LEAST_PRECISION = 1e-9;

  private ExpectationPropagation() {}

  /** A stand-in in its natural parameters: precision, and precision times value. */
  private record Site(double precision, double shift) {
    static final Site NOTHING = new Site(0, 0);

    /** Without what says nothing. */
    Site counting() {
      return precision > LEAST_PRECISION ? this : NOTHING;
    }

    Site towards(Site target) {
      return new Site(
          precision + DAMPING * (target.precision - precision),
          shift + DAMPING * (target.shift - shift));
    }

    double distance(Site other) {
      return Math.max(
          Math.abs(precision - other.precision) / (1 + precision),
          Math.abs(shift - other.shift) / (1 + Math.abs(shift)));
    }
  }

  static <X> GaussianProcess<X> condition(
      GaussianProcess<X> process, List<IntervalObservation<X>> intervals) {
    if (intervals.isEmpty()) {
      return process;
    }
    int n = intervals.size();
    JointNormal before =
        process.together(intervals.stream().map(IntervalObservation::input).toList());
    List<Site> sites = new ArrayList<>(Collections.nCopies(n, Site.NOTHING));
    double change = 1;
    for (int sweep = 0; sweep < mostSweeps(n) && change > SETTLED; sweep++) {
      Normal[] marginals =
          before.observing(
              sites.stream().mapToDouble(site -> site.counting().precision()).toArray(),
              sites.stream().mapToDouble(site -> site.counting().shift()).toArray());
      change = 0;
      for (int i = 0; i < n; i++) {
        Site old = sites.get(i);
        Site moved = old.towards(target(old, marginals[i], intervals.get(i)));
        change = Math.max(change, old.distance(moved));
        sites.set(i, moved);
      }
    }
    return process.observing(standIns(intervals, sites));
  }

  /** Up to 21 intervals as many as are needed; of more, as many as the work allows. */
  static int mostSweeps(int intervals) {
    return (int) Math.min(MOST_SWEEPS, MOST_WORK / ((double) intervals * intervals * intervals));
  }

  private static <X> List<PointObservation<X>> standIns(
      List<IntervalObservation<X>> intervals, List<Site> sites) {
    List<PointObservation<X>> standIns = new ArrayList<>();
    for (int i = 0; i < sites.size(); i++) {
      double precision = sites.get(i).precision();
      if (precision > LEAST_PRECISION) {
        standIns.add(
            new PointObservation<>(
                intervals.get(i).input(), sites.get(i).shift() / precision, 1 / precision));
      }
    }
    return standIns;
  }

  /**
   * The stand-in that gives the mean and variance of what is left of the others in the interval.
   */
  private static Site target(Site old, Normal marginal, IntervalObservation<?> interval) {
    double variance = marginal.deviation() * marginal.deviation();
    double othersPrecision = 1 / variance - old.precision();
    if (!(othersPrecision > 0)) {
      return old;
    }
    double othersVariance = 1 / othersPrecision;
    double othersMean = othersVariance * (marginal.mean() / variance - old.shift());
    double noise = interval.noiseDeviation();
    double blurred = Math.sqrt(othersVariance + noise * noise);
    double a = (interval.low() - othersMean) / blurred;
    double b = (interval.high() - othersMean) / blurred;
    // Of the two tails the small one is exact.
    double probability =
        a > 0
            ? Normal.upperTail(a) - Normal.upperTail(b)
            : Normal.upperTail(-b) - Normal.upperTail(-a);
    if (probability < IMPOSSIBLE) {
      return old;
    }
    double pull = (Normal.density(a) - Normal.density(b)) / probability;
    double squeeze = (times(b) - times(a)) / probability + pull * pull;
    double gain = othersVariance / blurred;
    double mean = othersMean + gain * pull;
    double left = othersVariance - gain * gain * squeeze;
    double precision = Math.max(0, 1 / left - othersPrecision);
    return new Site(precision, mean / left - othersMean * othersPrecision);
  }

  /** t φ(t), which is 0 at both infinities. */
  private static double times(double t) {
    return Double.isInfinite(t) ? 0 : t * Normal.density(t);
  }
}
