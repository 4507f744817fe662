package dev.jetting.examples.shopcounter.bench;

import dev.jetting.core.mixture.CustomarySteps;
import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.core.parts.Screw;
import dev.jetting.core.parts.Setting;
import dev.jetting.examples.shopcounter.words.Words;
import dev.jetting.rules.PartsAtHand;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
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
  MAIN {
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

    @Override
    Argument size(Setting setting) {
      return number(text(setting));
    }

    @Override
    Argument part(Setting setting) {
      return Argument.mainJet(setting.mainJet());
    }
  },
  /** The needle itself. */
  NEEDLE {
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

    @Override
    Argument size(Setting setting) {
      return Argument.name(text(setting));
    }

    @Override
    Argument part(Setting setting) {
      return Argument.needle(setting.needle().id());
    }
  },
  /** The groove that the clip is in. */
  CLIP {
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

    @Override
    Argument size(Setting setting) {
      ClipPosition clip = setting.clip();
      return Argument.words(
          Words.message(
              "dial.clip.size", "groove", clip.grooveFromTop(), "grooves", clip.grooves()));
    }

    @Override
    Argument part(Setting setting) {
      return Argument.clip(setting.clip());
    }
  },
  /** The needle jet. */
  NEEDLE_JET {
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

    @Override
    Argument size(Setting setting) {
      NeedleJet jet = setting.needleJet();
      Argument bore = Argument.diameter(jet.bore());
      return jet.neck().millimetres() == 0
          ? bore
          : Argument.words(
              Words.message(
                  "dial.neck",
                  "bore",
                  bore,
                  "neck",
                  Argument.exact(jet.neck().millimetres(), "mm")));
    }

    @Override
    Argument part(Setting setting) {
      return Argument.needleJet(setting.needleJet().bore());
    }
  },
  /** The slide, by its cutaway. */
  SLIDE {
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

    @Override
    Argument size(Setting setting) {
      return number(text(setting));
    }

    @Override
    Argument part(Setting setting) {
      return Argument.cutaway(setting.cutaway());
    }
  },
  /** The pilot jet. */
  PILOT {
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

    @Override
    Argument size(Setting setting) {
      return number(text(setting));
    }

    @Override
    Argument part(Setting setting) {
      return Argument.pilotJet(setting.pilotJet());
    }
  },
  /** The pilot screw. */
  SCREW {
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

    @Override
    Argument size(Setting setting) {
      return Argument.turns(setting.screw().turns());
    }

    @Override
    Argument part(Setting setting) {
      Screw screw = setting.screw();
      return Argument.screw(screw.kind(), screw.turns());
    }
  };

  /** What people call the part. */
  Message label() {
    return Words.message("dial." + Words.key(this));
  }

  /** {@return its name in an address} */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The settings with each size that exists, from lean to rich; the present one is among them. */
  abstract List<Setting> sizes(PartsAtHand parts, Setting now);

  /** The size in a setting, as an address has it: the same in every language. */
  abstract String text(Setting setting);

  /** The size in a setting, for people. */
  abstract Argument size(Setting setting);

  /** The part with its size, for people. */
  abstract Argument part(Setting setting);

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

  private static Argument number(String stamped) {
    return Argument.exact(Double.parseDouble(stamped), "1");
  }

  private static ClipPosition clip(Needle needle, ClipPosition now) {
    int groove = Math.min(now.grooveFromTop(), needle.grooves());
    return now.grooves() == needle.grooves() ? now : ClipPosition.fromTop(groove, needle.grooves());
  }

  /** The dials in the order in which they stand at the bench, from full throttle down. */
  static List<Dial> all() {
    return new ArrayList<>(List.of(values()));
  }
}
