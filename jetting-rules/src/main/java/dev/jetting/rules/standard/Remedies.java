package dev.jetting.rules.standard;

import static java.util.Comparator.comparing;

import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.mixture.PartEffect;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.units.Lambda;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.number.Decimals;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** Remedies in the trade's words, from what each part does at a throttle opening. */
final class Remedies {

  /** Below this change of ln λ a step, a part is not worth naming. */
  private static final double WORTH_NAMING = 0.005;

  private static final int MOST_NAMED = 3;

  private Remedies() {}

  /** What to change to make a point richer by {@code need} in ln λ, the strongest part first. */
  static String richer(RiskPoint point, Setting setting, double need) {
    return advice(true, need, named(point, comparing(PartEffect::richer)), setting);
  }

  /** What to change to make a point leaner by {@code need} in ln λ, the strongest part first. */
  static String leaner(RiskPoint point, Setting setting, double need) {
    Comparator<PartEffect> strongest = comparing(PartEffect::leaner, Comparator.reverseOrder());
    return advice(false, need, named(point, strongest), setting);
  }

  private static List<PartEffect> named(RiskPoint point, Comparator<PartEffect> strongest) {
    return point.effects().stream()
        .filter(e -> e.part() != MeteringPart.NEEDLE_TAPER)
        .filter(e -> e.leaner() - e.richer() > 2 * WORTH_NAMING)
        .sorted(strongest.thenComparing(PartEffect::part))
        .limit(MOST_NAMED)
        .toList();
  }

  private static String advice(
      boolean richer, double need, List<PartEffect> effects, Setting setting) {
    if (effects.isEmpty()) {
      return "No part has authority here; look at the fuel supply and the carburettor's size.";
    }
    String parts =
        effects.stream().map(e -> step(e, richer, setting)).collect(Collectors.joining("; or "));
    double change = StrictMath.expm1(richer ? -Math.abs(need) : Math.abs(need));
    return (richer ? "λ must fall by " : "λ must rise by ")
        + percent(Math.abs(change))
        + ": "
        + parts
        + ". One change at a time, from the rich side.";
  }

  private static String step(PartEffect effect, boolean richer, Setting setting) {
    double change = richer ? effect.richer() : effect.leaner();
    return words(effect.part(), richer, setting)
        + " ("
        + (richer ? "−" : "+")
        + percent(Math.abs(StrictMath.expm1(change)))
        + " λ a step)";
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
    return "λ " + Decimals.fixed(lambda.value(), 2);
  }

  static String percent(double share) {
    return Decimals.fixed(share * 100, 0) + " %";
  }
}
