package dev.jetting.core.parts;

import com.google.common.collect.Comparators;
import dev.jetting.core.checks.Checks;
import dev.jetting.units.Diameter;
import dev.jetting.units.Length;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

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
    Checks.that(grooves >= 1 && grooves <= 9, "grooves of needle " + id, grooves, "1 to 9");
    Objects.requireNonNull(groovePitch, "groovePitch");
    tapers = List.copyOf(tapers);
    Checks.that(
        Comparators.isInStrictOrder(
            tapers, Comparator.comparingDouble(t -> t.start().millimetres())),
        "tapers of needle " + id,
        tapers,
        "each starting below the one before");
    double last = tapers.isEmpty() ? 0 : tapers.get(tapers.size() - 1).start().millimetres();
    Checks.that(
        tip.millimetres() > last, "tip of needle " + id, tip, "below the last taper's start");
    double left = diameter(cylinder.millimetres(), tapers, tip.millimetres());
    Checks.that(
        left > 0,
        "tapers of needle " + id,
        tapers,
        "leaving more than 0 mm of diameter at the tip");
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
}
