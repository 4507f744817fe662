package dev.jetting.rules.tuning;

import com.google.common.base.Suppliers;
import dev.jetting.core.calibration.Reading;
import dev.jetting.units.ThrottleOpening;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * What was observed in a session, in order, held against itself (common practice, no source).
 *
 * <ul>
 *   <li>A change that makes no difference means the wrong circuit, or a fault. After two of them a
 *       fault is looked for. Where the mixture was moved a great deal in vain, it goes no further:
 *       a lean engine is parked, a rich place is left rich.
 *   <li>A sign against what was seen there before, or a lean one between openings that are plainly
 *       rich, is read again before a part is touched. If it stays, a fault is looked for.
 *   <li>Idle, half and full throttle all on one side are the fuel level, the choke or the filter
 *       before they are six parts.
 * </ul>
 */
final class Trail {

  /** How many parts may act in vain before a fault is looked for (common practice, no source). */
  private static final int LOOK_AFTER = 2;

  /** Moved by so much in ln λ in vain, an opening is not made right by another part (assumed). */
  private static final double MOST_IN_VAIN = 0.10;

  /** A measured λ that moves by this share of what the model says answers a part (assumed). */
  private static final double ANSWERS = 0.5;

  /** A difference of ln λ that is none (assumed). */
  private static final double SAME = 0.01;

  /** A rich sign on a setup richer by so little takes back a lean one, in ln λ (assumed). */
  private static final double TAKES_BACK = 0.03;

  /** Richer by no more than this in ln λ no jet makes a lean engine too rich (assumed). */
  private static final double HARDLY_RICHER = 0.12;

  private static final List<ThrottleOpening> WHOLE_RANGE =
      List.of(ThrottleOpening.CLOSED, Held.HALF, ThrottleOpening.FULL);

  private final Tuner tuner;
  private final TuningSession session;
  private final List<Sighting> all = new ArrayList<>();

  /** Asked for by each setting that is tried, and worked out once. */
  private final Supplier<List<Sighting>> richForGood =
      Suppliers.memoize(
          () -> latest().filter(seen -> !seen.isLean()).filter(this::isForGood).toList());

  private final Supplier<List<Sighting>> brown =
      Suppliers.memoize(() -> latest().filter(seen -> shows(seen, PlugColour.BROWN)).toList());

  Trail(Tuner tuner, TuningSession session) {
    this.tuner = tuner;
    this.session = session;
    SignReader reader = new SignReader(tuner);
    for (int i = 0; i < session.steps().size(); i++) {
      TuningStep step = session.steps().get(i);
      for (Observation seen : step.observations()) {
        all.add(new Sighting(all.size(), i, step.setup(), seen, reader.sign(step.setup(), seen)));
      }
    }
  }

  Stream<Sighting> all() {
    return all.stream();
  }

  /** What was observed on the setup as it is. */
  private Stream<Sighting> now() {
    int last = session.steps().size() - 1;
    return all().filter(seen -> seen.step() == last);
  }

  /** The signs that stand, in the order in which they were seen. */
  List<Sign> signs() {
    return all().filter(seen -> !isTakenBack(seen)).flatMap(seen -> seen.sign().stream()).toList();
  }

  /**
   * Whether a sign without harm no longer stands. Read again on the same setup it did not show; or
   * a lean one is followed by a rich one there on a setup that is hardly richer; or a rich one is
   * denied by the last reading there.
   */
  private boolean isTakenBack(Sighting seen) {
    if (seen.sign().isEmpty() || seen.is(Sign.Kind.STOP)) {
      return false;
    }
    List<Sighting> later = after(seen);
    if (seen.is(Sign.Kind.RICH) && isDenied(seen, later)) {
      return true;
    }
    boolean notAgain =
        isAgainstTheRest(seen)
            && later.stream()
                .filter(seen::isRepeatedBy)
                .anyMatch(other -> other.isLean() != seen.isLean() || other.sign().isEmpty());
    return notAgain
        || (seen.isLean()
            && later.stream()
                .filter(other -> other.place() == seen.place() && other.is(Sign.Kind.RICH))
                .anyMatch(
                    other ->
                        seen.lnLambda(seen.setup()) - seen.lnLambda(other.setup()) <= TAKES_BACK));
  }

