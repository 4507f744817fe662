package dev.jetting.rules.laws;

import dev.jetting.core.mixture.CustomarySteps;
import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.laws.PartChange.Way;
import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A setup sheet on which laws are tried, and a change of a part to try on it.
 *
 * @param sheet the sheet
 * @param change the change; empty leaves out the laws that need one
 */
public record Trial(SetupSheet sheet, Optional<PartChange> change) {

  /**
   * Checks for nulls.
   *
   * @param sheet the sheet
   * @param change the change; empty leaves out the laws that need one
   */
  public Trial {
    Objects.requireNonNull(sheet, "sheet");
    Objects.requireNonNull(change, "change");
  }

  /**
   * A trial without a change.
   *
   * @param sheet the sheet
   * @return the trial
   */
  public static Trial of(SetupSheet sheet) {
    return new Trial(sheet, Optional.empty());
  }

  /**
   * A trial with a change.
   *
   * @param sheet the sheet
   * @param change the change
   * @return the trial
   */
  public static Trial of(SetupSheet sheet, PartChange change) {
    return new Trial(sheet, Optional.of(change));
  }

  /**
   * Trials of every part, each one step richer and one step leaner.
   *
   * @param sheet the sheet
   * @param steps the step of each part
   * @return the trials, in the order of the parts
   */
  public static Stream<Trial> eachPart(SetupSheet sheet, CustomarySteps steps) {
    return Arrays.stream(MeteringPart.values())
        .flatMap(
            part ->
                Arrays.stream(Way.values())
                    .map(way -> of(sheet, PartChange.customary(part, way, steps))));
  }
}
