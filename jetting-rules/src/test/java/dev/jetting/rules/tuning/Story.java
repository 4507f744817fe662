package dev.jetting.rules.tuning;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;

/**
 * A session led to its end, with every step of it, the last being the end.
 *
 * @param session the session as it is then
 * @param steps what was asked for
 */
record Story(TuningSession session, List<NextStep> steps) {

  private static final int MANY = 80;

  /** Leads a session by what a rider reads. */
  static Story of(
      Tuner tuner, TuningSession begun, BiFunction<TuningSession, NextTest, Evidence> rider) {
    TuningSession session = begun;
    List<NextStep> steps = new ArrayList<>(List.of(tuner.next(session)));
    while (!steps.get(steps.size() - 1).isEnd() && steps.size() < MANY) {
      session = Sessions.take(session, steps.get(steps.size() - 1), rider);
      steps.add(tuner.next(session));
    }
    return new Story(session, List.copyOf(steps));
  }

  NextStep end() {
    return steps.get(steps.size() - 1);
  }

  <T> List<T> all(Class<T> kind) {
    return steps.stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  long tests() {
    return steps.stream().flatMap(step -> Sessions.test(step).stream()).count();
  }
}
