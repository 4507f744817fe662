package dev.jetting.rules.search;

import dev.jetting.core.mixture.table.MixtureTable;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.search.Draws.Drawn;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.ToIntFunction;
import org.jspecify.annotations.Nullable;

/**
 * For how many engines of a kind the choices contain a setting that is right. Such a setting is
 * nowhere beyond the lean limit on any day of the riding, and not too lean on the overrun. On the
 * day of the sheet it is nowhere richer than the rich limit.
 *
 * <p>The engines are drawn from the spreads, evenly and the same every time. The model computes
 * each with its own flows, without the linear approximation that a lean risk makes in the errors of
 * the fuel. The parts are assumed to have their nominal sizes. Not a promise that a tuner finds the
 * setting.
 *
 * @param engines how many engines were drawn
 * @param covered for how many of them the choices contain a right setting
 * @param use how often each part stands in the right setting that is nearest to what the engine
 *     needs; kind by kind, each kind in the order of the choices; the clip positions of a needle
 *     count together
 * @param extras what each extra part would bring on its own, kind by kind in their order
 * @param together the few extra jets that raise the coverage most when they are added one after the
 *     other, by a greedy choice; at most three, fewer if no more is gained. Each entry counts the
 *     jets before it too. Each is the jet that raises the coverage most, and the first of equals. A
 *     pilot and a main jet that together raise it by more than twice as much are both added
 * @param ending how the run ended; unless it is complete, engines that were not looked at to the
 *     end count as not covered
 */
