package dev.jetting.core.parts;

import com.google.common.collect.Comparators;
import dev.jetting.core.checks.Checks;
import dev.jetting.units.Diameter;
import dev.jetting.units.Length;
import dev.jetting.units.Sentence;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A needle: a cylinder, then one or more tapers, hung from a clip in one of its grooves.
 *
 * <p>Lengths count down the needle from the section that stands in the needle jet when the slide is
 * fully down and the clip is in the top groove.
 *
 * @param id plain name
 * @param cylinder diameter above the first taper, more than zero
 * @param tapers the tapers from top to tip; none for a straight needle
 * @param grooves number of grooves, 1 to 9
 * @param groovePitch distance from groove to groove
 * @param tip where the needle ends; beyond it the needle jet is open
 */
public record Needle(
    String id, Diameter cylinder, List<Taper> tapers, int grooves, Length groovePitch, Length tip) {

  private static final int MOST_TAPERS = 20;

  /**
   * Checks the geometry.
   *
   * @param id plain name
   * @param cylinder diameter above the first taper, more than zero
   * @param tapers the tapers from top to tip
   * @param grooves number of grooves, 1 to 9
   * @param groovePitch distance from groove to groove
   * @param tip where the needle ends
   * @throws IllegalArgumentException if a number is out of range, the tapers do not follow each
   *     other, or they leave no metal at the tip
   */
  public Needle {
    Checks.id("needle", id);
    Checks.that(
        grooves >= 1 && grooves <= 9,
        () -> Sentence.of("error.name.grooves-of-needle").with("id", id),
        grooves,
        () -> Sentence.of("error.to").with("low", 1).with("high", 9));
    Objects.requireNonNull(groovePitch, "groovePitch");
    tapers = List.copyOf(tapers);
    Checks.atMost(
        "tapers",
        () -> Sentence.of("error.name.tapers-of-needle").with("id", id),
        tapers.size(),
        MOST_TAPERS);
    Checks.that(
        Comparators.isInStrictOrder(
            tapers, Comparator.comparingDouble(t -> t.start().millimetres())),
        () -> Sentence.of("error.name.tapers-of-needle").with("id", id),
        tapers,
        () -> Sentence.of("error.tapers-order"));
    double last = tapers.isEmpty() ? 0 : tapers.get(tapers.size() - 1).start().millimetres();
    Checks.that(
        tip.millimetres() > last,
        () -> Sentence.of("error.name.tip-of-needle").with("id", id),
        tip,
        () -> Sentence.of("error.tip-below"));
    double left = diameter(cylinder.millimetres(), tapers, tip.millimetres());
    Checks.that(
        left > 0,
        () -> Sentence.of("error.name.tapers-of-needle").with("id", id),
        tapers,
        () -> Sentence.of("error.tip-diameter"));
  }

  /**
   * Diameter at a place on the needle.
   *
   * @param down distance down the needle, mm, as for {@link Taper#start()}
   * @return the diameter in mm; 0 beyond the tip
   */
  public double diameterAt(double down) {
    return down > tip.millimetres() ? 0 : diameter(cylinder.millimetres(), tapers, down);
  }

  /**
   * How much of the needle above a place is tapered.
   *
   * @param down distance down the needle, mm, as for {@link Taper#start()}
   * @return the length in mm from the start of the first taper; 0 above it or on a straight needle
   */
  public double taperedLength(double down) {
    return tapers.isEmpty() ? 0 : Math.max(0, down - tapers.get(0).start().millimetres());
  }

  private static double diameter(double cylinder, List<Taper> tapers, double down) {
    double diameter = cylinder;
    for (int i = 0; i < tapers.size(); i++) {
      double start = tapers.get(i).start().millimetres();
      double end =
          i + 1 < tapers.size() ? Math.min(down, tapers.get(i + 1).start().millimetres()) : down;
      diameter -= tapers.get(i).rate() * Math.max(0, end - start);
    }
    return diameter;
  }

  /** {@return a builder of a needle, nothing of it set} */
  public static Builder builder() {
    return new Builder();
  }

  /** {@return a builder with all of this needle set} */
  public Builder toBuilder() {
    return new Builder()
        .id(id)
        .cylinder(cylinder)
        .tapers(tapers)
        .grooves(grooves)
        .groovePitch(groovePitch)
        .tip(tip);
  }

  /**
   * Returns this needle with another value of one component; all else stays.
   *
   * @param id plain name
   * @return the changed needle
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Needle withId(String id) {
    return toBuilder().id(id).build();
  }

  /**
   * Returns this needle with another value of one component; all else stays.
   *
   * @param cylinder diameter above the first taper, more than zero
   * @return the changed needle
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Needle withCylinder(Diameter cylinder) {
    return toBuilder().cylinder(cylinder).build();
  }

  /**
   * Returns this needle with another value of one component; all else stays.
   *
   * @param tapers the tapers from top to tip; none for a straight needle
   * @return the changed needle
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Needle withTapers(List<Taper> tapers) {
    return toBuilder().tapers(tapers).build();
  }

  /**
   * Returns this needle with another value of one component; all else stays.
   *
   * @param grooves number of grooves, 1 to 9
   * @return the changed needle
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Needle withGrooves(int grooves) {
    return toBuilder().grooves(grooves).build();
  }

  /**
   * Returns this needle with another value of one component; all else stays.
   *
   * @param groovePitch distance from groove to groove
   * @return the changed needle
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Needle withGroovePitch(Length groovePitch) {
    return toBuilder().groovePitch(groovePitch).build();
  }

  /**
   * Returns this needle with another value of one component; all else stays.
   *
   * @param tip where the needle ends; beyond it the needle jet is open
   * @return the changed needle
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Needle withTip(Length tip) {
    return toBuilder().tip(tip).build();
  }

  /** Names each component of a needle, so that none takes the place of another. */
  public static final class Builder {
    private @Nullable String id;
    private @Nullable Diameter cylinder;
    private @Nullable List<Taper> tapers;
    private @Nullable Integer grooves;
    private @Nullable Length groovePitch;
    private @Nullable Length tip;

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
     * @param value diameter above the first taper, more than zero
     * @return this builder
     */
    public Builder cylinder(Diameter value) {
      cylinder = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value the tapers from top to tip; none for a straight needle
     * @return this builder
     */
    public Builder tapers(List<Taper> value) {
      tapers = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value number of grooves, 1 to 9
     * @return this builder
     */
    public Builder grooves(int value) {
      grooves = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value distance from groove to groove
     * @return this builder
     */
    public Builder groovePitch(Length value) {
      groovePitch = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value where the needle ends; beyond it the needle jet is open
     * @return this builder
     */
    public Builder tip(Length value) {
      tip = value;
      return this;
    }

    /**
     * Builds the needle.
     *
     * @return the needle
     * @throws IllegalArgumentException if a component is not set, or out of its range
     */
    public Needle build() {
      return new Needle(
          Checks.present("needle", "id", id),
          Checks.present("needle", "cylinder", cylinder),
          Checks.present("needle", "tapers", tapers),
          Checks.present("needle", "grooves", grooves),
          Checks.present("needle", "groovePitch", groovePitch),
          Checks.present("needle", "tip", tip));
    }
  }
}
