package dev.jetting.examples.shopcounter.store;

import dev.jetting.core.typical.MachineValue;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.tuning.TuningSession;
import java.time.Instant;
import java.util.Set;

/**
 * One machine of one visitor.
 *
 * @param id what its address contains
 * @param name what the visitor calls it
 * @param sheet the setting that is on the machine now
 * @param session what was tried and seen since the session began
 * @param changed when it was last changed
 */
public record Machine(
    String id, String name, SetupSheet sheet, TuningSession session, Instant changed) {

  /** {@return the day of the last change by the shop's clock} */
  public String day() {
    return WallClock.day(changed);
  }

  /** {@return the values that are typical and not stated} */
  public Set<MachineValue> typical() {
    return sheet.typical();
  }

  /**
   * A machine that nobody keeps.
   *
   * @param sheet the setting that is on it
   * @return the machine
   */
  public static Machine passing(SetupSheet sheet) {
    return new Machine("", sheet.title(), sheet, TuningSession.beginning(sheet), Instant.EPOCH);
  }
}
