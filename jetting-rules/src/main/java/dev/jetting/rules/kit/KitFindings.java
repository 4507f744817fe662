package dev.jetting.rules.kit;

import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Measure;
import dev.jetting.rules.RankedFinding;
import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.Probability;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ThrottleOpening;
import dev.jetting.units.TradeStyle;
import dev.jetting.units.VolumeFlow;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** The findings on one kit while they are made: what each of them is called and says. */
final class KitFindings {

  private static final Measure NO_PART = new Measure(0, "parts");
  private static final Measure ONE_PART = new Measure(1, "parts");

  private final List<RankedFinding> findings = new ArrayList<>();

  void unknown(String subject, String id) {
    danger(
        "kit-unknown-id",
        absent(subject)
            .with("id", id)
            .says("The catalogue has no \"{id}\".", "Correct the id, or add it to the catalogue."));
  }

  void doesNotFit(String subject, Part part, Family family) {
    danger(
        "kit-part-fits",
        amiss(subject)
            .with("part", part.id())
            .with("series", part.series())
            .with("family", family.id())
            .says(
                "Part \"{part}\" is of series \"{series}\", which family \"{family}\" does not"
                    + " take.",
                "Take a part of a series that the family takes."));
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
                "The recommended setting takes \"{part}\", which is not in the kit.",
                fits
                    ? "Put it into the kit, or recommend a part that is in it."
                    : "Recommend a part that is in it."));
  }

  void ofAnotherKind(String subject, Part part, SeriesKind is, SeriesKind wanted) {
    danger(
        "kit-part-kind",
        amiss(subject)
            .with("part", part.id())
            .with("is", word(is))
            .with("wanted", word(wanted))
            .says(
                "\"{part}\" is a {is}, not a {wanted}.",
                "Name a part of the kind that is asked for."));
  }

  void screwKind(String subject, ScrewKind meantFor, ScrewKind has) {
    danger(
        "kit-screw-kind",
        amiss(subject)
            .with("told", word(meantFor))
            .with("has", word(has))
            .says(
                "Meant for a carburettor with a screw for {told}; this one has a screw for {has},"
                    + " which acts the other way.",
                "Take the screw and the turns that are meant for this family."));
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
            .with("cylinder", TradeStyle.diameter(needle.cylinder()))
            .with("bore", TradeStyle.diameter(jet.bore()))
            .says(
                "Needle \"{needle}\" of {cylinder} does not go into a needle jet of {bore}.",
                "Recommend a bigger needle jet or a thinner needle."));
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
            .says(
                "Needle \"{needle}\" goes into none of the kit's needle jets.",
                "Leave it out, or add a needle jet that takes it."));
  }

  void clip(String subject, ClipPosition clip, Needle needle) {
    danger(
        "kit-clip-grooves",
        Finding.above(
                subject,
                new Measure(Math.abs(clip.grooves() - needle.grooves()), "grooves"),
                new Measure(0, "grooves"),
                ThrottleBand.WHOLE)
            .with("clip", clip)
            .with("needle", needle.id())
            .with("grooves", needle.grooves())
            .says(
                "Clip {clip} is not counted on the {grooves} grooves of needle \"{needle}\".",
                "Count again, and say from which end."));
  }

  void cannotBeSet(String subject, IllegalArgumentException why) {
    danger(
        "kit-setting",
        amiss(subject)
            .with("problem", String.valueOf(why.getMessage()))
            .says("The setting cannot be put together: {problem}.", "Correct what it names."));
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
            .says(
                "Full throttle draws {drawn}; the float valve passes {passes} from an almost empty"
                    + " tank.",
                "Put a bigger float valve into the kit."));
  }

  void neverUsed(String subject, String part) {
    add(
        "kit-part-never-used",
        Severity.NOTE,
        absent(subject)
            .with("part", part)
            .says(
                "\"{part}\" is not recommended, and in the best setting of none of the engines"
                    + " looked at.",
                "Leave it out, or put a part into its place that serves more engines."));
  }

  void coverage(String subject, String machine, int fuel, KitCoverage coverage) {
    add(
        "kit-coverage",
        Severity.WARNING,
        Finding.below(
                subject,
                Measure.ratio(coverage.share().value()),
                Measure.ratio(KitCoverage.LEAST.value()),
                ThrottleBand.WHOLE)
            .with("machine", machine)
            .with("fuel", fuel)
            .with("share", share(coverage.share()))
            .says(
                "For {share} of engines such as that of \"{machine}\" the kit has a setting that is"
                    + " right everywhere with fuel {fuel}.",
                better(coverage)));
  }

  private static String better(KitCoverage coverage) {
    List<KitCoverage.Extra> extras = coverage.extras();
    if (extras.isEmpty()) {
      return "No jet of the catalogue serves more; look at needle, needle jet and slide.";
    }
    String add =
        extras.stream()
            .map(extra -> "\"" + extra.part() + "\" (" + share(extra.share()) + ")")
            .collect(Collectors.joining(", then ", "Add ", "."));
    return extras.get(extras.size() - 1).share().isLessThan(KitCoverage.LEAST)
        ? add + " That is not enough: look at needle, needle jet and slide as well."
        : add;
  }

  /** Prints a share below the least so that it does not read as the least. */
  private static String share(Probability share) {
    return TradeStyle.probability(share, KitCoverage.LEAST);
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

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  boolean danger() {
    return findings.stream().anyMatch(found -> found.severity() == Severity.DANGER);
  }

  List<RankedFinding> ranked() {
    return findings.stream().sorted().toList();
  }
}
