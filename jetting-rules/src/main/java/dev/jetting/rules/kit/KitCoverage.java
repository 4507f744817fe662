package dev.jetting.rules.kit;

import dev.jetting.units.Probability;
import java.util.List;
import java.util.Objects;

/**
 * For how many engines of one kind a kit has a setting that is right at every throttle opening on
 * every day, and which parts would serve more.
 *
 * @param share the share of engines that the kit serves
 * @param standardError how far off that share may be, for the engines are a sample; 0 to 0.5
 * @param extras pilot and main jets of the catalogue to add one after the other. Each raises the
 *     share most with those before it, or is one of two that together raise it by more than twice
 *     as much; at most three, none beyond {@link #LEAST}, and none by which no more is gained
 * @param used ids of the parts of the kit that are in the best setting of some engine
 */
public record KitCoverage(
    Probability share, double standardError, List<Extra> extras, List<String> used) {

  /** Share of engines for which a kit should have a right setting: the trade's aim (assumed). */
  public static final Probability LEAST = Probability.of(0.95);

  /**
   * A part that the kit does not have.
   *
   * @param part id of the part
   * @param share the share of engines that the kit would serve with this part and all extras before
   *     it
   */
  public record Extra(String part, Probability share) {

    /**
     * Checks for nulls.
     *
     * @param part id of the part
     * @param share the share of engines that the kit would serve with this part and all before it
     */
    public Extra {
      Objects.requireNonNull(part, "part");
      Objects.requireNonNull(share, "share");
    }
  }

  /**
   * Copies the lists.
   *
   * @param share the share of engines that the kit serves
   * @param standardError how far off that share may be, for the engines are a sample; 0 to 0.5
   * @param extras pilot and main jets of the catalogue to add one after the other; at most three
   * @param used ids of the parts of the kit that are in the best setting of some engine
   * @throws IllegalArgumentException if the standard error is out of range
   */
  public KitCoverage {
    Objects.requireNonNull(share, "share");
    if (!(standardError >= 0 && standardError <= 0.5)) {
      throw new IllegalArgumentException("standard error of a coverage: allowed 0 to 0.5");
    }
    standardError += 0.0; // −0.0 becomes 0.0
    extras = List.copyOf(extras);
    used = List.copyOf(used);
  }

  /** Whether the kit serves {@link #LEAST} of the engines. */
  boolean isEnough() {
    return share.compareTo(LEAST) >= 0;
  }
}
