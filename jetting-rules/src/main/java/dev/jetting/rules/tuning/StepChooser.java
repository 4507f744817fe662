package dev.jetting.rules.tuning;

import com.google.common.base.Suppliers;
import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.mixture.CustomarySteps;
import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.RankedFinding;
import dev.jetting.rules.Report;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.units.ThrottleOpening;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Chooses the next step of a session, by the order and the refusals of the trade.
 *
 * <ol>
 *   <li>After a sign that the engine is being hurt, nothing but what makes that opening richer.
 *       Where the engine was read there and was not lean, a fault is looked for first. Where harm
 *       comes back a third time, the session ends.
 *   <li>Harm that is answered asks to look why, before the next ride.
 *   <li>The checks of the trade, once.
 *   <li>An idle that races, does not answer to the screw or wants more than it has, and an engine
 *       that runs on, ask to look for a fault. What is still there afterwards ends the session.
 *   <li>A reading that does not fit is taken again; one that still does not fit, or a fault that is
 *       more likely than none, asks to look for it. One that goes on contradicting itself ends the
 *       session.
 *   <li>A sign against what was seen there before, or between openings that are too rich, is read
 *       again, and looked into if it stays. So is one that two parts have not changed, and a whole
 *       range on one side.
 *   <li>A lean sign makes its opening richer; a setting that is not accepted is made safer.
 *   <li>Before each ride: no danger that the rulebook finds and no reading answers. Before an end:
 *       none at all.
 *   <li>A step towards lean for full throttle, once idle and full throttle were read: the main jet
 *       comes before the openings below it.
 *   <li>The test that is due.
 *   <li>A step towards lean, by one size, on a setting that was read, once every mark that it takes
 *       towards lean was read.
 *   <li>A mark at which a fault that is not ruled out, or a swing between the openings that were
 *       read, leaves more risk than is accepted.
 *   <li>Richer, where such a fault still leaves more than is accepted.
 *   <li>Full throttle on the final setting, which ends the session. No search for a nearer setting
 *       starts from that reading, which would have to be confirmed in its turn.
 * </ol>
 */
final class StepChooser {

  /** From this probability on a fault is looked for (assumed: more likely than none). */
  private static final double LIKELY = 0.5;

  /** A fault less likely than this is not named (assumed). */
  private static final double WORTH_NAMING = 0.05;

  /** How often a test is asked for whose answers say too little (assumed). */
  private static final int OFTEN_ENOUGH = 3;

  /** The most that a reservation names. */
  private static final int MOST_NAMED = 3;

  private final Tuner tuner;
  private final TuningSession session;
  private final SetupSheet now;
  private final Findings findings;
  private final Calibration calibration;
  private final Supplier<Hypotheses> hypotheses;
  private final Supplier<Boolean> feltFirst;
  private final TestPlan tests;
  private final ChangeChooser changes;
  private final SignedChange signed;

  StepChooser(Tuner tuner, TuningSession session) {
    this.tuner = tuner;
    this.session = session;
    now = session.now();
    findings = new Findings(tuner, session);
    calibration = findings.calibration();
    hypotheses = Suppliers.memoize(findings::hypotheses);
    tests = new TestPlan(tuner, session, findings);
    changes = new ChangeChooser(now, tuner.riskModel(), calibration);
    signed = new SignedChange(now, changes.scorer(), findings);
    feltFirst = Suppliers.memoize(this::isFeltFirst);
  }

  /**
   * Whether what speaks against the setting is at small openings alone, and idle and an eighth were
   * not felt yet. They are felt first, without load: that says more than the model does.
   */
  private boolean isFeltFirst() {
    boolean felt = findings.isAnswered(ThrottleOpening.CLOSED) && findings.isAnswered(Held.EIGHTH);
    return !felt
        && !changes.accepts()
        && changes.scorer().isAcceptedFrom(FeltFirst.FROM_HERE_SAFE, now.setup().setting());
  }

  NextStep next() {
    return Stream.<Supplier<Optional<NextStep>>>of(
            this::stopped,
            this::afterHarm,
            this::checks,
            this::idle,
            this::reading,
            this::againstTheRest,
            this::inVain,
            this::wholeRange,
            this::fault,
            this::lean,
            this::unsafe,
            this::refused,
            this::richAtFull,
            this::test,
            this::rich,
            this::overrun,
            this::nearer,
            this::unsettled,
            this::suspected,
            this::confirming)
        .flatMap(part -> part.get().stream())
        .findFirst()
        .orElseGet(this::end);
  }

  private Optional<NextStep> stopped() {
    return findings.open(Sign.Kind.STOP).stream().findFirst().map(this::stopped);
  }

