package dev.jetting.core.engine;

import dev.jetting.core.checks.Checks;
import dev.jetting.core.parts.Coefficient;

/**
 * How the inlet of a crankcase-scavenged engine breathes: what the pulsation does to the signal at
 * the carburettor.
 *
 * <p>The inlet is open for a part φ(u) = 1 − (1−φ₁) u of the cycle and blows back a share β(u) = β₁
 * u of the charge, u the lift of the slide by the bore. Blown-back air passes the carburettor three
 * times and takes fuel each time, so an engine that blows back much is richer on the same jets.
 *
 * @param id plain name of the kind of induction and its state of tune
 * @param openShare φ₁, share of the cycle in which the inlet is open at full lift, 0.1 to 1
 * @param blowback β₁, share of the charge blown back at full lift, 0 to 0.5
 */
public record Induction(String id, Coefficient openShare, Coefficient blowback) {

  /**
   * Checks the coefficients.
   *
   * @param id plain name of the kind of induction and its state of tune
   * @param openShare φ₁, share of the cycle in which the inlet is open at full lift, 0.1 to 1
   * @param blowback β₁, share of the charge blown back at full lift, 0 to 0.5
   * @throws IllegalArgumentException if a text is blank, too long or not one line of visible
   *     characters or a coefficient is out of range
   */
  public Induction {
    Checks.id("induction", id);
    Checks.within("open share of induction " + id, openShare.value(), 0.1, 1);
    Checks.within("blowback of induction " + id, blowback.value(), 0, 0.5);
  }

  /**
   * A mild engine as this project assumes it: a good deal of blowback at the power peak.
   *
   * @return the assumed coefficients, φ₁ 0.5 and β₁ 0.15
   */
  public static Induction assumedMild() {
    return new Induction(
        "mild",
        Coefficient.assumed(0.5, "1", "inlet open for about half a turn"),
        Coefficient.assumed(0.15, "1", "a mild inlet is out of tune at its peak; not measured"));
  }

  /**
   * A tuned engine as this project assumes it: an inlet tuned to its peak hardly blows back there.
   *
   * @return the assumed coefficients, φ₁ 0.5 and β₁ 0.05
   */
  public static Induction assumedTuned() {
    return new Induction(
        "tuned",
        Coefficient.assumed(0.5, "1", "inlet open for about half a turn"),
        Coefficient.assumed(0.05, "1", "an inlet tuned to its peak; not measured"));
  }
}
