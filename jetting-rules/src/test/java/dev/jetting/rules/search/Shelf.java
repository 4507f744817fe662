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
              Setup.builder()
                  .engine(TwoHundred.STANDARD)
                  .setting(TwoHundred.ALL_ROUND)
                  .air(TwoHundred.DAY)
                  .fuel(TwoHundred.FUEL)
                  .build())
          .riding(
              Riding.builder()
                  .acceptedRisk(Probability.of(0.05))
                  .profile(RidingProfile.assumedRoad())
                  .coldest(day(1030, 0))
                  .hottest(day(850, 30))
                  .build())
          .build();

  private static Air day(double hectopascals, double celsius) {
    return Air.of(
        Pressure.ofHectopascals(hectopascals),
        Temperature.ofCelsius(celsius),
        RelativeHumidity.ofPercent(50));
  }

  /** The given number of each kind, none owned. */
  static Choices of(int pilots, int screws, int slides, int needleJets, int needles, int mains) {
    return Choices.builder()
        .pilotJets(toBuy(pilots, 0.40, 0.02, JetBore::ofMillimetres))
        .screws(IntStream.range(0, screws).mapToObj(i -> ScrewTurns.of(1.5 + 0.25 * i)).toList())
        .cutaways(toBuy(slides, 3, 0.5, Cutaway::ofMillimetres))
        .needleJets(
            toBuy(needleJets, 2.62, 0.02, bore -> NeedleJet.of(Diameter.ofMillimetres(bore))))
        .needles(
            IntStream.range(0, needles)
                .mapToObj(i -> Choice.toBuy(NeedlePosition.inAnyGroove(needle(i))))
                .toList())
        .mainJets(toBuy(mains, 0.90, 0.02, JetBore::ofMillimetres))
        .build();
  }

  static Needle needle(int i) {
    return Needle.builder()
        .id("needle " + i)
        .cylinder(Diameter.ofMillimetres(hundredths(2.48 + 0.01 * (i % 5))))
        .tapers(List.of(new Taper(Length.ofMillimetres(4 + i % 3), (26 + 2 * (i / 5)) / 1000.0)))
        .grooves(5)
        .groovePitch(Length.ofMillimetres(0.9))
        .tip(Length.ofMillimetres(60))
        .build();
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
