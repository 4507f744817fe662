package dev.jetting.rules.advice;

import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.parts.Setting;
import java.util.List;
import java.util.Optional;

/**
 * The sizes of one part, the leanest first.
 *
 * @param part the part
 * @param rungs its sizes, that of the setting among them
 * @param own which of them the setting has
 */
record Ladder(MeteringPart part, List<Rung> rungs, int own) {

  Ladder {
    rungs = List.copyOf(rungs);
  }

  int size() {
    return rungs.size();
  }

  /** A setting with one of the sizes; empty where it does not go in. */
  Optional<Setting> on(Setting setting, int rung) {
    try {
      return Optional.of(rungs.get(rung).fit().into(setting));
    } catch (IllegalArgumentException e) {
      return Optional.empty(); // the parts' own checks know best what goes together
    }
  }
}
