package dev.jetting.rules.tuning;

import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.calibration.Reading;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.units.Lambda;
import dev.jetting.units.ThrottleOpening;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * What a session has found: the readings that count, those that do not, and the signs. A reading
 * that contradicts its own repetition or disagrees with all the rest does not count, unless it was
 * repeated and no fault was found.
 */
final class Findings {

  /** From this number of standard deviations on, a reading disagrees (assumed). */
  private static final double DISAGREES = 3;

  /** A reading that contradicts itself so often is not settled by another one (assumed). */
  private static final int OFTEN_ENOUGH = 4;

  /** From this number on, the other readings make a sign of harm very unlikely (assumed). */
  private static final double UNLIKELY = 2.5;

  /** Made richer for harm so often, an opening is not made right by another jet (assumed). */
  private static final int HURT_FOR_GOOD = 2;

  /** Richer than when it was read by more than this in ln λ, an idle is unread (assumed). */
  private static final double STILL_IDLES = 0.08;

  /** The same where it was felt to be right, which says less (assumed). */
  private static final double STILL_FELT = 0.02;

  /** Leaner than when it was read by no more than this in ln λ, an opening is read (assumed). */
  static final double STILL_READ = 0.04;

  /** Air or fuel that changes ln λ by no more than this is the same (assumed). */
  private static final double SAME_AIR = 0.01;

  private final Tuner tuner;
  private final TuningSession session;
  private final Calibration proof;
  private final Calibration known;
  private final List<ReadingGroup> groups;
  private final Calibration all;
  private final List<ReadingGroup> odd;
  private final List<ReadingGroup> againstProof;
  private final Trail trail;
  private final List<Sign> signs;
  private final Calibration calibration;

  Findings(Tuner tuner, TuningSession session) {
    this.tuner = tuner;
    this.session = session;
    proof = AssessedSetting.known(session.now(), tuner.riskModel(), tuner.meanings());
    groups = groups(tuner, session);
    trail = new Trail(tuner, session);
    signs = trail.signs();
    List<ReadingGroup> settled = groups.stream().filter(ReadingGroup::isSettled).toList();
    all = proof.with(settled.stream().map(ReadingGroup::standing).toList());
    List<Reading> disagreeing = all.disagreeing(DISAGREES);
    againstProof = settled.stream().filter(this::contradictsProof).toList();
    odd =
        settled.stream()
            .filter(group -> disagreeing.contains(group.standing()) || againstProof.contains(group))
            .toList();
    known = isProofDoubted() ? session.now().riskModel(tuner.riskModel()).untried() : proof;
    calibration = isProofDoubted() || !odd.isEmpty() ? known.with(counting(settled)) : all;
  }

  private boolean contradictsProof(ReadingGroup group) {
    return !proof.readings().isEmpty()
        && !proof.with(List.of(group.standing())).disagreeing(DISAGREES).isEmpty();
  }

  private List<Reading> counting(List<ReadingGroup> settled) {
    return settled.stream().filter(this::counts).map(ReadingGroup::standing).toList();
  }

  private static List<ReadingGroup> groups(Tuner tuner, TuningSession session) {
    List<ReadingGroup> groups = new ArrayList<>();
    for (int i = 0; i < session.steps().size(); i++) {
      TuningStep step = session.steps().get(i);
      for (Observation observation : step.observations()) {
        Optional<Reading> read = reading(step.setup(), observation, tuner);
        if (read.isPresent()) {
          add(groups, observation, read.get(), i);
        }
      }
    }
    return groups;
  }

  private static void add(
      List<ReadingGroup> groups, Observation observation, Reading reading, int step) {
    for (int g = 0; g < groups.size(); g++) {
      if (groups.get(g).holds(observation, reading)) {
        groups.set(g, groups.get(g).with(observation, reading, step));
        return;
      }
    }
    groups.add(new ReadingGroup(List.of(observation), List.of(reading), step));
  }

  private static Optional<Reading> reading(Setup setup, Observation observation, Tuner tuner) {
    return observation
        .evidence()
        .reading(setup, observation.throttle(), observation.speed(), tuner.meanings());
  }

