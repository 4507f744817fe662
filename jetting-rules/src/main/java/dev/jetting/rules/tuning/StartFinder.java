package dev.jetting.rules.tuning;

import static java.util.Comparator.comparingDouble;

import com.google.common.base.Suppliers;
import dev.jetting.core.calibration.CalibratedModel;
import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.calibration.Reading;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.PartsAtHand;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.rules.search.Choices;
import dev.jetting.rules.search.FoundSetting;
import dev.jetting.rules.search.Run;
import dev.jetting.rules.search.SettingSearch;
import dev.jetting.rules.search.Standing;
import dev.jetting.units.JetBore;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import dev.jetting.units.TradeStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * Finds the setting to start with by an exact search over the parts at hand: rich by the caution of
 * an engine that nobody has read, and nowhere richer than it runs. Where both cannot be had the
 * caution gives way, down to what the owner accepts. Where even that leaves it too rich to idle,
 * the parts for small openings are those on which it runs, and the rider feels them first.
 */
final class StartFinder {

  /** The accepted risk before anybody has ridden, at most (assumed). */
  private static final double CAUTION = 0.005;

  /** How many of the best are looked at for one that runs at idle and an eighth (assumed). */
  private static final int LOOKED_AT = 20;

  /** Standard deviation of ln λ of the imagined reading that narrows the start (a sensor's). */
  private static final double SHARP = Meanings.assumed().accuracyOf(Instrument.WIDEBAND);

  private StartFinder() {}

  static StartingSetting find(SetupSheet sheet, RiskModel riskModel) {
    SetupSheet within =
        sheet.withSetup(sheet.setup().withSetting(ScrewReach.within(sheet.setup().setting())));
    Candidate best = best(within, sheet, riskModel);
    Optional<AssessedSetting> felt =
        runsAtSmall(best.assessed())
            ? Optional.empty()
            : new FeltFirst(within, riskModel, choices(within)).from(best.found.setting());
    AssessedSetting assessed = felt.orElseGet(best::assessed);
    Setting setting = assessed.setting();
    SetupSheet start = sheet.withSetup(sheet.setup().withSetting(setting));
    RiskProfile profile = assessed.profile();
    return new StartingSetting(
        setting,
        profile,
        felt.isPresent() ? StartingSetting.Standing.FELT_FIRST : best.asAStart(),
        nextRicher(setting, sheet.parts()),
        mostTelling(start, profile, AssessedSetting.known(start, riskModel)));
  }

  /**
   * The first that runs and holds on climbs; else the nearest that is accepted and holds on them;
   * where none does, the first that runs, or the nearest.
   */
  private static Candidate best(SetupSheet within, SetupSheet sheet, RiskModel riskModel) {
    double accepted = sheet.riding().acceptedRisk().value();
    List<Candidate> running = new ArrayList<>();
    for (double risk : risks(accepted)) {
      for (FoundSetting found : search(within, risk, riskModel)) {
        Candidate candidate = Candidate.of(found, sheet, riskModel);
        if (candidate.runs() && candidate.holdsOnClimbs()) {
          return candidate;
        }
        if (candidate.runs()) {
          running.add(candidate);
        }
      }
    }
    List<Candidate> nearest =
        search(within, accepted, riskModel).stream()
            .map(found -> Candidate.of(found, sheet, riskModel))
            .toList();
    return nearest.stream()
        .filter(Candidate::holdsOnClimbs)
        .findFirst()
        .or(() -> running.stream().findFirst())
        .orElse(nearest.get(0));
  }

  /** A setting that the search has found, assessed once, and only where somebody asks. */
  private record Candidate(FoundSetting found, Supplier<AssessedSetting> assessment) {

    static Candidate of(FoundSetting found, SetupSheet sheet, RiskModel riskModel) {
      SetupSheet with = sheet.withSetup(sheet.setup().withSetting(found.setting()));
      return new Candidate(found, Suppliers.memoize(() -> AssessedSetting.of(with, riskModel)));
    }

    AssessedSetting assessed() {
      return assessment.get();
    }

