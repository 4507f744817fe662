package dev.jetting.core.calibration;

import com.google.common.base.Suppliers;
import dev.jetting.core.mixture.ErrorSource;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.ThrottleOpening;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/**
 * What readings have taught about an engine and its carburettor.
 *
 * <p>ln λ = ln λ_model + Σ z_c S_c + g. The four errors z_c belong to the engine and its
 * carburettor, not to the jets in it. So readings taken with different jets add up, each through
 * its sensitivity S_c. A Gaussian process g over the throttle models the residual. Measured λ
 * conditions it in closed form; bands, such as plug colours, by expectation propagation.
 *
 * <p>Readings are linear in the errors. The prediction of ln λ is linear in the errors except that
 * of the air, for which nine cases are computed ({@link AirCase}). That serves for the ten or
 * twenty per cent by which engines differ. It does not serve for an air leak or a blocked passage,
 * which shows as readings that disagree. A reading taken just where the main path cuts in is used
 * along its chord in the air, and predicted along its curve. There the predicted λ may be about a
 * per cent richer than the reading.
 */
public final class Calibration {

  /** In ln λ: a band without an end is taken to be so wide where its evidence is weighed. */
  private static final double OPEN_BAND = 0.2;

  /** In ln λ from the model's: an end further out is none. */
  private static final double FAR = 2;

  /** How many readings are held against all others one by one: those that look worst. */
  private static final int SUSPECTS = 2;

  /** Of more readings than twice as many, only half can disagree with the others. */
  private static final int FEW = 20;

  private final Spreads spreads;
  private final Optional<Disturbance> disturbance;
  private final List<Read> reads;
  private final Supplier<GaussianProcess<Place>> process;
  private final Supplier<KnownErrors> known;

  private Calibration(Spreads spreads, Optional<Disturbance> disturbance, List<Read> reads) {
    this.spreads = spreads;
    this.disturbance = disturbance;
    this.reads = List.copyOf(reads);
    process = Suppliers.memoize(this::conditioned);
    known = Suppliers.memoize(() -> new KnownErrors(process.get(), this::shift));
  }

  /** Worked out when it is first asked for: weighing hypotheses needs it of few. */
  private GaussianProcess<Place> conditioned() {
    List<PointObservation<Place>> points = new ArrayList<>();
    List<IntervalObservation<Place>> bands = new ArrayList<>();
    for (Read read : reads) {
      double deviation = read.reading.deviation();
      double shift = shift(read.place);
      if (read.reading.isPoint()) {
        points.add(new PointObservation<>(read.place, read.from() - shift, deviation * deviation));
      } else {
        bands.add(
            new IntervalObservation<>(
                read.place, read.from() - shift, read.to() - shift, deviation));
      }
    }
    GaussianProcess<Place> prior = prior();
    return ExpectationPropagation.condition(prior.observing(points), bands);
  }

  private GaussianProcess<Place> prior() {
    Kernel<Place> kernel = Place.kernel(spreads);
    return GaussianProcess.prior(disturbance.map(fault -> fault.with(kernel)).orElse(kernel));
  }

  /** By how much the mean of ln λ is shifted at a place. */
  private double shift(Place place) {
    return disturbance.map(fault -> fault.mean() * fault.share(place)).orElse(0.0);
  }

  /** A reading with what the model says of it, which more readings do not change. */
  private record Read(Reading reading, Place place, double modelled) {

    static Read of(Reading reading, Spreads spreads) {
      MixtureModel model = MixtureModel.of(reading.setup());
      return new Read(
          reading,
          Place.of(model, reading.throttle(), reading.speed(), spreads),
          model.fuelSensitivities(reading.throttle(), reading.speed()).lnLambda());
    }

    static Read proven(Reading reading, Spreads spreads) {
      Read read = of(reading, spreads);
      return new Read(reading, read.place.beforeFaults(), read.modelled);
    }

    boolean isProven() {
      return !place.disturbed();
    }

    double from() {
      return StrictMath.log(reading.from().value()) - modelled;
    }

    double to() {
      return StrictMath.log(reading.to().value()) - modelled;
    }
  }

