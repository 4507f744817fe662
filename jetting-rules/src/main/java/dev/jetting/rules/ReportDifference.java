package dev.jetting.rules;

import static java.util.stream.Collectors.joining;

import com.google.common.collect.ImmutableSet;
import dev.jetting.rules.FindingChange.Kind;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.rules.text.Wording;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What two reports differ in: which side changed, and which findings are new, worse, better or
 * gone.
 *
 * @param sides what changed between the reports; empty if they rest on the same
 * @param changes the findings that differ: new, worse, better, gone; in each the most dangerous
 *     first
 * @param verdict whether the report passes now, and whether it did
 */
public record ReportDifference(
    Set<Side> sides, List<FindingChange> changes, VerdictChange verdict) {

  /** A share may move by this much without being reported: the rounding of a calculation. */
  private static final double ROUNDING = 1e-9;

  /** What a report rests on. */
  public enum Side {
    /** The setup sheet. */
    SHEET,
    /** The rules: another digest, or another name or version. */
    RULEBOOK,
    /** The mixture model: another name or version. */
    MODEL,
    /** The limits, spreads and other numbers that were assumed. */
    LIMITS,
    /** What was read of the engine: sheet, model and limits are the same and the mixture is not. */
    READINGS,
    /** The waivers, or the day by which they are judged. */
    WAIVERS
  }

  /** Whether a report passes, and whether the one before did. */
  public enum VerdictChange {
    /** Both pass. */
    PASSES_STILL,
    /** Neither passes. */
    FAILS_STILL,
    /** The report after passes, that before did not. */
    PASSES_NOW,
    /** The report before passed, that after does not. */
    FAILS_NOW;

    private static VerdictChange of(Report before, Report after) {
      boolean same = before.passes() == after.passes();
      if (after.passes()) {
        return same ? PASSES_STILL : PASSES_NOW;
      }
      return same ? FAILS_STILL : FAILS_NOW;
    }

    /** {@return whether both reports have the same answer} */
    public boolean isSame() {
      return this == PASSES_STILL || this == FAILS_STILL;
    }
  }

  /**
   * Copies the sets.
   *
   * @param sides what changed between the reports
   * @param changes the findings that differ
   * @param verdict whether the report passes now, and whether it did
   */
  public ReportDifference {
    sides = ImmutableSet.copyOf(sides.stream().sorted().toList());
    changes = List.copyOf(changes);
    Objects.requireNonNull(verdict, "verdict");
  }

  /**
   * Compares two reports whose rules have the same ids.
   *
   * @param before the report before
   * @param after the report after
   * @return what they differ in
   */
  public static ReportDifference between(Report before, Report after) {
    return between(before, after, Rulebook.of("none", "1", List.of()));
  }

  /**
   * Compares two reports. Findings are matched by rule, subject and throttle band.
   *
   * @param before the report before
   * @param after the report after
   * @param renamed a rulebook that knows the former ids of its rules
   * @return what they differ in
   */
  public static ReportDifference between(Report before, Report after, Rulebook renamed) {
    Objects.requireNonNull(renamed, "renamed");
    Map<String, String> ids = new HashMap<>();
    Stream.of(before, after)
        .flatMap(report -> report.findings().stream())
        .forEach(found -> ids.computeIfAbsent(found.ruleId(), id -> id(id, renamed)));
    Map<Subject, List<RankedFinding>> left = new HashMap<>();
    for (RankedFinding was : before.findings()) {
      left.computeIfAbsent(Subject.of(was, ids), subject -> new ArrayList<>()).add(was);
    }
    Set<RankedFinding> matched = Collections.newSetFromMap(new IdentityHashMap<>());
    List<FindingChange> changes = new ArrayList<>();
    for (RankedFinding now : after.findings()) {
      List<RankedFinding> alike = left.getOrDefault(Subject.of(now, ids), List.of());
      Optional<RankedFinding> was = match(now, alike);
      was.ifPresent(
          found -> {
            alike.remove(found);
            matched.add(found);
          });
      kind(was, now).ifPresent(kind -> changes.add(change(kind, was, Optional.of(now), ids)));
    }
    before.findings().stream()
        .filter(was -> !matched.contains(was))
        .forEach(was -> changes.add(change(Kind.GONE, Optional.of(was), Optional.empty(), ids)));
    changes.sort(Comparator.comparing(FindingChange::kind));
    return new ReportDifference(sides(before, after), changes, VerdictChange.of(before, after));
  }

  /** What a finding is on: the rule, by its present id, and the subject. */
  private record Subject(String ruleId, String subject) {
    static Subject of(RankedFinding ranked, Map<String, String> ids) {
      return new Subject(
          ids.getOrDefault(ranked.ruleId(), ranked.ruleId()), ranked.finding().subject());
    }
  }

  private static FindingChange change(
      Kind kind,
      Optional<RankedFinding> was,
      Optional<RankedFinding> now,
      Map<String, String> ids) {
    Subject on = Subject.of(now.or(() -> was).orElseThrow(), ids);
    return new FindingChange(kind, on.ruleId(), on.subject(), was, now);
  }

  private static String id(String ruleId, Rulebook renamed) {
    return renamed.rule(ruleId).map(Rule::id).orElse(ruleId);
  }

  /** The finding, of those of the same rule on the same subject, whose band has most in common. */
  private static Optional<RankedFinding> match(RankedFinding now, List<RankedFinding> alike) {
    Optional<RankedFinding> best = Optional.empty();
    double widest = -1;
    for (RankedFinding was : alike) {
      double width = common(was.finding().band(), now.finding().band());
      if (width >= 0 && width > widest) {
        best = Optional.of(was);
        widest = width;
      }
    }
    return best;
  }

  /** The share of the throttle range that two bands have in common; below 0 if they are apart. */
  private static double common(ThrottleBand a, ThrottleBand b) {
    return Math.min(a.to().share(), b.to().share()) - Math.max(a.from().share(), b.from().share());
  }

  private static Optional<Kind> kind(Optional<RankedFinding> was, RankedFinding now) {
    if (was.isEmpty()) {
      return Optional.of(Kind.NEW);
    }
    int severity = now.severity().compareTo(was.get().severity());
    boolean waived = now.waiver().isPresent();
    boolean wasWaived = was.get().waiver().isPresent();
    double moved = now.finding().excess() - was.get().finding().excess();
    int worse = severity != 0 ? severity : waived != wasWaived ? (waived ? -1 : 1) : sign(moved);
    return worse == 0 ? Optional.empty() : Optional.of(worse > 0 ? Kind.WORSE : Kind.BETTER);
  }

  private static int sign(double moved) {
    return Math.abs(moved) <= ROUNDING ? 0 : moved > 0 ? 1 : -1;
  }

  private static Set<Side> sides(Report before, Report after) {
    ImmutableSet.Builder<Side> sides = ImmutableSet.builder();
    if (!before.sheet().equals(after.sheet())) {
      sides.add(Side.SHEET);
    }
    if (!before.rulebook().equals(after.rulebook())) {
      sides.add(Side.RULEBOOK);
    }
    if (!before.model().equals(after.model())) {
      sides.add(Side.MODEL);
    }
    if (!before.assumptions().equals(after.assumptions())
        || !before.overrunLimit().equals(after.overrunLimit())) {
      sides.add(Side.LIMITS);
    }
    if (before.sheet().equals(after.sheet())
        && before.model().equals(after.model())
        && before.assumptions().equals(after.assumptions())
        && !mixture(before).equals(mixture(after))) {
      sides.add(Side.READINGS);
    }
    if (!waivers(before).equals(waivers(after))) {
      sides.add(Side.WAIVERS);
    }
    return sides.build();
  }

  private static List<Object> mixture(Report report) {
    return List.of(report.profile(), report.coldestDay(), report.hottestDay(), report.overrun());
  }

  /** All that were given, and the day where there are any. */
  private static Map<Waiver, Optional<LocalDate>> waivers(Report report) {
    Map<Waiver, Optional<LocalDate>> all = new HashMap<>();
    Stream.concat(
            report.findings().stream().flatMap(finding -> finding.waiver().stream()),
            report.unusedWaivers().stream().map(UnusedWaiver::waiver))
        .forEach(waiver -> all.put(waiver, report.verdict().waiversJudgedOn()));
    return all;
  }

  /**
   * Returns the findings that changed in one way.
   *
   * @param kind the way
   * @return those findings
   */
  public List<FindingChange> of(Kind kind) {
    return changes.stream().filter(change -> change.kind() == kind).toList();
  }

  /** {@return whether the report before passed} */
  public boolean passedBefore() {
    return verdict == VerdictChange.PASSES_STILL || verdict == VerdictChange.FAILS_NOW;
  }

  /** {@return whether the report after passes} */
  public boolean passesAfter() {
    return verdict == VerdictChange.PASSES_STILL || verdict == VerdictChange.PASSES_NOW;
  }

  /** {@return whether no finding differs and the verdict is the same} */
  public boolean isNone() {
    return changes.isEmpty() && verdict.isSame();
  }

  /** {@return a line on what changed, then a line for each finding, in English} */
  @Override
  public String toString() {
    return text(Wording.english());
  }

  /**
   * Returns the difference in the words of a language.
   *
   * @param wording the words
   * @return a line on what changed, then a line for each finding
   */
  public String text(Wording wording) {
    return Stream.concat(
            Stream.of(wording.text(headline())), changes.stream().map(c -> c.text(wording)))
        .collect(joining("\n"));
  }

  private Message headline() {
    Message now =
        Message.of("difference." + verdict.name().toLowerCase(Locale.ROOT).replace('_', '.'));
    return sides.isEmpty()
        ? now
        : Message.of("difference.changed")
            .with("verdict", Argument.words(now))
            .with("sides", Argument.items(sides.stream().map(ReportDifference::word).toList()));
  }

  private static Argument word(Side side) {
    return Argument.word("difference.side." + side.name().toLowerCase(Locale.ROOT));
  }
}
