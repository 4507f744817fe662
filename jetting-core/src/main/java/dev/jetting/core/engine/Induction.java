package dev.jetting.core.engine;

import dev.jetting.core.checks.Checks;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.units.Sentence;
import dev.jetting.units.number.Decimals;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * How the inlet of a crankcase-scavenged engine breathes: what opens it, and when.
 *
 * <p>Kind and timing decide the pulsation at the carburettor, and with it how much is blown back at
 * a speed: blown-back air passes the carburettor three times and takes fuel each time. Read the
 * timing off with a degree disc. A reed opens by itself, and an unknown inlet has no timing; both
 * keep what is stated and use none of it.
 *
 * @param id plain name of the kind of induction and its state of tune
 * @param kind what opens the inlet
 * @param opens degrees before top dead centre at which it begins to open, 40 to 180
 * @param closes degrees after top dead centre at which it is shut, 20 to 120; with a piston port as
 *     many as it opens before
 */
public record Induction(String id, InductionKind kind, Coefficient opens, Coefficient closes) {

  private static final double USUAL_PISTON_PORT = 150;

  /**
   * Checks the timing.
   *
   * @param id plain name of the kind of induction and its state of tune
   * @param kind what opens the inlet
   * @param opens degrees before top dead centre at which it begins to open, 40 to 180
   * @param closes degrees after top dead centre at which it is shut, 20 to 120
   * @throws IllegalArgumentException if a text is blank, too long or not one line of visible
   *     characters, an angle is out of range, or a piston port's two angles differ
   */
  public Induction {
    Checks.id("induction", id);
    Objects.requireNonNull(kind, "kind");
    Checks.within(
        () -> Sentence.of("error.name.induction-opens").with("id", id), opens.value(), 40, 180);
    Checks.within(
        () -> Sentence.of("error.name.induction-closes").with("id", id), closes.value(), 20, 120);
    Checks.that(
        kind != InductionKind.PISTON_PORT || opens.value() == closes.value(),
        () -> Sentence.of("error.name.induction-closes").with("id", id),
        closes.value(),
        () -> Sentence.of("error.port-closes").with("size", Decimals.shortest(opens.value())));
  }

  /**
   * A piston port.
   *
   * @param id plain name
   * @param duration degrees of the crank for which it is open, 80 to 240
   * @return the induction
   * @throws IllegalArgumentException if the id is blank or the duration is out of range
   */
  public static Induction pistonPort(String id, Coefficient duration) {
    Coefficient half =
        new Coefficient(duration.value() / 2, duration.unit(), duration.origin(), duration.note());
    return new Induction(id, InductionKind.PISTON_PORT, half, half);
  }

  /**
   * A rotary valve.
   *
   * @param id plain name
   * @return a builder that still needs the angles at which the valve opens and closes
   */
  public static Builder rotaryValve(String id) {
    return builder().id(Objects.requireNonNull(id, "id")).kind(InductionKind.ROTARY_VALVE);
  }

  /**
   * A reed valve.
   *
   * @param id plain name
   * @return the induction
   * @throws IllegalArgumentException if the id is blank
   */
  public static Induction reedValve(String id) {
    return untimed(id, InductionKind.REED_VALVE);
  }

  /**
   * An inlet that nobody named.
   *
   * @param id plain name
   * @return the induction
   * @throws IllegalArgumentException if the id is blank
   */
  public static Induction unknown(String id) {
    return untimed(id, InductionKind.UNKNOWN);
  }

  private static Induction untimed(String id, InductionKind kind) {
    Coefficient half =
        Coefficient.assumed(USUAL_PISTON_PORT / 2, "°", "plays no part with this inlet");
    return new Induction(id, kind, half, half);
  }

  /** {@return a mild engine whose kind of inlet is not stated} */
  public static Induction assumedMild() {
    return unknown("mild");
  }

  /** {@return a tuned engine whose kind of inlet is not stated} */
  public static Induction assumedTuned() {
    return unknown("tuned");
  }

  /** {@return a builder of an induction, nothing of it set} */
  public static Builder builder() {
    return new Builder();
  }

  /** {@return a builder with all of this induction set} */
  public Builder toBuilder() {
    Builder builder = new Builder();
    builder.id = id;
    builder.kind = kind;
    builder.opens = opens;
    builder.closes = closes;
    return builder;
  }

  /**
   * Returns this induction with another value of one component; all else stays.
   *
   * @param id plain name of the kind of induction and its state of tune
   * @return the changed induction
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Induction withId(String id) {
    Builder builder = toBuilder();
    builder.id = id;
    return builder.build();
  }

  /**
   * Returns this induction with another value of one component; all else stays.
   *
   * @param kind what opens the inlet
   * @return the changed induction
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Induction withKind(InductionKind kind) {
    Builder builder = toBuilder();
    builder.kind = kind;
    return builder.build();
  }

  /**
   * Returns this induction with another value of one component; all else stays.
   *
   * @param opens degrees before top dead centre at which it begins to open, 40 to 180
   * @return the changed induction
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Induction withOpens(Coefficient opens) {
    Builder builder = toBuilder();
    builder.opens = opens;
    return builder.build();
  }

  /**
   * Returns this induction with another value of one component; all else stays.
   *
   * @param closes degrees after top dead centre at which it is shut, 20 to 120; with a piston port
   *     as many as it opens before
   * @return the changed induction
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Induction withCloses(Coefficient closes) {
    Builder builder = toBuilder();
    builder.closes = closes;
    return builder.build();
  }

  /** Names each component of an induction, so that none takes the place of another. */
  public static final class Builder {
    private @Nullable String id;
    private @Nullable InductionKind kind;
    private @Nullable Coefficient opens;
    private @Nullable Coefficient closes;

    private Builder() {}

    /**
     * Sets one component.
     *
     * @param value plain name of the kind of induction and its state of tune
     * @return this builder
     */
    public Builder id(String value) {
      id = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value what opens the inlet
     * @return this builder
     */
    public Builder kind(InductionKind value) {
      kind = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value degrees before top dead centre at which it begins to open, 40 to 180
     * @return this builder
     */
    public Builder opens(Coefficient value) {
      opens = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value degrees after top dead centre at which it is shut, 20 to 120; with a piston port
     *     as many as it opens before
     * @return this builder
     */
    public Builder closes(Coefficient value) {
      closes = value;
      return this;
    }

    /**
     * Builds the induction.
     *
     * @return the induction
     * @throws IllegalArgumentException if a component is not set, or out of its range
     */
    public Induction build() {
      return new Induction(
          Checks.present("induction", "id", id),
          Checks.present("induction", "kind", kind),
          Checks.present("induction", "opens", opens),
          Checks.present("induction", "closes", closes));
    }
  }
}
