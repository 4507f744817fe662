package dev.jetting.rules;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.calibration.Disturbance;
import dev.jetting.core.calibration.Reading;
import dev.jetting.core.calibration.Spreads;
import dev.jetting.core.elementary.ElementaryCarburettor;
import dev.jetting.core.elementary.Passage;
import dev.jetting.core.engine.InductionKind;
import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.core.parts.Floats;
import dev.jetting.core.parts.FlowCoefficients;
import dev.jetting.core.typical.Cooling;
import dev.jetting.core.typical.MachineValue;
import dev.jetting.core.typical.StateOfTune;
import dev.jetting.core.typical.TypicalEngine;
import dev.jetting.rules.json.KitJson;
import dev.jetting.rules.json.SheetJson;
import dev.jetting.rules.kit.Kit;
import dev.jetting.rules.kit.Recommendation;
import dev.jetting.rules.kit.Shop;
import dev.jetting.rules.laws.LawKit;
import dev.jetting.rules.risk.ModelUncertainty;
import dev.jetting.rules.risk.RiddenSpeeds;
import dev.jetting.rules.risk.RidingProfile;
import dev.jetting.rules.search.Choice;
import dev.jetting.rules.search.Choices;
import dev.jetting.rules.search.NeedlePosition;
import dev.jetting.rules.tuning.Meaning;
import dev.jetting.units.Area;
import dev.jetting.units.Cutaway;
import dev.jetting.units.Density;
import dev.jetting.units.Displacement;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.FloatLevel;
import dev.jetting.units.JetBore;
import dev.jetting.units.Lambda;
import dev.jetting.units.Length;
import dev.jetting.units.Probability;
import dev.jetting.units.ScrewTurns;
import dev.jetting.units.TemperatureDifference;
import dev.jetting.units.ThrottleOpening;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.TypeVariable;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each record with a builder survives a copy, and each wither changes its component alone. */
class BuildersTest {

  private static final Path EXAMPLES = Path.of("../examples");

  /** Withers that on purpose do more than their name says; each says so in its Javadoc. */
  private static final Set<String> DO_MORE =
      Set.of(
          "SetupSheet.withSetup", // what was proven stays what it was
          "Setting.withCarburettor"); // the floats belong to the other one

  private static final int MOST_TRIED = 200;

  /** Each component that was found, by its generic type, and each record by its class. */
  private static final Map<String, Set<Object>> VALUES = new LinkedHashMap<>();

  private static final Map<Class<?>, Set<Record>> SAMPLES = new LinkedHashMap<>();

  static {
    roots().forEach(BuildersTest::look);
  }

  static List<Class<?>> recordsWithBuilders() {
    return Library.exported().stream().filter(Class::isRecord).filter(BuildersTest::built).toList();
  }

  private static boolean built(Class<?> type) {
    return Arrays.stream(type.getMethods())
        .anyMatch(
            method ->
                method.getName().equals("builder")
                    && Modifier.isStatic(method.getModifiers())
                    && method.getParameterCount() == 0);
  }

  @Test
  void recordsWithBuilders_areFound() {
    assertThat(recordsWithBuilders()).hasSizeGreaterThan(25).contains(SetupSheet.class);
  }

  @ParameterizedTest
  @MethodSource("recordsWithBuilders")
  void builder_ofAValue_makesItAgain(Class<?> type) throws ReflectiveOperationException {
    for (Record sample : samples(type)) {
      assertThat(copied(sample)).isEqualTo(sample);
    }
  }

  @ParameterizedTest
  @MethodSource("recordsWithBuilders")
  void wither_ofAComponent_changesItAlone(Class<?> type) throws ReflectiveOperationException {
    Set<String> untried = new TreeSet<>();
    for (RecordComponent component : type.getRecordComponents()) {
      Optional<Method> wither = wither(component);
      if (wither.isPresent() && !DO_MORE.contains(name(component)) && !changes(component, wither)) {
        untried.add(type.getSimpleName() + "." + component.getName());
      }
    }
    assertThat(untried).as("no other value of it fits: add one to Others").isEmpty();
  }

  /** Tries values until the rest of a sample takes one. */
  private static boolean changes(RecordComponent component, Optional<Method> wither)
      throws ReflectiveOperationException {
    for (Record sample : samples(component.getDeclaringRecord())) {
      Object own = value(component, sample);
      assertThat(wither.orElseThrow().invoke(sample, own)).as(name(component)).isEqualTo(sample);
      for (Object other : others(component, own)) {
        Record changed;
        try {
          changed = (Record) wither.orElseThrow().invoke(sample, other);
        } catch (InvocationTargetException e) {
          assertThat(e.getCause()).isInstanceOf(IllegalArgumentException.class);
          continue;
        }
        for (RecordComponent each : component.getDeclaringRecord().getRecordComponents()) {
          boolean its = each.getName().equals(component.getName());
          assertThat(value(each, changed))
              .as("%s after %s", each.getName(), name(component))
              .isEqualTo(its ? other : value(each, sample));
        }
        assertThat(copied(changed)).as(name(component)).isEqualTo(changed);
        assertEachWitherKeeps(changed);
        return true;
      }
    }
    return false;
  }

