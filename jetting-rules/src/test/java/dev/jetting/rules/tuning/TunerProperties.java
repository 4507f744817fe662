package dev.jetting.rules.tuning;

import static net.jqwik.api.Combinators.combine;
import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.Present;
import dev.jetting.rules.Report;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.arbitraries.PlausibleArbitraries;
import dev.jetting.rules.risk.RiddenSpeeds;
import dev.jetting.units.Lambda;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;

/** Whatever the machine and whatever is read on it, sense or nonsense. */
class TunerProperties {

  private static final int MANY = 150;

  /** A session that is being led, with everything that was done. */
  record Led(Tuner tuner, SetupSheet sheet, long seed) {

    List<Taken> toItsEnd() {
      Random chance = new Random(seed);
      TuningSession session = TuningSession.beginning(sheet);
      List<Taken> taken = new ArrayList<>();
      NextStep step = tuner.next(session);
      while (!step.isEnd() && taken.size() < MANY) {
        taken.add(new Taken(session, step));
        session = Sessions.take(session, step, (now, test) -> read(now, test, chance));
        step = tuner.next(session);
      }
      taken.add(new Taken(session, step));
      return taken;
    }

    /** Mostly near the truth, at times off, at times anything at all. */
    private static Evidence read(TuningSession session, NextTest test, Random chance) {
      return chance.nextInt(8) == 0
          ? anything(test, chance)
          : Sessions.read(session, test, 0.08 * chance.nextGaussian());
    }

    private static Evidence anything(NextTest test, Random chance) {
      if (test.kind() == NextTest.Kind.RUN_DOWN) {
        return new Evidence.Overrun(pick(RunDown.values(), chance));
      }
      return switch (test.instrument()) {
        case WIDEBAND, EXHAUST_THERMOMETER ->
            new Evidence.Wideband(Lambda.of(0.6 + 0.7 * chance.nextDouble()));
        case PLUG -> new Evidence.Colour(pick(PlugColour.values(), chance));
        case FEEL -> felt(test, chance);
      };
    }

    private static Evidence felt(NextTest test, Random chance) {
      return test.kind() == NextTest.Kind.IDLE && chance.nextBoolean()
          ? new Evidence.Idle(pick(IdleAnswer.values(), chance))
          : new Evidence.Felt(pick(Symptom.values(), chance));
    }

    private static <T> T pick(T[] values, Random chance) {
      return values[chance.nextInt(values.length)];
    }
  }

  record Taken(TuningSession session, NextStep step) {
    Setting setting() {
      return session.now().setup().setting();
    }
  }

  /** A session costs a second or so: every refusal is looked for in each. */
  @Property(tries = 15, shrinking = ShrinkingMode.OFF)
  void next_toTheEnd_keepsTheRefusalsOfTheTrade(@ForAll("led") Led led) {
    List<Taken> all = led.toItsEnd();
    ends(all);
    ridesAfterHarmOnlyOnceRicherThere(led, all);
    makesRicherWhereTheSignWas(led, all);
    leansOnlyWhatWasRead(led, all);
    leansOnlyAfterAReadingAndByLittle(led, all);
    changesOnePartAndNoLeap(all);
    confirmsOnlyWhereFullThrottleWasRead(led, all);
    testsWhereTheThrottleCanBeHeld(all);
    ridesAndEndsWhereTheReportAgrees(led, all);
  }

  private static void ends(List<Taken> all) {
    assertThat(last(all).step.isEnd()).isTrue();
  }

  /** Nothing is ridden before the opening of a dangerous sign is richer by what it asks for. */
  private static void ridesAfterHarmOnlyOnceRicherThere(Led led, List<Taken> all) {
    for (Taken taken : all) {
      if (Sessions.test(taken.step).isPresent()) {
        for (TuningStep step : taken.session.steps()) {
          for (Observation seen : harm(led.tuner, step)) {
            Sign there = new Sign(step.setup(), seen, Sign.Kind.STOP);
            assertThat(there.lnLambda(taken.session.now().setup()) - there.lnLambda(step.setup()))
                .isLessThanOrEqualTo(-0.06);
          }
        }
      }
    }
  }

