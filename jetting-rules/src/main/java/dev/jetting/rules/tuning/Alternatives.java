package dev.jetting.rules.tuning;

import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.core.parts.Screw;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.PartsAtHand;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.JetBore;
import dev.jetting.units.ScrewTurns;
import dev.jetting.units.TradeStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Every setting that differs from one by a single part out of those at hand. One change moves a jet
 * by no more than a careful tuner would.
 */
final class Alternatives {

  /** A setting and what was changed to come to it. */
  record Alternative(MeteringPart part, String what, Setting setting) {}

  /** By so much of its bore a single change moves a jet, or by two sizes (assumed). */
  private static final double MOST_OF_A_BORE = 0.10;

  private static final int TWO_SIZES = 2;

  private Alternatives() {}

  static List<Alternative> to(Setting setting, PartsAtHand parts) {
    List<Alternative> all = new ArrayList<>();
    add(
        all,
        MeteringPart.MAIN_JET,
        near(setting.mainJet(), parts.mainJets()),
        TradeStyle::main,
        setting::withMainJet);
    add(
        all,
        MeteringPart.PILOT_JET,
        near(setting.pilotJet(), parts.pilotJets()),
        TradeStyle::pilot,
        setting::withPilotJet);
    add(
        all,
        MeteringPart.CUTAWAY,
        nextTwo(setting.cutaway(), parts.cutaways(), cutaway -> cutaway),
        TradeStyle::cutaway,
        setting::withCutaway);
    add(
        all,
        MeteringPart.NEEDLE_JET,
        nextTwo(setting.needleJet(), parts.needleJets(), NeedleJet::bore),
        jet -> "needle jet " + TradeStyle.diameter(jet.bore()),
        setting::withNeedleJet);
    add(
        all,
        MeteringPart.NEEDLE_DIAMETER,
        parts.needles(),
        needle -> "needle " + needle.id(),
        needle -> setting.withNeedle(needle, sameGroove(setting.clip(), needle)));
    add(all, MeteringPart.CLIP, neighbours(setting.clip()), TradeStyle::clip, setting::withClip);
    add(
        all,
        MeteringPart.SCREW,
        quarterTurns(setting),
        screw -> TradeStyle.screw(screw.kind(), screw.turns()),
        setting::withScrew);
    all.removeIf(alternative -> alternative.setting().equals(setting));
    return all;
  }

  /** How many parts of a setting differ from those of another. */
  static long partsChanged(Setting a, Setting b) {
    return Stream.<Boolean>of(
            a.mainJet().equals(b.mainJet()),
            a.pilotJet().equals(b.pilotJet()),
            a.screw().equals(b.screw()),
            a.cutaway().equals(b.cutaway()),
            a.needleJet().equals(b.needleJet()),
            a.needle().equals(b.needle()),
            a.clip().equals(b.clip()))
        .filter(same -> !same)
        .count();
  }

  private static List<JetBore> near(JetBore own, List<JetBore> jets) {
    return jets.stream()
        .filter(
            jet ->
                Math.abs(jet.millimetres() / own.millimetres() - 1) <= MOST_OF_A_BORE
                    || sizesBetween(own, jet, jets) < TWO_SIZES)
        .toList();
  }

  /** Those of the next two sizes to either side. */
  private static <P, S extends Comparable<S>> List<P> nextTwo(
      P own, List<P> parts, Function<P, S> size) {
    List<S> sizes = parts.stream().map(size).toList();
    return parts.stream()
        .filter(part -> sizesBetween(size.apply(own), size.apply(part), sizes) < TWO_SIZES)
        .toList();
  }

  private static <S extends Comparable<S>> long sizesBetween(S own, S size, List<S> sizes) {
    return sizes.stream()
        .distinct()
        .filter(
            other ->
                (other.compareTo(own) > 0 && other.compareTo(size) < 0)
                    || (other.compareTo(own) < 0 && other.compareTo(size) > 0))
        .count();
  }

  /** Adds what fits: a needle that does not go into the needle jet is no alternative. */
  private static <P> void add(
      List<Alternative> all,
      MeteringPart part,
      List<P> choices,
      Function<P, String> what,
      Function<P, Setting> with) {
    for (P choice : choices) {
      fitting(with, choice)
          .ifPresent(setting -> all.add(new Alternative(part, what.apply(choice), setting)));
    }
  }

  private static <P> Optional<Setting> fitting(Function<P, Setting> with, P choice) {
    try {
      return Optional.of(with.apply(choice));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /** The same groove counted on a needle; refused where it has none there: that is two changes. */
  private static ClipPosition sameGroove(ClipPosition clip, Needle needle) {
    return ClipPosition.fromTop(clip.grooveFromTop(), needle.grooves());
  }

  private static List<ClipPosition> neighbours(ClipPosition clip) {
    List<ClipPosition> neighbours = new ArrayList<>();
    clip.nextTowardsTop().ifPresent(neighbours::add);
    clip.nextTowardsBottom().ifPresent(neighbours::add);
    return neighbours;
  }

  private static List<Screw> quarterTurns(Setting setting) {
    Screw screw = setting.screw();
    double turns = screw.turns().turns();
    double most = setting.carburettor().pilot().mostTurns().turns();
    List<Screw> near = new ArrayList<>();
    for (double other : new double[] {turns - 0.25, turns + 0.25}) {
      if (ScrewReach.isWithinOrNearer(other, turns) && other <= most) {
        near.add(new Screw(screw.kind(), ScrewTurns.of(other)));
      }
    }
    return near;
  }
}