  /** What is not its default now shows a wither that forgets it. */
  private static void assertEachWitherKeeps(Record changed) throws ReflectiveOperationException {
    for (RecordComponent each : changed.getClass().getRecordComponents()) {
      Optional<Method> wither = wither(each);
      if (wither.isPresent() && !DO_MORE.contains(name(each))) {
        assertThat(wither.get().invoke(changed, value(each, changed)))
            .as(name(each))
            .isEqualTo(changed);
      }
    }
  }

  private static Collection<Record> samples(Class<?> type) {
    Set<Record> samples = SAMPLES.getOrDefault(type, Set.of());
    assertThat(samples).as("samples of %s: add one to roots()", type).isNotEmpty();
    return samples.stream().limit(8).toList();
  }

  private static List<Object> others(RecordComponent component, Object own) {
    return VALUES.getOrDefault(kind(component, own), Set.of()).stream()
        .filter(value -> !value.equals(own))
        .limit(MOST_TRIED)
        .toList();
  }

  private static String kind(RecordComponent component, Object value) {
    return component.getGenericType() instanceof TypeVariable
        ? value.getClass().getName()
        : component.getGenericType().getTypeName();
  }

  private static Object copied(Record sample) throws ReflectiveOperationException {
    Object builder = sample.getClass().getMethod("toBuilder").invoke(sample);
    return builder.getClass().getMethod("build").invoke(builder);
  }

  private static String name(RecordComponent component) {
    return component.getDeclaringRecord().getSimpleName() + "." + witherName(component);
  }

  private static String witherName(RecordComponent component) {
    String name = component.getName();
    return "with" + name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
  }

  private static Optional<Method> wither(RecordComponent component) {
    return Arrays.stream(component.getDeclaringRecord().getMethods())
        .filter(method -> method.getName().equals(witherName(component)))
        .filter(method -> Arrays.equals(method.getParameterTypes(), erased(component)))
        .findFirst();
  }

  private static Class<?>[] erased(RecordComponent component) {
    return new Class<?>[] {component.getType()};
  }

  private static Object value(RecordComponent component, Object record) {
    try {
      return component.getAccessor().invoke(record);
    } catch (ReflectiveOperationException e) {
      throw new LinkageError(component.toString(), e);
    }
  }

  private static void look(Object found) {
    if (found instanceof Collection<?> all) {
      all.forEach(BuildersTest::look);
    } else if (found instanceof Map<?, ?> all) {
      all.values().forEach(BuildersTest::look);
    } else if (found instanceof Optional<?> one) {
      one.ifPresent(BuildersTest::look);
    } else if (found instanceof Record one
        && Modifier.isPublic(one.getClass().getModifiers())
        && SAMPLES.computeIfAbsent(one.getClass(), type -> new LinkedHashSet<>()).add(one)) {
      VALUES.computeIfAbsent(one.getClass().getName(), type -> new LinkedHashSet<>()).add(one);
      for (RecordComponent component : one.getClass().getRecordComponents()) {
        Object value = value(component, one);
        VALUES.computeIfAbsent(kind(component, value), type -> new LinkedHashSet<>()).add(value);
        look(value);
      }
    }
  }

  private static Stream<Object> roots() {
    return Stream.of(sheets(), kits(), Stream.of(LawKit.plainSheet()), byHand())
        .flatMap(all -> all);
  }

  private static Stream<Object> sheets() {
    return Stream.concat(
        files("quickstart/src/main/resources/dev/jetting/examples/quickstart", ".json")
            .map(SheetJson::read),
        Stream.of(TwoHundred.sheet(TwoHundred.STANDARD, TwoHundred.ALL_ROUND)));
  }

  private static Stream<Object> kits() {
    return Stream.concat(
        Stream.of(
            Shop.CATALOGUE.families(),
            Shop.CATALOGUE.series(),
            Shop.CATALOGUE.parts(),
            Shop.CATALOGUE.machines(),
            Shop.CATALOGUE.markets()),
        Stream.of(kit()));
  }

  private static Kit kit() {
    return files("kit-desk/src/main/resources/dev/jetting/examples/kitdesk", "kit.json")
        .map(KitJson::read)
        .findFirst()
        .orElseThrow();
  }

