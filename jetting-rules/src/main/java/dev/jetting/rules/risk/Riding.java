package dev.jetting.rules.risk;

import dev.jetting.core.air.Air;
import dev.jetting.core.checks.Checks;
import dev.jetting.core.fuel.Fuel;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Probability;
import dev.jetting.units.Sentence;
import dev.jetting.units.Temperature;
import dev.jetting.units.TemperatureDifference;
import dev.jetting.units.number.Decimals;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What the owner rides and what he accepts.
 *
 * @param acceptedRisk accepted probability that the mixture is too lean, at any throttle opening;
 *     more than 0, at most 0.5
 * @param profile how much of the riding falls on which throttle opening
 * @param coldest the air of the coldest day and lowest place he rides in
 * @param hottest the air of the hottest day or highest place he rides in
 * @param speeds the engine speeds at which he rides an opening
 */
public record Riding(
    Probability acceptedRisk,
    RidingProfile profile,
    Air coldest,
    Air hottest,
    RiddenSpeeds speeds) {

  /**
   * The share of the accepted risk that advice towards lean may spend on an engine without readings
   * (assumed): the rest is kept in hand for what the spreads leave out. Anyone who has readings may
   * come nearer.
   */
  public static final double SHARE_FOR_UNREAD = 0.2;

  /**
   * Checks the accepted risk and the two days.
   *
   * @param acceptedRisk accepted probability that the mixture is too lean, at any throttle opening;
   *     more than 0, at most 0.5
   * @param profile how much of the riding falls on which throttle opening
   * @param coldest the air of the coldest day and lowest place he rides in
   * @param hottest the air of the hottest day or highest place he rides in
   * @param speeds the engine speeds at which he rides an opening
   * @throws IllegalArgumentException if it is zero or above one half, or if the coldest day's air
   *     is thinner than the hottest day's
   */
  public Riding {
    Objects.requireNonNull(profile, "profile");
    Objects.requireNonNull(coldest, "coldest");
    Objects.requireNonNull(hottest, "hottest");
    Objects.requireNonNull(speeds, "speeds");
    if (acceptedRisk.value() <= 0 || acceptedRisk.value() > 0.5) {
      throw InvalidValueException.of(
          Sentence.of("error.name.accepted-risk"),
          acceptedRisk,
          Sentence.of("error.more-than-at-most").with("low", 0).with("most", 0.5));
    }
    if (coldest.density().isLessThan(hottest.density())) {
      throw InvalidValueException.of(
          Sentence.of("error.name.coldest-air"),
          density(coldest),
          Sentence.of("error.denser.swapped").with("density", density(hottest)));
    }
  }

  /**
   * This riding between other days.
   *
   * @param newColdest the air of the coldest day and lowest place he rides in
   * @param newHottest the air of the hottest day or highest place he rides in
   * @return the changed riding
   * @throws IllegalArgumentException if the coldest day's air is thinner than the hottest day's
   */
  public Riding withDays(Air newColdest, Air newHottest) {
    return new Riding(acceptedRisk, profile, newColdest, newHottest, speeds);
  }

  /**
   * Checks that a fuel is known on both days.
   *
   * @param fuel the fuel
   * @param warmerBy how much warmer than the air it is in the float chamber
   * @throws IllegalArgumentException if its density and viscosity are not known on one of them: the
   *     fuel is a blend, and colder than −40 °C or warmer than 80 °C
   */
  public void checkFuel(Fuel fuel, TemperatureDifference warmerBy) {
    checkFuel("the coldest day", coldest, fuel, warmerBy);
    checkFuel("the hottest day", hottest, fuel, warmerBy);
  }

  /**
   * Checks that a fuel is known in an air.
   *
   * @param when the day, as a message names it
   * @param air the air
   * @param fuel the fuel
   * @param warmerBy how much warmer than the air it is in the float chamber
   * @throws IllegalArgumentException if its density and viscosity are not known there: the fuel is
   *     a blend, and colder than −40 °C or warmer than 80 °C
   */
  public static void checkFuel(String when, Air air, Fuel fuel, TemperatureDifference warmerBy) {
    Temperature chamber = air.temperature().plus(warmerBy);
    if (!fuel.isKnownAt(chamber)) {
      throw InvalidValueException.of(
          Sentence.of("error.name.fuel-on").with("day", when),
          Decimals.shortest(chamber.celsius()) + " °C",
          Sentence.of("error.fuel-known"));
    }
  }

  private static String density(Air air) {
    return Decimals.fixed(air.density().kilogramsPerCubicMetre(), 3) + " kg/m³";
  }

  /** {@return a builder of a riding, nothing of it set} */
  public static Builder builder() {
    return new Builder();
  }

  /** {@return a builder with all of this riding set} */
  public Builder toBuilder() {
    return new Builder()
        .acceptedRisk(acceptedRisk)
        .profile(profile)
        .coldest(coldest)
        .hottest(hottest)
        .speeds(speeds);
  }

  /**
   * Returns this riding with another value of one component; all else stays.
   *
   * @param acceptedRisk accepted probability that the mixture is too lean, at any throttle opening;
   *     more than 0, at most 0.5
   * @return the changed riding
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Riding withAcceptedRisk(Probability acceptedRisk) {
    return toBuilder().acceptedRisk(acceptedRisk).build();
  }

  /**
   * Returns this riding with another value of one component; all else stays.
   *
   * @param profile how much of the riding falls on which throttle opening
   * @return the changed riding
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Riding withProfile(RidingProfile profile) {
    return toBuilder().profile(profile).build();
  }

  /**
   * Returns this riding with another value of one component; all else stays.
   *
   * @param coldest the air of the coldest day and lowest place he rides in
   * @return the changed riding
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Riding withColdest(Air coldest) {
    return toBuilder().coldest(coldest).build();
  }

  /**
   * Returns this riding with another value of one component; all else stays.
   *
   * @param hottest the air of the hottest day or highest place he rides in
   * @return the changed riding
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Riding withHottest(Air hottest) {
    return toBuilder().hottest(hottest).build();
  }

  /**
   * Returns this riding with another value of one component; all else stays.
   *
   * @param speeds the engine speeds at which he rides an opening
   * @return the changed riding
   */
  public Riding withSpeeds(RiddenSpeeds speeds) {
    return toBuilder().speeds(speeds).build();
  }

  /** Names each component of a riding, so that none takes the place of another. */
  public static final class Builder {
    private @Nullable Probability acceptedRisk;
    private @Nullable RidingProfile profile;
    private @Nullable Air coldest;
    private @Nullable Air hottest;
    private RiddenSpeeds speeds = RiddenSpeeds.assumed();

    private Builder() {}

    /**
     * Sets one component.
     *
     * @param value accepted probability that the mixture is too lean, at any throttle opening; more
     *     than 0, at most 0.5
     * @return this builder
     */
    public Builder acceptedRisk(Probability value) {
      acceptedRisk = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value how much of the riding falls on which throttle opening
     * @return this builder
     */
    public Builder profile(RidingProfile value) {
      profile = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value the air of the coldest day and lowest place he rides in
     * @return this builder
     */
    public Builder coldest(Air value) {
      coldest = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value the air of the hottest day or highest place he rides in
     * @return this builder
     */
    public Builder hottest(Air value) {
      hottest = value;
      return this;
    }

    /**
     * Sets one component; {@link RiddenSpeeds#assumed()} unless set.
     *
     * @param value the engine speeds at which he rides an opening
     * @return this builder
     */
    public Builder speeds(RiddenSpeeds value) {
      speeds = value;
      return this;
    }

    /**
     * Builds the riding.
     *
     * @return the riding
     * @throws IllegalArgumentException if a component is not set, or out of its range
     */
    public Riding build() {
      return new Riding(
          Checks.present("riding", "acceptedRisk", acceptedRisk),
          Checks.present("riding", "profile", profile),
          Checks.present("riding", "coldest", coldest),
          Checks.present("riding", "hottest", hottest),
          speeds);
    }
  }
}
