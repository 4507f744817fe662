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

/** Draws engines, looks for the best setting of each, and counts what they have in common. */
final class EngineCount {

  private EngineCount() {}

  /** What was found for one engine: its best setting, or what would make one right. */
  private record Fit(@Nullable ChoiceIndices best, BitSet lacking) {}

  static Coverage of(SetupSheet sheet, Extras extras, RiskModel riskModel, int engines, Run run) {
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
