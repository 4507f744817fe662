package dev.jetting.rules.tuning;

import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.MixturePoint;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.units.Lambda;
import dev.jetting.units.ThrottleOpening;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Collectors;

/** Sessions led along. */
final class Sessions {

  private Sessions() {}

  /** A session with all checks done. */
  static TuningSession begin(SetupSheet sheet) {
    return TuningSession.beginning(sheet).checking(Set.of(Check.values()));
  }

  static Optional<NextTest> test(NextStep step) {
    if (step instanceof NextStep.Ride ride) {
      return Optional.of(ride.test());
    }
    return step instanceof NextStep.CheckReading again
        ? Optional.of(again.test())
        : Optional.empty();
  }

  static Optional<NextChange> change(NextStep step) {
    if (step instanceof NextStep.MakeRicher richer) {
      return Optional.of(richer.change());
    }
    return step instanceof NextStep.Change next ? Optional.of(next.change()) : Optional.empty();
  }

  /** The session after a step that is no end, with what a rider reads. */
  static TuningSession take(
      TuningSession session, NextStep step, BiFunction<TuningSession, NextTest, Evidence> reading) {
    if (step instanceof NextStep.TickOff first) {
      return session.checking(Set.copyOf(first.checks()));
    }
    if (step instanceof NextStep.LookForFault look) {
      return session.checking(
          look.faults().stream().map(Fault::settledBy).collect(Collectors.toSet()));
    }
    Optional<NextTest> test = test(step);
    if (test.isPresent()) {
      return session.observing(
          new Observation(
              test.get().throttle(), test.get().speed(), reading.apply(session, test.get())));
    }
    Setting setting = change(step).orElseThrow().setting();
    return session.changing(session.now().setup().withSetting(setting));
  }

  /** What is read on an engine that is by so much in ln λ leaner than the model says. */
  static Evidence read(TuningSession session, NextTest test, double leaner) {
    MixturePoint point = MixtureModel.of(session.now().setup()).at(test.throttle(), test.speed());
    double lambda = point.lambda().value() * StrictMath.exp(leaner);
    double need = session.now().setup().engine().need().at(test.throttle()).value();
    if (test.kind() == NextTest.Kind.RUN_DOWN) {
      return new Evidence.Overrun(RunDown.CLEAN);
    }
    return switch (test.instrument()) {
      case WIDEBAND, EXHAUST_THERMOMETER ->
          new Evidence.Wideband(Lambda.of(Math.min(Math.max(lambda, 0.4), 2)));
      case FEEL -> new Evidence.Felt(felt(test.throttle(), lambda / need));
      case PLUG -> new Evidence.Colour(colour(lambda / need));
    };
  }

  private static Symptom felt(ThrottleOpening throttle, double byNeed) {
    if (byNeed > 1.08) {
      return throttle.equals(ThrottleOpening.CLOSED) ? Symptom.HANGS : Symptom.HESITATES;
    }
    return byNeed < 0.84 ? Symptom.STUMBLES : Symptom.CLEAN;
  }

  private static PlugColour colour(double byNeed) {
    for (PlugColour colour : PlugColour.values()) {
      if (byNeed >= Meanings.assumed().of(colour).from()) {
        return colour;
      }
    }
    return PlugColour.BLACK;
  }

  /** How much leaner one setting is than another at an opening, in ln λ by the model. */
  static double leaner(SetupSheet sheet, Setting from, Setting to, ThrottleOpening throttle) {
    return StrictMath.log(lambda(sheet, to, throttle) / lambda(sheet, from, throttle));
  }

  private static double lambda(SetupSheet sheet, Setting setting, ThrottleOpening throttle) {
    return MixtureModel.of(sheet.setup().withSetting(setting)).at(throttle).lambda().value();
  }
}