  /** What was observed, in order. */
  Trail trail() {
    return trail;
  }

  /** What the readings that count teach about the engine. */
  Calibration calibration() {
    return calibration;
  }

  /** What is known without any reading of the session: from a proven setup, while that counts. */
  Calibration known() {
    return known;
  }

  /**
   * Whether what is read now contradicts the proven setup and counts, so that the proof does not.
   */
  boolean isProofDoubted() {
    return againstProof.stream().anyMatch(this::counts);
  }

  /** How likely faults are, also by readings that were repeated and disagree with all the rest. */
  Hypotheses hypotheses() {
    List<Reading> weighed =
        groups.stream()
            .filter(group -> group.isSettled() && (group.isRepeated() || !odd.contains(group)))
            .map(ReadingGroup::standing)
            .toList();
    List<Set<Check>> checks = new ArrayList<>();
    checks.add(session.checks());
    session.steps().forEach(step -> checks.add(step.checks()));
    boolean whole = known.readings().size() + weighed.size() == all.readings().size();
    return new Hypotheses(
        tuner.riskModel(),
        whole ? all : known.with(weighed),
        checks,
        new IdleSigns(session)::likelierWith);
  }

  private boolean counts(ReadingGroup group) {
    return group.isSettled()
        && (!odd.contains(group) || (group.isRepeated() && isLookedInto(group)));
  }

  /** The readings on the setup as it is that are to be checked before anything else. */
  Optional<ReadingGroup> toReadAgain() {
    return groups.stream()
        .filter(this::isOnThisSetup)
        .filter(
            group ->
                (!group.isSettled() && !isJumping(group))
                    || (odd.contains(group) && !group.isRepeated()))
        .findFirst();
  }

  /** A reading that was repeated and still disagrees with all the rest, or with itself. */
  Optional<ReadingGroup> toLookInto() {
    return Stream.concat(
            groups.stream().filter(Findings::isJumping),
            odd.stream().filter(ReadingGroup::isRepeated))
        .filter(group -> isOnThisSetup(group) && !isLookedInto(group))
        .findFirst();
  }

  /** A reading that still contradicts itself although somebody looked for a fault. */
  Optional<ReadingGroup> unsettled() {
    return groups.stream()
        .filter(group -> isOnThisSetup(group) && isJumping(group) && isLookedInto(group))
        .findFirst();
  }

  private static boolean isJumping(ReadingGroup group) {
    return !group.isSettled() && group.readings().size() >= OFTEN_ENOUGH;
  }

  private boolean isOnThisSetup(ReadingGroup group) {
    return group.readings().get(0).setup().equals(session.last().setup());
  }

  /**
   * Whether a sign of harm is one that the rest holds for very unlikely, or that came back after
   * what it asked for was done, and nobody has looked why.
   */
  boolean isUnexplained(Sign sign) {
    List<Reading> unlikely = all.disagreeing(UNLIKELY);
    boolean again = isHurtAgain(sign);
    return groups.stream()
        .filter(group -> group.observations().contains(sign.observation()))
        .filter(group -> group.readings().get(0).setup().equals(sign.setup()))
        .filter(
            group ->
                again || !group.isSettled() || unlikely.contains(group.standing()) || wasFine(sign))
        .anyMatch(group -> !isLookedInto(group, faultsBehind(sign)));
  }

  /** Whether the opening was read, not lean, on a setup that is no richer there. */
  private boolean wasFine(Sign sign) {
    return trail
        .all()
        .takeWhile(seen -> !seen.observation().equals(sign.observation()))
        .filter(seen -> SignReader.isConclusive(seen.observation()))
        .filter(seen -> sign.isAt(Held.nearest(seen.observation().throttle())))
        .filter(seen -> !seen.isOverrun() && seen.sign().isEmpty())
        .filter(this::isTrusted)
        .anyMatch(seen -> sign.lnLambda(seen.setup()) >= sign.lnLambda(sign.setup()) - SAME_AIR);
  }

  /** The faults that may be behind a sign of harm: lean ones, whatever was expected there. */
  static List<Fault> faultsBehind(Sign sign) {
    return Fault.behindHarm(sign.observation().throttle());
  }

