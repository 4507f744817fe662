package dev.jetting.rules.tuning;

import dev.jetting.core.calibration.Reading;
import java.util.ArrayList;
import java.util.List;

/**
 * The readings of one kind at one opening of one setup. However often it was repeated, they are one
 * reading; two that contradict each other are none, until the last two agree.
 *
 * @param observations what was observed, in order; at least one
 * @param readings what each amounts to
 * @param step the index of the step of the last
 */
record ReadingGroup(List<Observation> observations, List<Reading> readings, int step) {

  /**
   * Two readings further apart than this number of their deviations contradict each other
   * (assumed).
   */
  private static final double CONTRADICT = 2;

  ReadingGroup {
    observations = List.copyOf(observations);
    readings = List.copyOf(readings);
  }

  boolean holds(Observation observation, Reading reading) {
    Observation own = observations.get(0);
    return own.evidence().getClass().equals(observation.evidence().getClass())
        && own.throttle().equals(observation.throttle())
        && readings.get(0).setup().equals(reading.setup());
  }

  ReadingGroup with(Observation observation, Reading reading, int at) {
    List<Observation> more = new ArrayList<>(observations);
    List<Reading> all = new ArrayList<>(readings);
    more.add(observation);
    all.add(reading);
    return new ReadingGroup(more, all, at);
  }

  Observation last() {
    return observations.get(observations.size() - 1);
  }

  boolean isRepeated() {
    return observations.size() > 1;
  }

  /** Whether it counts as a reading: a single one, or one on which the last two agree. */
  boolean isSettled() {
    return !isRepeated() || agree(readings.get(readings.size() - 2), lastReading());
  }

  /** The leaner of the last two. */
  Reading standing() {
    Reading last = lastReading();
    if (!isRepeated()) {
      return last;
    }
    Reading before = readings.get(readings.size() - 2);
    return before.from().isMoreThan(last.from()) ? before : last;
  }

  private Reading lastReading() {
    return readings.get(readings.size() - 1);
  }

  private static boolean agree(Reading a, Reading b) {
    double gap =
        Math.max(
            StrictMath.log(a.from().value() / b.to().value()),
            StrictMath.log(b.from().value() / a.to().value()));
    double deviation = Math.sqrt(a.deviation() * a.deviation() + b.deviation() * b.deviation());
    return gap <= CONTRADICT * deviation;
  }
}
