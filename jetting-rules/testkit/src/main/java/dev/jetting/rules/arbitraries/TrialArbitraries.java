package dev.jetting.rules.arbitraries;

import static net.jqwik.api.Combinators.combine;

import dev.jetting.core.mixture.CustomarySteps;
import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.laws.LawKit;
import dev.jetting.rules.laws.PartChange;
import dev.jetting.rules.laws.PartChange.Way;
import dev.jetting.rules.laws.Trial;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;

/**
 * Random part changes, and random trials for a {@link LawKit}.
 *
 * <p>jqwik shrinks a falsified list of trials by its own lights; the kit has made its
 * counterexample plain by then. Switch jqwik's shrinking off with {@code shrinking =
 * ShrinkingMode.OFF}.
 */
public final class TrialArbitraries {

  private TrialArbitraries() {}

  /** {@return changes of any part either way, by a tenth of its customary step to three of them} */
  public static Arbitrary<PartChange> partChanges() {
    return combine(
            Arbitraries.of(MeteringPart.class),
            Arbitraries.of(Way.class),
            Arbitraries.of(0.1, 0.25, 0.5, 1.0, 1.5, 2.0, 3.0))
        .as(
            (part, way, steps) -> {
              double step = steps * CustomarySteps.assumed().of(part);
              return new PartChange(part, way, part == MeteringPart.CLIP ? Math.ceil(step) : step);
            })
        .withoutEdgeCases();
  }

  /** {@return trials on random sheets, each with a random part change} */
  public static Arbitrary<Trial> trials() {
    return trials(SheetArbitraries.sheets());
  }

  /**
   * Trials on sheets of the caller's own choice, each with a random part change.
   *
   * @param sheets the sheets
   * @return the trials
   */
  public static Arbitrary<Trial> trials(Arbitrary<SetupSheet> sheets) {
    return combine(sheets, partChanges()).as((sheet, change) -> Trial.of(sheet, change));
  }
}