  /**
   * An engine that nobody has measured.
   *
   * @param spreads how far it may differ from the model
   * @return the calibration before any reading
   */
  public static Calibration untried(Spreads spreads) {
    Objects.requireNonNull(spreads, "spreads");
    return new Calibration(spreads, Optional.empty(), List.of());
  }

  /**
   * This calibration with more readings.
   *
   * @param more the readings, taken with any settings and in any weather, all on one engine
   * @return what they all have taught
   */
  public Calibration with(List<Reading> more) {
    List<Read> all = new ArrayList<>(reads);
    more.forEach(reading -> all.add(Read.of(reading, spreads)));
    return new Calibration(spreads, disturbance, all);
  }

  /**
   * This calibration with readings from when the engine ran well. A fault that is assumed later
   * ({@link #assuming}) came after them and does not count in them.
   *
   * @param proof the readings, all on the engine as it is now except for such a fault
   * @return what they all have taught
   */
  public Calibration withProof(List<Reading> proof) {
    List<Read> all = new ArrayList<>(reads);
    proof.forEach(reading -> all.add(Read.proven(reading, spreads)));
    return new Calibration(spreads, disturbance, all);
  }

  /**
   * This calibration with each reading replaced by another, such as one at the opening at which it
   * was really taken. Readings from when the engine ran well stay as they are.
   *
   * @param other from a reading to the one that replaces it
   * @return what the other readings teach
   */
  public Calibration rereading(UnaryOperator<Reading> other) {
    return new Calibration(
        spreads,
        disturbance,
        reads.stream()
            .map(read -> read.isProven() ? read : Read.of(other.apply(read.reading), spreads))
            .toList());
  }

  /**
   * This calibration for an engine that may have differed more or less before any reading.
   *
   * @param other how far it may have differed
   * @return what the same readings teach
   */
  public Calibration withSpreads(Spreads other) {
    return new Calibration(
        other,
        disturbance,
        reads.stream()
            .map(
                read ->
                    read.isProven()
                        ? Read.proven(read.reading, other)
                        : Read.of(read.reading, other))
            .toList());
  }

  /**
   * This calibration under the hypothesis of a fault.
   *
   * @param fault what the fault does to the mixture, since the readings from when it ran well
   * @return what the same readings teach if the engine has it
   */
  public Calibration assuming(Disturbance fault) {
    return new Calibration(spreads, Optional.of(fault), reads);
  }

  /**
   * How well the readings fit: the natural logarithm of their probability density before any of
   * them was known, a band taken as a normal reading of the same mean and variance. Only
   * differences between hypotheses on the same readings mean anything.
   *
   * @return the log marginal likelihood; 0 without readings
   */
  public double logEvidence() {
    return prior().observing(reads.stream().map(this::asPoint).toList()).logMarginalLikelihood();
  }

  private PointObservation<Place> asPoint(Read read) {
    double noise = read.reading.deviation();
    double low = read.from() < -FAR ? read.to() - OPEN_BAND : read.from();
    double high = read.to() > FAR ? read.from() + OPEN_BAND : read.to();
    double width = high - low;
    return new PointObservation<>(
        read.place, (low + high) / 2 - shift(read.place), noise * noise + width * width / 12);
  }

  /** {@return the readings in the order they were given} */
  public List<Reading> readings() {
    return reads.stream().map(Read::reading).toList();
  }

  /** {@return how far the engine may have differed before any reading} */
  public Spreads spreads() {
    return spreads;
  }

  /**
   * The engine with a setup, which need not be one that was read.
   *
   * @param model the model of the setup
   * @return ln λ of the engine with it
   */
  public CalibratedModel on(MixtureModel model) {
    return new CalibratedModel(model, !reads.isEmpty(), known.get());
  }

  /**
   * ln λ of the engine with a setup, at one operating point.
   *
   * @param model the model of the setup
   * @param throttle throttle opening
   * @param speed engine speed, more than zero
   * @return the distribution of ln λ there
   * @throws IllegalArgumentException if the speed is zero
   */
  public NormalCases lnLambda(MixtureModel model, ThrottleOpening throttle, EngineSpeed speed) {
    return on(model).lnLambda(throttle, speed);
  }

