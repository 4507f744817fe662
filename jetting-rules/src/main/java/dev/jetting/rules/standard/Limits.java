package dev.jetting.rules.standard;

import com.google.common.collect.ImmutableMap;
import dev.jetting.core.parts.Coefficient;
import java.util.Map;

/** The limits of the standard rules that do not come from the risk model. */
final class Limits {

  /** Least turns out at which a screw still meters. */
  static final Coefficient LEAST_TURNS =
      Coefficient.assumed(0.5, "turns", "closer in, a bigger change of pilot jet is due");

  /** Capacity of the float valve by the fuel that the engine draws at full throttle. */
  static final Coefficient FLOAT_VALVE_RESERVE =
      Coefficient.assumed(1.25, "1", "for a low tank, a tired tap and a hot hose");

  /** Difference of ln (λ by λ wanted) between the cutaway's and the needle's field. */
  static final Coefficient BALANCE =
      Coefficient.assumed(
          0.08, "1", "about what one needle jet or one slide brings out of balance");

  /** Area of the ring at full lift by the area of the main jet. */
  static final Coefficient RING_BY_MAIN =
      Coefficient.assumed(1.0, "1", "below, the ring is the smaller of the two in series");

  /** Change of ln λ since a setting was proven, by its room for leaning. */
  static final Coefficient CHANGE =
      Coefficient.assumed(
          0.25,
          "1",
          "a proven setting may use up a quarter of its room before someone looks again");

  /** Rise of ln λ since a setting was proven, by the room that it had. */
  static final Coefficient PROVEN_ROOM =
      Coefficient.assumed(
          0.5, "1", "half of the room: what runs well is known no better than to a third of it");

  /** Sizes by which the main jet goes up on a changed engine before anything else. */
  static final Coefficient MAIN_UP =
      Coefficient.assumed(2, "sizes", "from the rich side (common practice, no source)");

  /** Depth of a lean hole, or a jump, in ln λ by the room there is for it. */
  static final Coefficient STEP =
      Coefficient.assumed(
          0.5, "1", "a step that fills half the room cannot be put right by any one part");

  /** Mean of ln (λ by λ wanted) over the middle, by the room for leaning. */
  static final Coefficient CRISP =
      Coefficient.assumed(
          1 / 3.0, "1", "a third of the way to the lean limit, all over the middle");

  /** Lowest speed at which the throttle is opened fully, by the speed of peak power. */
  static final Coefficient LOW_SPEED =
      Coefficient.assumed(1 / 3.0, "1", "about where a rider asks an engine to pull");

  /** Delivery ratio by the greatest one, below which nobody opens the throttle fully. */
  static final Coefficient ON_THE_PIPE =
      Coefficient.assumed(
          0.6,
          "1",
          "an engine that draws less than three fifths of its best charge has not come on its"
              + " pipe");

  /** Share of the charge that the carburettor may cost at peak power. */
  static final Coefficient RESTRICTION =
      Coefficient.assumed(
          0.25,
          "1",
          "tuned engines make good power through carburettors that cost a fifth by this model"
              + " (common practice, no source)");

  /** Clearance of the needle in the needle jet by the standard deviation of both parts. */
  static final Coefficient CLEARANCE =
      Coefficient.assumed(3, "1", "three standard deviations: hardly a pair that binds");

  /** Richer main jets that the kit should have left. */
  static final Coefficient RICHER_MAINS =
      Coefficient.assumed(2, "sizes", "one for a cold day, one for a mistake");

  /** Velocity in a jet on a test bench, as if its whole bore flowed. */
  static final Coefficient BENCH_VELOCITY =
      Coefficient.assumed(
          2.5, "m/s", "discharge coefficient 0.8 under a head of 500 mm; benches differ");

  /** How far a bore computed from a flow may be off, as a share. */
  static final Coefficient BENCH_SPREAD =
      Coefficient.assumed(0.1, "1", "heads of 350 mm to 750 mm move the bore by as much");

  static final Map<String, Coefficient> BASIS =
      ImmutableMap.<String, Coefficient>builder()
          .put("least turns of a pilot screw", LEAST_TURNS)
          .put("float valve capacity by full-throttle flow", FLOAT_VALVE_RESERVE)
          .put("imbalance of cutaway and needle", BALANCE)
          .put("needle ring by main jet at full lift", RING_BY_MAIN)
          .put("change since proven by the room for leaning", CHANGE)
          .put("rise of ln λ since proven by the room there was", PROVEN_ROOM)
          .put("main jet up on a changed engine", MAIN_UP)
          .put("step of the mixture by its room", STEP)
          .put("lean middle by the room for leaning", CRISP)
          .put("lowest speed at full throttle by peak speed", LOW_SPEED)
          .put("delivery at full throttle by the greatest", ON_THE_PIPE)
          .put("share of the charge that a carburettor may cost", RESTRICTION)
          .put("needle clearance by the parts' tolerances", CLEARANCE)
          .put("richer main jets left in the kit", RICHER_MAINS)
          .put("velocity in a jet on a test bench", BENCH_VELOCITY)
          .put("spread of a bore computed from a flow", BENCH_SPREAD)
          .buildOrThrow();

  private Limits() {}
}
