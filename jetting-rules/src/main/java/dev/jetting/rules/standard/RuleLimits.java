package dev.jetting.rules.standard;

/** The limits of the standard rules that do not come from the risk model. */
final class RuleLimits {

  /** Least turns out at which a screw still meters. */
  static final Limit LEAST_TURNS =
      Limit.named("least turns of a pilot screw")
          .assumed(0.5, "turns", "closer in, a bigger change of pilot jet is due");

  /** Capacity of the float valve by the fuel that the engine draws at full throttle. */
  static final Limit FLOAT_VALVE_RESERVE =
      Limit.named("float valve capacity by full-throttle flow")
          .assumed(1.25, "1", "for a low tank, a tired tap and a hot hose");

  /** Difference of ln (λ by λ wanted) between the cutaway's and the needle's field. */
  static final Limit BALANCE =
      Limit.named("imbalance of cutaway and needle")
          .assumed(0.08, "1", "about what one needle jet or one slide brings out of balance");

  /** Area of the ring at full lift by the area of the main jet. */
  static final Limit RING_BY_MAIN =
      Limit.named("needle ring by main jet at full lift")
          .assumed(1.0, "1", "below, the ring is the smaller of the two in series");

  /** Change of ln λ since a setting was proven, by its room for leaning. */
  static final Limit CHANGE =
      Limit.named("change since proven by the room for leaning")
          .assumed(
              0.25,
              "1",
              "a proven setting may use up a quarter of its room before someone looks again");

  /** Rise of ln λ since a setting was proven, by the room that it had. */
  static final Limit PROVEN_ROOM =
      Limit.named("rise of ln λ since proven by the room there was")
          .assumed(
              0.5,
              "1",
              "half of the room: what runs well is known no better than to a third of it");

  /** Sizes by which the main jet goes up on a changed engine before anything else. */
  static final Limit MAIN_UP =
      Limit.named("main jet up on a changed engine")
          .assumed(2, "sizes", "from the rich side (common practice, no source)");

  /** Depth of a lean hole, or a jump, in ln λ by the room there is for it. */
  static final Limit STEP =
      Limit.named("step of the mixture by its room")
          .assumed(0.5, "1", "a step that fills half the room cannot be put right by any one part");

  /** Mean of ln (λ by λ wanted) over the middle, by the room for leaning. */
  static final Limit CRISP =
      Limit.named("lean middle by the room for leaning")
          .assumed(1 / 3.0, "1", "a third of the way to the lean limit, all over the middle");

  /** Lowest speed at which the throttle is opened fully, by the speed of peak power. */
  static final Limit LOW_SPEED =
      Limit.named("lowest speed at full throttle by peak speed")
          .assumed(1 / 3.0, "1", "about where a rider asks an engine to pull");

  /** Delivery ratio by the greatest one, below which nobody opens the throttle fully. */
  static final Limit ON_THE_PIPE =
      Limit.named("delivery at full throttle by the greatest")
          .assumed(
              0.6,
              "1",
              "an engine that draws less than three fifths of its best charge has not come on its"
                  + " pipe");

  /** Share of the charge that the carburettor may cost at peak power. */
  static final Limit RESTRICTION =
      Limit.named("share of the charge that a carburettor may cost")
          .assumed(
              0.25,
              "1",
              "tuned engines make good power through carburettors that cost a fifth by this model"
                  + " (common practice, no source)");

  /** Clearance of the needle in the needle jet by the standard deviation of both parts. */
  static final Limit CLEARANCE =
      Limit.named("needle clearance by the parts' tolerances")
          .assumed(3, "1", "three standard deviations: hardly a pair that binds");

  /** Richer main jets that the kit should have left. */
  static final Limit RICHER_MAINS =
      Limit.named("richer main jets left in the kit")
          .assumed(2, "sizes", "one for a cold day, one for a mistake");

  /** Velocity in a jet on a test bench, as if its whole bore flowed. */
  static final Limit BENCH_VELOCITY =
      Limit.named("velocity in a jet on a test bench")
          .assumed(2.5, "m/s", "discharge coefficient 0.8 under a head of 500 mm; benches differ");

  /** How far a bore computed from a flow may be off, as a share. */
  static final Limit BENCH_SPREAD =
      Limit.named("spread of a bore computed from a flow")
          .assumed(0.1, "1", "heads of 350 mm to 750 mm move the bore by as much");

  private RuleLimits() {}
}