  /** {@return the cases that differ in the engine's air, from little air to much} */
  public List<AirCase> airCases() {
    return known.get().cases();
  }

  /**
   * Returns what is known at a throttle opening, the engine's air being given.
   *
   * @param given one of {@link #airCases}
   * @param throttle throttle opening
   * @return the errors that act on the fuel there, and what is left
   */
  public FuelErrors fuelErrors(AirCase given, ThrottleOpening throttle) {
    return known.get().at(throttle, given);
  }

  /**
   * By how much the engine differs at a source: natural logarithm of true by modelled, −0.08 for
   * eight per cent less.
   *
   * @param source the source
   * @return its distribution
   */
  public Normal difference(ErrorSource source) {
    return process.get().at(Place.of(source));
  }

  /**
   * The model of the engine as expected: with the mean differences that readings show. The residual
   * over the throttle and all spreads stay out.
   *
   * @param model the mixture model of a setup
   * @return the other model; the same without readings
   */
  public MixtureModel expected(MixtureModel model) {
    MixtureModel engine = model;
    for (ErrorSource source : ErrorSource.values()) {
      double z = AirCase.held(difference(source).mean());
      engine = z == 0 ? engine : engine.differing(source, z);
    }
    return engine;
  }

  /**
   * Readings that disagree with all the other readings and with what was known before, bands as
   * well as measured λ. The worst is set aside first, then the rest are judged anew: one wrong
   * reading makes its neighbours look wrong too.
   *
   * @param deviations how many standard deviations off counts as disagreeing, such as 3
   * @return the readings, the worst first; of more than 40 at most half
   */
  public List<Reading> disagreeing(double deviations) {
    List<Read> left = new ArrayList<>(reads);
    List<Reading> disagreeing = new ArrayList<>();
    int most = Math.max(FEW, reads.size() / 2);
    while (disagreeing.size() < most && !left.isEmpty()) {
      int worst = worst(left, deviations);
      if (worst < 0) {
        break;
      }
      disagreeing.add(left.remove(worst).reading);
    }
    return disagreeing;
  }

  /** The reading that is furthest off all the others; −1 where none is beyond the limit. */
  private int worst(List<Read> all, double deviations) {
    Calibration together = new Calibration(spreads, disturbance, all);
    int[] suspects =
        IntStream.range(0, all.size())
            .boxed()
            .sorted(Comparator.comparing(i -> -together.offTheOthers(all.get(i))))
            .limit(SUSPECTS)
            .mapToInt(Integer::intValue)
            .sorted()
            .toArray();
    int worst = -1;
    double most = deviations;
    for (int suspect : suspects) {
      List<Read> others = new ArrayList<>(all);
      Read judged = others.remove(suspect);
      double off = new Calibration(spreads, disturbance, others).off(judged);
      if (off > most) {
        worst = suspect;
        most = off;
      }
    }
    return worst;
  }

  /**
   * About by how many standard deviations one of the readings is outside of what the others lead to
   * expect, without conditioning on the others anew.
   */
  private double offTheOthers(Read read) {
    GaussianProcess<Place> all = process.get();
    List<PointObservation<Place>> observations = all.observations();
    for (int i = 0; i < observations.size(); i++) {
      if (isAt(read.place, observations.get(i))) {
        Normal predicted = all.withoutOwn(i);
        double variance =
            predicted.deviation() * predicted.deviation() - observations.get(i).noiseVariance();
        return off(read, new Normal(predicted.mean(), Math.sqrt(Math.max(0, variance))));
      }
    }
    return off(read); // a band so wide that it says nothing
  }

  @SuppressWarnings("ReferenceEquality") // two readings at equal places are two
  private static boolean isAt(Place place, PointObservation<Place> observation) {
    return observation.input() == place;
  }

  /** By how many standard deviations a further reading is outside of what is expected. */
  private double off(Read read) {
    return off(read, process.get().at(read.place));
  }

  private double off(Read read, Normal value) {
    double noise = read.reading.deviation();
    Normal expected = value.plus(noise * noise);
    double mean = expected.mean() + shift(read.place);
    double outside = Math.max(read.from() - mean, mean - read.to());
    return Math.max(0, outside) / expected.deviation();
  }
}
