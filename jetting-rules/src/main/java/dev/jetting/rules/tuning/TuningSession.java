package dev.jetting.rules.tuning;

import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.calibration.Reading;
import dev.jetting.core.mixture.Setup;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.units.TradeStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Tuning one engine: the sheet it began with and every step since. An immutable value; each change
 * gives a new one, and undoing is a change too.
 *
 * @param sheet the sheet it began with: how it is ridden, and the parts there are
 * @param steps the setups tried, the first being the sheet's own; at least one
 */
public record TuningSession(SetupSheet sheet, List<TuningStep> steps) {

  /** From so many standard deviations on a reading disagrees (assumed). */
  private static final double DISAGREES = 3;

  /**
   * Checks the steps.
   *
   * @param sheet the sheet it began with: how it is ridden, and the parts there are
   * @param steps the setups tried, the first being the sheet's own; at least one
   * @throws IllegalArgumentException if there is none or the first is not of the sheet's setup
   */
  public TuningSession {
    Objects.requireNonNull(sheet, "sheet");
    steps = List.copyOf(steps);
    if (steps.isEmpty() || !steps.get(0).setup().equals(sheet.setup())) {
      throw new IllegalArgumentException(
          "steps of a tuning session: allowed at least one, the first on the setup of its sheet");
    }
  }

  /**
   * A session that begins.
   *
   * @param sheet the sheet to begin with
   * @return the session, nothing seen yet
   */
  public static TuningSession beginning(SetupSheet sheet) {
    return new TuningSession(sheet, List.of(new TuningStep(sheet.setup(), List.of())));
  }

  /** {@return the sheet with the setup of the last step} */
  public SetupSheet now() {
    return sheet.withSetup(last().setup());
  }

  private TuningStep last() {
    return steps.get(steps.size() - 1);
  }

  /**
   * This session with something seen on the setup as it is.
   *
   * @param look what was seen
   * @return the longer session
   */
  public TuningSession seeing(Look look) {
    List<Look> looks = new ArrayList<>(last().looks());
    looks.add(look);
    List<TuningStep> changed = new ArrayList<>(steps);
    changed.set(steps.size() - 1, new TuningStep(last().setup(), looks));
    return new TuningSession(sheet, changed);
  }

  /**
   * This session on another setup: a part changed, or another day or fuel.
   *
   * @param setup the setup from now on
   * @return the longer session
   */
  public TuningSession changing(Setup setup) {
    List<TuningStep> longer = new ArrayList<>(steps);
    longer.add(new TuningStep(setup, List.of()));
    return new TuningSession(sheet, longer);
  }

  /**
   * This session without its last entry: the last thing seen on the last setup, or the last change
   * of setup if nothing was seen since.
   *
   * @return the shorter session; this one if nothing was done yet
   */
  public TuningSession undone() {
    List<TuningStep> shorter = new ArrayList<>(steps.subList(0, steps.size() - 1));
    List<Look> looks = last().looks();
    if (!looks.isEmpty()) {
      shorter.add(new TuningStep(last().setup(), looks.subList(0, looks.size() - 1)));
    }
    return shorter.isEmpty() ? this : new TuningSession(sheet, shorter);
  }

  /**
   * What all that was seen has taught about the engine.
   *
   * @param riskModel how far an untried engine may differ
   * @param meanings what colours and symptoms mean
   * @return the calibration
   */
  public Calibration calibration(RiskModel riskModel, Meanings meanings) {
    List<Reading> readings = new ArrayList<>();
    steps.forEach(step -> readings.addAll(step.readings(meanings)));
    return riskModel.untried().with(readings);
  }

  /**
   * Whether the setting that is in may be ridden, as far as is known.
   *
   * @param riskModel limits, spreads and steps
   * @param meanings what colours and symptoms mean
   * @return true if on each of the days its lean risk is within what is accepted, and its overrun
   *     not too lean; never a promise
   */
  public boolean isSafe(RiskModel riskModel, Meanings meanings) {
    return NextChange.isSafe(now(), riskModel, calibration(riskModel, meanings));
  }

  /** Whether something seen on the setup as it is agrees with the rest. */
  boolean isConfirmed(RiskModel riskModel, Meanings meanings) {
    List<Reading> odd = calibration(riskModel, meanings).disagreeing(DISAGREES);
    return last().readings(meanings).stream().anyMatch(reading -> !odd.contains(reading));
  }

  /**
   * The setting as it is, assessed with all that was seen.
   *
   * @param riskModel limits, spreads and steps
   * @param meanings what colours and symptoms mean
   * @return the assessed setting
   */
  public AssessedSetting assessed(RiskModel riskModel, Meanings meanings) {
    return AssessedSetting.of(now(), riskModel, calibration(riskModel, meanings));
  }

  /**
   * What to be wary of in what was seen: a crisp engine, which is no proof of a good mixture; a
   * plug that was white and an engine that pinged, which ask to stop; a measured λ that disagrees
   * with all the rest by more than three standard deviations.
   *
   * @param riskModel how far an untried engine may differ
   * @param meanings what colours and symptoms mean
   * @return a sentence each, in the order they were seen, disagreeing readings last; none if all is
   *     well
   */
  public List<String> warnings(RiskModel riskModel, Meanings meanings) {
    List<String> warnings = new ArrayList<>();
    for (TuningStep step : steps) {
      for (Look look : step.looks()) {
        warning(look.seen())
            .ifPresent(w -> warnings.add("At " + TradeStyle.throttle(look.throttle()) + ": " + w));
      }
    }
    for (Reading odd : calibration(riskModel, meanings).disagreeing(DISAGREES)) {
      warnings.add(
          TradeStyle.lambda(odd.from())
              + " read at "
              + TradeStyle.throttle(odd.throttle())
              + " disagrees with all the rest: look for an air leak, a blocked passage or a sensor"
              + " gone wrong before any part is changed.");
    }
    return warnings;
  }

  private static Optional<String> warning(Seen seen) {
    if (seen.equals(new Seen.Felt(Symptom.CRISP))) {
      return Optional.of(
          "crisp is no proof of a good mixture: the last step before too lean feels best. Read the"
              + " plug before going leaner.");
    }
    if (seen.equals(new Seen.Felt(Symptom.PINGS))) {
      return Optional.of("an engine that pings is being hurt. Stop and go richer.");
    }
    return seen.equals(new Seen.Colour(PlugColour.WHITE))
        ? Optional.of("a white plug is far too lean. Stop and go richer.")
        : Optional.empty();
  }
}
