package dev.jetting.rules.kit;

import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Measure;
import dev.jetting.rules.RankedFinding;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.Waiver;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.Probability;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ThrottleOpening;
import dev.jetting.units.VolumeFlow;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The findings on one kit while they are made: what each of them is called and says. */
final class KitFindings {

  private static final Measure NO_PART = new Measure(0, "parts");
  private static final Measure ONE_PART = new Measure(1, "parts");

  private static final String COVERAGE = "kit-coverage";

  private final List<RankedFinding> findings = new ArrayList<>();

  void unknown(String subject, String id) {
    danger(
        "kit-unknown-id",
        absent(subject)
            .with("id", id)
            .says(words("kit.unknown-id"), remedy("kit.unknown-id.remedy")));
  }

  void doesNotFit(String subject, Part part, Family family) {
    danger(
        "kit-part-fits",
        amiss(subject)
            .with("part", part.id())
            .with("series", part.series())
            .with("family", family.id())
            .says(words("kit.part-fits"), remedy("kit.part-fits.remedy")));
  }

  /**
   * The remedy depends on whether the part fits: a part that does not fit is of no use in the kit.
   */
  void notInKit(String subject, Part part, boolean fits) {
    danger(
        "kit-part-in-kit",
        absent(subject)
            .with("part", part.id())
            .says(
                words("kit.part-in-kit"),
                remedy(fits ? "kit.part-in-kit.remedy.fits" : "kit.part-in-kit.remedy")));
  }

  void ofAnotherKind(String subject, Part part, SeriesKind is, SeriesKind wanted) {
    danger(
        "kit-part-kind",
        amiss(subject)
            .with("part", part.id())
            .with("is", word("kit.kind.", is))
            .with("wanted", word("kit.kind.", wanted))
            .says(words("kit.part-kind"), remedy("kit.part-kind.remedy")));
  }

  void screwKind(String subject, ScrewKind meantFor, ScrewKind has) {
    danger(
        "kit-screw-kind",
        amiss(subject)
            .with("meantFor", word("kit.screw.", meantFor))
            .with("has", word("kit.screw.", has))
            .says(words("kit.screw-kind"), remedy("kit.screw-kind.remedy")));
  }

  void needleTooThick(String subject, Needle needle, NeedleJet jet) {
    danger(
        "kit-needle-in-needle-jet",
        Finding.above(
                subject,
                new Measure(needle.cylinder().millimetres(), "mm"),
                new Measure(jet.bore().millimetres(), "mm"),
                ThrottleBand.WHOLE)
            .with("needle", needle.id())
            .with("cylinder", Argument.diameter(needle.cylinder()))
            .with("bore", Argument.diameter(jet.bore()))
            .says(words("kit.needle-too-thick"), remedy("kit.needle-too-thick.remedy")));
  }

  void needleForNoNeedleJet(String subject, Needle needle, double widest) {
    add(
        "kit-needle-in-needle-jet",
        Severity.WARNING,
        Finding.above(
                subject,
                new Measure(needle.cylinder().millimetres(), "mm"),
                new Measure(widest, "mm"),
                ThrottleBand.WHOLE)
            .with("needle", needle.id())
            .says(words("kit.needle-in-none"), remedy("kit.needle-in-none.remedy")));
  }

  void clip(String subject, ClipPosition clip, Needle needle) {
    danger(
        "kit-clip-grooves",
        Finding.above(
                subject,
                new Measure(Math.abs(clip.grooves() - needle.grooves()), "grooves"),
                new Measure(0, "grooves"),
                ThrottleBand.WHOLE)
            .with("clip", position(clip))
            .with("needle", needle.id())
            .with("grooves", Argument.count(needle.grooves()))
            .says(words("kit.clip-grooves"), remedy("kit.clip-grooves.remedy")));
  }

  void cannotBeSet(String subject, IllegalArgumentException why) {
    danger(
        "kit-setting",
        amiss(subject)
            .with("problem", Argument.words(Message.of(why)))
            .says(words("kit.setting"), remedy("kit.setting.remedy")));
  }

  void floatValve(String subject, VolumeFlow drawn, VolumeFlow passes) {
    danger(
        "kit-float-valve-flow",
        Finding.above(
                subject,
                new Measure(drawn.litresPerHour(), "L/h"),
                new Measure(passes.litresPerHour(), "L/h"),
                ThrottleBand.at(ThrottleOpening.FULL))
            .with("drawn", new Measure(drawn.litresPerHour(), "L/h"))
            .with("passes", new Measure(passes.litresPerHour(), "L/h"))
            .says(words("kit.float-valve-flow"), remedy("kit.float-valve-flow.remedy")));
  }

