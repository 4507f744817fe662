package dev.jetting.core.calibration;

import dev.jetting.core.mixture.ErrorSource;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.ThrottleOpening;
import java.util.ArrayList;
import java.util.List;

/**
 * What readings have taught about an engine and its carburettor.
 *
 * <p>ln λ = ln λ_model + Σ z_c S_c + g: four errors z_c that belong to the engine and its
 * carburettor and not to the jets in it, so that readings taken with different jets add up, each
 * through its sensitivity S_c; and a Gaussian process g over the throttle for what is left.
 * Measured λ conditions it in closed form; bands, such as plug colours, by expectation propagation.
 *
 * <p>Readings are linear in the errors, and so is what is foretold of ln λ but for the air, of
 * which a few cases are worked out ({@link AirCase}): good for the ten or twenty per cent by which
 * engines differ, not for an engine with an air leak or a blocked passage, which shows as readings
 * that disagree. A reading taken just where the main path cuts in is used along its chord in the
 * air and foretold along its curve, so that there λ may be foretold a per cent or so richer than
 * read.
 */
public final class Calibration {

  private final Spreads spreads;
  private final List<Read> reads;
  private final GaussianProcess<Place> process;

  private Calibration(Spreads spreads, List<Read> reads) {
    this.spreads = spreads;
    this.reads = List.copyOf(reads);
    List<PointObservation<Place>> points = new ArrayList<>();
    List<IntervalObservation<Place>> bands = new ArrayList<>();
    for (Read read : reads) {
      double deviation = read.reading.deviation();
      if (read.reading.isPoint()) {
        points.add(new PointObservation<>(read.place, read.from(), deviation * deviation));
      } else {
        bands.add(new IntervalObservation<>(read.place, read.from(), read.to(), deviation));
      }
    }
    GaussianProcess<Place> prior = GaussianProcess.prior(Place.kernel(spreads));
    process = ExpectationPropagation.condition(prior.observing(points), bands);
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
    return new Calibration(spreads, List.of());
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
    return new Calibration(spreads, all);
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
    return new CalibratedModel(model, process);
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

  /** {@return the cases that are told apart by the engine's air, from little air to much} */
  public List<AirCase> airCases() {
    return AirCase.of(difference(ErrorSource.AIR));
  }

  /**
   * By how much the engine differs at a source: natural logarithm of true by modelled, −0.08 for
   * eight per cent less.
   *
   * @param source the source
   * @return its distribution
   */
  public Normal difference(ErrorSource source) {
    return process.at(Place.of(source));
  }

  /**
   * The model of the engine as it is expected: with the differences that readings tell of. What is
   * left over the throttle, and how sure anything is, stays out.
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
   * @return the readings, the worst first
   */
  public List<Reading> disagreeing(double deviations) {
    List<Read> left = new ArrayList<>(reads);
    List<Reading> disagreeing = new ArrayList<>();
    int worst = 0;
    while (worst >= 0) {
      worst = -1;
      double most = deviations;
      for (int i = 0; i < left.size(); i++) {
        List<Read> others = new ArrayList<>(left);
        Read judged = others.remove(i);
        double off = new Calibration(spreads, others).off(judged);
        if (off > most) {
          worst = i;
          most = off;
        }
      }
      if (worst >= 0) {
        disagreeing.add(left.remove(worst).reading);
      }
    }
    return disagreeing;
  }

  /** By how many standard deviations a further reading is outside of what is expected. */
  private double off(Read read) {
    double noise = read.reading.deviation();
    Normal expected = process.at(read.place).plus(noise * noise);
    double outside = Math.max(read.from() - expected.mean(), expected.mean() - read.to());
    return Math.max(0, outside) / expected.deviation();
  }
}