  /** Whether the engine was hurt at the same opening before, and what that asked for was done. */
  boolean isHurtAgain(Sign sign) {
    return timesAnswered(sign) > 0;
  }

  /** Whether harm came back at an opening that had been made richer for harm twice. */
  boolean isHurtForGood(Sign sign) {
    return timesAnswered(sign) >= HURT_FOR_GOOD;
  }

  /**
   * On how many settings the engine was hurt there before, all of them leaner by what was asked.
   */
  private long timesAnswered(Sign sign) {
    return signs.stream()
        .takeWhile(earlier -> !earlier.equals(sign))
        .filter(earlier -> earlier.kind() == Sign.Kind.STOP)
        .filter(earlier -> earlier.place() == sign.place())
        .filter(earlier -> !earlier.isOpen(sign.setup()))
        .map(earlier -> earlier.setup().setting())
        .distinct()
        .count();
  }

  /** The open signs of a mixture that is too rich, the latest of each opening, idle first. */
  List<Sign> openRich() {
    Map<Integer, Sign> latest = new TreeMap<>();
    open(Sign.Kind.RICH).forEach(sign -> latest.putIfAbsent(sign.place(), sign));
    return List.copyOf(latest.values());
  }

  /** The faults that would look like a reading. */
  List<Fault> faults(ReadingGroup group) {
    Reading reading = group.standing();
    MixtureModel model = MixtureModel.of(reading.setup());
    Lambda expected = calibrationWithout(group).on(model).expected(reading.throttle());
    return Fault.at(reading.throttle(), !expected.isMoreThan(reading.from()));
  }

  private Calibration calibrationWithout(ReadingGroup group) {
    return proof.with(
        groups.stream()
            .filter(other -> other.isSettled() && !odd.contains(other) && !other.equals(group))
            .map(ReadingGroup::standing)
            .toList());
  }

  private boolean isLookedInto(ReadingGroup group) {
    return isLookedInto(group, faults(group));
  }

  private boolean isLookedInto(ReadingGroup group, List<Fault> faults) {
    Set<Check> done = EnumSet.noneOf(Check.class);
    session.steps().stream().skip(group.step()).forEach(step -> done.addAll(step.checks()));
    return faults.stream().allMatch(fault -> done.contains(fault.settledBy()));
  }

  /** The signs of a kind that the setting as it is does not answer, the latest first. */
  List<Sign> open(Sign.Kind kind) {
    Setup now = session.last().setup();
    List<Sign> open = new ArrayList<>();
    for (Sign sign : signs) {
      if (sign.kind() == kind && sign.isOpen(now)) {
        open.add(0, sign);
      }
    }
    return open;
  }

  /**
   * Whether a setting answers every sign that asked for a richer mixture, and takes back nothing of
   * what the answer gave; where the opening was too rich since, what was asked is enough.
   */
  boolean keepsWhatWasAsked(Setting setting) {
    Setup to = session.last().setup().withSetting(setting);
    return signs.stream()
        .filter(Sign::isLean)
        .noneMatch(sign -> sign.isOpen(to) || takesBack(sign, to));
  }

  private boolean takesBack(Sign sign, Setup to) {
    if (trail.isRichSince(sign)) {
      return false;
    }
    return session.steps().stream()
        .map(TuningStep::setup)
        .dropWhile(setup -> !setup.equals(sign.setup()))
        .filter(setup -> !sign.isOpen(setup))
        .findFirst()
        .filter(given -> sign.lnLambda(to) - sign.lnLambda(given) > SAME_AIR)
        .isPresent();
  }

  /**
   * Whether the session was on a setting before, in air and with fuel in which it was as rich.
   * Going back to it is for who makes it richer: two readings that contradict each other would send
   * a rider to and fro for ever.
   */
  boolean wasLeft(Setting setting) {
    Setup there = session.last().setup().withSetting(setting);
    return session.steps().stream()
        .map(TuningStep::setup)
        .anyMatch(left -> left.setting().equals(setting) && isAsRich(left, there));
  }

  private static boolean isAsRich(Setup left, Setup there) {
    return left.equals(there) || Math.abs(lnLambdaAtFull(left) - lnLambdaAtFull(there)) <= SAME_AIR;
  }

