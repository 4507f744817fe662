package dev.jetting.rules.tuning;

import static java.util.Comparator.comparingDouble;

import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.core.parts.Screw;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.PartsAtHand;
import dev.jetting.rules.tuning.Alternatives.Alternative;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.Cutaway;
import dev.jetting.units.JetBore;
import dev.jetting.units.ScrewTurns;
import dev.jetting.units.ThrottleOpening;
import dev.jetting.units.TradeStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * The parts that make a setting as rich in other air, or with another fuel, as it is at home. Each
 * is chosen where it acts, in the order of the trade: the main jet at full throttle, the clip at
 * half, the screw at idle. Where clip or screw do not reach, a needle jet or a pilot jet goes
 * along, and a slide with less cutaway where an eighth is still too lean. A leaner part has to
 * leave the openings beside it as rich as well.
 *
 * <p>Main jet and clip are chosen by the air alone, whatever size the others came to. So a denser
 * air asks for no leaner one of these. Idle is not as regular: the leanest air for it is not the
 * densest.
 *
 * @param home the setup as it was finished
 * @param there the same setting in the other air, or with the other fuel
 * @param parts the parts at hand
 */
record AsRich(Setup home, Setup there, PartsAtHand parts) {

  /**
   * What is fitted stays while it is leaner by no more than this in ln λ (assumed: well under half
   * of a step). Of main jet, of clip and of screw: nobody moves a clip for a few kelvin. What takes
   * its place is as rich as at home or richer, so that moves to and fro do not add up.
   */
  private static final double MAIN_TRIFLE = 0.01;

  private static final double CLIP_TRIFLE = 0.02;
  private static final double CLIP_HAIR = 0.005;
  private static final double TRIFLE = 0.03;

  /**
   * Richer at idle than this, in ln λ, is more than a quarter turn (assumed): another pilot jet.
   */
  private static final double RICH = 0.06;

  /** Nobody files or buys a slide for less than this in ln λ (assumed). */
  private static final double WORTH_A_SLIDE = 0.06;

  /** Where the main jet acts, first the opening that decides; then the same of clip and screw. */
  private static final List<ThrottleOpening> WIDE =
      List.of(ThrottleOpening.FULL, ThrottleOpening.ofEighths(6));

  private static final List<ThrottleOpening> MIDDLE = List.of(Held.HALF, Held.QUARTER, Held.EIGHTH);
  private static final List<ThrottleOpening> SMALL = List.of(ThrottleOpening.CLOSED, Held.EIGHTH);

  private static final double QUARTER_TURN = 0.25;
  private static final int MOST_QUARTERS = 12;

  /** The main jet that would be right is looked for within these, by the bore that is fitted. */
  private static final double SMALLEST = 0.4;

  private static final double BIGGEST = 2.5;

  /** And within these, in mm. */
  private static final double SMALLEST_BORE = 0.05;

  private static final double BIGGEST_BORE = 10;

  /** A part, the setting with it, and by how much that is leaner at the opening that decides. */
  private record Choice<P>(P part, Setting setting, double leaner) {}

  /** What is changed, one part after the other. */
  List<Alternative> changes() {
    Setting fitted = there.setting();
    Setting to = slide(small(middle(wide(fitted))));
    List<Alternative> changes = new ArrayList<>();
    Setting now = fitted.withMainJet(to.mainJet());
    add(changes, MeteringPart.MAIN_JET, TradeStyle.main(to.mainJet()), now);
    now = now.withNeedleJet(to.needleJet());
    String jet = "needle jet " + TradeStyle.diameter(to.needleJet().bore());
    add(changes, MeteringPart.NEEDLE_JET, jet, now);
    now = now.withClip(to.clip());
    add(changes, MeteringPart.CLIP, TradeStyle.clip(to.clip()), now);
    now = now.withPilotJet(to.pilotJet());
    add(changes, MeteringPart.PILOT_JET, TradeStyle.pilot(to.pilotJet()), now);
    now = now.withScrew(to.screw());
    Screw screw = to.screw();
    add(changes, MeteringPart.SCREW, TradeStyle.screw(screw.kind(), screw.turns()), now);
    add(changes, MeteringPart.CUTAWAY, TradeStyle.cutaway(to.cutaway()), to);
    return changes;
  }

  private void add(List<Alternative> changes, MeteringPart part, String what, Setting to) {
    Setting before =
        changes.isEmpty() ? there.setting() : changes.get(changes.size() - 1).setting();
    if (!to.equals(before)) {
      changes.add(new Alternative(part, what, to));
    }
  }

  private Setting wide(Setting now) {
    return now.withMainJet(best(WIDE, MAIN_TRIFLE, 0, mains(now), now::withMainJet));
  }

  private Setting middle(Setting now) {
    // Where no main jet at hand is rich enough, clip and needle jet make up for it.
    boolean reaches = !isLeaner(ThrottleOpening.FULL, MAIN_TRIFLE, now);
    Setting hung = hung(reaches ? now.withMainJet(idealMain(now)) : now);
    if (isLeaner(Held.HALF, CLIP_TRIFLE, hung) || isLeaner(Held.QUARTER, TRIFLE, hung)) {
      boolean half = leaner(Held.HALF, hung) > leaner(Held.QUARTER, hung);
      List<ThrottleOpening> leanest = List.of(half ? Held.HALF : Held.QUARTER);
      hung = hung(hung.withNeedleJet(best(leanest, 0, 0, needleJets(hung), hung::withNeedleJet)));
    }
    return now.withNeedleJet(hung.needleJet()).withClip(hung.clip());
  }

