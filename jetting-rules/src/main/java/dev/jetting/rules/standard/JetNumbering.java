package dev.jetting.rules.standard;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Provenance;
import dev.jetting.rules.Rule;
import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.units.JetBore;
import dev.jetting.units.JetFlow;
import java.util.Optional;
import java.util.stream.Stream;

/** A number on a jet is a bore or a flow, and the two are not the same. */
final class JetNumbering {

  static final Rule RULE =
      Rule.named("jet-numbering")
          .title("Flow of a jet taken for its bore")
          .rationale(
              "Some makers stamp a jet with its bore in hundredths of a millimetre, others with its"
                  + " flow in cubic centimetres a minute. One taken for the other is off by many"
                  + " sizes, and every number computed from it is wrong.")
          .severity(Severity.DANGER)
          .judging(JetNumbering::judge)
          .when(
              setting -> isByFlow(setting.sheet().provenance()),
              "no jet is marked as numbered by its flow");

  private JetNumbering() {}

  private static boolean isByFlow(Provenance provenance) {
    return provenance.pilotJetFlow().isPresent() || provenance.mainJetFlow().isPresent();
  }

  private static Outcome judge(AssessedSetting setting) {
    Provenance provenance = setting.sheet().provenance();
    return Outcome.of(
        Stream.of(
                provenance
                    .pilotJetFlow()
                    .flatMap(flow -> mistaken("pilot", flow, setting.setting().pilotJet())),
                provenance
                    .mainJetFlow()
                    .flatMap(flow -> mistaken("main", flow, setting.setting().mainJet())))
            .flatMap(Optional::stream)
            .toList());
  }

  private static Optional<Finding> mistaken(String jet, JetFlow flow, JetBore stated) {
    double likely = bore(flow);
    double spread = likely * Limits.BENCH_SPREAD.value();
    boolean smaller = likely < stated.millimetres();
    double nearest = smaller ? likely + spread : likely - spread;
    if (smaller ? stated.millimetres() <= nearest : stated.millimetres() >= nearest) {
      return Optional.empty();
    }
    Measure measured = new Measure(stated.millimetres(), "mm");
    Measure limit = new Measure(nearest, "mm");
    String subject = "setting." + jet + "Jet";
    return Optional.of(
        (smaller
                ? Finding.above(subject, measured, limit, ThrottleBand.WHOLE)
                : Finding.below(subject, measured, limit, ThrottleBand.WHOLE))
            .with("jet", jet + " jet")
            .with("flow", flow)
            .with("likely", new Measure(likely, "mm"))
            .with("reckoned", measured)
            .with("side", smaller ? "leaner" : "richer")
            .says(
                "A {jet} of {flow} has a bore of about {likely}, not {reckoned}: the engine is"
                    + " {side} than computed here.",
                "Gauge the bore of the "
                    + jet
                    + " jet and write it into the setting; "
                    + (smaller
                        ? "the jet in the carburettor is too small, do not ride on it."
                        : "the jet in the carburettor is bigger than meant.")));
  }

  /** Bore in mm that has a flow on the assumed bench. */
  private static double bore(JetFlow flow) {
    double cubicMillimetresPerSecond = flow.cubicCentimetresPerMinute() * 1000 / 60;
    double area = cubicMillimetresPerSecond / (Limits.BENCH_VELOCITY.value() * 1000);
    return Math.sqrt(4 / Math.PI * area);
  }
}
