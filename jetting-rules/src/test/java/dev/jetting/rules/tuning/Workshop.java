package dev.jetting.rules.tuning;

import dev.jetting.core.air.Air;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.PartsAtHand;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.TwoHundred;
import dev.jetting.rules.risk.Riding;
import dev.jetting.units.Cutaway;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.JetBore;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A drawer of parts for the engine on which facts of the trade are tried. */
final class Workshop {

  static final PartsAtHand PARTS =
      PartsAtHand.builder()
          .pilotJets(bores(48, 62, 2))
          .cutaways(Stream.of(3.0, 3.5, 4.0, 4.5, 5.0).map(Cutaway::ofMillimetres).toList())
          .needleJets(Stream.of(2.64, 2.66, 2.68, 2.70).map(TwoHundred::needleJet).toList())
          .needles(List.of(TwoHundred.NEEDLE, TwoHundred.LEANER_NEEDLE))
          .mainJets(bores(116, 160, 2))
          .build();

  private Workshop() {}

  /** With the setting that the library starts with. */
  static SetupSheet start() {
    SetupSheet sheet = sheet(TwoHundred.ALL_ROUND);
    Tuner tuner = Tuner.readingWith(Set.of(Instrument.PLUG));
    return sheet.withSetup(sheet.setup().withSetting(tuner.start(sheet).setting()));
  }

  static SetupSheet sheet(Setting setting) {
    return sheet(setting, TwoHundred.DAY, TwoHundred.DAY);
  }

  static SetupSheet sheet(Setting setting, Air coldest, Air hottest) {
    SetupSheet bare = TwoHundred.sheet(TwoHundred.STANDARD, setting);
    Riding riding = bare.riding();
    return SetupSheet.builder()
        .title(bare.title())
        .setup(bare.setup())
        .riding(
            Riding.builder()
                .acceptedRisk(riding.acceptedRisk())
                .profile(riding.profile())
                .coldest(coldest)
                .hottest(hottest)
                .build())
        .parts(PARTS)
        .provenance(bare.provenance())
        .build();
  }

  static Observation observation(int eighths, double rpm, Evidence seen) {
    return new Observation(ThrottleOpening.ofEighths(eighths), EngineSpeed.ofRpm(rpm), seen);
  }

  private static List<JetBore> bores(int from, int to, int step) {
    return IntStream.iterate(from, h -> h <= to, h -> h + step)
        .mapToObj(JetBore::ofHundredths)
        .toList();
  }
}
