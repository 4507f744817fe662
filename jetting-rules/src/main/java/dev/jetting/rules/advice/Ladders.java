package dev.jetting.rules.advice;

import dev.jetting.core.mixture.CustomarySteps;
import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.core.parts.Screw;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.PartsAtHand;
import dev.jetting.rules.text.Argument;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.Cutaway;
import dev.jetting.units.Diameter;
import dev.jetting.units.JetBore;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ScrewTurns;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * The ladders of a setting's parts, in the order in which a tuner sets them. First the main jet for
 * full throttle, then pilot jet and screw for closed. The needle between them follows, then slide
 * and needle jet.
 */
final class Ladders {

  /** How many customary sizes either way a part to buy may differ from the own (assumed). */
  private static final int MAIN_SIZES = 48;

  private static final int OTHER_SIZES = 16;

  private static final int SLIDES = 4;

  private static final double QUARTER_TURN = 0.25;

  /** Below half a turn a screw is hardly off its seat (assumed, as by the rulebook). */
  private static final double LEAST_TURNS = 0.5;

  private final Setting setting;
  private final PartsAtHand parts;
  private final CustomarySteps steps;
  private final boolean buying;

  private Ladders(Setting setting, PartsAtHand parts, CustomarySteps steps, boolean buying) {
    this.setting = setting;
    this.parts = parts;
    this.steps = steps;
    this.buying = buying;
  }

  /**
   * The ladders of a setting.
   *
   * @param buying whether a part may be bought even where some are at hand; where the list of parts
   *     is empty, what is at hand is unknown, and customary sizes are to buy in any case
   */
  static List<Ladder> of(Setting setting, PartsAtHand parts, CustomarySteps steps, boolean buying) {
    return new Ladders(setting, parts, steps, buying).all();
  }

  private List<Ladder> all() {
    return List.of(
        jets(MeteringPart.MAIN_JET, setting.mainJet(), parts.mainJets(), MAIN_SIZES),
        jets(MeteringPart.PILOT_JET, setting.pilotJet(), parts.pilotJets(), OTHER_SIZES),
        screw(),
        clip(),
        needles(),
        slides(),
        needleJets());
  }

  private Ladder jets(MeteringPart part, JetBore own, List<JetBore> atHand, int most) {
    boolean main = part == MeteringPart.MAIN_JET;
    return ladder(
        part,
        own,
        atHand,
        sizes(part, own.millimetres(), atHand.isEmpty(), most).map(JetBore::ofMillimetres),
        JetBore::millimetres,
        main ? Argument::mainJet : Argument::pilotJet,
        jet -> s -> main ? s.withMainJet(jet) : s.withPilotJet(jet));
  }

  private Ladder slides() {
    return ladder(
        MeteringPart.CUTAWAY,
        setting.cutaway(),
        parts.cutaways(),
        sizes(
                MeteringPart.CUTAWAY,
                setting.cutaway().millimetres(),
                parts.cutaways().isEmpty(),
                SLIDES)
            .map(Cutaway::ofMillimetres),
        cutaway -> -cutaway.millimetres(),
        Argument::cutaway,
        cutaway -> s -> s.withCutaway(cutaway));
  }

  private Ladder needleJets() {
    NeedleJet own = setting.needleJet();
    return ladder(
        MeteringPart.NEEDLE_JET,
        own,
        parts.needleJets(),
        sizes(
                MeteringPart.NEEDLE_JET,
                own.bore().millimetres(),
                parts.needleJets().isEmpty(),
                OTHER_SIZES)
            .map(bore -> new NeedleJet(Diameter.ofMillimetres(bore), own.neck())),
        jet -> jet.bore().millimetres(),
        jet -> Argument.needleJet(jet.bore()),
        jet -> s -> s.withNeedleJet(jet));
  }

  /** Needles differ in more than one size, so none but those at hand can be named. */
  private Ladder needles() {
    return ladder(
        MeteringPart.NEEDLE_DIAMETER,
        setting.needle(),
        parts.needles(),
        new Sizes(List.of()).map(size -> setting.needle()),
        this::thinness,
        needle -> Argument.needle(needle.id()),
        needle -> s -> s.withNeedle(needle, sameGroove(s.clip(), needle)));
  }

