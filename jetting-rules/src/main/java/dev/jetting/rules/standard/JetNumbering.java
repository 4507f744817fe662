package dev.jetting.rules.standard;

import dev.jetting.core.parts.Coefficient;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Margin;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Provenance;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.Rule;
import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.units.JetBore;
import dev.jetting.units.JetFlow;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** A number on a jet is a bore or a flow, and the two are not the same. */
final class JetNumbering {

  static final Rule RULE =
      RulePages.draft("jet-numbering", "parts")
          .severity(Severity.DANGER)
          .limit(RuleLimits.BENCH_VELOCITY.name(), RuleLimits.BENCH_VELOCITY.number())
          .limit(RuleLimits.BENCH_SPREAD.name(), RuleLimits.BENCH_SPREAD.number())
          .judgingBy(JetNumbering::judge)
          .when(
              setting -> isByFlow(setting.sheet().provenance()),
              Message.of("rule.jet-numbering.no-flow"));

  private JetNumbering() {}

  private static boolean isByFlow(Provenance provenance) {
    return provenance.pilotJetFlow().isPresent() || provenance.mainJetFlow().isPresent();
  }

  private static Outcome judge(AssessedSetting setting, Map<String, Coefficient> limits) {
    Provenance provenance = setting.sheet().provenance();
    List<Numbered> jets =
        Stream.of(
                provenance
                    .pilotJetFlow()
                    .map(flow -> numbered("pilot", flow, setting.setting().pilotJet(), limits)),
                provenance
                    .mainJetFlow()
                    .map(flow -> numbered("main", flow, setting.setting().mainJet(), limits)))
            .flatMap(Optional::stream)
            .toList();
    return Outcome.of(
        jets.stream().filter(jet -> jet.margin().fails()).map(Numbered::finding).toList(),
        jets.stream().map(Numbered::margin).toList());
  }

  private static Numbered numbered(
      String jet, JetFlow flow, JetBore stated, Map<String, Coefficient> limits) {
    double likely = bore(flow, limits);
    double spread = likely * RuleLimits.BENCH_SPREAD.in(limits);
    boolean smaller = likely < stated.millimetres();
    Measure measured = new Measure(stated.millimetres(), "mm");
    String subject = "setting." + jet + "Jet";
    Margin margin =
        smaller
            ? Margin.atMost(
                subject, measured, new Measure(likely + spread, "mm"), ThrottleBand.WHOLE)
            : Margin.atLeast(
                subject, measured, new Measure(likely - spread, "mm"), ThrottleBand.WHOLE);
    return new Numbered(jet, flow, likely, smaller, margin);
  }

  /** A jet whose number is a flow, by the bore that has it on the assumed bench. */
  private record Numbered(String jet, JetFlow flow, double likely, boolean smaller, Margin margin) {
    Finding finding() {
      return margin
          .finding()
          .with("jet", name())
          .with("flow", Argument.exact(flow.cubicCentimetresPerMinute(), "cm³/min"))
          .with("likely", new Measure(likely, "mm"))
          .with("usedHere", margin.measured())
          .with("side", Remedies.side(smaller))
          .says(
              Message.of("rule.jet-numbering.finding"),
              new Remedy.Advice(
                  Message.of(
                          smaller
                              ? "rule.jet-numbering.remedy.smaller"
                              : "rule.jet-numbering.remedy.bigger")
                      .with("jet", name())));
    }

    private Argument name() {
      return Argument.word("rule.jet-numbering.jet." + jet);
    }
  }

  /** Bore in mm that has a flow on the assumed bench. */
  private static double bore(JetFlow flow, Map<String, Coefficient> limits) {
    double cubicMillimetresPerSecond = flow.cubicCentimetresPerMinute() * 1000 / 60;
    double area = cubicMillimetresPerSecond / (RuleLimits.BENCH_VELOCITY.in(limits) * 1000);
    return Math.sqrt(4 / Math.PI * area);
  }
}
