package dev.jetting.core.calibration;

import com.google.common.cache.CacheBuilder;
import com.google.common.cache.CacheLoader;
import com.google.common.cache.LoadingCache;
import dev.jetting.core.mixture.ErrorSource;
import dev.jetting.core.mixture.Sensitivities;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * What readings have taught about an engine, at each throttle opening and in each case of its air.
 * It is worked out once for an opening, however many settings are held against it.
 */
final class KnownErrors {

  /** The sources that act on the fuel alone, in the order of {@link FuelErrors}. */
  private static final List<Place> SOURCES =
      Stream.of(ErrorSource.PILOT, ErrorSource.NEEDLE, ErrorSource.MAIN).map(Place::of).toList();

  private static final Place AIR = Place.of(ErrorSource.AIR);

  /** The number of openings that are kept; what is forgotten is worked out again. */
  private static final int MOST_OPENINGS = 256;

  private final GaussianProcess<Place> process;
  private final ToDoubleFunction<Place> shift;
  private final List<GaussianProcess.Column> columns;
  private final GaussianProcess.Column toAir;
  private final Normal air;
  private final List<AirCase> cases;
  private final LoadingCache<ThrottleOpening, List<FuelErrors>> known =
      CacheBuilder.newBuilder()
          .maximumSize(MOST_OPENINGS)
          .build(CacheLoader.from(this::inEachCase));

  KnownErrors(GaussianProcess<Place> process, ToDoubleFunction<Place> shift) {
    this.process = process;
    this.shift = shift;
    columns = SOURCES.stream().map(process::column).toList();
    toAir = process.column(AIR);
    air = process.at(AIR, toAir);
    cases = AirCase.of(air);
  }

  /** From little air to much. */
  List<AirCase> cases() {
    return cases;
  }

  /** In each of the cases, in their order. */
  List<FuelErrors> at(ThrottleOpening throttle) {
    return known.getUnchecked(throttle);
  }

  private List<FuelErrors> inEachCase(ThrottleOpening throttle) {
    Here here = here(throttle);
    return cases.stream().map(here::given).toList();
  }

  FuelErrors at(ThrottleOpening throttle, AirCase given) {
    return here(throttle).given(given);
  }

  /**
   * By the rules of conditioning: the errors' means with the air as it is expected, how they follow
   * it, and what is left of their covariances once it is known.
   */
  @SuppressWarnings("ArrayRecordComponent")
  private record Here(double expectedAir, double[] means, double[] byAir, double[][] covariances) {

    FuelErrors given(AirCase air) {
      double[] moved = means.clone();
      for (int i = 0; i < moved.length; i++) {
        moved[i] += byAir[i] * (air.z() - expectedAir);
      }
      return new FuelErrors(moved, covariances);
    }
  }

  private Here here(ThrottleOpening throttle) {
    Place left = Place.inUse(new Sensitivities(0, 0, 0, 0), throttle.share());
    List<Place> places = Stream.concat(SOURCES.stream(), Stream.of(left)).toList();
    List<GaussianProcess.Column> all =
        Stream.concat(columns.stream(), Stream.of(process.column(left))).toList();
    int n = places.size();
    double airVariance = air.deviation() * air.deviation();
    double[] means = new double[n];
    double[] withAir = new double[n];
    double[] byAir = new double[n];
    for (int i = 0; i < n; i++) {
      means[i] = process.at(places.get(i), all.get(i)).mean();
      withAir[i] = process.covariance(places.get(i), all.get(i), AIR, toAir);
      byAir[i] = airVariance == 0 ? 0 : withAir[i] / airVariance;
    }
    double[][] covariances = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        covariances[i][j] =
            process.covariance(places.get(i), all.get(i), places.get(j), all.get(j))
                - byAir[i] * withAir[j];
      }
    }
    means[n - 1] += shift.applyAsDouble(left);
    return new Here(air.mean(), means, byAir, covariances);
  }
}