  void neverUsed(String subject, String part) {
    add(
        "kit-part-never-used",
        Severity.NOTE,
        absent(subject)
            .with("part", part)
            .says(words("kit.part-never-used"), remedy("kit.part-never-used.remedy")));
  }

  void coverage(
      String subject, String machine, int fuel, KitCoverage coverage, Optional<Waiver> waiver) {
    Finding finding =
        Finding.below(
                subject,
                Measure.share(coverage.share().value()),
                Measure.share(KitCoverage.LEAST.value()),
                ThrottleBand.WHOLE)
            .with("machine", machine)
            .with("fuel", Argument.count(fuel))
            .with("share", share(coverage.share()))
            .says(words("kit.coverage"), new Remedy.Advice(better(coverage)));
    findings.add(new RankedFinding(COVERAGE, Severity.WARNING, finding, waiver));
  }

  /** Whether a finding is on the coverage of a machine. */
  static boolean isCoverageOf(RankedFinding found, String machine) {
    return found.ruleId().equals(COVERAGE)
        && machine.equals(found.finding().attributes().get("machine"));
  }

  /** Whether a coverage is below the least, and nobody accepted that. */
  boolean isCoverageOpen() {
    return findings.stream()
        .anyMatch(found -> found.ruleId().equals(COVERAGE) && found.waiver().isEmpty());
  }

  private static Message better(KitCoverage coverage) {
    List<KitCoverage.Extra> extras = coverage.extras();
    if (extras.isEmpty()) {
      return words("kit.coverage.remedy.none");
    }
    Message add =
        words("kit.coverage.remedy").with("parts", Argument.words(oneAfterTheOther(extras)));
    return extras.get(extras.size() - 1).share().isLessThan(KitCoverage.LEAST)
        ? Message.joined(List.of(add, words("kit.coverage.remedy.not-enough")))
        : add;
  }

  private static Message oneAfterTheOther(List<KitCoverage.Extra> extras) {
    return extras.stream()
        .map(
            extra ->
                words("kit.coverage.part")
                    .with("part", Argument.name(extra.part()))
                    .with("share", share(extra.share())))
        .reduce(
            (first, next) ->
                words("kit.coverage.then")
                    .with("first", Argument.words(first))
                    .with("next", Argument.words(next)))
        .orElseThrow();
  }

  /** Prints a share below the least so that it does not read as the least. */
  private static Argument share(Probability share) {
    return Argument.risk(share, KitCoverage.LEAST);
  }

  private static Message words(String key) {
    return Message.of(key);
  }

  private static Remedy remedy(String key) {
    return new Remedy.Advice(words(key));
  }

  private static Argument position(ClipPosition clip) {
    boolean top = clip.countedFrom() == ClipPosition.End.TOP;
    return Argument.words(
        words(top ? "kit.clip.from-top" : "kit.clip.from-bottom")
            .with("groove", Argument.count(top ? clip.grooveFromTop() : clip.grooveFromBottom()))
            .with("grooves", Argument.count(clip.grooves())));
  }

  private void danger(String ruleId, Finding finding) {
    add(ruleId, Severity.DANGER, finding);
  }

  private void add(String ruleId, Severity severity, Finding finding) {
    findings.add(new RankedFinding(ruleId, severity, finding, Optional.empty()));
  }

  /** Something that has to be there and is not. */
  private static Finding.Texts absent(String subject) {
    return Finding.below(subject, NO_PART, ONE_PART, ThrottleBand.WHOLE);
  }

  /** Something that must not be and is. */
  private static Finding.Texts amiss(String subject) {
    return Finding.above(subject, Measure.ratio(1), Measure.ratio(0), ThrottleBand.WHOLE);
  }

  private static Argument word(String area, Enum<?> constant) {
    return Argument.word(area + constant.name().toLowerCase(Locale.ROOT).replace('_', '-'));
  }

  boolean danger() {
    return findings.stream().anyMatch(found -> found.severity() == Severity.DANGER);
  }

  List<RankedFinding> ranked() {
    return findings.stream().sorted().toList();
  }
}
