package dev.jetting.core.mixture;

import dev.jetting.core.checks.Checks;
import dev.jetting.units.Sentence;
import dev.jetting.units.number.Decimals;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;

/**
 * The step in which a tuner changes each part: what makes the parts comparable.
 *
 * <p>The default steps are this project's own assumption of what is on the shelf; replace them with
 * those of a catalogue. In the numbers' own units: mm for jets, needle jet, needle and cutaway,
 * mm/mm for the taper, turns for the screw, grooves for the clip.
 */
public final class CustomarySteps {

  private static final CustomarySteps ASSUMED =
      new CustomarySteps(
          new EnumMap<>(
              Map.of(
                  MeteringPart.PILOT_JET, 0.02,
                  MeteringPart.SCREW, 0.25,
                  MeteringPart.CUTAWAY, 0.5,
                  MeteringPart.NEEDLE_JET, 0.02,
                  MeteringPart.NEEDLE_DIAMETER, 0.01,
                  MeteringPart.NEEDLE_TAPER, 0.001,
                  MeteringPart.CLIP, 1.0,
                  MeteringPart.MAIN_JET, 0.02)));

  private final EnumMap<MeteringPart, Double> sizes;

  private CustomarySteps(EnumMap<MeteringPart, Double> sizes) {
    this.sizes = sizes;
  }

  /** {@return the library's own assumed steps} */
  public static CustomarySteps assumed() {
    return ASSUMED;
  }

  /**
   * These steps with another one for a part.
   *
   * @param part the part
   * @param size the step in the part's own unit, more than zero and at most 1
   * @return the changed steps
   * @throws IllegalArgumentException if the step is out of range
   */
  public CustomarySteps with(MeteringPart part, double size) {
    Checks.that(
        size > 0 && size <= 1,
        () -> Sentence.of("error.name.customary-step").with("part", part),
        size,
        () -> Sentence.of("error.more-than-at-most").with("low", 0).with("most", 1));
    EnumMap<MeteringPart, Double> changed = new EnumMap<>(sizes);
    changed.put(part, size);
    return new CustomarySteps(changed);
  }

  /**
   * The step of a part.
   *
   * @param part the part
   * @return the step in the part's own unit
   */
  public double of(MeteringPart part) {
    return sizes.getOrDefault(Objects.requireNonNull(part, "part"), 0.0);
  }

  /** Two sets are equal when all their steps are. */
  @Override
  public boolean equals(Object other) {
    return other instanceof CustomarySteps steps && steps.sizes.equals(sizes);
  }

  @Override
  public int hashCode() {
    return sizes.hashCode();
  }

  /** {@return the steps, part by part} */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder("customary steps");
    sizes.forEach(
        (part, size) -> text.append(' ').append(part).append(' ').append(Decimals.shortest(size)));
    return text.toString();
  }
}
