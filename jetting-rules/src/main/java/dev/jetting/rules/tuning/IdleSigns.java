package dev.jetting.rules.tuning;

import com.google.common.collect.ImmutableMap;
import com.google.common.collect.Maps;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What idles have shown that no jet is the first cause of: which faults to look for, and how much
 * likelier those are by it.
 *
 * <p>That a sign was not seen is no evidence: many riders do not notice.
 */
final class IdleSigns {

  /**
   * How much likelier a sign is on an engine with a fault than on a sound one (assumed; not
   * measured). With an air leak that reaches the idle one engine in two is seen to race; of sound
   * ones one in a hundred is, by mistake. How likely a leak is where the screw's range does not
   * reach is left to the mixture that it says.
   */
  private static final Map<IdleAnswer, Map<Fault, Double>> LIKELIER =
      Maps.immutableEnumMap(
          Map.of(
              IdleAnswer.BEYOND_RICH, likelier(Fault.AIR_LEAK, 1, Fault.PILOT_BLOCKED, 1),
              IdleAnswer.UNMOVED, likelier(Fault.PILOT_BLOCKED, 25, Fault.AIR_LEAK, 10),
              IdleAnswer.RACES, ImmutableMap.of(Fault.AIR_LEAK, 50.0),
              IdleAnswer.RUNS_ON, likelier(Fault.AIR_LEAK, 10, Fault.PLUG_TOO_HOT, 10)));

  private final TuningSession session;

  IdleSigns(TuningSession session) {
    this.session = session;
  }

  private static Map<Fault, Double> likelier(Fault one, double by, Fault other, double byOther) {
    return ImmutableMap.of(one, by, other, byOther);
  }

  /** A sign that nobody has looked into since. */
  Optional<Observation> toLookInto() {
    return seen().filter(seen -> !isLookedInto(answer(seen))).findFirst();
  }

  /** What is no matter of the mixture, was looked into, and shows again. */
  Optional<Observation> stillThere() {
    return seen()
        .filter(seen -> answer(seen).isPresent())
        .reduce((earlier, later) -> later)
        .filter(seen -> answer(seen).filter(this::isStillThere).isPresent());
  }

  private boolean isStillThere(IdleAnswer answer) {
    long times = seen().filter(seen -> answer(seen).equals(Optional.of(answer))).count();
    return !answer.isOfMixture() && times > 1 && isLookedInto(Optional.of(answer));
  }

  private Stream<Observation> seen() {
    return session.steps().stream().flatMap(step -> step.observations().stream());
  }

  /** The faults that show so, the likeliest first; none for what is no sign of any. */
  static List<Fault> faults(Observation seen) {
    return List.copyOf(answer(seen).map(IdleSigns::likelier).orElse(Map.of()).keySet());
  }

  private static Optional<IdleAnswer> answer(Observation seen) {
    return seen.evidence() instanceof Evidence.Idle idle
        ? Optional.of(idle.answer())
        : Optional.empty();
  }

  private static Map<Fault, Double> likelier(IdleAnswer answer) {
    return LIKELIER.getOrDefault(answer, Map.of());
  }

  private boolean isLookedInto(Optional<IdleAnswer> answer) {
    return answer.filter(sign -> !checksSince(sign).containsAll(settling(sign))).isEmpty();
  }

  private static Set<Check> settling(IdleAnswer sign) {
    Set<Check> settling = EnumSet.noneOf(Check.class);
    likelier(sign).keySet().forEach(fault -> settling.add(fault.settledBy()));
    return settling;
  }

  private Set<Check> checksSince(IdleAnswer sign) {
    Set<Check> done = EnumSet.noneOf(Check.class);
    session.steps().stream()
        .dropWhile(step -> !shows(step, sign))
        .forEach(step -> done.addAll(step.checks()));
    return done;
  }

  private static boolean shows(TuningStep step, IdleAnswer sign) {
    return step.observations().stream().anyMatch(seen -> answer(seen).equals(Optional.of(sign)));
  }

  /** How much likelier all of the signs are with a fault than without. */
  double likelierWith(Fault fault) {
    double by = 1;
    for (IdleAnswer sign : LIKELIER.keySet()) {
      double once = likelier(sign).getOrDefault(fault, 1.0);
      by *= once == 1 ? 1 : StrictMath.pow(once, witnesses(sign, fault.settledBy()));
    }
    return by;
  }

  /** Seen again is the same witness, until somebody has looked and it is still there. */
  private int witnesses(IdleAnswer sign, Check settling) {
    int looked = 0;
    Set<Integer> after = new HashSet<>();
    for (TuningStep step : session.steps()) {
      if (shows(step, sign)) {
        after.add(looked);
      }
      looked += step.checks().contains(settling) ? 1 : 0;
    }
    return after.size();
  }
}