    boolean holdsOnClimbs() {
      return !assessed().worst().leanRisk().isMoreThan(assessed().sheet().riding().acceptedRisk());
    }

    /** Whether it is safe by what was asked, and at idle and an eighth not too rich to run. */
    boolean runs() {
      return switch (found.standing()) {
        case RIGHT -> true;
        case TOO_LEAN -> false;
        case TOO_RICH -> runsAtSmall(assessed());
      };
    }

    StartingSetting.Standing asAStart() {
      if (found.standing() == Standing.TOO_LEAN || !holdsOnClimbs()) {
        return StartingSetting.Standing.TOO_LEAN;
      }
      return assessed().profile().points().stream().anyMatch(StartFinder::isTooRich)
          ? StartingSetting.Standing.RICH
          : StartingSetting.Standing.CLEAN;
    }
  }

  /** Whether the engine runs at idle and an eighth: it is not too rich there. */
  static boolean runsAtSmall(AssessedSetting assessed) {
    return Stream.of(ThrottleOpening.CLOSED, Held.EIGHTH)
        .map(at -> assessed.profile().nearest(at))
        .noneMatch(StartFinder::isTooRich);
  }

  /** The first with which the engine runs: a fifth and a half of what is accepted (assumed). */
  private static double[] risks(double accepted) {
    return new double[] {Math.min(CAUTION, 0.2 * accepted), 0.2 * accepted, 0.5 * accepted};
  }

  private static boolean isTooRich(RiskPoint point) {
    return point.lambda().isLessThan(point.richLimit());
  }

  /**
   * The best first; at least one, as the sheet's own setting is among the choices. What is accepted
   * here has the caution in it, and the search is to spend all of it.
   */
  private static List<FoundSetting> search(SetupSheet sheet, double accepted, RiskModel riskModel) {
    SetupSheet cautious =
        sheet.withRiding(sheet.riding().withAcceptedRisk(Probability.of(accepted)));
    return SettingSearch.of(cautious, choices(cautious), riskModel)
        .spending(1)
        .best(LOOKED_AT, Run.alone())
        .settings();
  }

  private static Choices choices(SetupSheet sheet) {
    Choices all = Choices.of(sheet).allOwned();
    return Choices.builder()
        .pilotJets(all.pilotJets())
        .screws(all.screws().stream().filter(ScrewReach::holds).toList())
        .cutaways(all.cutaways())
        .needleJets(all.needleJets())
        .needles(all.needles())
        .mainJets(all.mainJets())
        .build();
  }

  /** The opening whose reading takes most off the spread of ln λ over the riding. */
  private static ThrottleOpening mostTelling(
      SetupSheet start, RiskProfile profile, Calibration known) {
    MixtureModel model = MixtureModel.of(start.setup());
    return Held.OPENINGS.stream()
        .min(
            comparingDouble(
                held -> {
                  RiskPoint there = profile.nearest(held);
                  Reading imagined =
                      Reading.measured(
                          start.setup(), held, there.mixture().speed(), there.lambda(), SHARP);
                  Calibration read = known.with(List.of(imagined));
                  return spread(start, profile, read.on(model));
                }))
        .orElseThrow();
  }

  private static double spread(SetupSheet start, RiskProfile profile, CalibratedModel engine) {
    return profile
        .mean(
            start.riding().profile(),
            point -> {
              double deviation =
                  engine.lnLambda(point.mixture().throttle(), point.mixture().speed()).deviation();
              return deviation * deviation;
            })
        .orElse(0.0);
  }

  private static List<String> nextRicher(Setting setting, PartsAtHand parts) {
    List<String> names = new ArrayList<>();
    bigger(setting.mainJet(), parts.mainJets())
        .limit(2)
        .forEach(jet -> names.add(TradeStyle.main(jet)));
    bigger(setting.pilotJet(), parts.pilotJets())
        .limit(1)
        .forEach(jet -> names.add(TradeStyle.pilot(jet)));
    return names;
  }

  private static Stream<JetBore> bigger(JetBore own, List<JetBore> jets) {
    return jets.stream().filter(jet -> jet.compareTo(own) > 0).sorted();
  }
}
