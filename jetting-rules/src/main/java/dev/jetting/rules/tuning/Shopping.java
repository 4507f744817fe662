package dev.jetting.rules.tuning;

import dev.jetting.core.mixture.CustomarySteps;
import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.text.Argument;
import dev.jetting.units.Cutaway;
import dev.jetting.units.Diameter;
import dev.jetting.units.JetBore;
import java.util.List;
import java.util.stream.Stream;

/** Parts to buy where nothing at hand is rich enough. */
final class Shopping {

  private Shopping() {}

  /** The next sizes of the first of some parts that can be bought. */
  static List<Argument> richer(SetupSheet sheet, List<MeteringPart> parts, CustomarySteps steps) {
    Setting setting = sheet.setup().setting();
    return parts.stream()
        .map(part -> richer(setting, part, steps.of(part)))
        .filter(names -> !names.isEmpty())
        .findFirst()
        .orElse(List.of());
  }

  private static List<Argument> richer(Setting setting, MeteringPart part, double step) {
    return switch (part) {
      case MAIN_JET -> bigger(setting.mainJet(), step).map(Argument::mainJet).toList();
      case PILOT_JET -> bigger(setting.pilotJet(), step).map(Argument::pilotJet).toList();
      case NEEDLE_JET ->
          List.of(
              Argument.needleJet(
                  Diameter.ofMillimetres(
                      hundredth(setting.needleJet().bore().millimetres() + step))));
      case CUTAWAY ->
          setting.cutaway().millimetres() > step
              ? List.of(
                  Argument.cutaway(
                      Cutaway.ofMillimetres(hundredth(setting.cutaway().millimetres() - step))))
              : List.of();
      case SCREW, CLIP, NEEDLE_DIAMETER, NEEDLE_TAPER -> List.of();
    };
  }

  private static Stream<JetBore> bigger(JetBore own, double step) {
    return Stream.of(1, 2, 3)
        .map(sizes -> JetBore.ofMillimetres(hundredth(own.millimetres() + sizes * step)));
  }

  private static double hundredth(double millimetres) {
    return Math.rint(100 * millimetres) / 100;
  }
}
