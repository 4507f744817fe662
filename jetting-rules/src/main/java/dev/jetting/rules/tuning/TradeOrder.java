package dev.jetting.rules.tuning;

import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.units.ThrottleOpening;
import java.util.List;

/**
 * The parts that a tuner changes at an opening, the first choice first (common practice, no
 * source). A part that does nothing there by the model is passed over.
 */
final class TradeOrder {

  private static final double WIDE = 7 / 8.0;

  /** From here to full throttle the main jet is the first part to change. */
  static final ThrottleOpening FROM_HERE_THE_MAIN = ThrottleOpening.ofShare(WIDE);

  private static final double MIDDLE = 3 / 8.0;
  private static final double SMALL = 3 / 16.0;
  private static final double SHUT = 1 / 16.0;

  /** Where the overrun is too lean. */
  static final List<MeteringPart> OVERRUN = List.of(MeteringPart.PILOT_JET, MeteringPart.SCREW);

  private TradeOrder() {}

  static List<MeteringPart> at(Sign sign) {
    if (sign.isOverrun()) {
      return sign.isLean() ? OVERRUN : List.of(MeteringPart.SCREW, MeteringPart.PILOT_JET);
    }
    List<MeteringPart> parts =
        isBeyondScrew(sign.observation().evidence())
            ? List.of(MeteringPart.PILOT_JET, MeteringPart.CUTAWAY)
            : at(sign.observation().throttle());
    return isRichIdle(sign) ? without(MeteringPart.CUTAWAY, parts) : parts;
  }

  /** A slide with more cutaway leans an eighth more than it leans the idle. */
  private static boolean isRichIdle(Sign sign) {
    return !sign.isLean() && sign.observation().throttle().share() < SHUT;
  }

  private static List<MeteringPart> without(MeteringPart part, List<MeteringPart> parts) {
    return parts.stream().filter(other -> other != part).toList();
  }

  /** The screw's range has shown that it does not reach. */
  private static boolean isBeyondScrew(Evidence evidence) {
    return evidence instanceof Evidence.Idle idle
        && (idle.answer() == IdleAnswer.BEYOND_RICH || idle.answer() == IdleAnswer.BEYOND_LEAN);
  }

  /** Whether it was observed under load where needle and main jet act together: above half. */
  static boolean isNeedleAndMain(Sign sign) {
    ThrottleOpening throttle = sign.observation().throttle();
    return !sign.isOverrun() && throttle.compareTo(Held.HALF) > 0 && throttle.share() < WIDE;
  }

  static List<MeteringPart> at(ThrottleOpening throttle) {
    double share = throttle.share();
    if (share >= WIDE) {
      return List.of(
          MeteringPart.MAIN_JET,
          MeteringPart.CLIP,
          MeteringPart.NEEDLE_JET,
          MeteringPart.NEEDLE_DIAMETER);
    }
    if (share >= MIDDLE) {
      return List.of(
          MeteringPart.CLIP,
          MeteringPart.NEEDLE_DIAMETER,
          MeteringPart.NEEDLE_JET,
          MeteringPart.MAIN_JET);
    }
    if (share >= SMALL) {
      return List.of(
          MeteringPart.CLIP,
          MeteringPart.NEEDLE_JET,
          MeteringPart.CUTAWAY,
          MeteringPart.NEEDLE_DIAMETER);
    }
    if (share >= SHUT) {
      return List.of(
          MeteringPart.CUTAWAY,
          MeteringPart.NEEDLE_JET,
          MeteringPart.PILOT_JET,
          MeteringPart.CLIP,
          MeteringPart.SCREW);
    }
    return List.of(MeteringPart.SCREW, MeteringPart.PILOT_JET, MeteringPart.CUTAWAY);
  }
}
