package dev.jetting.rules.tuning;

import com.google.common.collect.Sets;
import dev.jetting.core.mixture.Setup;
import dev.jetting.rules.SetupSheet;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;

/**
 * Tuning one engine: the sheet it began with and every step since. An immutable value; each change
 * gives a new one, and undoing is a change too.
 *
 * <p>An engine on which a fault was found and mended is another engine: begin a new session with
 * {@link #now()}.
 *
 * @param sheet the sheet it began with: how it is ridden, and the parts there are
 * @param checks what was looked at before the first test
 * @param steps the setups tried, the first being the sheet's own; 1 to 80, with at most 80
 *     observations together
 */
public record TuningSession(SetupSheet sheet, Set<Check> checks, List<TuningStep> steps) {

  /** What is learnt from observations costs as the cube of their number. */
  private static final int MOST_OBSERVATIONS = 80;

  private static final int MOST_STEPS = 80;

  /**
   * Checks the steps.
   *
   * @param sheet the sheet it began with: how it is ridden, and the parts there are
   * @param checks what was looked at before the first test
   * @param steps the setups tried, the first being the sheet's own; at least one
   * @throws IllegalArgumentException if there is none, the first is not of the sheet's setup, or
   *     there are more than 80 steps or observations
   */
  public TuningSession {
    Objects.requireNonNull(sheet, "sheet");
    checks = Sets.immutableEnumSet(checks);
    steps = List.copyOf(steps);
    if (steps.isEmpty() || !steps.get(0).setup().equals(sheet.setup())) {
      throw InvalidValueException.worded(
          Sentence.of("error.session-steps"), Sentence.of("error.session-steps.allowed"));
    }
    atMost(MOST_STEPS, steps.size(), "error.session-steps.count");
    atMost(
        MOST_OBSERVATIONS,
        steps.stream().mapToInt(step -> step.observations().size()).sum(),
        "error.session-observations.count");
    for (int i = 1; i < steps.size(); i++) {
      check(sheet, i, steps.get(i).setup());
    }
  }

  /** A step is assessed on the sheet, so its setup is one that the sheet could have. */
  private static void check(SetupSheet sheet, int step, Setup setup) {
    try {
      sheet.withSetup(setup);
    } catch (InvalidValueException e) {
      throw inStep("steps[" + step + "].setup", e);
    }
  }

  private static InvalidValueException inStep(String step, InvalidValueException e) {
    Sentence allowed = e.withoutField().part("allowed").orElse(Sentence.plain(e.allowed()));
    return e.field().isEmpty()
        ? InvalidValueException.worded(
            e.sentence().part("problem").orElse(Sentence.plain(e.problem())),
            step,
            e.value(),
            allowed)
        : InvalidValueException.at(step + "." + e.field(), e.value(), allowed);
  }

  private static void atMost(int most, int number, String key) {
    if (number > most) {
      throw InvalidValueException.worded(
          Sentence.of(key).with("count", number), Sentence.of("error.at-most").with("most", most));
    }
  }

  /**
   * A session that begins.
   *
   * @param sheet the sheet to begin with
   * @return the session, nothing seen yet
   */
  public static TuningSession beginning(SetupSheet sheet) {
    return new TuningSession(sheet, Set.of(), List.of(TuningStep.on(sheet.setup())));
  }

  /** {@return the sheet with the setup of the last step} */
  public SetupSheet now() {
    return sheet.withSetup(last().setup());
  }

  TuningStep last() {
    return steps.get(steps.size() - 1);
  }

  /**
   * This session with something seen on the setup as it is.
   *
   * @param observation what was seen
   * @return the longer session
   */
  public TuningSession observing(Observation observation) {
    List<Observation> observations = new ArrayList<>(last().observations());
    observations.add(observation);
    List<TuningStep> changed = new ArrayList<>(steps);
    changed.set(steps.size() - 1, last().with(observations));
    return new TuningSession(sheet, checks, changed);
  }

  /**
   * This session with things looked at, and no fault found. Before anything is observed they count
   * as the checks before the first test; later they count as looked at because of what was
   * observed.
   *
   * @param looked the checks that were done
   * @return the longer session
   */
  public TuningSession checking(Set<Check> looked) {
    if (steps.stream().allMatch(step -> step.observations().isEmpty())) {
      Set<Check> all = new TreeSet<>(checks);
      all.addAll(looked);
      return new TuningSession(sheet, all, steps);
    }
    List<TuningStep> changed = new ArrayList<>(steps);
    changed.set(steps.size() - 1, last().with(looked));
    return new TuningSession(sheet, checks, changed);
  }

  /**
   * This session on another setup: a part changed, or another day or fuel.
   *
   * @param setup the setup from now on
   * @return the longer session
   */
  public TuningSession changing(Setup setup) {
    List<TuningStep> longer = new ArrayList<>(steps);
    longer.add(TuningStep.on(setup));
    return new TuningSession(sheet, checks, longer);
  }

  /**
   * This session without its last entry: the last thing seen on the last setup, or the last change
   * of setup if nothing was seen since. Checks stay.
   *
   * @return the shorter session; this one if nothing was done yet
   */
  public TuningSession undone() {
    List<TuningStep> shorter = new ArrayList<>(steps.subList(0, steps.size() - 1));
    List<Observation> observations = last().observations();
    if (!observations.isEmpty()) {
      shorter.add(last().with(observations.subList(0, observations.size() - 1)));
    }
    return shorter.isEmpty() ? this : new TuningSession(sheet, checks, shorter);
  }
}
