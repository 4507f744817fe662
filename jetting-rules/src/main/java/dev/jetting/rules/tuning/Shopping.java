package dev.jetting.rules.tuning;

import dev.jetting.core.mixture.CustomarySteps;
import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.PartsAtHand;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.text.Argument;
import dev.jetting.units.Cutaway;
import dev.jetting.units.Diameter;
import dev.jetting.units.JetBore;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Parts to buy where nothing at hand is rich enough. */
final class Shopping {

  /** The biggest that a sheet takes, mm. */
  private static final double MOST_MAIN_JET = 5;

  private static final double MOST_PILOT_JET = 3;

  private static final double MOST_NEEDLE_JET = 6;

  /** Sizes nearer to each other are not sold, mm (assumed). */
  private static final double LEAST_APART = 0.005;

  private Shopping() {}

  /** The next sizes of the first of some parts that can be bought. */
  static List<Argument> richer(SetupSheet sheet, List<MeteringPart> parts, CustomarySteps steps) {
    Setting setting = sheet.setup().setting();
    return parts.stream()
        .map(part -> richer(setting, sheet.parts(), part, steps.of(part)))
        .filter(names -> !names.isEmpty())
        .findFirst()
        .orElse(List.of());
  }

  private static List<Argument> richer(
      Setting setting, PartsAtHand parts, MeteringPart part, double step) {
    return switch (part) {
      case MAIN_JET ->
          bigger(setting.mainJet(), parts.mainJets(), step, MOST_MAIN_JET)
              .map(Argument::mainJet)
              .toList();
      case PILOT_JET ->
          bigger(setting.pilotJet(), parts.pilotJets(), step, MOST_PILOT_JET)
              .map(Argument::pilotJet)
              .toList();
      case NEEDLE_JET ->
          Stream.of(hundredth(setting.needleJet().bore().millimetres() + step))
              .filter(bore -> bore <= MOST_NEEDLE_JET)
              .map(bore -> Argument.needleJet(Diameter.ofMillimetres(bore)))
              .toList();
      case CUTAWAY ->
          setting.cutaway().millimetres() > step
              ? List.of(
                  Argument.cutaway(
                      Cutaway.ofMillimetres(hundredth(setting.cutaway().millimetres() - step))))
              : List.of();
      case SCREW, CLIP, NEEDLE_DIAMETER, NEEDLE_TAPER -> List.of();
    };
  }

  /** The next three beyond those at hand, which were not enough, by the steps of the drawer. */
  private static Stream<JetBore> bigger(
      JetBore own, List<JetBore> atHand, double step, double most) {
    List<Double> sizes =
        Stream.concat(Stream.of(own), atHand.stream())
            .map(JetBore::millimetres)
            .distinct()
            .sorted(Comparator.reverseOrder())
            .toList();
    double apart = Math.max(LEAST_APART, sizes.size() > 1 ? sizes.get(0) - sizes.get(1) : step);
    return Stream.of(1, 2, 3)
        .map(more -> halfHundredth(sizes.get(0) + more * apart))
        .filter(size -> size <= most)
        .map(JetBore::ofMillimetres);
  }

  private static double halfHundredth(double millimetres) {
    return Math.rint(200 * millimetres) / 200;
  }

  private static double hundredth(double millimetres) {
    return Math.rint(100 * millimetres) / 100;
  }
}
