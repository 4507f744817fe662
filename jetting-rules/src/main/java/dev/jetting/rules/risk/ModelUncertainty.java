package dev.jetting.rules.risk;

import com.google.common.collect.ImmutableMap;
import com.google.common.collect.Sets;
import dev.jetting.core.calibration.Spreads;
import dev.jetting.core.checks.Checks;
import dev.jetting.core.engine.InductionKind;
import dev.jetting.core.mixture.ErrorSource;
import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.mixture.SizeSensitivities;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.core.typical.MachineValue;
import dev.jetting.core.typical.WrongGuess;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Sentence;
import java.util.Collection;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * How far an engine that nobody has measured may differ from the model: standard deviations.
 *
 * <p>The spreads of the four sources are those of the natural logarithm of true by modelled flow,
 * the residual that of ln λ, the tolerances those of the parts as sold. All of {@link #assumed()}
 * is this project's own assumption.
 *
 * @param pilot spread of the pilot circuit, 0 to 1
 * @param needle spread of the ring between needle and needle jet, 0 to 1
 * @param main spread of the main jet, 0 to 1
 * @param air spread of the air by its signal, 0 to 1
 * @param residual spread of what is left, 0 to 1
 * @param residualLength how far apart in throttle opening two residuals are that differ, 0.01 to 10
 * @param pilotJetTolerance of pilot jets, mm, 0 to 10
 * @param mainJetTolerance of main jets, mm, 0 to 10
 * @param needleJetTolerance of needle jets, mm, 0 to 1
 * @param needleTolerance of needles, mm, 0 to 1
 * @param guessed the values of a machine by whose guesses the spreads are already wider, so that
 *     nothing widens them twice; empty for a measured machine
 */
public record ModelUncertainty(
    Coefficient pilot,
    Coefficient needle,
    Coefficient main,
    Coefficient air,
    Coefficient residual,
    Coefficient residualLength,
    Coefficient pilotJetTolerance,
    Coefficient mainJetTolerance,
    Coefficient needleJetTolerance,
    Coefficient needleTolerance,
    Set<MachineValue> guessed) {

  /** What a kind of inlet that nobody stated adds to the spread of ln λ (assumed, see CYCLE.md). */
  private static final double UNKNOWN_INLET = 0.085;

  /** Of a jet, mm. */
  private static final double LARGEST_BORE = 10;

  /** Of a jet's bore, mm: with the tolerance of its kind still no more than a bore. */
  private static final double MOST_UNCERTAINTY = 9;

  private static final String GUESSED =
      "this machine's typical values, which nobody measured, by how much a wrong guess matters";

  private static final String NO_INLET = "an inlet of unknown kind (assumed)";

  private static final ModelUncertainty ASSUMED =
      new ModelUncertainty(
          Coefficient.assumed(0.06, "1", "small passages, dirt and burrs; not measured"),
          Coefficient.assumed(0.06, "1", "a needle hangs as it likes; not measured"),
          Coefficient.assumed(0.03, "1", "a jet is the best-made passage; not measured"),
          Coefficient.assumed(0.04, "1", "the signal differs from engine to engine; not measured"),
          Coefficient.assumed(
              0.05,
              "1",
              "what the model leaves out; four fifths of it what the cycle of the crankcase shows"
                  + " for an inside that nobody stated"),
          Coefficient.assumed(
              0.25, "1", "what the model leaves out changes over a quarter of the throttle"),
          Coefficient.assumed(0.005, "mm", "half of the last digit that is stamped on a jet"),
          Coefficient.assumed(0.005, "mm", "half of the last digit that is stamped on a jet"),
          Coefficient.assumed(0.003, "mm", "reamed bore; not measured"),
          Coefficient.assumed(0.003, "mm", "ground needle; not measured"),
          Set.of());

  /**
   * Checks that each spread can be one.
   *
   * @param pilot spread of the pilot circuit, 0 to 1
   * @param needle spread of the ring between needle and needle jet, 0 to 1
   * @param main spread of the main jet, 0 to 1
   * @param air spread of the air by its signal, 0 to 1
   * @param residual spread of what is left, 0 to 1
   * @param residualLength how far apart in throttle opening two residuals are that differ, 0.01 to
   *     10
   * @param pilotJetTolerance of pilot jets, mm, 0 to 10
   * @param mainJetTolerance of main jets, mm, 0 to 10
   * @param needleJetTolerance of needle jets, mm, 0 to 1
   * @param needleTolerance of needles, mm, 0 to 1
   * @param guessed the values of a machine by whose guesses the spreads are already wider
   * @throws IllegalArgumentException if one is out of its range or in another unit
   */
  public ModelUncertainty {
    check("spread of the pilot circuit", pilot);
    check("spread of the needle's ring", needle);
    check("spread of the main jet", main);
    check("spread of the air", air);
    check("residual spread", residual);
    check("length of the residual", residualLength, 0.01, 10);
    tolerance("tolerance of pilot jets", pilotJetTolerance, LARGEST_BORE);
    tolerance("tolerance of main jets", mainJetTolerance, LARGEST_BORE);
    tolerance("tolerance of needle jets", needleJetTolerance, 1);
    tolerance("tolerance of needles", needleTolerance, 1);
    guessed = Sets.immutableEnumSet(guessed);
  }

  /** {@return the library's own assumed spreads} */
  public static ModelUncertainty assumed() {
    return ASSUMED;
  }

  /**
   * The same for a pilot jet whose bore is less well known, such as one that is numbered by its
   * flow on a bench.
   *
   * @param millimetres standard uncertainty of the bore, mm, beyond the tolerance of pilot jets; 0
   *     to 9
   * @return these spreads with it in the tolerance of the jet, by the root of the sum of squares
   * @throws IllegalArgumentException if the uncertainty is outside 0 to 9 mm
   */
  public ModelUncertainty widerByPilotJet(double millimetres) {
    check("pilot", millimetres);
    return millimetres == 0 ? this : withPilotJetTolerance(wider(pilotJetTolerance, millimetres));
  }

  /**
   * The same for a main jet whose bore is less well known, such as one that is numbered by its flow
   * on a bench.
   *
   * @param millimetres standard uncertainty of the bore, mm, beyond the tolerance of main jets; 0
   *     to 9
   * @return these spreads with it in the tolerance of the jet, by the root of the sum of squares
   * @throws IllegalArgumentException if the uncertainty is outside 0 to 9 mm
   */
  public ModelUncertainty widerByMainJet(double millimetres) {
    check("main", millimetres);
    return millimetres == 0 ? this : withMainJetTolerance(wider(mainJetTolerance, millimetres));
  }

  /**
   * The same for a machine with guessed values. Each source is wider by the errors of the guesses
   * that act as it does, and the residual by what no source covers. Computed for this machine by
   * {@link WrongGuess}; at no throttle opening is the band narrower than all plausible errors
   * together make it, as far as a spread may go: no spread exceeds 1.
   *
   * <p>An inlet of unknown kind widens the residual by {@value #UNKNOWN_INLET} on any setting. It
   * is assumed from what the cycle of the crankcase shows over the kinds. A leaner part never
   * lowers the risk by way of it.
   *
   * @param setup the machine
   * @param values the values that were guessed; those by which these spreads are already wider are
   *     passed over
   * @return the wider spreads; these themselves where no guess is new
   */
  public ModelUncertainty withGuesses(Setup setup, Collection<MachineValue> values) {
    Set<MachineValue> more = EnumSet.noneOf(MachineValue.class);
    more.addAll(values);
    more.removeAll(guessed);
    if (more.isEmpty()) {
      return this;
    }
    Set<MachineValue> onThisMachine = EnumSet.copyOf(more);
    boolean unknown =
        onThisMachine.remove(MachineValue.INLET_KIND)
            && setup.engine().induction().kind() == InductionKind.UNKNOWN;
    GuessSpread guesses = GuessSpread.of(setup, onThisMachine);
    Coefficient rest = guessed(residual, guesses.residual(), GUESSED);
    return toBuilder()
        .pilot(guessed(pilot, guesses.of(ErrorSource.PILOT), GUESSED))
        .needle(guessed(needle, guesses.of(ErrorSource.NEEDLE), GUESSED))
        .main(guessed(main, guesses.of(ErrorSource.MAIN), GUESSED))
        .air(guessed(air, guesses.of(ErrorSource.AIR), GUESSED))
        .residual(unknown ? guessed(rest, UNKNOWN_INLET, NO_INLET) : rest)
        .guessed(Sets.union(guessed, more))
        .build();
  }

  private static Coefficient guessed(Coefficient spread, double guesses, String why) {
    Coefficient wider = wider(spread, guesses, why);
    return wider.value() > 1 ? Coefficient.calculated(1, wider.unit(), wider.note()) : wider;
  }

  private static Coefficient wider(Coefficient spread, double more, String why) {
    return more == 0
        ? spread
        : Coefficient.calculated(
            Math.sqrt(square(spread.value()) + square(more)),
            spread.unit(),
            why + ", and " + spread.note());
  }

  private static void check(String jet, double uncertainty) {
    if (!(uncertainty >= 0 && uncertainty <= MOST_UNCERTAINTY)) {
      throw InvalidValueException.of(
          Sentence.of("error.name.jet-uncertainty").with("jet", jet),
          uncertainty + " mm",
          Sentence.of("error.to").with("low", 0).with("high", new Sentence.Amount(9, "mm")));
    }
  }

  private static Coefficient wider(Coefficient tolerance, double uncertainty) {
    return wider(tolerance, uncertainty, "this jet's own uncertainty");
  }

  /** {@return the spreads without the parts' tolerances, as a calibration takes them} */
  public Spreads spreads() {
    return Spreads.builder()
        .pilot(pilot.value())
        .needle(needle.value())
        .main(main.value())
        .air(air.value())
        .residual(residual.value())
        .residualLength(residualLength.value())
        .build();
  }

  /**
   * The tolerance of a part as sold.
   *
   * @param part the part
   * @return its standard deviation in the part's own unit; 0 for what the rider sets himself and
   *     for parts whose tolerance is in another's
   */
  public double tolerance(MeteringPart part) {
    return switch (part) {
      case PILOT_JET -> pilotJetTolerance.value();
      case MAIN_JET -> mainJetTolerance.value();
      case NEEDLE_JET -> needleJetTolerance.value();
      case NEEDLE_DIAMETER -> needleTolerance.value();
      case SCREW, CUTAWAY, NEEDLE_TAPER, CLIP -> 0;
    };
  }

  /**
   * What the tolerances of the parts do to the mixture.
   *
   * @param sizes how ln λ answers to the parts' sizes
   * @return variance of ln λ
   */
  public double partsVariance(SizeSensitivities sizes) {
    return square(sizes.pilotJet() * tolerance(MeteringPart.PILOT_JET))
        + square(sizes.needleJet() * tolerance(MeteringPart.NEEDLE_JET))
        + square(sizes.needle() * tolerance(MeteringPart.NEEDLE_DIAMETER))
        + square(sizes.mainJet() * tolerance(MeteringPart.MAIN_JET));
  }

  private static double square(double x) {
    return x * x;
  }

  /** {@return each coefficient by its name, in an order that does not change} */
  public Map<String, Coefficient> basis() {
    return ImmutableMap.<String, Coefficient>builder()
        .put("spread of the pilot circuit", pilot)
        .put("spread of the needle's ring", needle)
        .put("spread of the main jet", main)
        .put("spread of the air by its signal", air)
        .put("residual spread of ln λ", residual)
        .put("throttle length of the residual", residualLength)
        .put("tolerance of pilot jets", pilotJetTolerance)
        .put("tolerance of main jets", mainJetTolerance)
        .put("tolerance of needle jets", needleJetTolerance)
        .put("tolerance of needles", needleTolerance)
        .buildOrThrow();
  }

  private static void check(String what, Coefficient c) {
    check(what, c, 0, 1);
  }

  private static void check(String what, Coefficient c, double least, double most) {
    Checks.unit(() -> Sentence.name(what), c.unit(), "1");
    inRange(what, c, least, most);
  }

  private static void tolerance(String what, Coefficient c, double most) {
    Checks.unit(() -> Sentence.name(what), c.unit(), "mm");
    inRange(what, c, 0, most);
  }

  private static void inRange(String what, Coefficient c, double least, double most) {
    if (!(c.value() >= least && c.value() <= most)) {
      throw InvalidValueException.of(
          Sentence.name(what),
          c.toString(),
          Sentence.of("error.to").with("low", least).with("high", most));
    }
  }

  /** {@return a builder of a set of spreads, nothing of it set} */
  public static Builder builder() {
    return new Builder();
  }

  /** {@return a builder with all of this set of spreads set} */
  public Builder toBuilder() {
    return new Builder()
        .pilot(pilot)
        .needle(needle)
        .main(main)
        .air(air)
        .residual(residual)
        .residualLength(residualLength)
        .pilotJetTolerance(pilotJetTolerance)
        .mainJetTolerance(mainJetTolerance)
        .needleJetTolerance(needleJetTolerance)
        .needleTolerance(needleTolerance)
        .guessed(guessed);
  }

  /**
   * Returns this set of spreads with another value of one component; all else stays.
   *
   * @param pilot spread of the pilot circuit, 0 to 1
   * @return the changed set of spreads
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public ModelUncertainty withPilot(Coefficient pilot) {
    return toBuilder().pilot(pilot).build();
  }

  /**
   * Returns this set of spreads with another value of one component; all else stays.
   *
   * @param needle spread of the ring between needle and needle jet, 0 to 1
   * @return the changed set of spreads
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public ModelUncertainty withNeedle(Coefficient needle) {
    return toBuilder().needle(needle).build();
  }

  /**
   * Returns this set of spreads with another value of one component; all else stays.
   *
   * @param main spread of the main jet, 0 to 1
   * @return the changed set of spreads
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public ModelUncertainty withMain(Coefficient main) {
    return toBuilder().main(main).build();
  }

  /**
   * Returns this set of spreads with another value of one component; all else stays.
   *
   * @param air spread of the air by its signal, 0 to 1
   * @return the changed set of spreads
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public ModelUncertainty withAir(Coefficient air) {
    return toBuilder().air(air).build();
  }

  /**
   * Returns this set of spreads with another value of one component; all else stays.
   *
   * @param residual spread of what is left, 0 to 1
   * @return the changed set of spreads
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public ModelUncertainty withResidual(Coefficient residual) {
    return toBuilder().residual(residual).build();
  }

  /**
   * Returns this set of spreads with another value of one component; all else stays.
   *
   * @param residualLength how far apart in throttle opening two residuals are that differ, 0.01 to
   *     10
   * @return the changed set of spreads
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public ModelUncertainty withResidualLength(Coefficient residualLength) {
    return toBuilder().residualLength(residualLength).build();
  }

  /**
   * Returns this set of spreads with another value of one component; all else stays.
   *
   * @param pilotJetTolerance of pilot jets, mm, 0 to 10
   * @return the changed set of spreads
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public ModelUncertainty withPilotJetTolerance(Coefficient pilotJetTolerance) {
    return toBuilder().pilotJetTolerance(pilotJetTolerance).build();
  }

  /**
   * Returns this set of spreads with another value of one component; all else stays.
   *
   * @param mainJetTolerance of main jets, mm, 0 to 10
   * @return the changed set of spreads
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public ModelUncertainty withMainJetTolerance(Coefficient mainJetTolerance) {
    return toBuilder().mainJetTolerance(mainJetTolerance).build();
  }

  /**
   * Returns this set of spreads with another value of one component; all else stays.
   *
   * @param needleJetTolerance of needle jets, mm, 0 to 1
   * @return the changed set of spreads
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public ModelUncertainty withNeedleJetTolerance(Coefficient needleJetTolerance) {
    return toBuilder().needleJetTolerance(needleJetTolerance).build();
  }

  /**
   * Returns this set of spreads with another value of one component; all else stays.
   *
   * @param needleTolerance of needles, mm, 0 to 1
   * @return the changed set of spreads
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public ModelUncertainty withNeedleTolerance(Coefficient needleTolerance) {
    return toBuilder().needleTolerance(needleTolerance).build();
  }

  /** Names each component of a set of spreads, so that none takes the place of another. */
  public static final class Builder {
    private @Nullable Coefficient pilot;
    private @Nullable Coefficient needle;
    private @Nullable Coefficient main;
    private @Nullable Coefficient air;
    private @Nullable Coefficient residual;
    private @Nullable Coefficient residualLength;
    private @Nullable Coefficient pilotJetTolerance;
    private @Nullable Coefficient mainJetTolerance;
    private @Nullable Coefficient needleJetTolerance;
    private @Nullable Coefficient needleTolerance;
    private Set<MachineValue> guessed = Set.of();

    private Builder() {}

    /**
     * Sets one component.
     *
     * @param value spread of the pilot circuit, 0 to 1
     * @return this builder
     */
    public Builder pilot(Coefficient value) {
      pilot = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value spread of the ring between needle and needle jet, 0 to 1
     * @return this builder
     */
    public Builder needle(Coefficient value) {
      needle = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value spread of the main jet, 0 to 1
     * @return this builder
     */
    public Builder main(Coefficient value) {
      main = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value spread of the air by its signal, 0 to 1
     * @return this builder
     */
    public Builder air(Coefficient value) {
      air = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value spread of what is left, 0 to 1
     * @return this builder
     */
    public Builder residual(Coefficient value) {
      residual = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value how far apart in throttle opening two residuals are that differ, 0.01 to 10
     * @return this builder
     */
    public Builder residualLength(Coefficient value) {
      residualLength = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value of pilot jets, mm, 0 to 10
     * @return this builder
     */
    public Builder pilotJetTolerance(Coefficient value) {
      pilotJetTolerance = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value of main jets, mm, 0 to 10
     * @return this builder
     */
    public Builder mainJetTolerance(Coefficient value) {
      mainJetTolerance = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value of needle jets, mm, 0 to 1
     * @return this builder
     */
    public Builder needleJetTolerance(Coefficient value) {
      needleJetTolerance = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value of needles, mm, 0 to 1
     * @return this builder
     */
    public Builder needleTolerance(Coefficient value) {
      needleTolerance = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value the values of a machine by whose guesses the spreads are already wider; need not
     *     be set
     * @return this builder
     */
    public Builder guessed(Set<MachineValue> value) {
      guessed = Sets.immutableEnumSet(value);
      return this;
    }

    /**
     * Builds the set of spreads.
     *
     * @return the set of spreads
     * @throws IllegalArgumentException if a component is not set, or out of its range
     */
    public ModelUncertainty build() {
      return new ModelUncertainty(
          Checks.present("set of spreads", "pilot", pilot),
          Checks.present("set of spreads", "needle", needle),
          Checks.present("set of spreads", "main", main),
          Checks.present("set of spreads", "air", air),
          Checks.present("set of spreads", "residual", residual),
          Checks.present("set of spreads", "residualLength", residualLength),
          Checks.present("set of spreads", "pilotJetTolerance", pilotJetTolerance),
          Checks.present("set of spreads", "mainJetTolerance", mainJetTolerance),
          Checks.present("set of spreads", "needleJetTolerance", needleJetTolerance),
          Checks.present("set of spreads", "needleTolerance", needleTolerance),
          guessed);
    }
  }
}
