package dev.jetting.rules.json;

import dev.jetting.rules.FindingChange;
import dev.jetting.rules.ReportDifference;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** What two reports differ in, in JSON. */
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

  ReportDifference difference() {
    Set<ReportDifference.Side> each = EnumSet.noneOf(ReportDifference.Side.class);
    each.addAll(sides);
    return new ReportDifference(each, changes, passedBefore, passesAfter);
  }
}