  private NextStep stopped(Sign sign) {
    List<Fault> behind = Findings.faultsBehind(sign);
    if (findings.isUnexplained(sign)) {
      NextStep.LookForFault.Why why =
          findings.isHurtAgain(sign)
              ? NextStep.LookForFault.Why.CAME_BACK
              : NextStep.LookForFault.Why.MISFIT;
      return look(sign.observation(), why, behind);
    }
    return findings.isHurtForGood(sign)
        ? new NextStep.FaultLeft(sign.observation(), behind)
        : richer(sign, change -> new NextStep.MakeRicher(sign, change));
  }

  /** Harm is answered: before another ride somebody looks why. */
  private Optional<NextStep> afterHarm() {
    return look(findings.trail().harmNotLookedInto(), NextStep.LookForFault.Why.HARM);
  }

  /** A sign against what was seen before, or beside it, is read again before a part is touched. */
  private Optional<NextStep> againstTheRest() {
    return findings
        .trail()
        .toReadAgain()
        .map(Sighting::observation)
        .<NextStep>map(seen -> new NextStep.CheckReading(seen, tests.again(seen)))
        .or(() -> look(findings.trail().toLookInto(), NextStep.LookForFault.Why.MISFIT));
  }

  /** A change that makes no difference means the wrong circuit, or a fault. */
  private Optional<NextStep> inVain() {
    return look(findings.trail().inVain(), NextStep.LookForFault.Why.NO_DIFFERENCE)
        .or(() -> findings.trail().leanForGood().map(StepChooser::faultLeft));
  }

  private static NextStep faultLeft(Sighting seen) {
    return new NextStep.FaultLeft(seen.observation(), Trail.faults(seen));
  }

  private Optional<NextStep> wholeRange() {
    return findings
        .trail()
        .wholeRange()
        .map(
            seen ->
                look(
                    seen.observation(),
                    NextStep.LookForFault.Why.WHOLE_RANGE,
                    Trail.overall(seen)));
  }

  private static Optional<NextStep> look(
      Optional<Sighting> sighting, NextStep.LookForFault.Why why) {
    return sighting.map(seen -> look(seen.observation(), why, Trail.faults(seen)));
  }

  private Optional<NextStep> lean() {
    return findings.open(Sign.Kind.LEAN).stream()
        .findFirst()
        .map(sign -> richer(sign, change -> new NextStep.Change(change, Optional.of(sign))));
  }

  private NextStep richer(Sign sign, Function<NextChange, NextStep> step) {
    return signed
        .richer(sign)
        .map(to -> step.apply(changes.change(to, NextChange.Reason.SIGN)))
        .orElseGet(
            () ->
                new NextStep.NotToBeRidden(
                    Optional.of(sign),
                    Optional.empty(),
                    findings.isHurtAgain(sign) ? Findings.faultsBehind(sign) : List.of(),
                    Shopping.richer(now, TradeOrder.at(sign), steps())));
  }

  private CustomarySteps steps() {
    return tuner.riskModel().steps();
  }

  private Optional<NextStep> checks() {
    Set<Check> done = checked();
    List<Check> open = Arrays.stream(Check.values()).filter(c -> !done.contains(c)).toList();
    return open.isEmpty() ? Optional.empty() : Optional.of(new NextStep.TickOff(open));
  }

  private Set<Check> checked() {
    Set<Check> done = checkedSinceTheFirstTest();
    done.addAll(session.checks());
    return done;
  }

  private Set<Check> checkedSinceTheFirstTest() {
    Set<Check> done = EnumSet.noneOf(Check.class);
    session.steps().forEach(step -> done.addAll(step.checks()));
    return done;
  }

  /** What an idle shows that no jet is the first cause of. */
  private Optional<NextStep> idle() {
    IdleSigns idles = new IdleSigns(session);
    return idles
        .toLookInto()
        .<NextStep>map(seen -> look(seen, NextStep.LookForFault.Why.IDLE, IdleSigns.faults(seen)))
        .or(
            () ->
                idles
                    .stillThere()
                    .map(seen -> new NextStep.FaultLeft(seen, IdleSigns.faults(seen))));
  }

  private static NextStep look(
      Observation seen, NextStep.LookForFault.Why why, List<Fault> faults) {
    return new NextStep.LookForFault(seen, why, faults);
  }

  private Optional<NextStep> reading() {
    return findings
        .toReadAgain()
        .<NextStep>map(group -> new NextStep.CheckReading(group.last(), tests.again(group.last())))
        .or(
            () ->
                findings
                    .toLookInto()
                    .map(
                        group ->
                            look(
                                group.last(),
                                NextStep.LookForFault.Why.MISFIT,
                                findings.faults(group))))
        .or(
            () ->
                findings
                    .unsettled()
                    .map(group -> new NextStep.FaultLeft(group.last(), findings.faults(group))));
  }

