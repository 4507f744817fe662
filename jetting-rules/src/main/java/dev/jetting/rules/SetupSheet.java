package dev.jetting.rules;

import dev.jetting.core.mixture.Setup;
import dev.jetting.rules.risk.Riding;
import java.util.Objects;

/**
 * What a tuner writes down about one machine: the setup, how it is ridden, and the parts there are.
 *
 * @param title a line for people
 * @param setup engine, setting, air and fuel
 * @param riding what the owner rides and what he accepts
 * @param parts the parts that the rider owns or can buy
 */
public record SetupSheet(String title, Setup setup, Riding riding, PartsAtHand parts) {

  /**
   * Checks for nulls.
   *
   * @param title a line for people
   * @param setup engine, setting, air and fuel
   * @param riding what the owner rides and what he accepts
   * @param parts the parts that the rider owns or can buy
   */
  public SetupSheet {
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(setup, "setup");
    Objects.requireNonNull(riding, "riding");
    Objects.requireNonNull(parts, "parts");
  }

  /**
   * This sheet with another setup.
   *
   * @param other the setup
   * @return the changed sheet
   */
  public SetupSheet withSetup(Setup other) {
    return new SetupSheet(title, other, riding, parts);
  }
}