  private static List<Observation> harm(Tuner tuner, TuningStep step) {
    return step.observations().stream().filter(seen -> isHarm(tuner, step, seen)).toList();
  }

  private static boolean isHarm(Tuner tuner, TuningStep step, Observation seen) {
    if (seen.evidence() instanceof Evidence.Wideband wideband) {
      Lambda limit = tuner.riskModel().limits().lean(seen.throttle(), step.setup().engine().need());
      return wideband.lambda().isMoreThan(limit);
    }
    return Set.of(
            new Evidence.Colour(PlugColour.WHITE),
            new Evidence.Felt(Symptom.PINGS),
            new Evidence.Felt(Symptom.FADES),
            new Evidence.Felt(Symptom.SEIZES))
        .contains(seen.evidence());
  }

  /** What is done about it acts there, and makes no other opening leaner. */
  private static void makesRicherWhereTheSignWas(Led led, List<Taken> all) {
    for (Taken taken : all) {
      if (taken.step instanceof NextStep.MakeRicher richer) {
        Setting to = richer.change().setting();
        Setup now = taken.session.now().setup();
        assertThat(richer.sign().lnLambda(now.withSetting(to)))
            .isLessThan(richer.sign().lnLambda(now) - 0.004);
        assertThat(leanedMost(led.sheet, taken.setting(), to)).isLessThanOrEqualTo(0.003);
      }
    }
  }

  /** No mark goes leaner that was never read, whatever part does it. */
  private static void leansOnlyWhatWasRead(Led led, List<Taken> all) {
    for (Taken taken : all) {
      Optional<NextChange> change = Sessions.change(taken.step);
      if (change.isPresent()) {
        for (ThrottleOpening mark : Held.OPENINGS) {
          double leaned = Sessions.leaner(led.sheet, taken.setting(), change.get().setting(), mark);
          if (leaned > 0.02) {
            assertThat(taken.session.steps())
                .flatExtracting(TuningStep::observations)
                .extracting(Observation::throttle)
                .contains(mark);
          }
        }
      }
    }
  }

  /**
   * No step towards lean on a setting on which nothing was read, nor by more than a careful one,
   * nor back to a setting that was left.
   */
  private static void leansOnlyAfterAReadingAndByLittle(Led led, List<Taken> all) {
    for (Taken taken : all) {
      Optional<NextChange> change = Sessions.change(taken.step);
      if (change.isPresent()) {
        double leaned = leanedMost(led.sheet, taken.setting(), change.get().setting());
        assertThat(leaned).isLessThanOrEqualTo(0.15);
        if (leaned > 0.003) {
          assertThat(taken.session.last().observations()).isNotEmpty();
          assertThat(taken.session.steps())
              .extracting(step -> step.setup().setting())
              .doesNotContain(change.get().setting());
        }
      }
    }
  }

  /** One part at a time, and a jet by two sizes or a tenth at most. */
  private static void changesOnePartAndNoLeap(List<Taken> all) {
    for (Taken taken : all) {
      Optional<NextChange> change = Sessions.change(taken.step);
      if (change.isPresent()) {
        Setting from = taken.setting();
        Setting to = change.get().setting();
        assertThat(Alternatives.partsChanged(from, to)).isEqualTo(1);
        assertThat(Math.abs(to.mainJet().hundredths() - from.mainJet().hundredths()))
            .isLessThanOrEqualTo(Math.max(4.001, 0.1001 * from.mainJet().hundredths()));
        assertThat(Math.abs(to.pilotJet().hundredths() - from.pilotJet().hundredths()))
            .isLessThanOrEqualTo(Math.max(4.001, 0.1001 * from.pilotJet().hundredths()));
      }
    }
  }

