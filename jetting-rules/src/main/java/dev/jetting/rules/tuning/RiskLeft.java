package dev.jetting.rules.tuning;

import dev.jetting.units.Probability;
import java.util.Objects;

/**
 * The lean risk that is left at the end of a session: the highest at any opening, on any day of the
 * sheet, with faults that are not ruled out.
 *
 * @param risk the risk
 * @param accepted the risk that the owner accepts
 */
public record RiskLeft(Probability risk, Probability accepted) {

  /**
   * Checks for nulls.
   *
   * @param risk the risk
   * @param accepted the risk that the owner accepts
   */
  public RiskLeft {
    Objects.requireNonNull(risk, "risk");
    Objects.requireNonNull(accepted, "accepted");
  }

  /** {@return whether no more is left than is accepted} */
  public boolean isAccepted() {
    return !risk.isMoreThan(accepted);
  }

  void checkAccepted(String what) {
    if (!isAccepted()) {
      throw new IllegalArgumentException(
          "lean risk left on "
              + what
              + " "
              + risk
              + ": allowed at most what is accepted, "
              + accepted);
    }
  }
}
