package dev.jetting.rules.advice;

import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.SetupSheet;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * Judges settings of one sheet, each once, and no more than bound the cost of a plan. A search ends
 * with the best that it has seen then.
 */
final class Judge {

  /**
   * A plan looks at some two hundred settings, at three hundred for the poorest ones, and at more
   * where a hundred parts of each kind are at hand.
   */
  static final int MOST_SETTINGS = 400;

  private final SetupSheet sheet;
  private final Rulebook rulebook;
  private final Function<? super SetupSheet, AssessedSetting> assessor;
  private final Set<String> waived;
  private final Map<Setting, Optional<Judged>> known = new HashMap<>();

  Judge(
      AssessedSetting start,
      Rulebook rulebook,
      Function<? super SetupSheet, AssessedSetting> assessor,
      Set<String> waived) {
    this.sheet = start.sheet();
    this.rulebook = rulebook;
    this.assessor = assessor;
    this.waived = waived;
    known.put(start.setting(), Optional.of(judged(start)));
  }

  /** The judged setting; empty where it cannot be assessed, or where it would be one too many. */
  Optional<Judged> of(Setting setting) {
    Optional<Judged> found = known.get(setting);
    if (found == null && known.size() >= MOST_SETTINGS) {
      return Optional.empty();
    }
    if (found == null) {
      found = assessed(setting).map(this::judged);
      known.put(setting, found);
    }
    return found;
  }

  private Optional<AssessedSetting> assessed(Setting setting) {
    try {
      return Optional.of(assessor.apply(sheet.withSetup(sheet.setup().withSetting(setting))));
    } catch (IllegalArgumentException e) {
      return Optional.empty(); // the parts do not go together in the model
    }
  }

  private Judged judged(AssessedSetting assessed) {
    return new Judged(assessed, rulebook.evaluate(assessed), waived);
  }
}