  /** Whether it was right there when it was read last. */
  private static boolean isDenied(Sighting seen, List<Sighting> later) {
    return later.stream()
        .filter(other -> other.place() == seen.place() && other.isConclusive())
        .reduce((a, b) -> b)
        .filter(last -> last.sign().isEmpty())
        .isPresent();
  }

  /** Harm where the engine was too rich on a setup that is hardly richer: it never was the jet. */
  Optional<Sighting> harmOfNoJet() {
    return all()
        .filter(seen -> seen.is(Sign.Kind.STOP))
        .filter(
            seen ->
                all()
                    .filter(other -> other.place() == seen.place() && other.is(Sign.Kind.RICH))
                    .anyMatch(
                        other ->
                            seen.lnLambda(seen.setup()) - seen.lnLambda(other.setup())
                                <= HARDLY_RICHER))
        .reduce((earlier, later) -> later);
  }

  private List<Sighting> after(Sighting seen) {
    return all.subList(seen.order() + 1, all.size());
  }

  private List<Sighting> before(Sighting seen) {
    return all.subList(0, seen.order());
  }

  /** A sign on the setup as it is that is against what was seen, and was seen once. */
  Optional<Sighting> toReadAgain() {
    return againstTheRest().filter(seen -> !isRepeated(seen)).findFirst();
  }

  /** The same, seen again, where nobody has looked why since. */
  Optional<Sighting> toLookInto() {
    return againstTheRest()
        .filter(this::isRepeated)
        .filter(seen -> !isLookedInto(faults(seen), seen.step()))
        .findFirst();
  }

  private Stream<Sighting> againstTheRest() {
    return now().filter(seen -> isAgainstTheRest(seen) && !isTakenBack(seen));
  }

  private boolean isRepeated(Sighting seen) {
    return all().filter(seen::isRepeatedBy).filter(other -> isAlike(seen, other)).count() > 1;
  }

  /** Whether both ask for the same; two that ask for nothing show the same colour. */
  private static boolean isAlike(Sighting a, Sighting b) {
    return a.sign().map(Sign::kind).equals(b.sign().map(Sign::kind))
        && (a.sign().isPresent() || a.observation().evidence().equals(b.observation().evidence()));
  }

  /** Not an idle or an overrun: those are asked again by what they answer. */
  private boolean isAgainstTheRest(Sighting seen) {
    boolean judged = seen.is(Sign.Kind.LEAN) || seen.is(Sign.Kind.RICH);
    boolean byItself = seen.observation().evidence() instanceof Evidence.Idle || seen.isOverrun();
    return judged && !byItself && (wasOtherwise(seen) || isBetweenRich(seen));
  }

  /** Whether it was otherwise there on a setup that is no better for it. */
  private boolean wasOtherwise(Sighting seen) {
    return before(seen).stream()
        .filter(other -> other.place() == seen.place() && other.isConclusive())
        .filter(other -> seen.isLean() ? !other.isLean() : other.sign().isEmpty())
        .anyMatch(
            other -> {
              double leaner = seen.lnLambda(other.setup()) - seen.lnLambda(seen.setup());
              return seen.isLean() ? leaner >= -SAME : leaner <= SAME;
            });
  }

  /** Whether a lean sign stands alone: the next openings that were read are too rich. */
  private boolean isBetweenRich(Sighting seen) {
    if (!seen.isLean()) {
      return false;
    }
    ThrottleOpening own = seen.observation().throttle();
    List<Sighting> sides = sides(before(seen), own);
    return !sides.isEmpty() && sides.stream().allMatch(other -> other.is(Sign.Kind.RICH));
  }

  /** Of some sightings the latest at the next opening to either side; one or none at the ends. */
  private static List<Sighting> sides(List<Sighting> some, ThrottleOpening own) {
    return Stream.of(nearest(some, own, false), nearest(some, own, true))
        .flatMap(Optional::stream)
        .toList();
  }

  /** Of some sightings the latest at the next opening above or below one. */
  private static Optional<Sighting> nearest(
      List<Sighting> some, ThrottleOpening own, boolean above) {
    Optional<Sighting> nearest = Optional.empty();
    double least = Double.MAX_VALUE;
    for (Sighting other : some) {
      double away = other.observation().throttle().share() - own.share();
      boolean side = above ? away > 0 : away < 0;
      if (side && other.isConclusive() && !other.isOverrun() && Math.abs(away) <= least) {
        least = Math.abs(away);
        nearest = Optional.of(other);
      }
    }
    return nearest;
  }

