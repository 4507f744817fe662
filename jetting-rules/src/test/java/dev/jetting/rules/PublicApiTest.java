package dev.jetting.rules;

import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import com.google.common.collect.ImmutableMap;
import dev.jetting.core.air.Air;
import dev.jetting.core.air.Psychrometrics;
import dev.jetting.core.elementary.CompressibleThroat;
import dev.jetting.core.engine.LoadLine;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.rules.laws.LawKit;
import dev.jetting.rules.risk.MixtureSeries;
import dev.jetting.rules.risk.Riding;
import dev.jetting.units.Area;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.Diameter;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.JetBore;
import dev.jetting.units.Pressure;
import dev.jetting.units.Temperature;
import dev.jetting.units.ThrottleOpening;
import dev.jetting.units.Uncertain;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.Parameter;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a stranger meets in the library: names, parameters, and how values are made and copied. */
class PublicApiTest {

  /** Records that only the library makes; an outsider reads them. */
  private static final Set<String> RESULTS =
      Set.of(
          "AirCase",
          "AssessedSetting",
          "CarburettorRating",
          "ChoiceIndices",
          "CompressibleThroat",
          "Correction",
          "Coverage",
          "ExtraPart",
          "FindingChange",
          "Found",
          "FoundSetting",
          "FuelSensitivities",
          "KitCoverage",
          "KitValidation",
          "MachineResult",
          "MixturePoint",
          "MovedSetting",
          "NextChange",
          "NextStep.NotToBeRidden",
          "NextTest",
          "Overrun",
          "PartEffect",
          "PartUse",
          "Plan.Left",
          "ProfileDifference.Row",
          "ProofUse",
          "RankedFinding",
          "Remedy.Aim",
          "Remedy.Change",
          "Remedy.Effect",
          "Remedy.State",
          "Report",
          "ReportDifference",
          "RiskLeft",
          "RiskPoint",
          "RuleMargin",
          "RuleRemark",
          "RuleResult",
          "RulebookEdition",
          "Sensitivities",
          "SettingDifference",
          "SettingDifference.PartChange",
          "SheetImpact",
          "SizeSensitivities",
          "StartingSetting",
          "MixtureSeries.Row",
          "UphillRisk",
          "Verdict",
          "WaivedDanger",
          "WorstSpot");

  /** Records that are made step by step, each step with a name. */
  private static final Map<String, String> IN_STEPS =
      ImmutableMap.<String, String>builder()
          .put("Ceiling", "Waiver.of(report, finding)")
          .put("Coefficient", "Coefficient.assumed, sourced and calculated")
          .put("Finding", "Finding.above and below, with and says")
          .put(
              "JetCalibration",
              "JetCalibration.fromMeasurement; all components are of different types")
          .put("KitWaiver", "KitWaiver.of(…).by(…).because(…)")
          .put("Margin", "Margin.atMost and atLeast")
          .put("Meanings", "Meanings.assumed() and its withers, by colour, symptom and sensor")
          .put("Outcome", "Outcome.passed, failed and notEvaluated")
          .put("Rule.Draft", "Rule.named(…)")
          .put("Run", "Run.alone and on, with until")
          .put("Waiver", "Waiver.of(…).by(…).because(…)")
          .buildOrThrow();

  /** Two neighbours of one type, and why no swap can pass unseen. */
  private static final Map<String, String> NEIGHBOURS = new TreeMap<>();

