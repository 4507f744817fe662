package dev.jetting.core.engine;

import dev.jetting.core.checks.Checks;
import dev.jetting.units.Displacement;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.Sentence;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A crankcase-scavenged two-stroke engine as its carburettor sees it: one cylinder, one
 * carburettor.
 *
 * <p>Not for four-strokes, and not for two cylinders on one carburettor, whose pulsation is
 * another.
 *
 * @param id plain name
 * @param displacement swept volume, more than zero
 * @param deliveryRatio fresh charge drawn a turn by what the displacement would hold at ambient
 *     density, over engine speed, throttle open, with the exhaust it is given for
 * @param induction how the inlet breathes
 * @param exhaust the exhaust fitted
 * @param loadLine engine speed by throttle on the road
 * @param need the mixture the engine should get
 */
public record Engine(
    String id,
    Displacement displacement,
    RpmCurve deliveryRatio,
    Induction induction,
    Exhaust exhaust,
    LoadLine loadLine,
    MixtureNeed need) {

  /** No two-stroke draws more than twice its displacement a turn (assumed). */
  private static final double GREATEST_DELIVERY = 2;

  /**
   * Checks the numbers.
   *
   * @param id plain name
   * @param displacement swept volume, more than zero
   * @param deliveryRatio fresh charge drawn a turn by what the displacement would hold at ambient
   *     density, over engine speed, throttle open, with the exhaust it is given for
   * @param induction how the inlet breathes
   * @param exhaust the exhaust fitted
   * @param loadLine engine speed by throttle on the road
   * @param need the mixture the engine should get
   * @throws IllegalArgumentException if a text is blank, too long or not one line of visible
   *     characters, or the delivery ratio is zero somewhere or more than 2 with the exhaust
   */
  public Engine {
    Checks.id("engine", id);
    Objects.requireNonNull(induction, "induction");
    Objects.requireNonNull(exhaust, "exhaust");
    Objects.requireNonNull(loadLine, "loadLine");
    Objects.requireNonNull(need, "need");
    Objects.requireNonNull(displacement, "displacement");
    Checks.that(
        allAboveZero(deliveryRatio) && allAboveZero(exhaust.deliveryFactor()),
        () -> Sentence.of("error.name.delivery-ratio").with("id", id),
        0,
        () -> Sentence.of("error.delivery"));
    checkDelivery(id, deliveryRatio, deliveryRatio, exhaust.deliveryFactor());
    checkDelivery(id, exhaust.deliveryFactor(), deliveryRatio, exhaust.deliveryFactor());
  }

  /** Between the points of the two curves their product is at most a little more. */
  private static void checkDelivery(String id, RpmCurve places, RpmCurve ratio, RpmCurve factor) {
    for (RpmCurve.Point point : places.points()) {
      double delivery = ratio.at(point.speed()) * factor.at(point.speed());
      Checks.that(
          delivery <= GREATEST_DELIVERY,
          () ->
              Sentence.of("error.name.delivery-ratio.at")
                  .with("id", id)
                  .with("speed", point.speed()),
          delivery,
          () -> Sentence.of("error.more-than-at-most.comma").with("low", 0).with("most", 2));
    }
  }

  /**
   * Delivery ratio with the exhaust fitted.
   *
   * @param speed engine speed
   * @return η, a plain number
   */
  public double deliveryRatioAt(EngineSpeed speed) {
    return deliveryRatio.at(speed) * exhaust.deliveryFactor().at(speed);
  }

  /**
   * This engine with another exhaust.
   *
   * @param other the exhaust
   * @return the changed engine
   */
  public Engine withExhaust(Exhaust other) {
    return toBuilder().exhaust(other).build();
  }

  private static boolean allAboveZero(RpmCurve curve) {
    return curve.points().stream().allMatch(p -> p.value() > 0);
  }

  /** {@return a builder of an engine, nothing of it set} */
  public static Builder builder() {
    return new Builder();
  }

  /** {@return a builder with all of this engine set} */
  public Builder toBuilder() {
    return new Builder()
        .id(id)
        .displacement(displacement)
        .deliveryRatio(deliveryRatio)
        .induction(induction)
        .exhaust(exhaust)
        .loadLine(loadLine)
        .need(need);
  }

  /**
   * Returns this engine with another value of one component; all else stays.
   *
   * @param id plain name
   * @return the changed engine
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Engine withId(String id) {
    return toBuilder().id(id).build();
  }

  /**
   * Returns this engine with another value of one component; all else stays.
   *
   * @param displacement swept volume, more than zero
   * @return the changed engine
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Engine withDisplacement(Displacement displacement) {
    return toBuilder().displacement(displacement).build();
  }

  /**
   * Returns this engine with another value of one component; all else stays.
   *
   * @param deliveryRatio fresh charge drawn a turn by what the displacement would hold at ambient
   *     density, over engine speed, throttle open, with the exhaust it is given for
   * @return the changed engine
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Engine withDeliveryRatio(RpmCurve deliveryRatio) {
    return toBuilder().deliveryRatio(deliveryRatio).build();
  }

  /**
   * Returns this engine with another value of one component; all else stays.
   *
   * @param induction how the inlet breathes
   * @return the changed engine
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Engine withInduction(Induction induction) {
    return toBuilder().induction(induction).build();
  }

  /**
   * Returns this engine with another value of one component; all else stays.
   *
   * @param loadLine engine speed by throttle on the road
   * @return the changed engine
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Engine withLoadLine(LoadLine loadLine) {
    return toBuilder().loadLine(loadLine).build();
  }

  /**
   * Returns this engine with another value of one component; all else stays.
   *
   * @param need the mixture the engine should get
   * @return the changed engine
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Engine withNeed(MixtureNeed need) {
    return toBuilder().need(need).build();
  }

  /** Names each component of an engine, so that none takes the place of another. */
  public static final class Builder {
    private @Nullable String id;
    private @Nullable Displacement displacement;
    private @Nullable RpmCurve deliveryRatio;
    private @Nullable Induction induction;
    private @Nullable Exhaust exhaust;
    private @Nullable LoadLine loadLine;
    private @Nullable MixtureNeed need;

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
     * @param value fresh charge drawn a turn by what the displacement would hold at ambient
     *     density, over engine speed, throttle open, with the exhaust it is given for
     * @return this builder
     */
    public Builder deliveryRatio(RpmCurve value) {
      deliveryRatio = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value how the inlet breathes
     * @return this builder
     */
    public Builder induction(Induction value) {
      induction = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value the exhaust fitted
     * @return this builder
     */
    public Builder exhaust(Exhaust value) {
      exhaust = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value engine speed by throttle on the road
     * @return this builder
     */
    public Builder loadLine(LoadLine value) {
      loadLine = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value the mixture the engine should get
     * @return this builder
     */
    public Builder need(MixtureNeed value) {
      need = value;
      return this;
    }

    /**
     * Builds the engine.
     *
     * @return the engine
     * @throws IllegalArgumentException if a component is not set, or out of its range
     */
    public Engine build() {
      return new Engine(
          Checks.present("engine", "id", id),
          Checks.present("engine", "displacement", displacement),
          Checks.present("engine", "deliveryRatio", deliveryRatio),
          Checks.present("engine", "induction", induction),
          Checks.present("engine", "exhaust", exhaust),
          Checks.present("engine", "loadLine", loadLine),
          Checks.present("engine", "need", need));
    }
  }
}
