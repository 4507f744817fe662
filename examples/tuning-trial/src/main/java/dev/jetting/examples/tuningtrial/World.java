package dev.jetting.examples.tuningtrial;

import dev.jetting.core.mixture.Setup;
import dev.jetting.rules.risk.ModelUncertainty;

/** Where engines and riders come from. */
enum World {
  /** Engines and riders differ just as the library assumes. */
  AS_ASSUMED,
  /** Engines differ in more ways than it reckons with, and riders err as people do. */
  RICHER;

  TrueEngine engine(Setup setup, ModelUncertainty spreads, long seed) {
    return this == AS_ASSUMED
        ? AssumedEngine.draw(setup, spreads, seed)
        : RicherEngine.draw(setup, spreads, seed);
  }

  Rider.Skill skill() {
    return this == AS_ASSUMED ? Rider.Skill.AS_ASSUMED : Rider.Skill.HUMAN;
  }
}
