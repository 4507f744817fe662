package dev.jetting.rules.tuning;

import dev.jetting.units.EngineSpeed;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import dev.jetting.units.TradeStyle;
import dev.jetting.units.number.Decimals;
import java.util.ArrayList;
import java.util.List;

/**
 * Which throttle opening to test next, and with what.
 *
 * @param throttle throttle opening to hold
 * @param speed engine speed there on the road
 * @param instrument what to read with
 * @param risk lean risk there as it stands
 * @param taught by how much the reading is expected to lessen what is open: the sum of risk times
 *     (1 − risk) over the openings, so that 0.25 is one even chance; of the day of the sheet for
 *     which it is most
 */
public record NextTest(
    ThrottleOpening throttle,
    EngineSpeed speed,
    Instrument instrument,
    Probability risk,
    double taught) {

  /** How to do a plug chop. */
  public static final List<String> HOW_TO =
      List.of(
          "Off public roads, engine warm, a new plug of the right heat range in, tools and gloves at"
              + " hand.",
          "Ride with the clutch covered: a lean seizure can lock the wheel. If the engine rattles,"
              + " slows or feels suddenly crisp, pull the clutch and stop the test.",
          "Hold the throttle opening steady for some ten seconds under load; mark it on the grip.",
          "Pull the clutch and cut the ignition at that very opening, then roll out: no closed"
              + " throttle against the engine, no idling home.",
          "Let plug and exhaust cool, or use gloves; read the insulator deep down, not its tip.",
          "Change one thing, from the rich side, and do it again.");

  /** How to read an instrument that tells while the engine runs. */
  private static final List<String> HOW_TO_HOLD =
      List.of(
          "Off public roads, engine and instrument warm.",
          HOW_TO.get(1),
          "Hold the throttle opening steady under load until the reading has settled, ten seconds at"
              + " most; mark it on the grip.",
          "Then pull the clutch before closing the throttle: no closed throttle against the engine.",
          HOW_TO.get(5));

  /**
   * How to do this test.
   *
   * @return the steps and cautions, in order
   */
  public List<String> howTo() {
    List<String> steps = new ArrayList<>();
    steps.add(
        "The test: "
            + TradeStyle.throttle(throttle)
            + " at about "
            + Decimals.fixed(speed.rpm(), 0)
            + " rpm.");
    if (instrument == Instrument.PLUG && throttle.equals(ThrottleOpening.CLOSED)) {
      steps.add(
          "Idle a warm engine for a minute instead of holding it under load; a plug tells little"
              + " there: heed whether revolutions hang or the engine fires every other turn.");
    }
    steps.addAll(instrument == Instrument.PLUG ? HOW_TO : HOW_TO_HOLD);
    return List.copyOf(steps);
  }
}
