package dev.jetting.examples.benchmarks;

import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.core.parts.Taper;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.laws.LawKit;
import dev.jetting.rules.search.Choice;
import dev.jetting.rules.search.Choices;
import dev.jetting.rules.search.NeedlePosition;
import dev.jetting.units.Cutaway;
import dev.jetting.units.Diameter;
import dev.jetting.units.JetBore;
import dev.jetting.units.Length;
import dev.jetting.units.ScrewTurns;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;

/** An invented machine and an invented shelf of parts for it. */
final class Parts {

  /** The sheet that every benchmark is about. */
  static final SetupSheet SHEET = LawKit.plainSheet();

  private Parts() {}

  /** Choices with about the given number of settings: 10 000, 100 000 or 1 000 000. */
  static Choices about(int settings) {
    return switch (settings) {
      case 200 -> of(2, 1, 2, 2, 1, 5);
      case 10_000 -> of(5, 1, 2, 4, 5, 10);
      case 100_000 -> of(10, 1, 4, 5, 5, 20);
      case 1_000_000 -> of(15, 1, 5, 6, 11, 40);
      case 3_000_000 -> of(15, 3, 5, 6, 11, 40);
      default ->
          throw new IllegalArgumentException(
              "settings " + settings + ": allowed 200, 10000, 100000, 1000000, 3000000");
    };
  }

  private static Choices of(
      int pilots, int screws, int slides, int needleJets, int needles, int mains) {
    return Choices.builder()
        .pilotJets(toBuy(pilots, 0.48, 0.02, JetBore::ofMillimetres))
        .screws(IntStream.range(0, screws).mapToObj(i -> ScrewTurns.of(1.5 + 0.25 * i)).toList())
        .cutaways(toBuy(slides, 3, 0.5, Cutaway::ofMillimetres))
        .needleJets(
            toBuy(needleJets, 2.62, 0.02, bore -> NeedleJet.of(Diameter.ofMillimetres(bore))))
        .needles(
            IntStream.range(0, needles)
                .mapToObj(i -> Choice.toBuy(NeedlePosition.inAnyGroove(needle(i))))
                .toList())
        .mainJets(toBuy(mains, 1.00, 0.02, JetBore::ofMillimetres))
        .build();
  }

  private static Needle needle(int i) {
    return Needle.builder()
        .id("needle " + i)
        .cylinder(Diameter.ofMillimetres(hundredths(2.48 + 0.01 * (i % 5))))
        .tapers(List.of(new Taper(Length.ofMillimetres(4 + i % 3), (26 + 2 * (i / 5)) / 1000.0)))
        .grooves(5)
        .groovePitch(Length.ofMillimetres(0.9))
        .tip(Length.ofMillimetres(60))
        .build();
  }

  private static <P> List<Choice<P>> toBuy(
      int count, double first, double step, DoubleFunction<P> part) {
    return IntStream.range(0, count)
        .mapToObj(i -> Choice.toBuy(part.apply(hundredths(first + i * step))))
        .toList();
  }

  private static double hundredths(double number) {
    return Math.rint(number * 100) / 100;
  }
}
