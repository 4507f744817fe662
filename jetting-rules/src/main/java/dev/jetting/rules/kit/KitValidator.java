package dev.jetting.rules.kit;

import com.google.common.base.Suppliers;
import dev.jetting.core.air.Air;
import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.mixture.FullThrottleDraw;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.PartsAtHand;
import dev.jetting.rules.Report;
import dev.jetting.rules.RuleResult;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.Severity;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.risk.WorstSpot;
import dev.jetting.rules.risk.WorstSpot.Day;
import dev.jetting.rules.standard.StandardRulebook;
import dev.jetting.units.VolumeFlow;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Supplier;

/**
 * A validator of kits before they are sold. It checks that the parts fit each other, and that what
 * the seller recommends is safe on every day and with every fuel of the market. It counts for how
 * many engines of each kind the kit has a right setting. Immutable; any number of threads may share
 * one.
 *
 * <p>Findings on the kit itself have these ids: {@code kit-unknown-id}, {@code kit-part-fits},
 * {@code kit-part-in-kit}, {@code kit-part-kind}, {@code kit-needle-in-needle-jet}, {@code
 * kit-clip-grooves}, {@code kit-screw-kind}, {@code kit-setting}, {@code kit-float-valve-flow},
 * {@code kit-coverage} and {@code kit-part-never-used}; findings on a recommended setting have
 * those of the rulebook.
 *
 * <p>Not for a setting that somebody rides already: assess its {@link SetupSheet}.
 */
public final class KitValidator {

  private final Catalogue catalogue;
  private final Rulebook rulebook;
  private final RiskModel riskModel;
  private final List<KitWaiver> waivers;
  private final LocalDate day;

  private KitValidator(
      Catalogue catalogue,
      Rulebook rulebook,
      RiskModel riskModel,
      List<KitWaiver> waivers,
      LocalDate day) {
    this.catalogue = Objects.requireNonNull(catalogue, "catalogue");
    this.rulebook = Objects.requireNonNull(rulebook, "rulebook");
    this.riskModel = Objects.requireNonNull(riskModel, "riskModel");
    this.waivers = List.copyOf(waivers);
    this.day = Objects.requireNonNull(day, "day");
  }

  /**
   * A validator with the standard rulebook and the library's own assumed limits and spreads.
   *
   * @param catalogue the catalogue by whose ids kits speak
   * @return the validator
   */
  public static KitValidator of(Catalogue catalogue) {
    return of(catalogue, StandardRulebook.rulebook(), RiskModel.assumed());
  }

  /**
   * A validator.
   *
   * @param catalogue the catalogue by whose ids kits speak
   * @param rulebook the rulebook that recommended settings are held against
   * @param riskModel limits, spreads and steps
   * @return the validator
   */
  public static KitValidator of(Catalogue catalogue, Rulebook rulebook, RiskModel riskModel) {
    return new KitValidator(catalogue, rulebook, riskModel, List.of(), LocalDate.EPOCH);
  }

  /**
   * This validator with waivers of findings on machines. A waived finding stays in the result, with
   * its waiver. Waivers of other kits are left alone.
   *
   * @param kitWaivers the waivers; the first that covers a finding counts for it
   * @param today the day by which they expire, from the caller's own clock
   * @return the changed validator
   */
  public KitValidator waiving(List<KitWaiver> kitWaivers, LocalDate today) {
    return new KitValidator(catalogue, rulebook, riskModel, kitWaivers, today);
  }

  /**
   * Looks into a kit.
   *
   * @param kit the kit
   * @param depth how far
   * @return what is to be said of it; never throws for a bad kit
   * @throws CancellationException if the thread is interrupted, whose interrupt status stays set: a
   *     part of the checks gives no result
   */
  public KitValidation validate(Kit kit, KitDepth depth) {
    Objects.requireNonNull(depth, "depth");
    KitFindings findings = new KitFindings();
    List<Fitted> fitted = FitCheck.of(catalogue, kit, findings);
    fitted.forEach(each -> findScrewKind(each, depth, findings));
    Optional<Market> market = catalogue.market(kit.market());
    List<MachineResult> machines = new ArrayList<>();
    KitWaivers its = new KitWaivers(kit, waivers, day);
    Supplier<PartsInKit> parts = parts(kit, fitted);
    if (market.isPresent()) {
      for (Fitted each : fitted) {
        checkInterrupt();
        if (isKitsOwn("float-valve-flow", depth)) {
          findFloatValve(each, market.get(), findings);
        }
        if (depth != KitDepth.FIT) {
          List<MachineResult> results = machines(kit, each, market.get(), depth, its, parts.get());
          results.forEach(result -> findCoverage(each, result, findings, its));
          machines.addAll(results);
        }
      }
    }
    NeverUsed.find(catalogue, kit, fitted, machines, parts, findings);
    boolean passes =
        !findings.danger()
            && !findings.isCoverageOpen()
            && machines.stream().allMatch(MachineResult::passes);
    return new KitValidation(
        KitValidation.SCHEMA_VERSION,
        kit.id(),
        depth,
        rulebook.edition(),
        passes,
        findings.ranked(),
        machines,
        its.unused(depth));
  }

  /** Of the one family that a kit is for; worked out once, for it goes through the catalogue. */
  private Supplier<PartsInKit> parts(Kit kit, List<Fitted> fitted) {
    return Suppliers.memoize(() -> new PartsInKit(catalogue, kit, fitted.get(0).family()));
  }

  static void checkInterrupt() {
    if (Thread.currentThread().isInterrupted()) {
      throw new CancellationException("interrupted while validating a kit: there is no result");
    }
  }

