package dev.jetting.rules.json;

import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.mixture.MixturePoint;
import dev.jetting.core.mixture.Overrun;
import dev.jetting.core.mixture.PartEffect;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.core.parts.Floats;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.Ceiling;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Margin;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Outcome.Branch;
import dev.jetting.rules.Outcome.Status;
import dev.jetting.rules.Plan;
import dev.jetting.rules.ProofUse;
import dev.jetting.rules.RankedFinding;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.Report;
import dev.jetting.rules.RuleResult;
import dev.jetting.rules.RulebookChange;
import dev.jetting.rules.RulebookEdition;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.UnusedWaiver;
import dev.jetting.rules.Verdict;
import dev.jetting.rules.WaivedDanger;
import dev.jetting.rules.Waiver;
import dev.jetting.rules.risk.RiddenSpeeds;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.rules.risk.UphillRisk;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.FloatLevel;
import dev.jetting.units.JetBore;
import dev.jetting.units.Lambda;
import dev.jetting.units.Length;
import dev.jetting.units.MassFlow;
import dev.jetting.units.Pressure;
import dev.jetting.units.Probability;
import dev.jetting.units.TemperatureDifference;
import dev.jetting.units.ThrottleOpening;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A report made by hand, so that its numbers do not depend on the model; one of everything. */
final class Reports {

  private Reports() {}

  private static SetupSheet sheet() {
    SetupSheet bare = SheetJson.read(Documents.read("bare-sheet.json"));
    FloatLevel level = FloatLevel.ofMillimetres(20);
    Setting setting =
        bare.setup().setting().withFloats(Floats.builder().set(level).nominal(level).build());
    return SetupSheet.builder()
        .title(bare.title())
        .setup(
            bare.setup()
                .withSetting(setting)
                .withFuelWarmerBy(TemperatureDifference.ofKelvin(12.5)))
        .riding(bare.riding().withSpeeds(new RiddenSpeeds(2)))
        .parts(bare.parts())
        .provenance(bare.provenance())
        .build();
  }

  static Report handmade() {
    return handmade(0.08);
  }

  static Report handmade(double spread) {
    Finding lean =
        Finding.above(
                "setting.mainJet",
                Measure.ratio(0.25),
                Measure.ratio(0.05),
                ThrottleBand.eighths(6, 8))
            .worstAt(ThrottleOpening.FULL, EngineSpeed.ofRpm(7432.1))
            .with("risk", Probability.of(0.25))
            .with("at", ThrottleOpening.FULL)
            .says("Lean at {at}: risk {risk}.", CHANGE);
    Finding narrow =
        Finding.below(
                "setting.carburettor.floatValve",
                new Measure(Double.parseDouble("8.41e21"), "g/s"),
                new Measure(Double.parseDouble("2e23"), "g/s"),
                ThrottleBand.WHOLE)
            .says(
                "Numbers that Java prints differently from release to release.",
                Remedy.Aim.richer(ThrottleOpening.FULL, 0.25).saying("By hand."));
    Finding accepted =
        Finding.above(
                "setting.pilotJet",
                new Measure(0.125, Measure.LEAN_RISK),
                new Measure(0.05, Measure.LEAN_RISK),
                ThrottleBand.eighths(0, 1))
            .says(
                "Lean, and somebody lives with it.",
                Remedy.Aim.richer(ThrottleOpening.CLOSED, 0.125).saying("A bigger pilot jet."));
    Outcome failed = Outcome.failed(lean, accepted);
    Outcome tree =
        new Outcome(
            Status.FAILED,
            List.of(narrow),
            Message.plain(""),
            List.of(
                new Branch(
                    "passes",
                    Outcome.passed(
                        Margin.atLeast(
                            "setting.mainJet",
                            new Measure(1.25, "mm"),
                            new Measure(1, "mm"),
                            ThrottleBand.at(ThrottleOpening.FULL)))),
                new Branch(
                    "inner",
                    new Outcome(
                        Status.NOT_EVALUATED,
                        List.of(),
                        Message.plain("missing: a reading"),
                        List.of(new Branch("leaf", Outcome.notEvaluated("a reading"))),
                        Optional.empty()))),
            Optional.of(
                Margin.atMost(
                    "setting.clip",
                    new Measure(3, "groove"),
                    new Measure(2, "groove"),
                    ThrottleBand.eighths(1, 6))));
    return new Report(
        Report.SCHEMA_VERSION,
        "model by hand 1",
        new RulebookEdition(
            "rulebook by hand",
            "1",
            List.of(
                new RulebookChange(RulebookChange.Kind.LEFT_OUT, "e-left-out", Severity.DANGER)),
            "0123456789abcdef".repeat(4)),
        new Verdict(
            Verdict.Ruling.FAILS,
            List.of("a-lean-rule"),
            Set.of(Verdict.Lean.RIDDEN),
            List.of(),
            List.of("d-broken"),
            List.of(
                new WaivedDanger(
                    "a-lean-rule",
                    accepted.subject(),
                    accepted.measured(),
                    accepted.band(),
                    ACCEPTED)),
            Optional.of(LocalDate.of(2026, 11, 25))),
        sheet(),
        new RiskProfile(List.of(point(0, 0.08, 0.001), point(8, spread, 0.25))),
        Probability.of(0.125),
        new RiskProfile(List.of(point(8, 0.08, 0.5))),
        new RiskProfile(List.of(point(4, 0.08, 0))),
        new Overrun(
            EngineSpeed.ofRpm(7000),
            MassFlow.ofGramsPerSecond(2.5),
            MassFlow.ofGramsPerSecond(0.25),
            Lambda.of(0.5),
            0.1),
        Lambda.of(0.625),
        List.of(
            new RuleResult(
                "a-lean-rule",
                "Lean",
                Severity.DANGER,
                failed,
                List.of("mixture", "needle-2"),
                "pages/lean.md"),
            new RuleResult("b-tree", "A tree", Severity.NOTE, tree, List.of(), ""),
            new RuleResult(
                "c-silent",
                "Silent",
                Severity.WARNING,
                Outcome.notApplicable("no such part"),
                List.of(),
                ""),
            new RuleResult(
                "d-broken",
                "Broken",
                Severity.WARNING,
                new Outcome(
                    Status.BROKEN,
                    List.of(),
                    Message.plain("by hand"),
                    List.of(),
                    Optional.empty()),
                List.of(),
                "")),
        List.of(
            new RankedFinding("a-lean-rule", Severity.DANGER, lean, Optional.empty()),
            new RankedFinding("a-lean-rule", Severity.DANGER, accepted, Optional.of(ACCEPTED)),
            new RankedFinding("b-tree", Severity.NOTE, narrow, Optional.of(WAIVER))),
        List.of(
            new UnusedWaiver(LASTING, Message.plain("no finding of this rule on this subject"))),
        Optional.of(
            new Plan(
                Plan.Ending.NO_DANGER,
                List.of(CHANGE),
                List.of(new Plan.Left("b-tree", Severity.NOTE, "Beta", Message.plain("Known."))))),
        Optional.of(new ProofUse(2, 0.25, 0.125, 0.0625)),
        Map.of("spread of λ", Coefficient.assumed(0.08, "1", "by hand")),
        List.of("Mind the clutch."));
  }

