package dev.jetting.rules;

import dev.jetting.core.parts.NeedleJet;
import dev.jetting.core.parts.Setting;
import dev.jetting.units.Cutaway;
import dev.jetting.units.Diameter;
import dev.jetting.units.JetBore;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;

/**
 * What shops usually sell around a setting, for a rider who has not said what he owns.
 *
 * <p>The steps are this project's own assumption. Not a catalogue: whether a part can be had is for
 * the shop to say. Needles are left unknown, since their shapes follow no series.
 */
public final class TypicalParts {

  private TypicalParts() {}

  /**
   * Parts around those of a setting.
   *
   * @param setting the setting
   * @return pilot jets to 12 hundredths either way, by 2 up to 60 and by 5 above; main jets to 20 %
   *     either way, by 2 up to 100, by 2.5 up to 150 and by 5 above; needle jets to 6 hundredths
   *     either way by 2; slides to 15 tenths of cutaway either way by 5; each with the setting's
   *     own among them, and no other that a sheet would not take
   */
  public static PartsAtHand around(Setting setting) {
    double pilot = setting.pilotJet().hundredths();
    double main = setting.mainJet().hundredths();
    double needleJet = setting.needleJet().bore().millimetres() * 100;
    double cutaway = setting.cutaway().tenths();
    return PartsAtHand.builder()
        .pilotJets(
            series(
                pilot,
                Math.max(pilot - 12, 10),
                Math.min(pilot + 12, 300),
                TypicalParts::pilotStep,
                JetBore::ofHundredths))
        .cutaways(
            series(cutaway, cutaway - 15, Math.min(cutaway + 15, 400), size -> 5, Cutaway::ofTenths)
                .stream()
                .filter(slide -> slide.isLessThan(Cutaway.ofMillimetres(bore(setting))))
                .toList())
        .needleJets(
            series(
                    needleJet,
                    Math.max(needleJet - 6, 50),
                    Math.min(needleJet + 6, 600),
                    size -> 2,
                    size ->
                        new NeedleJet(
                            Diameter.ofMillimetres(size / 100), setting.needleJet().neck()))
                .stream()
                .filter(jet -> jet.bore().isMoreThan(setting.needle().cylinder()))
                .toList())
        .needles(List.of())
        .mainJets(
            series(
                main,
                Math.max(main * 0.8, 30),
                Math.min(main * 1.2, 500),
                TypicalParts::mainStep,
                JetBore::ofHundredths))
        .build();
  }

  private static double bore(Setting setting) {
    return setting.carburettor().bore().millimetres();
  }

  private static double pilotStep(double size) {
    return size < 60 ? 2 : 5;
  }

  private static double mainStep(double size) {
    return size < 100 ? 2 : size < 150 ? 2.5 : 5;
  }

  /** From the own size a step at a time down and up, none at zero or below. */
  private static <P> List<P> series(
      double own, double least, double most, DoubleUnaryOperator step, DoubleFunction<P> part) {
    List<Double> sizes = new ArrayList<>();
    for (double size = own; size >= Math.max(least, 1); size -= step.applyAsDouble(size - 0.5)) {
      sizes.add(size);
    }
    for (double size = own + step.applyAsDouble(own);
        size <= most;
        size += step.applyAsDouble(size)) {
      sizes.add(size);
    }
    return sizes.stream().sorted().map(part::apply).toList();
  }
}
