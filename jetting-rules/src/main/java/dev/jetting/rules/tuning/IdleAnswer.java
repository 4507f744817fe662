package dev.jetting.rules.tuning;

/**
 * What the idle of a warm engine answers to the screw, and what it does by itself. What each says
 * of the mixture is assumed: best within 7 % of the λ needed.
 */
public enum IdleAnswer {
  /** Best where the screw stands: it slows with the screw turned either way. */
  BEST,
  /** Faster with the screw turned to the rich side: lean. */
  FASTER_RICHER,
  /** Faster with the screw turned to the lean side: rich. */
  FASTER_LEANER,
  /** Still getting faster at the rich end of the screw's range: very lean, or false air. */
  BEYOND_RICH,
  /** Still getting faster at the lean end of the screw's range: very rich. */
  BEYOND_LEAN,
  /** The screw changes nothing. It says nothing of the mixture. */
  UNMOVED,
  /**
   * Races with the slide shut and its stop backed off: more air than the slide lets in. It says
   * nothing of the mixture.
   */
  RACES,
  /** The engine runs on with the ignition off. It says nothing of the mixture at idle. */
  RUNS_ON;

  /** Within this share of the λ needed an idle is best (assumed; not measured). */
  private static final double BEST_WITHIN = 1.07;

  /** Standard deviation of ln λ at which it is felt (assumed; not measured). */
  private static final double DEVIATION = 0.08;

  /**
   * What it says of the mixture at idle; of no use for those that say nothing of it.
   *
   * @param reach by how much richer and leaner than as it stands the screw's ends are
   */
  Meaning meaning(ScrewReach reach) {
    return switch (this) {
      case BEST -> Meaning.assumed(1 / BEST_WITHIN, BEST_WITHIN, DEVIATION);
      case FASTER_RICHER -> leanerThan(BEST_WITHIN);
      case FASTER_LEANER -> richerThan(1 / BEST_WITHIN);
      case BEYOND_RICH -> leanerThan(BEST_WITHIN / reach.richest());
      case BEYOND_LEAN -> richerThan(1 / BEST_WITHIN / reach.leanest());
      case UNMOVED, RACES, RUNS_ON -> throw new AssertionError(this);
    };
  }

  private static Meaning leanerThan(double byNeed) {
    return Meaning.assumed(byNeed, Meaning.NO_LIMIT_LEAN, DEVIATION);
  }

  private static Meaning richerThan(double byNeed) {
    return Meaning.assumed(Meaning.NO_LIMIT_RICH, byNeed, DEVIATION);
  }

  /** Whether it says something of the mixture at idle. */
  boolean isOfMixture() {
    return switch (this) {
      case BEST, FASTER_RICHER, FASTER_LEANER, BEYOND_RICH, BEYOND_LEAN -> true;
      case UNMOVED, RACES, RUNS_ON -> false;
    };
  }
}
