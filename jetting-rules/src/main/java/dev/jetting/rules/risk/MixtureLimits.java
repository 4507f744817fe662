package dev.jetting.rules.risk;

import dev.jetting.core.engine.MixtureNeed;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.units.Lambda;
import dev.jetting.units.ThrottleOpening;
import java.util.Map;

/**
 * How lean and how rich is too much: a policy that a caller may replace.
 *
 * <p>No published lean limit of a two-stroke over its throttle range was found; {@link #assumed()}
 * is this project's own assumption. An engine builder's word goes before it.
 *
 * <p>Limits of a class of the caller's own are checked where {@link RiskModel#profile} uses them.
 * It refuses a rich limit that is not below the lean limit. At closed throttle the rich limit has
 * to be below the limit on the overrun, too.
 */
public interface MixtureLimits {

  /**
   * The leanest mixture that does no harm.
   *
   * @param throttle throttle opening
   * @param need the mixture the engine should get
   * @return the limit; a leaner mixture is dangerous
   */
  Lambda lean(ThrottleOpening throttle, MixtureNeed need);

  /**
   * The richest mixture on which the engine runs cleanly.
   *
   * @param throttle throttle opening
   * @param need the mixture the engine should get
   * @return the limit; on a richer mixture the engine four-strokes and fouls its plug
   */
  Lambda rich(ThrottleOpening throttle, MixtureNeed need);

  /**
   * The leanest mixture on the pilot's fuel alone that does no harm on the overrun after a long
   * open run.
   *
   * @param need the mixture the engine should get
   * @return the limit
   */
  Lambda overrun(MixtureNeed need);

  /**
   * What the limits rest on.
   *
   * @return each coefficient by its name, in an order that does not change
   */
  Map<String, Coefficient> basis();

  /** {@return limits at assumed margins from the mixture that the engine should get} */
  static MixtureLimits assumed() {
    return MarginLimits.ASSUMED;
  }

  /** {@return a builder of limits at fixed margins, each the assumed one unless set} */
  static MarginBuilder margins() {
    return new MarginBuilder();
  }

  /** Names each margin of limits, so that none takes the place of another. */
  final class MarginBuilder {
    private Coefficient lean = MarginLimits.ASSUMED.leanMargin();
    private Coefficient rich = MarginLimits.ASSUMED.richMargin();
    private Coefficient overrun = MarginLimits.ASSUMED.overrunMargin();

    private MarginBuilder() {}

    /**
     * Sets the lean limit.
     *
     * @param value lean limit by the λ wanted, more than 1 and less than 3
     * @return this builder
     */
    public MarginBuilder lean(Coefficient value) {
      lean = value;
      return this;
    }

    /**
     * Sets the rich limit.
     *
     * @param value rich limit by the λ wanted, more than 0 and less than 1
     * @return this builder
     */
    public MarginBuilder rich(Coefficient value) {
      rich = value;
      return this;
    }

    /**
     * Sets the limit on the overrun.
     *
     * @param value λ on the overrun, on the pilot's fuel alone, by the λ wanted at closed throttle;
     *     more than the rich limit and less than 3
     * @return this builder
     */
    public MarginBuilder overrun(Coefficient value) {
      overrun = value;
      return this;
    }

    /**
     * Builds the limits.
     *
     * @return the limits
     * @throws IllegalArgumentException if a number is out of range or has a unit, or the limit on
     *     the overrun is not leaner than the rich limit
     */
    public MixtureLimits build() {
      return new MarginLimits(lean, rich, overrun);
    }
  }
}