  /** A fault that is more likely than none, by the readings as a whole. */
  private Optional<NextStep> fault() {
    if (!isRead() || hypotheses.get().anyFault() <= LIKELY) {
      return Optional.empty();
    }
    List<Fault> likely = hypotheses.get().likely(WORTH_NAMING);
    Set<Check> looked = checkedSinceTheFirstTest();
    return likely.stream().allMatch(fault -> looked.contains(fault.settledBy()))
        ? Optional.empty()
        : Optional.of(look(lastObservation(), NextStep.LookForFault.Why.TOGETHER, likely));
  }

  private Observation lastObservation() {
    List<Observation> all = session.last().observations();
    return all.get(all.size() - 1);
  }

  private Optional<NextStep> unsettled() {
    return tests.beforeTheEnd(hypotheses.get()).map(test -> new NextStep.Ride(test, false));
  }

  /** A fault that was looked for and not found, and may be there: richer is safe either way. */
  private Optional<NextStep> suspected() {
    return hypotheses.get().leaveAccepted(now)
        ? Optional.empty()
        : signed
            .richer(hypotheses.get())
            .map(to -> changes.change(to, NextChange.Reason.SUSPICION))
            .map(change -> new NextStep.Change(change, Optional.empty()));
  }

  private Optional<NextStep> unsafe() {
    if (changes.accepts() || feltFirst.get()) {
      return Optional.empty();
    }
    Predicate<Setting> richer = to -> changes.scorer().leansAtMost(SignedChange.NO_LEANER, to);
    Optional<NextStep> safer =
        changes
            .safer(richer.and(changes.scorer()::runs))
            .or(() -> changes.safer(richer))
            .map(change -> new NextStep.Change(change, Optional.empty()));
    return safer.isPresent() || changes.scorer().isAcceptedOnTheLevel(now.setup().setting())
        ? safer
        : Optional.of(notAccepted());
  }

  /** Before anything is ridden: what the rulebook refuses, and no reading answers. */
  private Optional<NextStep> refused() {
    List<RankedFinding> dangers = dangers(now);
    if (dangers.isEmpty()) {
      return Optional.empty();
    }
    Set<String> unread =
        dangers(now, findings.known()).stream()
            .map(RankedFinding::ruleId)
            .collect(Collectors.toSet());
    return dangers.stream().noneMatch(danger -> unread.contains(danger.ruleId()))
        ? Optional.empty()
        : Optional.of(settling(dangers));
  }

  /** A part at hand that settles the dangers that the rulebook finds, or else the end. */
  private Optional<NextStep> inDanger() {
    List<RankedFinding> dangers = dangers(now);
    return dangers.isEmpty() ? Optional.empty() : Optional.of(settling(dangers));
  }

  private NextStep settling(List<RankedFinding> dangers) {
    return changes
        .richer(to -> dangers(now.withSetup(now.setup().withSetting(to))).isEmpty())
        .<NextStep>map(change -> new NextStep.Change(change, Optional.empty()))
        .orElseGet(() -> new NextStep.Refused(dangers));
  }

  private List<RankedFinding> dangers(SetupSheet sheet) {
    return dangers(sheet, calibration);
  }

  private List<RankedFinding> dangers(SetupSheet sheet, Calibration learnt) {
    AssessedSetting assessed = AssessedSetting.of(sheet, tuner.riskModel(), learnt);
    Report report = tuner.rulebook().evaluate(assessed.within(judged()));
    return report.findings().stream()
        .filter(found -> report.verdict().dangers().contains(found.ruleId()))
        .toList();
  }

  private ThrottleBand judged() {
    return feltFirst.get()
        ? new ThrottleBand(FeltFirst.FROM_HERE_SAFE, ThrottleOpening.FULL)
        : ThrottleBand.WHOLE;
  }

  private NextStep notAccepted() {
    RiskPoint worst = changes.scorer().worst(now.setup().setting());
    Optional<ThrottleOpening> where =
        worst.riddenRisk().isMoreThan(now.riding().acceptedRisk())
            ? Optional.of(worst.mixture().throttle())
            : Optional.empty();
    List<MeteringPart> order = where.map(TradeOrder::at).orElse(TradeOrder.OVERRUN);
    return new NextStep.NotToBeRidden(
        Optional.empty(), where, List.of(), Shopping.richer(now, order, steps()));
  }

  private Optional<NextStep> test() {
    return tests
        .due(feltFirst.get())
        .map(test -> unread(test).orElse(new NextStep.Ride(test, false)));
  }

