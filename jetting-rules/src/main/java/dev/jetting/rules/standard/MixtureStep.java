package dev.jetting.rules.standard;

import static java.util.Comparator.comparingDouble;

import dev.jetting.core.parts.Coefficient;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Margin;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.Rule;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Where one circuit hands over to the next, the mixture must not stumble. */
final class MixtureStep {

  /**
   * Below, a rider holds no opening: the mark nearest to his hand is the stop, on which the slide
   * rests. He passes through in a blink, and whether it is dangerous there lean-anywhere says.
   */
  private static final ThrottleOpening LEAST_HELD = ThrottleOpening.ofShare(1 / 16.0);

  /** How far to either side of a lean hole its edges are looked for, in share of the throttle. */
  private static final double REACH = 1 / 8.0;

  /** How far apart two openings are at most between which the mixture jumps. */
  private static final double JUMP = 1 / 32.0;

  static final Rule RULE =
      RulePages.draft("mixture-step", "mixture")
          .limit(RuleLimits.STEP.name(), RuleLimits.STEP.number())
          .judgingBy(MixtureStep::judge);

  private MixtureStep() {}

  private static Outcome judge(AssessedSetting setting, Map<String, Coefficient> limits) {
    List<RiskPoint> points = setting.profile().points();
    double[] offsets = points.stream().mapToDouble(p -> Headroom.offset(p, setting)).toArray();
    Optional<Step> hole = hole(points, offsets, setting, RuleLimits.STEP.in(limits));
    Optional<Step> jump = jump(points, offsets, RuleLimits.STEP.in(limits));
    return Outcome.of(
        Stream.of(
                hole.filter(Step::isBeyond).map(step -> holed(step, points, offsets)),
                jump.filter(Step::isBeyond).map(step -> jumped(step, points, offsets)))
            .flatMap(Optional::stream)
            .toList(),
        Stream.of(
                hole.map(step -> step.margin(points.get(step.at()), points.get(step.at()))),
                jump.map(
                    step ->
                        step.margin(points.get(before(step.at(), points)), points.get(step.at()))))
            .flatMap(Optional::stream)
            .toList());
  }

  /** How deep or wide a step at an opening is, and how much it may be. */
  private record Step(int at, double size, double limit) {
    boolean isBeyond() {
      return size > limit;
    }

    Margin margin(RiskPoint from, RiskPoint to) {
      return Margin.atMost(
          LeanAnywhere.subject(to.inCharge()),
          Measure.logarithm(size),
          Measure.logarithm(limit),
          new ThrottleBand(from.mixture().throttle(), to.mixture().throttle()));
    }
  }

  /** The step that is furthest beyond what it may be. */
  private static Optional<Step> furthest(Stream<Step> steps) {
    return steps.max(comparingDouble(step -> step.size() - step.limit()));
  }

  private static Optional<Step> hole(
      List<RiskPoint> points, double[] offsets, AssessedSetting setting, double share) {
    return furthest(
        IntStream.range(0, offsets.length)
            .filter(i -> isHeld(points.get(i)))
            .mapToObj(
                i ->
                    new Step(
                        i,
                        depth(i, points, offsets),
                        share * Headroom.forLeaning(points.get(i), setting))));
  }

  private static Finding holed(Step step, List<RiskPoint> points, double[] offsets) {
    RiskPoint point = points.get(step.at());
    return step.margin(point, point)
        .finding()
        .worstAt(point)
        .with("throttle", Argument.throttle(point.mixture().throttle()))
        .with("by", Argument.share(StrictMath.expm1(step.size())))
        .says(
            Message.of("rule.mixture-step.finding.hole"),
            Remedy.Aim.richer(point.mixture().throttle(), step.size() - step.limit())
                .saying(against(edge(step.at(), points, offsets))));
  }

  private static Optional<Step> jump(List<RiskPoint> points, double[] offsets, double share) {
    return furthest(
        IntStream.range(0, offsets.length)
            .filter(i -> isHeld(points.get(before(i, points))))
            .mapToObj(
                i ->
                    new Step(
                        i, jumped(i, points, offsets), share * Headroom.inAll(points.get(i)))));
  }

  private static Finding jumped(Step step, List<RiskPoint> points, double[] offsets) {
    int widest = step.at();
    RiskPoint after = points.get(widest);
    RiskPoint before = points.get(before(widest, points));
    boolean leaner = offsets[widest] > offsets[before(widest, points)];
    RiskPoint lean = leaner ? after : before;
    return Finding.above(
            LeanAnywhere.subject(lean.inCharge()),
            Measure.logarithm(step.size()),
            Measure.logarithm(step.limit()),
            new ThrottleBand(before.mixture().throttle(), after.mixture().throttle()))
        .worstAt(lean)
        .with("from", Argument.throttle(before.mixture().throttle()))
        .with("to", Argument.throttle(after.mixture().throttle()))
        .with("by", Argument.share(StrictMath.expm1(step.size())))
        .with("side", Remedies.side(leaner))
        .says(
            Message.of("rule.mixture-step.finding.jump"),
            Remedy.Aim.richer(lean.mixture().throttle(), step.size() - step.limit())
                .saying(against(leaner ? before : after)));
  }

  private static Message against(RiskPoint other) {
    return Message.of("rule.mixture-step.remedy")
        .with("throttle", Argument.throttle(other.mixture().throttle()));
  }

  private static boolean isHeld(RiskPoint point) {
    return !point.mixture().throttle().isLessThan(LEAST_HELD);
  }

  private static double jumped(int at, List<RiskPoint> points, double[] offsets) {
    return Math.abs(offsets[at] - offsets[before(at, points)]);
  }

  /** How much leaner a point is than the richest on either side of it, the less of the two. */
  private static double depth(int at, List<RiskPoint> points, double[] offsets) {
    return offsets[at] - offsets[edgeIndex(at, points, offsets)];
  }

  /** The edge that a hole is counted from: the leaner one of the richest on either side. */
  private static RiskPoint edge(int at, List<RiskPoint> points, double[] offsets) {
    return points.get(edgeIndex(at, points, offsets));
  }

  private static int edgeIndex(int at, List<RiskPoint> points, double[] offsets) {
    double here = points.get(at).mixture().throttle().share();
    int below = at;
    int above = at;
    for (int i = 0; i < offsets.length; i++) {
      double away = points.get(i).mixture().throttle().share() - here;
      if (away < 0 && away >= -REACH && offsets[i] < offsets[below]) {
        below = i;
      } else if (away > 0 && away <= REACH && offsets[i] < offsets[above]) {
        above = i;
      }
    }
    return offsets[below] > offsets[above] ? below : above;
  }

  /** The opening from which a jump to one is counted; itself for the first. */
  private static int before(int at, List<RiskPoint> points) {
    double from = points.get(at).mixture().throttle().share() - JUMP;
    int before = Math.max(0, at - 1);
    while (before > 0 && points.get(before - 1).mixture().throttle().share() >= from) {
      before--;
    }
    return before;
  }
}