  static {
    String refused = "the constructor refuses a swap";
    allow(refused, "Area.ofRing", "ClipPosition.fromTop", "ClipPosition.fromBottom");
    allow(
        refused, "CompressibleThroat.compressibleToIncompressible", "LoadLine", "Riding.withDays");
    allow(refused, "Coefficient.assumed", "Coefficient.calculated", "Coefficient.sourced");
    allow(refused, "Finding.above", "Finding.below");
    allow(refused, "Psychrometrics.humidityFromDewPoint", "Psychrometrics.humidityFromWetBulb");
    allow(refused, "Psychrometrics.humidityRatioFromWetBulb", "ThrottleBand");
    allow(refused, "ThrottleBand.eighths", "MixtureSeries.Interval", "Uncertain");
    String order = "the order is that of a formula, a table or time, everywhere";
    allow(order, "ElementalComposition", "ElementalComposition.ofMasses", "FuelErrors.mean");
    allow(order, "FuelErrors.variance", "JetSeries.regular", "JetSeries.stepsBetween", "Normal");
    allow(order, "RpmCurve.Point.of", "ReportDifference.between", "RulebookImpact.of");
    allow(order, "RulebookImpact.assessing", "ElementaryCarburettor.inOtherAir", "Progress.done");
    String sentence = "read as a sentence: what it is, then what it is held against";
    allow(sentence, "Argument.lambda", "Argument.risk", "CarburettorComparison.of", "Coverage.of");
    allow(sentence, "Margin.atMost", "Margin.atLeast");
    allow(sentence, "TradeStyle.probability");
    String texts = "texts of different form: a swap shows in every message";
    allow(texts, "Finding.Texts.says", "InvalidValueException.of", "Sentence.refused");
    allow(texts, "InvalidValueException.worded", "Message", "Message.named", "Message.of");
    allow(texts, "Rulebook.mergedWith", "Rulebook.of");
    allow("prices of a carburettor and of its jets, added up", "CarburettorComparison.Offer");
  }

  private static void allow(String why, String... names) {
    for (String name : names) {
      NEIGHBOURS.put(name, why);
    }
  }

  @Test
  void simpleNames_standOnceInTheLibrary() {
    Map<String, Long> times =
        Library.classes().stream()
            .filter(type -> type.getEnclosingClass() == null)
            .collect(groupingBy(Class::getSimpleName, TreeMap::new, counting()));
    assertThat(times).containsKeys("Report", "Lambda", "MixtureModel").hasSizeGreaterThan(400);
    assertThat(times.entrySet()).allMatch(entry -> entry.getValue() == 1);
  }

  /** A shorter one would reset what it does not mention. */
  @Test
  void records_haveOneConstructor() {
    List<String> more =
        records()
            .filter(type -> type.getConstructors().length != 1)
            .map(PublicApiTest::name)
            .toList();
    // Words or a message: the same advice, as data.
    assertThat(more).containsExactly("Remedy.Advice");
  }

  @Test
  void recordsThatAnOutsiderMakes_haveABuilderAndAWitherForEachComponent() {
    List<String> lacking = new ArrayList<>();
    Set<String> known = new TreeSet<>();
    records()
        .filter(type -> type.getRecordComponents().length > 3)
        .forEach(
            type -> {
              known.add(name(type));
              if (!RESULTS.contains(name(type)) && !IN_STEPS.containsKey(name(type))) {
                lacking.addAll(lacking(type));
              }
            });
    // What was guessed goes with how wide it makes the spreads: withGuesses.
    assertThat(lacking).containsExactly("ModelUncertainty has no withGuessed");
    assertThat(known).containsAll(IN_STEPS.keySet());
  }

  @Test
  void results_areThere() {
    assertThat(records().map(PublicApiTest::name)).containsAll(RESULTS);
  }

  /** A builder's component and a wither. */
  private static List<String> lacking(Class<?> type) {
    if (!hasBuilder(type)) {
      return List.of(name(type) + " has no builder");
    }
    Class<?> builder =
        Arrays.stream(type.getMethods())
            .filter(method -> method.getName().equals("toBuilder"))
            .findFirst()
            .orElseThrow()
            .getReturnType();
    List<String> lacking = new ArrayList<>();
    for (RecordComponent component : type.getRecordComponents()) {
      String name = component.getName();
      String wither = "with" + name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
      if (!hasMethod(builder, name)) {
        lacking.add(name(builder) + " has no " + name);
      }
      if (!hasMethod(type, wither)) {
        lacking.add(name(type) + " has no " + wither);
      }
    }
    return lacking;
  }

  private static boolean hasBuilder(Class<?> type) {
    Set<String> methods =
        Arrays.stream(type.getMethods()).map(Method::getName).collect(Collectors.toSet());
    return methods.contains("builder") && methods.contains("toBuilder");
  }

  private static boolean hasMethod(Class<?> type, String name) {
    return Arrays.stream(type.getMethods())
        .anyMatch(method -> method.getName().equals(name) && method.getParameterCount() > 0);
  }