  /** Returns whether this validator, not the rulebook, reports the check at this depth. */
  private boolean isKitsOwn(String ruleId, KitDepth depth) {
    return depth == KitDepth.FIT || rulebook.rule(ruleId).isEmpty();
  }

  private void findScrewKind(Fitted fitted, KitDepth depth, KitFindings findings) {
    Setting setting = fitted.setting();
    if (setting.screw().kind() != setting.carburettor().pilot().screwKind()
        && isKitsOwn("screw-kind", depth)) {
      findings.screwKind(
          "recommendations[" + fitted.place() + "].screw",
          setting.screw().kind(),
          setting.carburettor().pilot().screwKind());
    }
  }

  /**
   * Found where the valve passes less than full throttle draws, without any reserve. Where the
   * bound on the draw settles it, the model need not be asked.
   */
  private static void findFloatValve(Fitted fitted, Market market, KitFindings findings) {
    VolumeFlow passes = fitted.setting().carburettor().floatValve().greatestFlow();
    List<Air> days = List.of(market.air(), market.riding().coldest(), market.riding().hottest());
    Setup setup = fitted.setup(market, market.fuels().get(0));
    if (FullThrottleDraw.atMost(setup, days, market.fuels()).isMoreThan(passes)) {
      VolumeFlow most = most(setup, days, market.fuels());
      if (most.isMoreThan(passes)) {
        findings.floatValve("recommendations[" + fitted.place() + "].floatValve", most, passes);
      }
    }
  }

  private static VolumeFlow most(Setup setup, List<Air> days, List<Fuel> fuels) {
    return fuels.stream()
        .map(setup::withFuel)
        .flatMap(fuelled -> days.stream().map(fuelled::withAir))
        .map(FullThrottleDraw::of)
        .reduce((a, b) -> b.isMoreThan(a) ? b : a)
        .orElseThrow();
  }

  private static void findCoverage(
      Fitted fitted, MachineResult result, KitFindings findings, KitWaivers its) {
    result
        .coverage()
        .filter(coverage -> !coverage.isEnough())
        .ifPresent(
            coverage ->
                findings.coverage(
                    "recommendations[" + fitted.place() + "], fuel " + result.fuel(),
                    result.machine(),
                    result.fuel(),
                    coverage,
                    its.ofCoverage(coverage, fitted, result.fuel())));
  }

  private List<MachineResult> machines(
      Kit kit, Fitted fitted, Market market, KitDepth depth, KitWaivers its, PartsInKit parts) {
    List<MachineResult> results = new ArrayList<>();
    RiskModel itsRiskModel =
        riskModel
            .widerByPilotJet(fitted.pilotUncertainty())
            .widerByMainJet(fitted.mainUncertainty());
    for (SetupSheet sheet : sheets(kit, fitted, market, parts)) {
      AssessedSetting setting = AssessedSetting.of(sheet, itsRiskModel);
      Report report = its.report(rulebook, setting, fitted.machine(), results.size() + 1);
      results.add(
          new MachineResult(
              fitted.machine().id(),
              results.size() + 1,
              report.passes(),
              CornerRisk.of(WorstSpot.of(Day.TODAY, report.profile())),
              CornerRisk.of(WorstSpot.of(Day.COLDEST, report.coldestDay())),
              CornerRisk.of(WorstSpot.of(Day.HOTTEST, report.hottestDay())),
              report.findings(),
              unanswered(report),
              depth == KitDepth.COVERAGE
                  ? new CoverageStudy(catalogue, riskModel)
                      .of(sheet, parts.parts(), fitted.family())
                  : Optional.empty()));
    }
    return results;
  }

  private static List<String> unanswered(Report report) {
    return report.results().stream()
        .filter(KitValidator::unanswered)
        .map(RuleResult::ruleId)
        .toList();
  }

  private static boolean unanswered(RuleResult result) {
    return switch (result.outcome().status()) {
      case NOT_EVALUATED -> result.severity() == Severity.DANGER;
      case BROKEN -> true;
      case PASSED, FAILED, NOT_APPLICABLE -> false;
    };
  }

  /**
   * The setup sheets that a kit makes: each recommended setting that can be put together, with each
   * fuel of the market. At hand are the jets of the kit, and the slides, needle jets and needles
   * that the catalogue has for the family. A rulebook's full {@link Report} on one of them has more
   * detail than a {@link MachineResult}. If jets are numbered by flow, the same risk needs {@link
   * RiskModel#widerByMainJet} and {@link Catalogue#boreUncertainty}.
   *
   * @param kit the kit
   * @return the sheets in the order of the kit and its market; none if the kit cannot be put
   *     together
   */
  public List<SetupSheet> sheets(Kit kit) {
    Optional<Market> market = catalogue.market(kit.market());
    List<Fitted> fitted = FitCheck.of(catalogue, kit, new KitFindings());
    Supplier<PartsInKit> parts = parts(kit, fitted);
    return market.stream()
        .flatMap(
            its -> fitted.stream().flatMap(each -> sheets(kit, each, its, parts.get()).stream()))
        .toList();
  }

  private static List<SetupSheet> sheets(Kit kit, Fitted fitted, Market market, PartsInKit inKit) {
    PartsAtHand parts = inKit.atHand();
    return market.fuels().stream()
        .map(
            fuel ->
                SetupSheet.builder()
                    .title(kit.id() + " on " + fitted.machine().id())
                    .setup(fitted.setup(market, fuel))
                    .riding(market.riding())
                    .parts(parts)
                    .provenance(fitted.provenance())
                    .build())
        .toList();
  }
}
