package dev.jetting.rules.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.core.mixture.ErrorSource;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.risk.ModelUncertainty;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.units.JetBore;
import dev.jetting.units.ThrottleOpening;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class CoverageTest {

  private static final RiskModel RISK = RiskModel.assumed();

  /** A kit around a setting that is right: 3 pilots, 1 screw, 1 slide, a needle, 4 mains. */
  private static final Choices KIT = kit(0.58, 0.60, 0.62, 1.24, 1.30, 1.36, 1.42);

  private static Choices kit(double p1, double p2, double p3, double... mains) {
    Choices shelf = Shelf.of(1, 1, 5, 6, 10, 1);
    return shelf
        .withPilotJets(
            Stream.of(p1, p2, p3).map(JetBore::ofMillimetres).map(Choice::ofOwned).toList())
        .withCutaways(List.of(shelf.cutaways().get(4)))
        .withNeedleJets(List.of(shelf.needleJets().get(2)))
        .withNeedles(List.of(shelf.needles().get(4)))
        .withMainJets(
            java.util.Arrays.stream(mains)
                .mapToObj(JetBore::ofMillimetres)
                .map(Choice::ofOwned)
                .toList());
  }

  private static RiskModel withoutSpreads() {
    Coefficient none = Coefficient.assumed(0, "1", "an engine exactly as the model");
    Coefficient exact = Coefficient.assumed(0, "mm", "parts exactly of their size");
    Coefficient length = ModelUncertainty.assumed().residualLength();
    return new RiskModel(
        RISK.limits(),
        ModelUncertainty.builder()
            .pilot(none)
            .needle(none)
            .main(none)
            .air(none)
            .residual(none)
            .residualLength(length)
            .pilotJetTolerance(exact)
            .mainJetTolerance(exact)
            .needleJetTolerance(exact)
            .needleTolerance(exact)
            .guessed(Set.of())
            .build(),
        RISK.steps());
  }

  /** Without spreads each drawn engine is the model's, and coverage a question of yes or no. */
  @Test
  void engineWithoutSpreads_isCoveredWherePlainEnumerationFindsARightSetting() {
    RiskModel exact = withoutSpreads();
    for (Choices choices : List.of(KIT, kit(0.30, 0.32, 0.34, 0.9, 1.0))) {
      List<Plain.Weighed> best = Plain.best(new Plain(Shelf.SHEET, choices, exact).all(), 1);
      Coverage coverage = Coverage.of(Shelf.SHEET, choices, exact, 2, Run.alone());
      boolean right = best.get(0).standing() == Standing.RIGHT;
      assertThat(coverage.covered()).isEqualTo(right ? 2 : 0);
      if (right) {
        assertThat(coverage.use())
            .contains(
                new PartUse(PartKind.MAIN_JET, best.get(0).pick().mainJet(), 2),
                new PartUse(PartKind.PILOT_JET, best.get(0).pick().pilotJet(), 2));
      }
    }
    assertThat(Coverage.of(Shelf.SHEET, KIT, exact, 2, Run.alone()).covered()).isEqualTo(2);
  }

  @Test
  void extraPart_bringsWhatTheChoicesCoverWithItAmongThem() {
    Choices few = kit(0.56, 0.57, 0.58, 1.20);
    Choices more = Shelf.of(15, 1, 5, 6, 1, 40);
    Coverage coverage = Coverage.of(Shelf.SHEET, few, more, RISK, 24, Run.alone());
    assertThat(coverage.extras()).hasSize((15 - 2) + (5 - 1) + (6 - 1) + 1 + (40 - 1));
    for (ExtraPart extra : coverage.extras()) {
      if (extra.kind() == PartKind.MAIN_JET && extra.index() % 8 == 0) {
        List<Choice<JetBore>> mains =
            Stream.concat(few.mainJets().stream(), Stream.of(more.mainJets().get(extra.index())))
                .toList();
        Coverage with = Coverage.of(Shelf.SHEET, few.withMainJets(mains), RISK, 24, Run.alone());
        assertThat(extra.covered()).as("main %s", mains).isEqualTo(with.covered());
      }
    }
    assertThat(coverage.extras()).anyMatch(extra -> extra.covered() > coverage.covered());
  }

  /** Choosing by counting against plain enumeration: each kit is really made and looked at. */
  @Test
  void jetsToAddTogether_areThoseOfPlainEnumerationAndBringWhatTheySay() {
    Choices more = kit(0.54, 0.60, 0.66, 1.16, 1.24, 1.32, 1.40);
    int most = 0;
    int pairs = 0;
    List<Choices> kits =
        List.of(
            kit(0.40, 0.41, 0.42, 0.8), // no jet serves any by itself
            kit(0.40, 0.41, 0.42, 1.5), // some jets serve a few
            kit(0.50, 0.51, 0.52, 1.0),
            kit(0.56, 0.57, 0.58, 1.20));
    for (Choices few : kits) {
      Coverage coverage = Coverage.of(Shelf.SHEET, few, more, RISK, 24, Run.alone());
      List<ExtraPart> plain = new ArrayList<>();
      Choices with = few;
      int covered = coverage.covered();
      while (plain.size() < 3) {
        List<ExtraPart> next = next(with, more, covered, plain.size() < 2);
        for (ExtraPart jet : next) {
          with = with(with, more, jet);
          covered = covered(with);
          plain.add(new ExtraPart(jet.kind(), jet.index(), covered));
        }
        pairs += next.size() / 2;
        if (next.isEmpty()) {
          break;
        }
      }
      assertThat(coverage.together()).isEqualTo(plain);
      most = Math.max(most, plain.size());
    }
    assertThat(most).isEqualTo(3);
    assertThat(pairs).isEqualTo(3);
  }

  /** The jet that raises the coverage most, or two that raise it by more than twice as much. */
  private static List<ExtraPart> next(Choices few, Choices more, int before, boolean two) {
    List<ExtraPart> pilots = alone(few, more, PartKind.PILOT_JET);
    List<ExtraPart> mains = alone(few, more, PartKind.MAIN_JET);
    List<ExtraPart> next = List.of();
    int gain = 0;
    for (ExtraPart jet : Stream.concat(pilots.stream(), mains.stream()).toList()) {
      if (jet.covered() - before > gain) {
        gain = jet.covered() - before;
        next = List.of(jet);
      }
    }
    gain *= 2;
    for (ExtraPart pilot : two ? pilots : List.<ExtraPart>of()) {
      for (ExtraPart main : mains) {
        int both = covered(with(with(few, more, pilot), more, main));
        if (both - before > gain) {
          gain = both - before;
          next = main.covered() > pilot.covered() ? List.of(main, pilot) : List.of(pilot, main);
        }
      }
    }
    return next;
  }

  private static List<ExtraPart> alone(Choices few, Choices more, PartKind kind) {
    int size = kind == PartKind.PILOT_JET ? more.pilotJets().size() : more.mainJets().size();
    return IntStream.range(0, size)
        .mapToObj(i -> new ExtraPart(kind, i, 0))
        .map(jet -> new ExtraPart(kind, jet.index(), covered(with(few, more, jet))))
        .toList();
  }

  private static Choices with(Choices few, Choices more, ExtraPart jet) {
    return jet.kind() == PartKind.PILOT_JET
        ? few.withPilotJets(joined(few.pilotJets(), more.pilotJets().get(jet.index())))
        : few.withMainJets(joined(few.mainJets(), more.mainJets().get(jet.index())));
  }

  private static List<Choice<JetBore>> joined(List<Choice<JetBore>> few, Choice<JetBore> jet) {
    return Stream.concat(few.stream(), Stream.of(jet)).distinct().toList();
  }

  private static int covered(Choices choices) {
    return Coverage.of(Shelf.SHEET, choices, RISK, 24, Run.alone()).covered();
  }

  /** Whenever it is cancelled, every engine that it counts was computed to the end. */
  @Test
  void cancelledCoverage_isIncompleteAndCountsNoEngineThatWasCutOff() {
    Choices few = kit(0.58, 0.60, 0.62, 1.22);
    Choices more = Shelf.of(3, 1, 3, 3, 1, 3);
    int engines = 8;
    AtomicInteger asked = new AtomicInteger();
    Run whole = Run.alone().until(() -> asked.incrementAndGet() < 0);
    Coverage full = Coverage.of(Shelf.SHEET, few, more, RISK, engines, whole);
    assertThat(full.complete()).isTrue();
    assertThat(full.covered()).isBetween(1, engines - 1);
    int questions = asked.get();
    assertThat(questions).isGreaterThan(10);

    for (int until = 0; until <= questions; until++) {
      int last = until;
      asked.set(0);
      AtomicLong done = new AtomicLong();
      Run run =
          Run.alone()
              .until(() -> asked.getAndIncrement() >= last)
              .reportingTo((d, all) -> done.set(d));
      Coverage coverage = Coverage.of(Shelf.SHEET, few, more, RISK, engines, run);
      assertThat(coverage.complete()).as("until %d", until).isEqualTo(until == questions);
      assertThat(done.get() == engines).as("until %d", until).isEqualTo(until == questions);
      assertThat(coverage.covered()).isLessThanOrEqualTo((int) done.get());
    }
  }

  @Test
  void result_isTheSameOnAnyNumberOfThreads() {
    ExecutorService threads = Executors.newFixedThreadPool(2);
    try {
      Choices few = kit(0.56, 0.57, 0.58, 1.20);
      assertThat(Coverage.of(Shelf.SHEET, few, KIT, RISK, 16, Run.on(3, threads)))
          .isEqualTo(Coverage.of(Shelf.SHEET, few, KIT, RISK, 16, Run.alone()));
    } finally {
      threads.shutdown();
    }
  }

  /** A sequence that fills the space evenly gives the moments of the spreads back. */
  @Test
  void drawnEngines_haveTheSpreadsTheyAreDrawnFrom() {
    ModelUncertainty uncertainty = ModelUncertainty.assumed();
    List<Draws.Drawn> engines = new Draws(uncertainty).first(4095);
    for (ErrorSource source : ErrorSource.values()) {
      double[] z = engines.stream().mapToDouble(e -> e.differences().get(source)).toArray();
      assertThat(mean(z)).isCloseTo(0, within(1e-3));
      double spread = uncertainty.spreads().of(source);
      assertThat(deviation(z)).isCloseTo(spread, within(0.01 * spread));
    }
    for (int opening : new int[] {0, 5, 16, 32}) {
      double[] g =
          engines.stream().mapToDouble(e -> StrictMath.log(e.residual()[opening])).toArray();
      assertThat(mean(g)).isCloseTo(0, within(1e-3));
      double spread = uncertainty.residual().value();
      assertThat(deviation(g)).isCloseTo(spread, within(0.02 * spread));
    }
    // Two openings a quarter of the throttle apart: correlation e^(−1/2), by the kernel.
    int quarter = AssessedSetting.openings().indexOf(ThrottleOpening.ofEighths(2));
    int half = AssessedSetting.openings().indexOf(ThrottleOpening.ofEighths(4));
    double product =
        engines.stream()
            .mapToDouble(
                e -> StrictMath.log(e.residual()[quarter]) * StrictMath.log(e.residual()[half]))
            .average()
            .orElseThrow();
    double spread = uncertainty.residual().value();
    assertThat(product / spread / spread).isCloseTo(StrictMath.exp(-0.5), within(0.02));
  }

  private static double mean(double[] x) {
    return java.util.Arrays.stream(x).average().orElseThrow();
  }

  private static double deviation(double[] x) {
    double mean = mean(x);
    return Math.sqrt(
        java.util.Arrays.stream(x).map(v -> (v - mean) * (v - mean)).average().orElseThrow());
  }

  @Test
  void standardError_isThatOfAShare() {
    Coverage coverage =
        new Coverage(400, 380, List.of(), List.of(), List.of(), SearchEnding.COMPLETE);
    assertThat(coverage.share()).isEqualTo(0.95);
    assertThat(coverage.standardError()).isCloseTo(0.0109, within(1e-4)); // √(0.95·0.05/400)
  }

  @Test
  void engines_outOfRange_areRefused() {
    assertThatThrownBy(() -> Coverage.of(Shelf.SHEET, KIT, RISK, 0, Run.alone()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("engines to draw 0: allowed 1 to 65536");
  }
}
