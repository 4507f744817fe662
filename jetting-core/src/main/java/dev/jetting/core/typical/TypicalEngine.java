package dev.jetting.core.typical;

import dev.jetting.core.checks.Checks;
import dev.jetting.core.engine.Engine;
import dev.jetting.core.engine.Exhaust;
import dev.jetting.core.engine.Induction;
import dev.jetting.core.engine.InductionKind;
import dev.jetting.core.engine.LoadLine;
import dev.jetting.core.engine.MixtureNeed;
import dev.jetting.core.engine.RpmCurve;
import dev.jetting.units.Displacement;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.Lambda;
import dev.jetting.units.number.Decimals;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * An engine as it usually is, by what every owner knows of it.
 *
 * <p>The speed of peak power follows from the mean piston speed of the state of tune and a stroke
 * as long as the bore is wide: N = 60 c/(2 S), S = (4 V/π)^(1/3). The rest is a table by state of
 * tune. Every number is assumed; MODEL.md states the reasons. Not for an engine whose curves are
 * known: state those.
 *
 * @param displacement swept volume, more than zero
 * @param tune state of tune
 * @param cooling what carries the heat away
 * @param induction what opens the inlet
 */
public record TypicalEngine(
    Displacement displacement, StateOfTune tune, Cooling cooling, InductionKind induction) {

  /** Where the middle point of the delivery curve stands between idle and peak (assumed). */
  private static final double MIDDLE = 0.6;

  /**
   * Checks for nulls.
   *
   * @param displacement swept volume, more than zero
   * @param tune state of tune
   * @param cooling what carries the heat away
   * @param induction what opens the inlet
   */
  public TypicalEngine {
    Objects.requireNonNull(displacement, "displacement");
    Objects.requireNonNull(tune, "tune");
    Objects.requireNonNull(cooling, "cooling");
    Objects.requireNonNull(induction, "induction");
  }

  /**
   * This engine with another cylinder.
   *
   * @param other its displacement, more than zero
   * @return the changed engine
   */
  public TypicalEngine withDisplacement(Displacement other) {
    return new TypicalEngine(other, tune, cooling, induction);
  }

  /**
   * This engine in another state of tune.
   *
   * @param other the state of tune
   * @return the changed engine
   */
  public TypicalEngine withTune(StateOfTune other) {
    return new TypicalEngine(displacement, other, cooling, induction);
  }

  /**
   * This engine cooled in another way.
   *
   * @param other what carries the heat away
   * @return the changed engine
   */
  public TypicalEngine withCooling(Cooling other) {
    return new TypicalEngine(displacement, tune, other, induction);
  }

  /**
   * This engine with another inlet.
   *
   * @param other what opens it
   * @return the changed engine
   */
  public TypicalEngine withInduction(InductionKind other) {
    return new TypicalEngine(displacement, tune, cooling, other);
  }

  /** {@return the speed of peak power, to 50 rpm} */
  public EngineSpeed peakSpeed() {
    double cubicMetres = displacement.cubicCentimetres() * 1e-6;
    double stroke = StrictMath.cbrt(4 * cubicMetres / Math.PI);
    double rpm = 60 * tune.meanPistonSpeed().value() / (2 * stroke);
    double idle = tune.idleSpeed().value();
    return EngineSpeed.ofRpm(Math.max(Math.rint(rpm / 50) * 50, 2 * idle));
  }

  /** {@return the mixture needed: that of the state of tune, by the cooling} */
  public MixtureNeed need() {
    double factor = cooling.needFactor().value();
    return new MixtureNeed(
        tune.need().points().stream()
            .map(p -> new MixtureNeed.Point(p.throttle(), Lambda.of(p.lambda().value() * factor)))
            .toList());
  }

  /** {@return the engine, with the exhaust that is usual for its state of tune} */
  public Engine engine() {
    double idle = tune.idleSpeed().value();
    EngineSpeed peak = peakSpeed();
    return Engine.builder()
        .id(name())
        .displacement(displacement)
        .deliveryRatio(
            RpmCurve.of(
                RpmCurve.Point.of(idle, tune.deliveryAtIdle().value()),
                RpmCurve.Point.of(
                    idle + MIDDLE * (peak.rpm() - idle), tune.deliveryInTheMiddle().value()),
                RpmCurve.Point.of(peak.rpm(), tune.deliveryAtPeak().value())))
        .induction(inlet())
        .exhaust(Exhaust.reference("usual for a " + words(tune) + " engine"))
        .loadLine(new LoadLine(EngineSpeed.ofRpm(idle), peak))
        .need(need())
        .build();
  }

  private Induction inlet() {
    String id = induction + ", " + words(tune);
    return switch (induction) {
      case PISTON_PORT -> Induction.pistonPort(id, tune.pistonPortDuration());
      case ROTARY_VALVE ->
          Induction.rotaryValve(id)
              .opens(tune.rotaryValveOpens())
              .closes(tune.rotaryValveCloses())
              .build();
      case REED_VALVE -> Induction.reedValve(id);
      case UNKNOWN -> Induction.unknown(id);
    };
  }

  private String name() {
    return "typical "
        + words(tune)
        + " engine of "
        + Decimals.shortest(Math.rint(displacement.cubicCentimetres() * 10) / 10)
        + " cm³, "
        + words(cooling)
        + "-cooled";
  }

  private static String words(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }

  /** {@return a builder of a typical engine, nothing of it set} */
  public static Builder builder() {
    return new Builder();
  }

  /** {@return a builder with all of this typical engine set} */
  public Builder toBuilder() {
    Builder builder = new Builder();
    builder.displacement = displacement;
    builder.tune = tune;
    builder.cooling = cooling;
    builder.induction = induction;
    return builder;
  }

  /** Names each component of a typical engine, so that none takes the place of another. */
  public static final class Builder {
    private @Nullable Displacement displacement;
    private @Nullable StateOfTune tune;
    private @Nullable Cooling cooling;
    private @Nullable InductionKind induction;

    private Builder() {}

    /**
     * Sets one component.
     *
     * @param value swept volume, more than zero
     * @return this builder
     */
    public Builder displacement(Displacement value) {
      displacement = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value state of tune
     * @return this builder
     */
    public Builder tune(StateOfTune value) {
      tune = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value what carries the heat away
     * @return this builder
     */
    public Builder cooling(Cooling value) {
      cooling = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value what opens the inlet
     * @return this builder
     */
    public Builder induction(InductionKind value) {
      induction = value;
      return this;
    }

    /**
     * Builds the typical engine.
     *
     * @return the typical engine
     * @throws IllegalArgumentException if a component is not set, or out of its range
     */
    public TypicalEngine build() {
      return new TypicalEngine(
          Checks.present("typical engine", "displacement", displacement),
          Checks.present("typical engine", "tune", tune),
          Checks.present("typical engine", "cooling", cooling),
          Checks.present("typical engine", "induction", induction));
    }
  }
}
