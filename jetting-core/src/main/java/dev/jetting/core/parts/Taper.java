package dev.jetting.core.parts;

import dev.jetting.core.checks.Checks;
import dev.jetting.units.Length;
import dev.jetting.units.Sentence;
import java.util.Objects;

/**
 * A stretch of a needle that gets thinner towards its tip.
 *
 * @param start where it starts, measured down the needle from the section that stands in the needle
 *     jet when the slide is fully down and the clip is in the top groove
 * @param rate loss of diameter by length, mm/mm, 0 to 0.5; holds to the start of the next taper
 */
public record Taper(Length start, double rate) {

  /**
   * Checks the rate.
   *
   * @param start where it starts, measured down the needle from the section that stands in the
   *     needle jet when the slide is fully down and the clip is in the top groove
   * @param rate loss of diameter by length, mm/mm, 0 to 0.5
   * @throws IllegalArgumentException if the rate is outside 0 to 0.5 mm/mm
   */
  public Taper {
    rate = Checks.within(() -> Sentence.of("error.name.rate-of-taper"), rate, 0, 0.5);
    Objects.requireNonNull(start, "start");
  }
}