  /** Full throttle was read on the very setting that is left, and nothing speaks against it. */
  private static void confirmsOnlyWhereFullThrottleWasRead(Led led, List<Taken> all) {
    Taken end = last(all);
    if (end.step instanceof NextStep.Confirmed) {
      List<Observation> onIt =
          end.session.steps().stream()
              .filter(step -> step.setup().setting().equals(end.setting()))
              .flatMap(step -> step.observations().stream())
              .toList();
      assertThat(onIt).anyMatch(seen -> seen.throttle().equals(ThrottleOpening.FULL));
      SignReader signs = new SignReader(led.tuner);
      assertThat(onIt)
          .filteredOn(
              seen -> signs.sign(end.session.last().setup(), seen).filter(Sign::isLean).isPresent())
          .isEmpty();
      for (ThrottleOpening held : Held.REQUIRED) {
        assertThat(new Findings(led.tuner, end.session).isAnswered(held)).isTrue();
      }
    }
  }

  /** Tests are asked for where a rider can hold the throttle. */
  private static void testsWhereTheThrottleCanBeHeld(List<Taken> all) {
    for (Taken taken : all) {
      Present.often(
          Sessions.test(taken.step), test -> assertThat(Held.MARKS).contains(test.throttle()));
    }
  }

  /**
   * The session and the report on the same sheet with the same evidence have one measure: on the
   * start that is ridden and on the last setting the rulebook finds no danger, and nothing is too
   * lean. Where the first test is the idle, it finds none from 3/16 up: the idle is felt first. A
   * setting that is confirmed or left rich is not too lean on a climb either.
   */
  private static void ridesAndEndsWhereTheReportAgrees(Led led, List<Taken> all) {
    Stream<Taken> first =
        all.stream().filter(taken -> Sessions.test(taken.step).isPresent()).limit(1);
    Taken end = last(all);
    boolean parked =
        end.step instanceof NextStep.NotToBeRidden
            || end.step instanceof NextStep.FaultLeft
            || end.step instanceof NextStep.Refused;
    Stream.concat(first, parked ? Stream.empty() : Stream.of(end))
        .forEach(taken -> theReportRefusesNothing(led, taken));
  }

  private static void theReportRefusesNothing(Led led, Taken taken) {
    boolean idle =
        Sessions.test(taken.step)
            .filter(test -> test.throttle().equals(ThrottleOpening.CLOSED))
            .isPresent();
    ThrottleBand judged =
        idle ? new ThrottleBand(Held.SMALL, ThrottleOpening.FULL) : ThrottleBand.WHOLE;
    Report report = led.tuner.rulebook().evaluate(led.tuner.assess(taken.session).within(judged));
    assertThat(report.verdict().dangers()).isEmpty();
    assertThat(report.verdict().tooLean()).isFalse();
    assertThat(report.verdict().tooLeanOnOverrun()).isFalse();
    if (taken.step instanceof NextStep.Confirmed || taken.step instanceof NextStep.LeftRich) {
      assertThat(report.worst().leanRisk())
          .isLessThanOrEqualTo(taken.session.now().riding().acceptedRisk());
    }
  }

  private static double leanedMost(SetupSheet sheet, Setting from, Setting to) {
    return Held.OPENINGS.stream()
        .mapToDouble(held -> Sessions.leaner(sheet, from, to, held))
        .max()
        .orElseThrow();
  }

  private static Taken last(List<Taken> taken) {
    return taken.get(taken.size() - 1);
  }

  /**
   * From the library's start, on any machine that a tuner would believe, with a typical drawer, on
   * hills and mountains.
   */
  @Provide
  Arbitrary<Led> led() {
    return combine(
            PlausibleArbitraries.sheets().map(Drawer::with),
            Arbitraries.of(0.01, 0.1).map(Probability::of),
            Arbitraries.of(1.5, 3.0).map(RiddenSpeeds::new),
            Arbitraries.of(Instrument.WIDEBAND, Instrument.PLUG),
            Arbitraries.longs())
        .as(
            (plausible, accepted, speeds, instrument, seed) -> {
              SetupSheet sheet =
                  plausible.withRiding(
                      plausible.riding().withAcceptedRisk(accepted).withSpeeds(speeds));
              Tuner tuner = Tuner.readingWith(Set.of(instrument));
              Setting start = tuner.start(sheet).setting();
              return new Led(tuner, sheet.withSetup(sheet.setup().withSetting(start)), seed);
            });
  }
}
