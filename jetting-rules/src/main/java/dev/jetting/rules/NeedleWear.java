package dev.jetting.rules;

import dev.jetting.core.checks.Checks;
import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.core.parts.Setting;
import dev.jetting.units.Diameter;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Length;
import dev.jetting.units.Sentence;
import org.jspecify.annotations.Nullable;

/**
 * How worn needle jet and needle were when a setting was proven, beyond the sizes that the setting
 * says. New parts of the same sizes pass less fuel, so that the setting is leaner with them.
 *
 * <p>Not for worn parts that are still in: gauge them, and write their sizes into the setting.
 *
 * @param needleJet by how much the bore of the needle jet was wider, 0 mm to 0.2 mm
 * @param needle by how much the needle was thinner, 0 mm to 0.2 mm
 */
public record NeedleWear(Length needleJet, Length needle) {

  /** Beyond it a pair is not worn but another one (assumed). */
  private static final double MOST = 0.2;

  /**
   * Checks the numbers.
   *
   * @param needleJet by how much the bore of the needle jet was wider, 0 mm to 0.2 mm
   * @param needle by how much the needle was thinner, 0 mm to 0.2 mm
   * @throws IllegalArgumentException if one is more than 0.2 mm
   */
  public NeedleWear {
    check("error.name.needle-jet", needleJet);
    check("error.name.needle", needle);
  }

  private static void check(String part, Length wear) {
    if (wear.millimetres() > MOST) {
      throw InvalidValueException.of(
          Sentence.of("error.name.wear").with("part", Sentence.of(part)),
          wear,
          Sentence.of("error.to")
              .with("low", new Sentence.Amount(0, "mm"))
              .with("high", new Sentence.Amount(0.2, "mm")));
    }
  }

  /** The setting with parts so worn; throws if they leave no metal at the needle's tip. */
  Setting on(Setting setting) {
    NeedleJet jet = setting.needleJet();
    Needle rod = setting.needle();
    Needle thinner =
        Needle.builder()
            .id(rod.id())
            .cylinder(sum(rod.cylinder(), -needle.millimetres()))
            .tapers(rod.tapers())
            .grooves(rod.grooves())
            .groovePitch(rod.groovePitch())
            .tip(rod.tip())
            .build();
    return setting
        .withNeedleJet(new NeedleJet(sum(jet.bore(), needleJet.millimetres()), jet.neck()))
        .withNeedle(thinner, setting.clip());
  }

  private static Diameter sum(Diameter diameter, double millimetres) {
    return Diameter.ofMillimetres(diameter.millimetres() + millimetres);
  }

  /** {@return a builder of a wear, nothing of it set} */
  public static Builder builder() {
    return new Builder();
  }

  /** {@return a builder with all of this wear set} */
  public Builder toBuilder() {
    Builder builder = new Builder();
    builder.needleJet = needleJet;
    builder.needle = needle;
    return builder;
  }

  /**
   * Returns this wear with another value of one component; all else stays.
   *
   * @param needleJet by how much the bore of the needle jet was wider, 0 mm to 0.2 mm
   * @return the changed wear
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public NeedleWear withNeedleJet(Length needleJet) {
    Builder builder = toBuilder();
    builder.needleJet = needleJet;
    return builder.build();
  }

  /**
   * Returns this wear with another value of one component; all else stays.
   *
   * @param needle by how much the needle was thinner, 0 mm to 0.2 mm
   * @return the changed wear
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public NeedleWear withNeedle(Length needle) {
    Builder builder = toBuilder();
    builder.needle = needle;
    return builder.build();
  }

  /** Names each component of a wear, so that none takes the place of another. */
  public static final class Builder {
    private @Nullable Length needleJet;
    private @Nullable Length needle;

    private Builder() {}

    /**
     * Sets one component.
     *
     * @param value by how much the bore of the needle jet was wider, 0 mm to 0.2 mm
     * @return this builder
     */
    public Builder needleJet(Length value) {
      needleJet = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value by how much the needle was thinner, 0 mm to 0.2 mm
     * @return this builder
     */
    public Builder needle(Length value) {
      needle = value;
      return this;
    }

    /**
     * Builds the wear.
     *
     * @return the wear
     * @throws IllegalArgumentException if a component is not set, or out of its range
     */
    public NeedleWear build() {
      return new NeedleWear(
          Checks.present("wear", "needleJet", needleJet), Checks.present("wear", "needle", needle));
    }
  }
}
