package dev.jetting.rules.json;

import dev.jetting.rules.FindingChange;
import dev.jetting.rules.ReportDifference;
import dev.jetting.rules.ReportDifference.VerdictChange;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * What two reports differ in, in JSON.
 *
 * @param passedBefore whether the report before passed
 * @param passesAfter whether the report after passes
 */
record DifferenceForm(
    List<ReportDifference.Side> sides,
    List<FindingChange> changes,
    boolean passedBefore,
    boolean passesAfter) {

  static DifferenceForm of(ReportDifference difference) {
    return new DifferenceForm(
        List.copyOf(difference.sides()),
        difference.changes(),
        difference.passedBefore(),
        difference.passesAfter());
  }

  private VerdictChange verdict() {
    if (passesAfter) {
      return passedBefore ? VerdictChange.PASSES_STILL : VerdictChange.PASSES_NOW;
    }
    return passedBefore ? VerdictChange.FAILS_NOW : VerdictChange.FAILS_STILL;
  }

  ReportDifference difference() {
    Set<ReportDifference.Side> each = EnumSet.noneOf(ReportDifference.Side.class);
    each.addAll(sides);
    return new ReportDifference(each, changes, verdict());
  }
}