  /**
   * A sign on the setup as it is that came back after parts that act there had done what it asked
   * for, and nobody has looked why since.
   */
  Optional<Sighting> inVain() {
    return now().filter(this::isInVain).filter(seen -> !isLookedInto(seen)).findFirst();
  }

  /** A dark plug is right, unless it stays dark on much leaner parts. */
  private boolean isInVain(Sighting seen) {
    return chain(seen).size() > LOOK_AFTER
        && (seen.sign().isPresent() || moved(seen) >= MOST_IN_VAIN);
  }

  /** A lean one that was looked into, where the mixture was moved a great deal. */
  Optional<Sighting> leanForGood() {
    return now().filter(Sighting::isLean).filter(this::isForGood).findFirst();
  }

  /**
   * Where a rich sign, or a plug that stays dark, was looked into and the mixture was moved a great
   * deal: no part goes on to make that place leaner. The latest sighting of each.
   */
  List<Sighting> richForGood() {
    return richForGood.get();
  }

  /** The latest sighting of each place that is a brown plug. */
  List<Sighting> brown() {
    return brown.get();
  }

  private Stream<Sighting> latest() {
    Map<Integer, Sighting> latest = new TreeMap<>();
    all().filter(Sighting::isConclusive).forEach(seen -> latest.put(seen.place(), seen));
    return latest.values().stream();
  }

  private boolean isForGood(Sighting seen) {
    return chain(seen).size() > LOOK_AFTER && isLookedInto(seen) && moved(seen) >= MOST_IN_VAIN;
  }

  private boolean isLookedInto(Sighting seen) {
    List<Sighting> chain = chain(seen);
    return isLookedInto(faults(seen), chain.get(chain.size() - 1 - LOOK_AFTER).step());
  }

  private double moved(Sighting seen) {
    List<Sighting> chain = chain(seen);
    Sighting first = chain.get(chain.size() - 1);
    return Math.abs(seen.lnLambda(seen.setup()) - seen.lnLambda(first.setup()));
  }

  /**
   * A sign and those before it that it repeats although a part answered each, the latest first. A
   * rich idle makes no chain: it begins far on the rich side, and harms nothing.
   */
  private List<Sighting> chain(Sighting seen) {
    List<Sighting> chain = new ArrayList<>();
    boolean richIdle =
        seen.is(Sign.Kind.RICH) && seen.observation().throttle().equals(ThrottleOpening.CLOSED);
    boolean answersTheScrew = seen.observation().evidence() instanceof Evidence.Idle;
    boolean says = seen.sign().isPresent() || shows(seen, PlugColour.DARK);
    if (!says || seen.is(Sign.Kind.STOP) || richIdle || answersTheScrew) {
      return chain;
    }
    chain.add(seen);
    List<Sighting> before = before(seen);
    for (int i = before.size() - 1; i >= 0; i--) {
      Sighting earlier = before.get(i);
      Sighting later = chain.get(chain.size() - 1);
      if (earlier.place() != seen.place()
          || earlier.isRepeatedBy(later)
          || !earlier.isConclusive()) {
        continue;
      }
      if (!isAlike(earlier, seen)) {
        break;
      }
      if (isAnswered(earlier, later)) {
        if (hasMoved(earlier, later)) {
          break;
        }
        chain.add(earlier);
      }
    }
    return chain;
  }

  private static boolean shows(Sighting seen, PlugColour colour) {
    return seen.observation().evidence().equals(new Evidence.Colour(colour));
  }

  /** Whether a part has acted between two, the way that a sign or a dark plug asks for. */
  private static boolean isAnswered(Sighting earlier, Sighting later) {
    double leaner = later.lnLambda(later.setup()) - later.lnLambda(earlier.setup());
    return (later.isLean() ? -leaner : leaner) >= SAME;
  }

  /** Whether a measured mixture has moved as the model says that it should. */
  private boolean hasMoved(Sighting earlier, Sighting later) {
    Optional<Reading> was = measured(earlier);
    Optional<Reading> is = measured(later);
    if (was.isEmpty() || is.isEmpty()) {
      return false;
    }
    double expected = later.lnLambda(later.setup()) - later.lnLambda(earlier.setup());
    double read = StrictMath.log(is.get().from().value() / was.get().from().value());
    return read / expected >= ANSWERS;
  }