  /** The end where a test was answered so often by what says too little. */
  private Optional<NextStep> unread(NextTest test) {
    List<Observation> seen = session.last().observations();
    List<Observation> last = seen.subList(Math.max(0, seen.size() - OFTEN_ENOUGH), seen.size());
    boolean proofless =
        last.stream()
            .allMatch(
                answer ->
                    answer.throttle().equals(test.throttle())
                        && !(answer.evidence() instanceof Evidence.Overrun)
                        && !SignReader.isConclusive(answer));
    return proofless && last.size() == OFTEN_ENOUGH
        ? Optional.of(new NextStep.Unread(last.get(last.size() - 1)))
        : Optional.empty();
  }

  /** The overrun comes after the idle is as lean as signs ask for. */
  private Optional<NextStep> overrun() {
    return tests.overrun().map(test -> new NextStep.Ride(test, false));
  }

  /**
   * Full throttle before the openings below it, because the main jet has a say in all of them.
   * Where the idle is too rich as well, half throttle shows first whether it is the whole range.
   */
  private Optional<NextStep> richAtFull() {
    boolean read =
        findings.isAnswered(ThrottleOpening.CLOSED) && findings.isAnswered(ThrottleOpening.FULL);
    boolean whole = findings.trail().areEndsRich() && !findings.isAnswered(Held.HALF);
    return read && !whole ? rich(sign -> sign.isAt(ThrottleOpening.FULL)) : Optional.empty();
  }

  private Optional<NextStep> rich() {
    return rich(sign -> true);
  }

  private Optional<NextStep> rich(Predicate<Sign> which) {
    return isRead()
        ? findings.openRich().stream()
            .filter(which)
            .flatMap(sign -> leaner(sign).stream())
            .findFirst()
        : Optional.empty();
  }

  private Optional<NextStep> leaner(Sign sign) {
    return signed
        .leaner(sign, this::keepsRoom)
        .map(to -> changes.change(to, NextChange.Reason.SIGN))
        .flatMap(change -> towardsLean(change, Optional.of(sign)));
  }

  /** What looks rich may be taken for more than it is: it asks for no more than the model would. */
  private boolean keepsRoom(Setting to) {
    return changes.scorer().keepsInHand(to, ChangeChooser.SHARE_FOR_NEARER)
        && tests.keepsUnreadable(to);
  }

  private Optional<NextStep> nearer() {
    if (!isRead() || wasConfirming()) {
      return Optional.empty();
    }
    LeanStep step = new LeanStep(now, changes.scorer(), findings);
    return changes
        .nearer(to -> step.allows(to) && step.keepsWhatIsBrown(to) && tests.keepsUnreadable(to))
        .flatMap(change -> towardsLean(change, Optional.empty()));
  }

  /**
   * A step towards lean, unless a fault that is not ruled out forbids it; before it, the marks that
   * it takes towards lean are read.
   */
  private Optional<NextStep> towardsLean(NextChange change, Optional<Sign> because) {
    SetupSheet then = now.withSetup(now.setup().withSetting(change.setting()));
    boolean accepted =
        because.isPresent() ? hypotheses.get().leaveAccepted(then) : hypotheses.get().accept(then);
    if (!accepted || findings.trail().harmOfNoJet().isPresent() || !dangers(then).isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        tests
            .beforeLeaning(change.setting())
            .<NextStep>map(test -> new NextStep.Ride(test, false))
            .orElseGet(() -> new NextStep.Change(change, because)));
  }

  /** No step towards lean without a reading since the last change. */
  private boolean isRead() {
    return !session.last().observations().isEmpty();
  }

  /** Whether the last reading was the one that was to confirm the setting, at full throttle. */
  private boolean wasConfirming() {
    return lastObservation().throttle().equals(ThrottleOpening.FULL)
        && new StepChooser(tuner, session.undone()).next() instanceof NextStep.Ride ride
        && ride.confirming();
  }

  private Optional<NextStep> confirming() {
    return tests.confirming().map(test -> new NextStep.Ride(test, true));
  }

  private NextStep end() {
    return findings
        .trail()
        .harmOfNoJet()
        .map(StepChooser::faultLeft)
        .or(this::inDanger)
        .orElseGet(this::endWithoutDanger);
  }

  private NextStep endWithoutDanger() {
    RiskLeft left = hypotheses.get().riskLeft(now);
    if (!left.isAccepted()) {
      return new NextStep.Reserved(
          left,
          hypotheses.get().acceptOnTheLevel(now)
              ? List.of()
              : hypotheses.get().likely(0).subList(0, MOST_NAMED));
    }
    List<Sign> rich = findings.openRich();
    return rich.isEmpty() ? new NextStep.Confirmed(left) : new NextStep.LeftRich(rich, left);
  }
}
