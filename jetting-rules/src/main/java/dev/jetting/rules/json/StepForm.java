package dev.jetting.rules.json;

import com.google.common.collect.Sets;
import dev.jetting.core.mixture.Setup;
import dev.jetting.rules.tuning.Check;
import dev.jetting.rules.tuning.Observation;
import dev.jetting.rules.tuning.TuningStep;
import java.util.List;
import java.util.Optional;

/**
 * A step of a tuning session in JSON.
 *
 * @param setup engine, setting, air and fuel of that run
 * @param observations what was observed, in order
 * @param checks what was looked into because of it, without finding a fault; left out where nothing
 *     was
 */
record StepForm(Setup setup, List<Observation> observations, Optional<List<Check>> checks) {

  static StepForm of(TuningStep step) {
    return new StepForm(
        step.setup(),
        step.observations(),
        Optional.of(List.copyOf(step.checks())).filter(checks -> !checks.isEmpty()));
  }

  TuningStep step() {
    return new TuningStep(setup, observations, Sets.immutableEnumSet(checks.orElse(List.of())));
  }
}