  /** Jet and jet, area and area: what the compiler cannot keep apart has names. */
  @Test
  void neighboursOfOneType_haveNamesOrAReason() {
    Set<String> found =
        Library.exported().stream()
            .flatMap(PublicApiTest::callable)
            .filter(PublicApiTest::hasNeighboursOfOneType)
            .filter(each -> !isNamedOtherwise(each))
            .map(PublicApiTest::name)
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(found).isEqualTo(NEIGHBOURS.keySet());
  }

  @ParameterizedTest
  @MethodSource("swapped")
  void neighboursWhoseSwapIsRefused_areRefused(ThrowingCallable swapped) {
    assertThatIllegalArgumentException().isThrownBy(swapped);
  }

  static Stream<ThrowingCallable> swapped() {
    Riding riding = LawKit.plainSheet().riding();
    Air cold = air(-5);
    Air hot = air(30);
    return Stream.of(
        () -> Area.ofRing(Diameter.ofMillimetres(2.5), Diameter.ofMillimetres(2.7)),
        () -> ClipPosition.fromTop(5, 2),
        () -> ClipPosition.fromBottom(5, 2),
        () ->
            CompressibleThroat.compressibleToIncompressible(
                Pressure.ofPascals(9000), Pressure.ofPascals(100_000)),
        () -> new LoadLine(EngineSpeed.ofRpm(9000), EngineSpeed.ofRpm(1500)),
        () -> riding.withDays(hot, cold),
        () ->
            Psychrometrics.humidityFromDewPoint(
                Temperature.ofCelsius(10), Temperature.ofCelsius(20)),
        () ->
            Psychrometrics.humidityFromWetBulb(
                Temperature.ofCelsius(10), Temperature.ofCelsius(20), cold.pressure()),
        () ->
            Psychrometrics.humidityRatioFromWetBulb(
                Temperature.ofCelsius(10), Temperature.ofCelsius(20), cold.pressure()),
        () -> new ThrottleBand(ThrottleOpening.FULL, ThrottleOpening.CLOSED),
        () -> ThrottleBand.eighths(5, 2),
        () -> new MixtureSeries.Interval(1.1, 0.9),
        () -> Coefficient.assumed(1.5, "by hand", "1"),
        () -> Coefficient.calculated(1.5, "π/4", "mm²"),
        () -> Coefficient.sourced(1.5, "data sheet", "kg/m³"),
        () ->
            Finding.above(
                "setting.mainJet", Measure.ratio(1), Measure.ratio(2), ThrottleBand.WHOLE),
        () ->
            Finding.below(
                "setting.mainJet", Measure.ratio(2), Measure.ratio(1), ThrottleBand.WHOLE),
        () ->
            new Uncertain<>(
                JetBore.ofMillimetres(1), JetBore.ofMillimetres(1.1), JetBore.ofMillimetres(0.9)));
  }

  private static Air air(double celsius) {
    Air day = LawKit.plainSheet().setup().air();
    return Air.of(day.pressure(), Temperature.ofCelsius(celsius), day.humidity());
  }

  private static Stream<Executable> callable(Class<?> type) {
    return Stream.concat(
            Arrays.stream(type.getConstructors()), Arrays.stream(type.getDeclaredMethods()))
        .map(Executable.class::cast)
        .filter(each -> Modifier.isPublic(each.getModifiers()) && !each.isSynthetic());
  }

  private static boolean hasNeighboursOfOneType(Executable each) {
    Parameter[] parameters = each.getParameters();
    for (int i = 1; i < parameters.length; i++) {
      if (parameters[i].getParameterizedType().equals(parameters[i - 1].getParameterizedType())) {
        return true;
      }
    }
    return false;
  }

  /** Java makes the constructor of a public record public, whatever else names its components. */
  private static boolean isNamedOtherwise(Executable each) {
    Class<?> type = each.getDeclaringClass();
    return each instanceof Constructor
        && type.isRecord()
        && (hasBuilder(type) || RESULTS.contains(name(type)) || IN_STEPS.containsKey(name(type)));
  }

  private static Stream<Class<?>> records() {
    return Library.exported().stream().filter(Class::isRecord);
  }

  private static String name(Executable each) {
    String type = name(each.getDeclaringClass());
    return each instanceof Constructor ? type : type + "." + each.getName();
  }

  private static String name(Class<?> type) {
    Class<?> outer = type.getEnclosingClass();
    return outer == null ? type.getSimpleName() : name(outer) + "." + type.getSimpleName();
  }
}
