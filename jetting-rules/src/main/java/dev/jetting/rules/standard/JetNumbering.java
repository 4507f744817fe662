package dev.jetting.rules.standard;

import dev.jetting.core.parts.Coefficient;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Margin;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Provenance;
import dev.jetting.rules.Rule;
import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;
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
          .title("Flow of a jet taken for its bore")
          .rationale(
              "Some makers stamp a jet with its bore in hundredths of a millimetre, others with its"
                  + " flow in cubic centimetres a minute. One taken for the other is off by many"
                  + " sizes, and every number computed from it is wrong.")
          .severity(Severity.DANGER)
          .limit(Limits.BENCH_VELOCITY.name(), Limits.BENCH_VELOCITY.number())
          .limit(Limits.BENCH_SPREAD.name(), Limits.BENCH_SPREAD.number())
          .judgingBy(JetNumbering::judge)
          .when(
              setting -> isByFlow(setting.sheet().provenance()),
              "no jet is marked as numbered by its flow");

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
    double spread = likely * Limits.BENCH_SPREAD.in(limits);
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
          .with("jet", jet + " jet")
          .with("flow", flow)
          .with("likely", new Measure(likely, "mm"))
          .with("reckoned", margin.measured())
          .with("side", smaller ? "leaner" : "richer")
          .says(
              "A {jet} of {flow} has a bore of about {likely}, not {reckoned}: the engine is"
                  + " {side} than computed here.",
              "Gauge the bore of the "
                  + jet
                  + " jet and write it into the setting; "
                  + (smaller
                      ? "the jet in the carburettor is too small, do not ride on it."
                      : "the jet in the carburettor is bigger than meant."));
    }
  }

  /** Bore in mm that has a flow on the assumed bench. */
  private static double bore(JetFlow flow, Map<String, Coefficient> limits) {
    double cubicMillimetresPerSecond = flow.cubicCentimetresPerMinute() * 1000 / 60;
    double area = cubicMillimetresPerSecond / (Limits.BENCH_VELOCITY.in(limits) * 1000);
    return Math.sqrt(4 / Math.PI * area);
  }
}
