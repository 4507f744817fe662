package dev.jetting.core.parts;

import dev.jetting.core.checks.Checks;
import dev.jetting.units.Diameter;
import dev.jetting.units.Length;
import dev.jetting.units.Sentence;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A slide carburettor without the parts that a tuner changes; those are the {@link Setting}.
 *
 * <p>Not for fixed-venturi, constant-depression or diaphragm carburettors.
 *
 * @param id plain name
 * @param bore diameter of the bore at the slide, 5 mm to 80 mm
 * @param needleJetLength length over which needle and needle jet face each other, more than zero
 * @param needleJetHead height of the needle jet's mouth over the fuel level, in mm of fuel
 * @param pilot the pilot circuit
 * @param floatValve the float valve
 * @param flow flow coefficients of the family
 */
public record Carburettor(
    String id,
    Diameter bore,
    Length needleJetLength,
    Length needleJetHead,
    PilotCircuit pilot,
    FloatValve floatValve,
    FlowCoefficients flow) {

  /**
   * Checks the geometry.
   *
   * @param id plain name
   * @param bore diameter of the bore at the slide, 5 mm to 80 mm
   * @param needleJetLength length over which needle and needle jet face each other, more than zero
   * @param needleJetHead height of the needle jet's mouth over the fuel level, in mm of fuel
   * @param pilot the pilot circuit
   * @param floatValve the float valve
   * @param flow flow coefficients of the family
   * @throws IllegalArgumentException if a number is out of range
   */
  public Carburettor {
    Checks.id("carburettor", id);
    Objects.requireNonNull(needleJetHead, "needleJetHead");
    Objects.requireNonNull(pilot, "pilot");
    Objects.requireNonNull(floatValve, "floatValve");
    Objects.requireNonNull(flow, "flow");
    Checks.that(
        bore.millimetres() >= 5 && bore.millimetres() <= 80,
        () -> Sentence.of("error.name.bore-of-carburettor").with("id", id),
        bore,
        () ->
            Sentence.of("error.to")
                .with("low", new Sentence.Amount(5, "mm"))
                .with("high", new Sentence.Amount(80, "mm")));
    Checks.that(
        needleJetLength.millimetres() > 0,
        () -> Sentence.of("error.name.needle-jet-length").with("id", id),
        needleJetLength,
        () -> Sentence.of("error.more-than").with("low", new Sentence.Amount(0, "mm")));
  }

  /** {@return a builder of a carburettor, nothing of it set} */
  public static Builder builder() {
    return new Builder();
  }

  /** {@return a builder with all of this carburettor set} */
  public Builder toBuilder() {
    return new Builder()
        .id(id)
        .bore(bore)
        .needleJetLength(needleJetLength)
        .needleJetHead(needleJetHead)
        .pilot(pilot)
        .floatValve(floatValve)
        .flow(flow);
  }

  /**
   * Returns this carburettor with another value of one component; all else stays.
   *
   * @param id plain name
   * @return the changed carburettor
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Carburettor withId(String id) {
    return toBuilder().id(id).build();
  }

  /**
   * Returns this carburettor with another value of one component; all else stays.
   *
   * @param bore diameter of the bore at the slide, 5 mm to 80 mm
   * @return the changed carburettor
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Carburettor withBore(Diameter bore) {
    return toBuilder().bore(bore).build();
  }

  /**
   * Returns this carburettor with another value of one component; all else stays.
   *
   * @param needleJetLength length over which needle and needle jet face each other, more than zero
   * @return the changed carburettor
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Carburettor withNeedleJetLength(Length needleJetLength) {
    return toBuilder().needleJetLength(needleJetLength).build();
  }

  /**
   * Returns this carburettor with another value of one component; all else stays.
   *
   * @param needleJetHead height of the needle jet's mouth over the fuel level, in mm of fuel
   * @return the changed carburettor
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Carburettor withNeedleJetHead(Length needleJetHead) {
    return toBuilder().needleJetHead(needleJetHead).build();
  }

  /**
   * Returns this carburettor with another value of one component; all else stays.
   *
   * @param pilot the pilot circuit
   * @return the changed carburettor
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Carburettor withPilot(PilotCircuit pilot) {
    return toBuilder().pilot(pilot).build();
  }

  /**
   * Returns this carburettor with another value of one component; all else stays.
   *
   * @param floatValve the float valve
   * @return the changed carburettor
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Carburettor withFloatValve(FloatValve floatValve) {
    return toBuilder().floatValve(floatValve).build();
  }

  /**
   * Returns this carburettor with another value of one component; all else stays.
   *
   * @param flow flow coefficients of the family
   * @return the changed carburettor
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Carburettor withFlow(FlowCoefficients flow) {
    return toBuilder().flow(flow).build();
  }

  /** Names each component of a carburettor, so that none takes the place of another. */
  public static final class Builder {
    private @Nullable String id;
    private @Nullable Diameter bore;
    private @Nullable Length needleJetLength;
    private @Nullable Length needleJetHead;
    private @Nullable PilotCircuit pilot;
    private @Nullable FloatValve floatValve;
    private @Nullable FlowCoefficients flow;

    private Builder() {}

    /**
     * Sets one component.
     *
     * @param value plain name
     * @return this builder
     */
    public Builder id(String value) {
      id = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value diameter of the bore at the slide, 5 mm to 80 mm
     * @return this builder
     */
    public Builder bore(Diameter value) {
      bore = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value length over which needle and needle jet face each other, more than zero
     * @return this builder
     */
    public Builder needleJetLength(Length value) {
      needleJetLength = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value height of the needle jet's mouth over the fuel level, in mm of fuel
     * @return this builder
     */
    public Builder needleJetHead(Length value) {
      needleJetHead = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value the pilot circuit
     * @return this builder
     */
    public Builder pilot(PilotCircuit value) {
      pilot = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value the float valve
     * @return this builder
     */
    public Builder floatValve(FloatValve value) {
      floatValve = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value flow coefficients of the family
     * @return this builder
     */
    public Builder flow(FlowCoefficients value) {
      flow = value;
      return this;
    }

    /**
     * Builds the carburettor.
     *
     * @return the carburettor
     * @throws IllegalArgumentException if a component is not set, or out of its range
     */
    public Carburettor build() {
      return new Carburettor(
          Checks.present("carburettor", "id", id),
          Checks.present("carburettor", "bore", bore),
          Checks.present("carburettor", "needleJetLength", needleJetLength),
          Checks.present("carburettor", "needleJetHead", needleJetHead),
          Checks.present("carburettor", "pilot", pilot),
          Checks.present("carburettor", "floatValve", floatValve),
          Checks.present("carburettor", "flow", flow));
    }
  }
}
