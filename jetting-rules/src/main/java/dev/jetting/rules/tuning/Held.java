package dev.jetting.rules.tuning;

import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.stream.Stream;

/** The throttle openings that a rider can mark on the grip and hold. */
final class Held {

  static final ThrottleOpening EIGHTH = ThrottleOpening.ofEighths(1);
  static final ThrottleOpening QUARTER = ThrottleOpening.ofEighths(2);
  static final ThrottleOpening HALF = ThrottleOpening.ofEighths(4);

  /** In the order of the trade: the ends first, then from wide to narrow. */
  static final List<ThrottleOpening> OPENINGS =
      Stream.of(0, 8, 6, 4, 2, 1).map(ThrottleOpening::ofEighths).toList();

  /** Without a reading of these no session ends. */
  static final List<ThrottleOpening> REQUIRED =
      List.of(ThrottleOpening.CLOSED, ThrottleOpening.FULL, HALF, EIGHTH);

  private Held() {}

  /** The nearest of them; of two as near the first in their order. */
  static ThrottleOpening nearest(ThrottleOpening throttle) {
    ThrottleOpening nearest = OPENINGS.get(0);
    for (ThrottleOpening held : OPENINGS) {
      nearest = away(held, throttle) < away(nearest, throttle) ? held : nearest;
    }
    return nearest;
  }

  private static double away(ThrottleOpening a, ThrottleOpening b) {
    return Math.abs(a.share() - b.share());
  }
}
