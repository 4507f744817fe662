package dev.jetting.examples.advicecount;

import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.PartsAtHand;
import dev.jetting.units.Cutaway;
import dev.jetting.units.Diameter;
import dev.jetting.units.JetBore;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The box of parts that the program gives to a drawn setting: invented, around its own parts. */
final class Box {

  private Box() {}

  static PartsAtHand around(Setting setting) {
    return PartsAtHand.builder()
        .pilotJets(
            sizes(setting.pilotJet().millimetres(), 3, 0.03).map(JetBore::ofMillimetres).toList())
        .cutaways(
            sizes(setting.cutaway().millimetres(), 1, 0.5).map(Cutaway::ofMillimetres).toList())
        .needleJets(
            sizes(setting.needleJet().bore().millimetres(), 2, 0.02)
                .map(
                    bore -> new NeedleJet(Diameter.ofMillimetres(bore), setting.needleJet().neck()))
                .toList())
        .needles(needles(setting.needle()))
        .mainJets(
            sizes(setting.mainJet().millimetres(), 6, 0.04).map(JetBore::ofMillimetres).toList())
        .build();
  }

  private static List<Needle> needles(Needle own) {
    return List.of(thicker(own, -0.02), own, thicker(own, 0.02));
  }

  private static Needle thicker(Needle own, double by) {
    return Needle.builder()
        .id(own.id() + (by < 0 ? ", thinner" : ", thicker"))
        .cylinder(Diameter.ofMillimetres(rounded(own.cylinder().millimetres() + by)))
        .tapers(own.tapers())
        .grooves(own.grooves())
        .groovePitch(own.groovePitch())
        .tip(own.tip())
        .build();
  }

  private static Stream<Double> sizes(double own, int eitherWay, double step) {
    DoubleStream all =
        IntStream.rangeClosed(-eitherWay, eitherWay).mapToDouble(i -> rounded(own + i * step));
    return all.filter(size -> size > own / 3).boxed();
  }

  private static double rounded(double size) {
    return Math.rint(size * 1e4) / 1e4;
  }
}
