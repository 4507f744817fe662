package dev.jetting.rules.standard;

import static java.util.Comparator.comparing;

import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.mixture.PartEffect;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.units.Lambda;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.TradeStyle;
import dev.jetting.units.number.Decimals;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Remedies in the trade's words, from what each part does at a throttle opening. */
final class Remedies {

  /** Below this change of ln λ a step, a part is not worth naming. */
  private static final double WORTH_NAMING = 0.005;

  private static final int MOST_NAMED = 3;

  private static final String NO_AUTHORITY =
      "No part has authority here; look at the fuel supply and the carburettor's size.";

  private Remedies() {}

  /** What to change to make a point richer by {@code need} in ln λ, the strongest part first. */
  static String richer(RiskPoint point, Setting setting, double need) {
    List<PartEffect> named = richer(point.effects().stream(), setting);
    return named.isEmpty() ? NO_AUTHORITY : fall(need, "", named, setting);
  }

  /** What makes a lean point richer by more than it makes a rich one: else their step grows. */
  static String richer(RiskPoint lean, RiskPoint rich, Setting setting, double step) {
    String other = TradeStyle.throttle(rich.mixture().throttle());
    List<PartEffect> named =
        richer(
            IntStream.range(0, lean.effects().size())
                .mapToObj(i -> apart(lean.effects().get(i), rich.effects().get(i))),
            setting);
    return named.isEmpty()
        ? "No part makes it richer by more than it makes "
            + other
            + " richer; first make good what"
            + " is too lean or too rich."
        : fall(step, " against " + other, named, setting);
  }

  private static PartEffect apart(PartEffect lean, PartEffect rich) {
    return new PartEffect(
        lean.part(), lean.richer() - rich.richer(), lean.leaner() - rich.leaner(), 0);
  }

  /** What to change to make a mixture richer to which parts do what is told of them. */
  static String richer(List<PartEffect> effects, Setting setting, double need) {
    List<PartEffect> named = richer(effects.stream(), setting);
    return named.isEmpty() ? NO_AUTHORITY : fall(need, "", named, setting);
  }

  private static List<PartEffect> richer(Stream<PartEffect> effects, Setting setting) {
    return named(
        effects.filter(e -> Moves.isPossible(e.part(), true, setting)),
        comparing(PartEffect::richer));
  }

  private static String fall(double need, String against, List<PartEffect> named, Setting setting) {
    double change = StrictMath.expm1(-Math.abs(need));
    return "λ must fall by " + percent(-change) + against + advice(true, named, setting);
  }

  /** What to change to make a point leaner by {@code need} in ln λ, the strongest part first. */
  static String leaner(RiskPoint point, Setting setting, double need) {
    List<PartEffect> named = leaner(point, setting);
    return named.isEmpty() ? NO_AUTHORITY : rise(need, named, setting);
  }

  /** The same of the parts of which a step leaves the lean risk accepted everywhere. */
  static String safelyLeaner(RiskPoint point, AssessedSetting assessed, double need) {
    List<PartEffect> safe =
        leaner(point, assessed.setting()).stream()
            .filter(e -> Moves.leavesRiskAccepted(e.part(), assessed))
            .toList();
    return safe.isEmpty()
        ? "Leave it: of no step towards lean it is known that the lean risk stays within what is"
            + " accepted at every opening and on every day, and rich is the safe side."
        : rise(need, safe, assessed.setting());
  }

  private static List<PartEffect> leaner(RiskPoint point, Setting setting) {
    return named(
        point.effects().stream().filter(e -> Moves.isPossible(e.part(), false, setting)),
        comparing(PartEffect::leaner, Comparator.reverseOrder()));
  }

  private static String rise(double need, List<PartEffect> named, Setting setting) {
    double change = StrictMath.expm1(Math.abs(need));
    return "λ must rise by " + percent(change) + advice(false, named, setting);
  }

  private static List<PartEffect> named(
      Stream<PartEffect> effects, Comparator<PartEffect> strongest) {
    return effects
        .filter(e -> e.part() != MeteringPart.NEEDLE_TAPER)
        .filter(e -> e.leaner() - e.richer() > 2 * WORTH_NAMING)
        .sorted(strongest.thenComparing(PartEffect::part))
        .limit(MOST_NAMED)
        .toList();
  }

  private static String advice(boolean richer, List<PartEffect> effects, Setting setting) {
    return effects.stream()
        .map(e -> step(e, richer, setting))
        .collect(Collectors.joining("; or ", ": ", ". One change at a time, from the rich side."));
  }

  private static String step(PartEffect effect, boolean richer, Setting setting) {
    double change = richer ? effect.richer() : effect.leaner();
    return words(effect.part(), richer, setting) + " (" + change(change) + " a step)";
  }

  /** A change of ln λ in words: −4 % λ. */
  static String change(double lnLambda) {
    return (lnLambda < 0 ? "−" : "+") + percent(Math.abs(StrictMath.expm1(lnLambda))) + " λ";
  }

  private static String words(MeteringPart part, boolean richer, Setting setting) {
    boolean airScrew = setting.carburettor().pilot().screwKind() == ScrewKind.AIR;
    return switch (part) {
      case PILOT_JET -> richer ? "a bigger pilot jet" : "a smaller pilot jet";
      case SCREW ->
          (airScrew ? "the air screw " : "the mixture screw ")
              + (richer == airScrew ? "in" : "out")
              + " by a quarter turn";
      case CUTAWAY -> richer ? "a slide with less cutaway" : "a slide with more cutaway";
      case NEEDLE_JET -> richer ? "a bigger needle jet" : "a smaller needle jet";
      case NEEDLE_DIAMETER -> richer ? "a thinner needle" : "a thicker needle";
      case NEEDLE_TAPER -> richer ? "a steeper taper" : "a slower taper";
      case CLIP -> richer ? "the clip a groove lower" : "the clip a groove higher";
      case MAIN_JET -> richer ? "a bigger main jet" : "a smaller main jet";
    };
  }

  static String lambda(Lambda lambda) {
    return lambda(lambda, 2);
  }

  /** With as many decimals as it takes to tell it from another. */
  static String lambda(Lambda lambda, Lambda other) {
    int decimals = 2;
    while (decimals < 6 && lambda(lambda, decimals).equals(lambda(other, decimals))) {
      decimals++;
    }
    return lambda(lambda, decimals);
  }

  private static String lambda(Lambda lambda, int decimals) {
    return "λ " + Decimals.fixed(lambda.value(), decimals);
  }

  static String percent(double share) {
    return Decimals.fixed(share * 100, 0) + " %";
  }
}
