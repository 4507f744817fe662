package dev.jetting.examples.shopcounter.bench;

import dev.jetting.core.mixture.CustomarySteps;
import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.core.parts.Screw;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.PartsAtHand;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.Cutaway;
import dev.jetting.units.Diameter;
import dev.jetting.units.JetBore;
import dev.jetting.units.ScrewTurns;
import dev.jetting.units.TradeStyle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The parts that a rider changes, each with the sizes that exist, from lean to rich. */
public enum Dial {
  /** The main jet. */
  MAIN("Main jet") {
    @Override
    List<Setting> sizes(PartsAtHand parts, Setting now) {
      return bores(parts.mainJets(), now.mainJet(), MeteringPart.MAIN_JET)
          .map(now::withMainJet)
          .toList();
    }

    @Override
    String text(Setting setting) {
      return TradeStyle.main(setting.mainJet()).substring("main ".length());
    }
  },
  /** The needle itself. */
  NEEDLE("Needle") {
    @Override
    List<Setting> sizes(PartsAtHand parts, Setting now) {
      return Stream.concat(parts.needles().stream(), Stream.of(now.needle()))
          .distinct()
          .sorted(Comparator.comparing(Needle::cylinder).reversed().thenComparing(Needle::id))
          .map(needle -> now.withNeedle(needle, clip(needle, now.clip())))
          .toList();
    }

    @Override
    String text(Setting setting) {
      return setting.needle().id();
    }
  },
  /** The groove that the clip is in. */
  CLIP("Clip groove") {
    @Override
    List<Setting> sizes(PartsAtHand parts, Setting now) {
      int grooves = now.needle().grooves();
      return IntStream.rangeClosed(1, grooves)
          .mapToObj(groove -> now.withClip(ClipPosition.fromTop(groove, grooves)))
          .toList();
    }

    @Override
    String text(Setting setting) {
      ClipPosition clip = setting.clip();
      return clip.grooveFromTop() + " of " + clip.grooves() + " from top";
    }
  },
  /** The needle jet. */
  NEEDLE_JET("Needle jet") {
    @Override
    List<Setting> sizes(PartsAtHand parts, Setting now) {
      NeedleJet fitted = now.needleJet();
      Stream<NeedleJet> others =
          parts.needleJets().isEmpty()
              ? around(fitted.bore().millimetres(), MeteringPart.NEEDLE_JET)
                  .mapToObj(Diameter::ofMillimetres)
                  .map(bore -> new NeedleJet(bore, fitted.neck()))
              : parts.needleJets().stream();
      return Stream.concat(others, Stream.of(fitted))
          .distinct()
          .sorted(Comparator.comparing(NeedleJet::bore).thenComparing(NeedleJet::neck))
          .filter(jet -> jet.bore().compareTo(now.needle().cylinder()) > 0)
          .map(now::withNeedleJet)
          .toList();
    }

    @Override
    String text(Setting setting) {
      NeedleJet jet = setting.needleJet();
      String neck = jet.neck().millimetres() == 0 ? "" : ", neck " + jet.neck();
      return TradeStyle.diameter(jet.bore()) + neck;
    }
  },
  /** The slide, by its cutaway. */
  SLIDE("Slide cutaway") {
    @Override
    List<Setting> sizes(PartsAtHand parts, Setting now) {
      Cutaway fitted = now.cutaway();
      Stream<Cutaway> others =
          parts.cutaways().isEmpty()
              ? around(fitted.millimetres(), MeteringPart.CUTAWAY).mapToObj(Cutaway::ofMillimetres)
              : parts.cutaways().stream();
      return Stream.concat(others, Stream.of(fitted))
          .distinct()
          .sorted(Comparator.reverseOrder())
          .map(now::withCutaway)
          .toList();
    }

    @Override
    String text(Setting setting) {
      return TradeStyle.cutaway(setting.cutaway()).replace("cutaway ", "");
    }
  },
  /** The pilot jet. */
  PILOT("Pilot jet") {
    @Override
    List<Setting> sizes(PartsAtHand parts, Setting now) {
      return bores(parts.pilotJets(), now.pilotJet(), MeteringPart.PILOT_JET)
          .map(now::withPilotJet)
          .toList();
    }

    @Override
    String text(Setting setting) {
      return TradeStyle.pilot(setting.pilotJet()).substring("pilot ".length());
    }
  },
  /** The pilot screw. */
  SCREW("Pilot screw") {
    @Override
    List<Setting> sizes(PartsAtHand parts, Setting now) {
      Screw fitted = now.screw();
      double most = now.carburettor().pilot().mostTurns().turns();
      Stream<ScrewTurns> quarters =
          IntStream.rangeClosed(1, (int) (4 * most)).mapToObj(ScrewTurns::ofQuarters);
      Comparator<ScrewTurns> outwards = Comparator.naturalOrder();
      return Stream.concat(quarters, Stream.of(fitted.turns()))
          .distinct()
          .sorted(fitted.kind().outIsRicher() ? outwards : outwards.reversed())
          .map(turns -> now.withScrew(new Screw(fitted.kind(), turns)))
          .toList();
    }

    @Override
    String text(Setting setting) {
      return TradeStyle.turns(setting.screw().turns());
    }
  };

  private final String label;

  Dial(String label) {
    this.label = label;
  }

  /** {@return what people call the part} */
  public String label() {
    return label;
  }

  /** {@return its name in an address} */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The settings with each size that exists, from lean to rich; the present one is among them. */
  abstract List<Setting> sizes(PartsAtHand parts, Setting now);

  /** The size in a setting, as people say it. */
  abstract String text(Setting setting);

  /** The setting with the size that a text names; empty where no such part exists. */
  Optional<Setting> with(PartsAtHand parts, Setting now, String text) {
    return sizes(parts, now).stream().filter(other -> text(other).equals(text)).findFirst();
  }

  /** The next size towards lean (−1) or rich (1). */
  Optional<Setting> next(PartsAtHand parts, Setting now, int towards) {
    List<Setting> sizes = sizes(parts, now);
    int there = sizes.indexOf(now) + towards;
    return there < 0 || there >= sizes.size() ? Optional.empty() : Optional.of(sizes.get(there));
  }

  private static Stream<JetBore> bores(List<JetBore> atHand, JetBore fitted, MeteringPart part) {
    Stream<JetBore> others =
        atHand.isEmpty()
            ? around(fitted.millimetres(), part).mapToObj(JetBore::ofMillimetres)
            : atHand.stream();
    return Stream.concat(others, Stream.of(fitted)).distinct().sorted();
  }

  /** Where nobody said what is at hand: some customary steps down and up. */
  private static DoubleStream around(double fitted, MeteringPart part) {
    double step = CustomarySteps.assumed().of(part);
    return IntStream.rangeClosed(-STEPS_AROUND, STEPS_AROUND)
        .mapToDouble(i -> Math.round((fitted + i * step) * 1e4) / 1e4)
        .filter(size -> size > 0);
  }

  private static final int STEPS_AROUND = 12;

  private static ClipPosition clip(Needle needle, ClipPosition now) {
    int groove = Math.min(now.grooveFromTop(), needle.grooves());
    return now.grooves() == needle.grooves() ? now : ClipPosition.fromTop(groove, needle.grooves());
  }

  /** The dials in the order in which they stand at the bench, from full throttle down. */
  static List<Dial> all() {
    return new ArrayList<>(List.of(values()));
  }
}
