package dev.jetting.core.cycle;

import dev.jetting.core.checks.Checks;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The inside of a crankcase-scavenged engine, as the reference simulation needs it. The swept
 * volume is that of the setup's engine.
 *
 * <p>Example: {@code Crankcase.builder().primaryCompression(1.35).inlet(new Inlet.PistonPort(150,
 * area)).transfer(transfer).tract(tract).build()}.
 *
 * <p>Not for engines with a blower, and not for two cylinders on one crankcase.
 *
 * @param primaryCompression greatest by least volume of the crankcase, 1.1 to 2.5
 * @param crankByRod half of the stroke by the length of the rod, 0.15 to 0.4
 * @param inlet what opens the crankcase to the carburettor
 * @param transfer the transfer ports
 * @param tract the way from the slide to the inlet
 */
public record Crankcase(
    double primaryCompression,
    double crankByRod,
    Inlet inlet,
    Transfer transfer,
    IntakeTract tract) {

  /** A usual rod is about twice as long as the stroke (assumed). */
  private static final double USUAL_CRANK_BY_ROD = 0.25;

  /**
   * Checks the numbers; {@link #builder} names them.
   *
   * @param primaryCompression greatest by least volume of the crankcase, 1.1 to 2.5
   * @param crankByRod half of the stroke by the length of the rod, 0.15 to 0.4
   * @param inlet what opens the crankcase to the carburettor
   * @param transfer the transfer ports
   * @param tract the way from the slide to the inlet
   * @throws IllegalArgumentException if a number is out of range
   */
  public Crankcase {
    Checks.within("primary compression", primaryCompression, 1.1, 2.5);
    Checks.within("crank by rod", crankByRod, 0.15, 0.4);
    Objects.requireNonNull(inlet, "inlet");
    Objects.requireNonNull(transfer, "transfer");
    Objects.requireNonNull(tract, "tract");
  }

  /** {@return a builder with nothing set but the usual rod} */
  public static Builder builder() {
    return new Builder();
  }

  /** {@return a builder with everything as it is here} */
  public Builder toBuilder() {
    return new Builder()
        .primaryCompression(primaryCompression)
        .crankByRod(crankByRod)
        .inlet(inlet)
        .transfer(transfer)
        .tract(tract);
  }

  /** Builds a crankcase by names. Not safe for more than one thread. */
  public static final class Builder {
    private double primaryCompression;
    private double crankByRod = USUAL_CRANK_BY_ROD;
    private @Nullable Inlet inlet;
    private @Nullable Transfer transfer;
    private @Nullable IntakeTract tract;

    private Builder() {}

    /**
     * Sets the primary compression.
     *
     * @param ratio greatest by least volume of the crankcase, 1.1 to 2.5
     * @return this builder
     */
    public Builder primaryCompression(double ratio) {
      primaryCompression = ratio;
      return this;
    }

    /**
     * Sets the rod.
     *
     * @param ratio half of the stroke by the length of the rod, 0.15 to 0.4
     * @return this builder
     */
    public Builder crankByRod(double ratio) {
      crankByRod = ratio;
      return this;
    }

    /**
     * Sets the inlet.
     *
     * @param kind what opens the crankcase to the carburettor
     * @return this builder
     */
    public Builder inlet(Inlet kind) {
      inlet = kind;
      return this;
    }

    /**
     * Sets the transfer ports.
     *
     * @param ports the transfer ports
     * @return this builder
     */
    public Builder transfer(Transfer ports) {
      transfer = ports;
      return this;
    }

    /**
     * Sets the intake tract.
     *
     * @param way the way from the slide to the inlet
     * @return this builder
     */
    public Builder tract(IntakeTract way) {
      tract = way;
      return this;
    }

    /**
     * Builds the crankcase.
     *
     * @return the crankcase
     * @throws IllegalArgumentException if a number is out of range or was not set
     * @throws NullPointerException if a part was not set; the message names it
     */
    public Crankcase build() {
      return new Crankcase(
          primaryCompression,
          crankByRod,
          Objects.requireNonNull(inlet, "inlet"),
          Objects.requireNonNull(transfer, "transfer"),
          Objects.requireNonNull(tract, "tract"));
    }
  }
}