  private Setting hung(Setting now) {
    return now.withClip(best(MIDDLE, CLIP_TRIFLE, CLIP_HAIR, clips(now), now::withClip));
  }

  private Setting small(Setting now) {
    Setting set = set(now);
    double leaner = leaner(ThrottleOpening.CLOSED, set);
    return leaner > TRIFLE || leaner < -RICH
        ? set(set.withPilotJet(best(SMALL, 0, 0, pilots(set), set::withPilotJet)))
        : set;
  }

  private Setting set(Setting now) {
    return now.withScrew(best(SMALL, TRIFLE, 0, screws(now), now::withScrew));
  }

  private Setting slide(Setting now) {
    return isLeaner(Held.EIGHTH, WORTH_A_SLIDE, now)
        ? now.withCutaway(best(List.of(Held.EIGHTH), 0, 0, cutaways(now), now::withCutaway))
        : now;
  }

  private boolean isLeaner(ThrottleOpening held, double trifle, Setting setting) {
    return leaner(held, setting) > trifle;
  }

  /**
   * The leanest that is as rich as at home, or a hair leaner; where none is, the richest. What is
   * fitted, the first of the choices, may be a trifle leaner. One that is leaner than that is as
   * rich at all the openings, others at the first.
   */
  private <P> P best(
      List<ThrottleOpening> held,
      double trifle,
      double hair,
      List<P> choices,
      Function<P, Setting> with) {
    ThrottleOpening first = held.get(0);
    List<Choice<P>> weighed =
        choices.stream().map(part -> weighed(part, first, with.apply(part))).toList();
    Choice<P> own = weighed.get(0);
    return weighed.stream()
        .filter(
            choice -> {
              if (choice.equals(own)) {
                return choice.leaner <= trifle;
              }
              return choice.leaner < own.leaner
                  ? choice.leaner <= hair
                  : held.stream().allMatch(each -> leaner(each, choice.setting) <= 0);
            })
        .max(comparingDouble(Choice::leaner))
        .or(() -> weighed.stream().min(comparingDouble(Choice::leaner)))
        .orElseThrow()
        .part;
  }

  private <P> Choice<P> weighed(P part, ThrottleOpening first, Setting setting) {
    return new Choice<>(part, setting, leaner(first, setting));
  }

  /** By how much a setting is leaner there than what was finished is at home, in ln λ. */
  double leaner(ThrottleOpening held, Setting setting) {
    return lnLambda(there.withSetting(setting), held) - lnLambda(home, held);
  }

  private static double lnLambda(Setup setup, ThrottleOpening held) {
    return StrictMath.log(MixtureModel.of(setup).at(held).lambda().value());
  }

  /** The main jet that nobody sells: just as rich at full throttle as at home. */
  private JetBore idealMain(Setting fitted) {
    double own = fitted.mainJet().millimetres();
    double least = Math.max(SMALLEST_BORE, own * SMALLEST);
    double most = Math.min(BIGGEST_BORE, own * BIGGEST);
    if (byMain(fitted, least) <= 0) {
      return JetBore.ofMillimetres(least);
    }
    if (byMain(fitted, most) >= 0) {
      return JetBore.ofMillimetres(most);
    }
    return JetBore.ofMillimetres(
        new BrentSolver(1e-6).solve(100, bore -> byMain(fitted, bore), least, most));
  }

  private double byMain(Setting fitted, double millimetres) {
    return leaner(ThrottleOpening.FULL, fitted.withMainJet(JetBore.ofMillimetres(millimetres)));
  }

  private List<JetBore> mains(Setting fitted) {
    return Stream.concat(Stream.of(fitted.mainJet()), parts.mainJets().stream()).toList();
  }

  private List<ClipPosition> clips(Setting fitted) {
    int grooves = fitted.clip().grooves();
    return Stream.concat(
            Stream.of(fitted.clip()),
            IntStream.rangeClosed(1, grooves)
                .mapToObj(groove -> ClipPosition.fromTop(groove, grooves)))
        .toList();
  }

  /** Those that are no narrower, into which the needle goes as well. */
  private List<NeedleJet> needleJets(Setting fitted) {
    return Stream.concat(
            Stream.of(fitted.needleJet()),
            parts.needleJets().stream()
                .filter(jet -> jet.bore().compareTo(fitted.needleJet().bore()) > 0))
        .toList();
  }

  /** Those that are no leaner. */
  private List<Cutaway> cutaways(Setting fitted) {
    return Stream.concat(
            Stream.of(fitted.cutaway()),
            parts.cutaways().stream().filter(slide -> slide.compareTo(fitted.cutaway()) < 0))
        .toList();
  }

  private List<JetBore> pilots(Setting fitted) {
    return Stream.concat(Stream.of(fitted.pilotJet()), parts.pilotJets().stream()).toList();
  }

  /** By quarter turns from where it stands, as far as a screw works. */
  private static List<Screw> screws(Setting fitted) {
    Screw own = fitted.screw();
    double most = fitted.carburettor().pilot().mostTurns().turns();
    return Stream.concat(
            Stream.of(own.turns()),
            IntStream.rangeClosed(-MOST_QUARTERS, MOST_QUARTERS)
                .mapToDouble(quarters -> own.turns().turns() + quarters * QUARTER_TURN)
                .filter(turns -> turns >= 0 && turns <= most)
                .mapToObj(ScrewTurns::of)
                .filter(ScrewReach::holds))
        .map(turns -> new Screw(own.kind(), turns))
        .toList();
  }
}