  private static double lnLambdaAtFull(Setup setup) {
    return StrictMath.log(MixtureModel.of(setup).at(ThrottleOpening.FULL).lambda().value());
  }

  /** Whether the opening was read, not lean, on this setting or on one that is no richer there. */
  boolean isAnswered(ThrottleOpening held) {
    return latest(held).filter(this::stillHolds).isPresent();
  }

  /** Whether the overrun was tried, and not lean, with as little fuel as it has now. */
  boolean isOverrunAnswered() {
    return latestOverrun().filter(this::stillHolds).isPresent();
  }

  /** Whether an opening was read on the very setting that is in, in such air, with such fuel. */
  boolean isReadOnThisSetting(ThrottleOpening held) {
    Setup now = session.last().setup();
    return latest(held)
        .filter(read -> read.setup().setting().equals(now.setting()) && isAsRich(read.setup(), now))
        .isPresent();
  }

  /** By how much in ln λ an opening is leaner now than when it was read; empty where it was not. */
  OptionalDouble leanedSinceRead(ThrottleOpening held) {
    return latest(held).stream().mapToDouble(this::leanedSince).findFirst();
  }

  /** Whether something lean was seen at an opening, so that it has to be read once it is richer. */
  boolean wasLean(ThrottleOpening held) {
    return signs.stream().anyMatch(sign -> sign.isLean() && sign.isAt(held));
  }

  private boolean stillHolds(Sighting seen) {
    double leaned = leanedSince(seen);
    boolean idle = seen.observation().throttle().equals(ThrottleOpening.CLOSED);
    return !signs.contains(seen.sign().filter(Sign::isLean).orElse(null))
        && !isEndMadeLeaner(seen)
        && leaned <= stillRead(seen)
        && (!idle || seen.isOverrun() || leaned >= -STILL_IDLES);
  }

  /** The ends come first, a size at a time: each is read again as soon as it is leaner. */
  private boolean isEndMadeLeaner(Sighting seen) {
    boolean end =
        seen.observation().throttle().equals(ThrottleOpening.CLOSED)
            || seen.observation().throttle().equals(ThrottleOpening.FULL);
    return end
        && !seen.isOverrun()
        && seen.is(Sign.Kind.RICH)
        && seen.sign().filter(sign -> sign.isOpen(session.last().setup())).isEmpty();
  }

  /**
   * How much leaner in ln λ an opening may become and still count as read. That is a little, less
   * where it was felt to be right, and half of what it was too rich by all that was read.
   */
  double stillRead(ThrottleOpening held) {
    return latest(held).map(this::stillRead).orElse(STILL_READ);
  }

  private double stillRead(Sighting seen) {
    if (seen.isOverrun()) {
      return STILL_READ;
    }
    if (seen.observation().evidence() instanceof Evidence.Felt && !seen.is(Sign.Kind.RICH)) {
      return STILL_FELT;
    }
    ThrottleOpening at = seen.observation().throttle();
    double needed = seen.setup().engine().need().at(at).value();
    double then = calibration.on(MixtureModel.of(seen.setup())).expected(at).value();
    return Math.max(STILL_READ, StrictMath.log(needed / then) / 2);
  }

  private double leanedSince(Sighting seen) {
    return seen.lnLambda(session.last().setup()) - seen.lnLambda(seen.setup());
  }

  private Optional<Sighting> latest(ThrottleOpening held) {
    return trail
        .all()
        .filter(seen -> SignReader.isConclusive(seen.observation()))
        .filter(seen -> Held.nearest(seen.observation().throttle()).equals(held))
        .filter(this::isTrusted)
        .reduce((earlier, later) -> later);
  }

  private Optional<Sighting> latestOverrun() {
    return trail.all().filter(Sighting::isOverrun).reduce((earlier, later) -> later);
  }

  private boolean isTrusted(Sighting seen) {
    return groups.stream()
        .filter(group -> group.observations().contains(seen.observation()))
        .filter(group -> group.readings().get(0).setup().equals(seen.setup()))
        .allMatch(this::counts);
  }
}