  private static Stream<String> files(String folder, String ending) {
    try (Stream<Path> files = Files.list(EXAMPLES.resolve(folder))) {
      List<String> texts = new ArrayList<>();
      for (Path file : files.filter(f -> f.toString().endsWith(ending)).sorted().toList()) {
        texts.add(Files.readString(file));
      }
      return texts.stream();
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Stream<Object> byHand() {
    SetupSheet sheet = TwoHundred.sheet(TwoHundred.STANDARD, TwoHundred.ALL_ROUND);
    Passage passage =
        Passage.builder()
            .area(Area.ofSquareMillimetres(3))
            .coefficient(0.7)
            .fluid(Density.ofKilogramsPerCubicMetre(740))
            .head(Length.ofMillimetres(4))
            .build();
    return Stream.of(
        Set.of(MachineValue.PEAK_SPEED, MachineValue.TAPER_RATE),
        ElementaryCarburettor.builder()
            .air(
                passage.toBuilder()
                    .area(Area.ofSquareMillimetres(500))
                    .fluid(Density.ofKilogramsPerCubicMetre(1.2))
                    .head(Length.ofMillimetres(0))
                    .build())
            .fuel(passage)
            .build(),
        passage.withCoefficient(0.8),
        Disturbance.builder()
            .at(ThrottleOpening.ofEighths(3))
            .reach(0.1)
            .mean(0.05)
            .deviation(0.02)
            .build(),
        Spreads.builder()
            .pilot(0.11)
            .needle(0.12)
            .main(0.13)
            .air(0.14)
            .residual(0.05)
            .residualLength(0.3)
            .build(),
        Meaning.builder().from(0.8).to(0.9).deviation(0.03).why("by hand").build(),
        Reading.builder()
            .setup(sheet.setup())
            .throttle(ThrottleOpening.ofEighths(4))
            .speed(EngineSpeed.ofRpm(5000))
            .from(Lambda.of(0.8))
            .to(Lambda.of(0.9))
            .deviation(0.03)
            .build(),
        NeedleWear.builder()
            .needleJet(Length.ofMillimetres(0.02))
            .needle(Length.ofMillimetres(0.01))
            .build(),
        Floats.builder()
            .set(FloatLevel.ofMillimetres(21))
            .nominal(FloatLevel.ofMillimetres(19))
            .build(),
        TypicalEngine.builder()
            .displacement(Displacement.ofCubicCentimetres(200))
            .tune(StateOfTune.STANDARD)
            .cooling(Cooling.AIR)
            .induction(InductionKind.PISTON_PORT)
            .build(),
        new Others(
            StateOfTune.SPORT,
            Cooling.FAN,
            InductionKind.ROTARY_VALVE,
            InductionKind.UNKNOWN,
            Displacement.ofCubicCentimetres(125),
            Fuel.E10,
            List.of(Fuel.E10, Fuel.PETROL),
            TemperatureDifference.ofKelvin(15),
            FlowCoefficients.assumed().withNozzleOpen(Coefficient.assumed(2.2, "1", "by hand")),
            passage.withHead(Length.ofMillimetres(0)),
            7,
            List.of(Cutaway.ofMillimetres(3)),
            Optional.of("screw"),
            Probability.of(0.07),
            new RidingProfile(RidingProfile.assumedRoad().points().subList(1, 3)),
            new RiddenSpeeds(3),
            List.of(kit().recommendations().get(0).withMachine("another")),
            Choice.Source.OWNED),
        ModelUncertainty.assumed()
            .widerByPilotJet(0.01)
            .widerByMainJet(0.02)
            .withGuesses(sheet.setup(), Set.of(MachineValue.PEAK_SPEED)),
        Choice.toBuy(JetBore.ofMillimetres(1.2), BigDecimal.TEN).withUncertainty(0.02),
        choices(1.1),
        choices(1.3));
  }

  /** Values that stand in no sample. */
  public record Others(
      StateOfTune tune,
      Cooling cooling,
      InductionKind induction,
      InductionKind unknown,
      Displacement displacement,
      Fuel fuel,
      List<Fuel> fuels,
      TemperatureDifference warmerBy,
      FlowCoefficients flow,
      Passage air,
      int grooves,
      List<Cutaway> cutaways,
      Optional<String> fitted,
      Probability risk,
      RidingProfile profile,
      RiddenSpeeds speeds,
      List<Recommendation> recommendations,
      Choice.Source source) {}

  private static Choices choices(double main) {
    return Choices.builder()
        .pilotJets(List.of(Choice.ofOwned(JetBore.ofMillimetres(main / 2))))
        .screws(List.of(ScrewTurns.of(main)))
        .cutaways(List.of(Choice.toBuy(Cutaway.ofMillimetres(main * 3))))
        .needleJets(List.of(Choice.ofOwned(TwoHundred.needleJet(main * 2.2))))
        .needles(
            List.of(
                Choice.ofOwned(
                    NeedlePosition.inAnyGroove(
                        main < 1.2 ? TwoHundred.NEEDLE : TwoHundred.LEANER_NEEDLE))))
        .mainJets(List.of(Choice.ofOwned(JetBore.ofMillimetres(main))))
        .build();
  }
}