  private Optional<Reading> measured(Sighting seen) {
    Observation at = seen.observation();
    boolean measured =
        at.evidence() instanceof Evidence.Wideband
            || at.evidence() instanceof Evidence.ExhaustTemperature;
    return measured
        ? at.evidence().reading(seen.setup(), at.throttle(), at.speed(), tuner.meanings())
        : Optional.empty();
  }

  /**
   * Idle, half and full throttle on one side, where nobody has looked why since: all rich as they
   * were read last, or each lean at some time. It is the last of the first such sightings.
   */
  Optional<Sighting> wholeRange() {
    return Stream.of(wholeRange(false), wholeRange(true)).flatMap(Optional::stream).findFirst();
  }

  private Optional<Sighting> wholeRange(boolean lean) {
    List<Sighting> first = new ArrayList<>();
    for (ThrottleOpening held : WHOLE_RANGE) {
      List<Sighting> there = at(held);
      boolean isNow = lean || (!there.isEmpty() && there.get(there.size() - 1).is(Sign.Kind.RICH));
      there.stream()
          .filter(seen -> isNow && !isTakenBack(seen))
          .filter(seen -> lean ? seen.isLean() : seen.is(Sign.Kind.RICH))
          .findFirst()
          .ifPresent(first::add);
    }
    return first.size() < WHOLE_RANGE.size()
        ? Optional.empty()
        : first.stream()
            .max(Comparator.comparingInt(Sighting::order))
            .filter(seen -> !isLookedInto(overall(seen), seen.step()));
  }

  private List<Sighting> at(ThrottleOpening held) {
    int place = Held.MARKS.indexOf(held);
    return all().filter(seen -> seen.place() == place && seen.isConclusive()).toList();
  }

  /** Whether idle and full throttle are too rich as they were read last. */
  boolean areEndsRich() {
    return Stream.of(ThrottleOpening.CLOSED, ThrottleOpening.FULL).allMatch(this::isRich);
  }

  /** Whether an opening was too rich when it was read last. */
  boolean isRich(ThrottleOpening held) {
    List<Sighting> there = at(held);
    return !there.isEmpty() && there.get(there.size() - 1).is(Sign.Kind.RICH);
  }

  /** Whether the next openings to either side that were read were too rich when they were. */
  boolean isBetweenRich(ThrottleOpening held) {
    List<Sighting> sides = sides(all, held);
    return sides.size() == 2 && sides.stream().allMatch(other -> other.is(Sign.Kind.RICH));
  }

  /** Whether the opening of a sign was too rich at some time after it. */
  boolean isRichSince(Sign sign) {
    return all()
        .dropWhile(seen -> seen.sign().filter(sign::equals).isEmpty())
        .anyMatch(seen -> seen.place() == sign.place() && seen.is(Sign.Kind.RICH));
  }

  /** Harm that parts have answered, after which nobody has looked why. */
  Optional<Sighting> harmNotLookedInto() {
    return all()
        .filter(seen -> seen.is(Sign.Kind.STOP))
        .filter(seen -> !isLookedInto(faults(seen), seen.step()))
        .reduce((earlier, later) -> later);
  }

  /** The faults that look like it at its opening. */
  static List<Fault> faults(Sighting seen) {
    ThrottleOpening at = seen.observation().throttle();
    return seen.is(Sign.Kind.STOP) ? Fault.behindHarm(at) : Fault.at(at, seen.isLean());
  }

  /** The faults that look like it at every opening. */
  static List<Fault> overall(Sighting seen) {
    return Fault.at(Held.HALF, seen.isLean()).stream()
        .filter(Fault.at(ThrottleOpening.CLOSED, seen.isLean())::contains)
        .filter(Fault.at(ThrottleOpening.FULL, seen.isLean())::contains)
        .toList();
  }

  private boolean isLookedInto(List<Fault> faults, int since) {
    Set<Check> done = EnumSet.noneOf(Check.class);
    session.steps().stream().skip(since).forEach(step -> done.addAll(step.checks()));
    return faults.stream().allMatch(fault -> done.contains(fault.settledBy()));
  }
}