  private static final Remedy.Change CHANGE =
      new Remedy.Change(
          MeteringPart.MAIN_JET,
          Remedy.Direction.RICHER,
          Argument.name("main 128"),
          Argument.name("main 132"),
          2,
          Remedy.Source.TO_BUY,
          new Remedy.Effect(ThrottleOpening.FULL, state(0.9, 0.25), state(0.875, 0.0625)),
          Remedy.Relief.PARTIAL,
          sheet().setup().setting().withMainJet(JetBore.ofMillimetres(1.32)));

  private static Remedy.State state(double lambda, double risk) {
    return new Remedy.State(
        Lambda.of(lambda), Probability.of(risk), Probability.of(0.5), Lambda.of(0.5));
  }

  private static final Waiver WAIVER =
      Waiver.ofRule("b-tree")
          .on("setting.clip")
          .by("A. Weaver")
          .because("known")
          .until(LocalDate.of(2027, 3, 31));

  private static final Waiver ACCEPTED =
      new Waiver(
          "a-lean-rule",
          "setting.pilotJet",
          "A. Weaver",
          "Ridden on the flat only.",
          Optional.of(LocalDate.of(2026, 12, 24)),
          Optional.of(
              new Ceiling(
                  "engine by hand",
                  "carburettor by hand",
                  new Measure(0.25, Measure.LEAN_RISK),
                  ThrottleBand.eighths(0, 2))));

  private static final Waiver LASTING =
      Waiver.ofRule("c-silent").on("setting").by("B. Smith").because("for good");

  private static RiskPoint point(int eighths, double spread, double risk) {
    return new RiskPoint(
        new MixturePoint(
            ThrottleOpening.ofEighths(eighths),
            EngineSpeed.ofRpm(4000),
            Length.ofMillimetres(15.5),
            0.875,
            Pressure.ofPascals(8334.9),
            Pressure.ofPascals(1200),
            Pressure.ofPascals(40.5),
            0.4375,
            MassFlow.ofGramsPerSecond(12.5),
            MassFlow.ofGramsPerSecond(0.75),
            MassFlow.ofGramsPerSecond(0.25),
            Lambda.of(0.875)),
        Lambda.of(0.9),
        spread,
        Lambda.of(1.05),
        Lambda.of(0.75),
        Probability.of(risk),
        new UphillRisk(
            EngineSpeed.ofRpm(3250), Lambda.of(0.9375), 2 * spread, Probability.of(risk / 2)),
        List.of(
            new PartEffect(MeteringPart.MAIN_JET, -0.03, 0.03, 0.75),
            new PartEffect(MeteringPart.CLIP, -0.25, 0, 0.25)));
  }
}
