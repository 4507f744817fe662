package dev.jetting.rules;

import java.util.Objects;
import java.util.Optional;

/**
 * What a change of the rules does to one sheet of a stream.
 *
 * @param number number of the sheet in the stream, from 1
 * @param title title of the sheet; empty if it could not be read
 * @param difference what the two reports differ in; empty if there is a problem
 * @param problem why the sheet could not be read or assessed; empty if it was
 */
public record SheetImpact(
    long number, String title, Optional<ReportDifference> difference, String problem) {

  /**
   * Checks for nulls.
   *
   * @param number number of the sheet in the stream, from 1
   * @param title title of the sheet
   * @param difference what the two reports differ in
   * @param problem why the sheet could not be read or assessed
   */
  public SheetImpact {
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(difference, "difference");
    Objects.requireNonNull(problem, "problem");
  }

  /** {@return whether the sheet was read and its report differs} */
  public boolean differs() {
    return difference.filter(each -> !each.isNone()).isPresent();
  }

  /** {@return number and title, then the difference or the problem} */
  @Override
  public String toString() {
    return "sheet "
        + number
        + (title.isEmpty() ? "" : ", " + title)
        + ": "
        + difference.map(ReportDifference::toString).orElse(problem);
  }
}