  private double thinness(Needle needle) {
    double half = setting.carburettor().bore().millimetres() / 2;
    double hung = (needle.grooves() - 1) / 2.0 * needle.groovePitch().millimetres();
    double sum = 0;
    for (int i = 0; i <= 8; i++) {
      sum += needle.diameterAt(hung + half * i / 8);
    }
    return -sum;
  }

  private static ClipPosition sameGroove(ClipPosition clip, Needle needle) {
    return ClipPosition.fromTop(clip.grooveFromTop(), needle.grooves());
  }

  private Ladder clip() {
    List<Rung> rungs = new ArrayList<>();
    ClipPosition own = setting.clip();
    for (int groove = 1; groove <= own.grooves(); groove++) {
      ClipPosition clip = ClipPosition.fromTop(groove, own.grooves());
      rungs.add(new Rung(Argument.clip(clip), true, s -> s.withClip(at(clip, s))));
    }
    return new Ladder(MeteringPart.CLIP, rungs, own.grooveFromTop() - 1);
  }

  /** The same groove on the needle that is in by then. */
  private static ClipPosition at(ClipPosition clip, Setting setting) {
    return ClipPosition.fromTop(clip.grooveFromTop(), setting.needle().grooves());
  }

  private Ladder screw() {
    Screw own = setting.screw();
    double most = setting.carburettor().pilot().mostTurns().turns();
    boolean outIsRicher = setting.carburettor().pilot().screwKind() == ScrewKind.MIXTURE;
    List<Double> turns = new ArrayList<>();
    turns.add(own.turns().turns());
    for (int quarters = 1; quarters * QUARTER_TURN <= most + own.turns().turns(); quarters++) {
      for (double other :
          new double[] {
            own.turns().turns() - quarters * QUARTER_TURN,
            own.turns().turns() + quarters * QUARTER_TURN
          }) {
        if (other >= LEAST_TURNS && other <= most) {
          turns.add(other);
        }
      }
    }
    Comparator<Double> leanFirst = Comparator.naturalOrder();
    turns.sort(outIsRicher ? leanFirst : leanFirst.reversed());
    List<Rung> rungs =
        turns.stream()
            .map(
                t -> {
                  Screw screw = new Screw(own.kind(), ScrewTurns.of(t));
                  return new Rung(Argument.turns(screw.turns()), true, s -> s.withScrew(screw));
                })
            .toList();
    return new Ladder(MeteringPart.SCREW, rungs, turns.indexOf(own.turns().turns()));
  }

  /** Numbers that a customary part may have. */
  private record Sizes(List<Double> numbers) {
    /** The parts of these sizes; where there can be no such size, none. */
    <P> List<P> map(Function<Double, P> part) {
      return numbers.stream().flatMap(number -> made(part, number).stream()).toList();
    }

    private static <P> Optional<P> made(Function<Double, P> part, double number) {
      try {
        return Optional.of(part.apply(number));
      } catch (IllegalArgumentException e) {
        return Optional.empty(); // the quantity's own range knows best
      }
    }
  }

  private Sizes sizes(MeteringPart part, double own, boolean unknown, int most) {
    List<Double> sizes = new ArrayList<>();
    for (int i = -most; i <= most && (unknown || buying); i++) {
      double size = Math.rint((own + i * steps.of(part)) * 1e4) / 1e4;
      if (i != 0 && size > own / 2) {
        sizes.add(size);
      }
    }
    return new Sizes(sizes);
  }

  private static <P> Ladder ladder(
      MeteringPart part,
      P own,
      List<P> atHand,
      List<P> customary,
      ToDoubleFunction<P> richness,
      Function<P, Argument> name,
      Function<P, Rung.Fit> fit) {
    List<P> all = new ArrayList<>();
    all.add(own);
    atHand.stream().filter(p -> !all.contains(p)).forEach(all::add);
    int have = all.size();
    double least = all.stream().mapToDouble(richness).min().orElseThrow();
    double greatest = all.stream().mapToDouble(richness).max().orElseThrow();
    customary.stream()
        .filter(p -> richness.applyAsDouble(p) < least || richness.applyAsDouble(p) > greatest)
        .forEach(all::add);
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      order.add(i);
    }
    order.sort(Comparator.comparingDouble(i -> richness.applyAsDouble(all.get(i))));
    List<Rung> rungs =
        order.stream()
            .map(i -> new Rung(name.apply(all.get(i)), i < have, fit.apply(all.get(i))))
            .toList();
    return new Ladder(part, rungs, order.indexOf(0));
  }
}
