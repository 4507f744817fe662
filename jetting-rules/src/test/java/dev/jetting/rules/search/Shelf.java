package dev.jetting.rules.search;

import dev.jetting.core.air.Air;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.core.parts.Taper;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.TwoHundred;
import dev.jetting.rules.risk.Riding;
import dev.jetting.rules.risk.RidingProfile;
import dev.jetting.units.Cutaway;
import dev.jetting.units.Diameter;
import dev.jetting.units.JetBore;
import dev.jetting.units.Length;
import dev.jetting.units.Pressure;
import dev.jetting.units.Probability;
import dev.jetting.units.RelativeHumidity;
import dev.jetting.units.ScrewTurns;
import dev.jetting.units.Temperature;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;

/** An invented shelf of parts for the carburettor of {@link TwoHundred}. */
final class Shelf {

  private Shelf() {}

  static final SetupSheet SHEET =
      SetupSheet.builder()
          .title("all-round")
          .setup(
              new Setup(TwoHundred.STANDARD, TwoHundred.ALL_ROUND, TwoHundred.DAY, TwoHundred.FUEL))
          .riding(
              new Riding(
                  Probability.of(0.05), RidingProfile.assumedRoad(), day(1030, 0), day(850, 30)))
          .build();

  private static Air day(double hectopascals, double celsius) {
    return Air.of(
        Pressure.ofHectopascals(hectopascals),
        Temperature.ofCelsius(celsius),
        RelativeHumidity.ofPercent(50));
  }

  /** The given number of each kind, none owned. */
  static Choices of(int pilots, int screws, int slides, int needleJets, int needles, int mains) {
    return new Choices(
        toBuy(pilots, 0.40, 0.02, JetBore::ofMillimetres),
        IntStream.range(0, screws).mapToObj(i -> ScrewTurns.of(1.5 + 0.25 * i)).toList(),
        toBuy(slides, 3, 0.5, Cutaway::ofMillimetres),
        toBuy(needleJets, 2.62, 0.02, bore -> NeedleJet.of(Diameter.ofMillimetres(bore))),
        IntStream.range(0, needles)
            .mapToObj(i -> Choice.toBuy(NeedlePosition.inAnyGroove(needle(i))))
            .toList(),
        toBuy(mains, 0.90, 0.02, JetBore::ofMillimetres));
  }

  static Needle needle(int i) {
    return new Needle(
        "needle " + i,
        Diameter.ofMillimetres(hundredths(2.48 + 0.01 * (i % 5))),
        List.of(new Taper(Length.ofMillimetres(4 + i % 3), (26 + 2 * (i / 5)) / 1000.0)),
        5,
        Length.ofMillimetres(0.9),
        Length.ofMillimetres(60));
  }

  static <P> List<Choice<P>> toBuy(int count, double first, double step, DoubleFunction<P> part) {
    return IntStream.range(0, count)
        .mapToObj(i -> Choice.toBuy(part.apply(hundredths(first + i * step))))
        .toList();
  }

  private static double hundredths(double number) {
    return Math.rint(number * 100) / 100;
  }
}
