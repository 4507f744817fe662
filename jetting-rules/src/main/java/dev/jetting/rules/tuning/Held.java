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

  /**
   * The marks between them, for a look before the end and before a step towards lean: where the
   * pilot hands over to the needle, and halfway between the others.
   */
  static final List<ThrottleOpening> BETWEEN =
      Stream.of(3, 6, 10, 14)
          .map(sixteenths -> ThrottleOpening.ofShare(sixteenths / 16.0))
          .toList();

  /** All that can be marked and held. */
  static final List<ThrottleOpening> MARKS =
      Stream.concat(OPENINGS.stream(), BETWEEN.stream()).toList();

  /** Up to here the engine's answer is better evidence than a plug. */
  static final ThrottleOpening SMALL = BETWEEN.get(0);

  /** Without a reading of these no session ends. */
  static final List<ThrottleOpening> REQUIRED =
      List.of(ThrottleOpening.CLOSED, ThrottleOpening.FULL, HALF, EIGHTH);

  private Held() {}

  /** The nearest of them; of two as near the first in their order. */
  static ThrottleOpening nearest(ThrottleOpening throttle) {
    ThrottleOpening nearest = MARKS.get(0);
    for (ThrottleOpening held : MARKS) {
      nearest = away(held, throttle) < away(nearest, throttle) ? held : nearest;
    }
    return nearest;
  }

  private static double away(ThrottleOpening a, ThrottleOpening b) {
    return Math.abs(a.share() - b.share());
  }
}
