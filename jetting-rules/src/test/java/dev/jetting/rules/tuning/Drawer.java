package dev.jetting.rules.tuning;

import dev.jetting.core.parts.NeedleJet;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.PartsAtHand;
import dev.jetting.rules.SetupSheet;
import dev.jetting.units.Cutaway;
import dev.jetting.units.Diameter;
import dev.jetting.units.JetBore;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** A typical drawer: jets in twos around those that are in, a few slides and needle jets. */
final class Drawer {

  private Drawer() {}

  static SetupSheet with(SetupSheet sheet) {
    Setting setting = sheet.setup().setting();
    return sheet.withParts(
        PartsAtHand.builder()
            .pilotJets(jets(setting.pilotJet(), 16))
            .cutaways(
                around(setting.cutaway().millimetres(), 0.5)
                    .filter(cutaway -> cutaway >= 1)
                    .mapToObj(Cutaway::ofMillimetres)
                    .toList())
            .needleJets(
                around(setting.needleJet().bore().millimetres(), 0.02)
                    .mapToObj(bore -> NeedleJet.of(Diameter.ofMillimetres(bore)))
                    .toList())
            .needles(List.of(setting.needle()))
            .mainJets(jets(setting.mainJet(), 40))
            .build());
  }

  private static List<JetBore> jets(JetBore own, int hundredths) {
    int middle = (int) Math.rint(own.hundredths());
    return IntStream.iterate(middle - hundredths, h -> h <= middle + hundredths, h -> h + 2)
        .filter(h -> h >= 20)
        .mapToObj(JetBore::ofHundredths)
        .toList();
  }

  private static DoubleStream around(double own, double step) {
    return IntStream.rangeClosed(-2, 2).mapToDouble(i -> Math.rint((own + i * step) * 100) / 100);
  }
}
