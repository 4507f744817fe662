package dev.jetting.rules.advice;

import dev.jetting.core.mixture.MeteringPart;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;

/**
 * A setting and the parts that differ from the start.
 *
 * @param judged the setting
 * @param rungs which rung each changed part stands on
 * @param toBuy how many of them are not at hand
 */
record Way(Judged judged, Map<MeteringPart, Integer> rungs, int toBuy) {

  /** What a part costs that is not at hand, in the cost of a setting (assumed). */
  private static final double BUYING = 0.5;

  static Way from(Judged start) {
    return new Way(start, Map.of(), 0);
  }

  Way {
    rungs = rungs.isEmpty() ? Map.of() : new EnumMap<>(rungs);
  }

  Way with(Ladder ladder, int rung, Judged then) {
    Map<MeteringPart, Integer> more = new EnumMap<>(MeteringPart.class);
    more.putAll(rungs);
    more.put(ladder.part(), rung);
    return new Way(then, more, toBuy + (ladder.rungs().get(rung).atHand() ? 0 : 1));
  }

  /** The rung of a part that differs from the start. */
  int rung(MeteringPart part) {
    return Objects.requireNonNull(rungs.get(part));
  }

  double cost() {
    return judged.cost() + BUYING * toBuy;
  }
}