public record Coverage(
    int engines,
    int covered,
    List<PartUse> use,
    List<ExtraPart> extras,
    List<ExtraPart> together,
    SearchEnding ending) {

  /**
   * Checks the numbers.
   *
   * @param engines how many engines were drawn
   * @param covered for how many of them the choices contain a right setting
   * @param use how often each part stands in the best setting
   * @param extras what each extra part would bring on its own
   * @param together the few extra jets that raise the coverage most, one after the other
   * @param ending how the run ended
   * @throws IllegalArgumentException if no engine was drawn or more were covered than drawn
   */
  public Coverage {
    use = List.copyOf(use);
    extras = List.copyOf(extras);
    together = List.copyOf(together);
    Objects.requireNonNull(ending, "ending");
    if (engines < 1 || covered < 0 || covered > engines) {
      throw new IllegalArgumentException(
          "coverage of " + covered + " engines of " + engines + ": allowed 0 to all of 1 or more");
    }
  }

  /** {@return whether every engine was looked at to the end} */
  public boolean complete() {
    return ending == SearchEnding.COMPLETE;
  }

  /** {@return the share of engines that are covered, 0 to 1} */
  public double share() {
    return (double) covered / engines;
  }

  /**
   * The standard error of the share: √(p (1−p)/n), that of engines drawn at random; those drawn
   * evenly do better, so take it as the most.
   *
   * @return the standard error
   */
  public double standardError() {
    return Math.sqrt(share() * (1 - share()) / engines);
  }

  /**
   * The coverage of choices.
   *
   * @param sheet a typical engine of the kind, with carburettor, air, fuel and riding
   * @param choices the parts there are
   * @param riskModel limits and spreads
   * @param engines how many engines to draw, 1 to 65 536; with 256 the error of the share is about
   *     three per cent
   * @param run on which threads, until when
   * @return the coverage, without extra parts
   * @throws IllegalArgumentException if the number is out of range, or the air of a day is colder
   *     than −40 °C and the fuel is a blend
   */
  public static Coverage of(
      SetupSheet sheet, Choices choices, RiskModel riskModel, int engines, Run run) {
    return of(sheet, Extras.none(choices), riskModel, engines, run);
  }

  /**
   * The coverage of choices, what each extra part would bring on its own, and which few extra jets
   * would bring most together.
   *
   * @param sheet a typical engine of the kind, with carburettor, air, fuel and riding
   * @param choices the parts there are
   * @param more the parts there might be; those that are among the choices are no extras, and its
   *     screw positions do not count
   * @param riskModel limits and spreads
   * @param engines how many engines to draw, 1 to 65 536
   * @param run on which threads, until when
   * @return the coverage
   * @throws IllegalArgumentException if the number is out of range, or the air of a day is colder
   *     than −40 °C and the fuel is a blend
   */
  public static Coverage of(
      SetupSheet sheet, Choices choices, Choices more, RiskModel riskModel, int engines, Run run) {
    return of(sheet, Extras.of(choices, more), riskModel, engines, run);
  }

  /** What was found for one engine: its best setting, or what would make one right. */
  private record Fit(@Nullable ChoiceIndices best, BitSet lacking) {}

  private static Coverage of(
      SetupSheet sheet, Extras extras, RiskModel riskModel, int engines, Run run) {
    Objects.requireNonNull(sheet, "sheet");
    if (engines < 1 || engines > 65_536) {
      throw new IllegalArgumentException("engines to draw " + engines + ": allowed 1 to 65536");
    }
    RiskModel wider = sheet.riskModel(riskModel);
    List<Drawn> drawn = new Draws(wider.uncertainty()).first(engines);
    SearchLimits limits =
        new SearchLimits(sheet, wider, sheet.riding().acceptedRisk(), wider.untried());
    Work work = new Work(run, engines);
    AtomicReferenceArray<@Nullable Fit> fits = new AtomicReferenceArray<>(engines);
    work.pieces(
        engines,
        worker ->
            i -> {
              Fit fit = fit(sheet, extras, limits, drawn.get(i), work);
              if (fit != null) {
                fits.set(i, fit);
                work.done(1);
              }
            });
    List<Fit> found = new ArrayList<>();
    for (int i = 0; i < engines; i++) {
      Fit fit = fits.get(i);
      if (fit != null) {
        found.add(fit);
      }
    }
    return summed(engines, extras, found, work.ending());
  }

  /** Null if the work was stopped before the engine was looked at to the end. */
  private static @Nullable Fit fit(
      SetupSheet sheet, Extras extras, SearchLimits limits, Drawn engine, Work work) {
    EngineSweep sweep = sweep(sheet, Extras.none(extras.own()), limits, engine, work);
    ChoiceIndices best = sweep.best();
    BitSet lacking = new BitSet();
    if (!sweep.isCut() && best == null && !extras.parts().isEmpty()) {
      sweep = sweep(sheet, extras, limits, engine, work);
      sweep.lacking(lacking);
    }
    return sweep.isCut() ? null : new Fit(best, lacking);
  }

  private static EngineSweep sweep(
      SetupSheet sheet, Extras extras, SearchLimits limits, Drawn engine, Work work) {
    Space space =
        new Space(
            sheet,
            extras.all(),
            setup -> MixtureTable.of(setup, AssessedSetting.openings(), engine.differences()));
    space.fill();
    return new EngineSweep(space, extras, limits, engine, work);
  }

  private static Coverage summed(int engines, Extras extras, List<Fit> fits, SearchEnding ending) {
    List<ChoiceIndices> best = new ArrayList<>();
    for (Fit fit : fits) {
      if (fit.best != null) {
        best.add(fit.best);
      }
    }
    Choices own = extras.own();
    List<PartUse> use = new ArrayList<>();
    count(use, PartKind.PILOT_JET, own.pilotJets().size(), best, ChoiceIndices::pilotJet);
    count(use, PartKind.SCREW, own.screws().size(), best, ChoiceIndices::screw);
    count(use, PartKind.SLIDE, own.cutaways().size(), best, ChoiceIndices::cutaway);
    count(use, PartKind.NEEDLE_JET, own.needleJets().size(), best, ChoiceIndices::needleJet);
    count(use, PartKind.NEEDLE, own.needles().size(), best, ChoiceIndices::needle);
    count(use, PartKind.MAIN_JET, own.mainJets().size(), best, ChoiceIndices::mainJet);
    List<BitSet> lacking = fits.stream().map(Fit::lacking).toList();
    List<ExtraPart> alone = new ArrayList<>();
    for (Extras.Part part : extras.parts()) {
      long helped = lacking.stream().filter(lack -> lack.get(part.lacking())).count();
      alone.add(new ExtraPart(part.kind(), part.index(), best.size() + (int) helped));
    }
    List<ExtraPart> together = new Together(extras, lacking).added(best.size());
    return new Coverage(engines, best.size(), use, alone, together, ending);
  }

  private static void count(
      List<PartUse> use,
      PartKind kind,
      int size,
      List<ChoiceIndices> best,
      ToIntFunction<ChoiceIndices> index) {
    int[] engines = new int[size];
    best.forEach(pick -> engines[index.applyAsInt(pick)]++);
    for (int i = 0; i < size; i++) {
      use.add(new PartUse(kind, i, engines[i]));
    }
  }
}
