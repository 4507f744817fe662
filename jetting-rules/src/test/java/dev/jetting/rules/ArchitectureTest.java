package dev.jetting.rules;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.module.SimpleModule;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import dev.jetting.rules.json.JettingModule;
import java.lang.module.ModuleDescriptor;
import java.lang.module.ModuleFinder;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The rules of the house that a compiler does not check. */
class ArchitectureTest {

  private static final String RULES = "dev.jetting.rules";
  private static final Path MAIN = mainClasses();
  private static final JavaClasses CLASSES = new ClassFileImporter().importPath(MAIN);

  /** What java.lang.Math does exactly, and so alike on every machine. */
  private static final Set<String> EXACT =
      Set.of("sqrt", "abs", "min", "max", "rint", "floor", "ceil", "signum", "fma");

  private static final Set<String> EXPORTED =
      ModuleFinder.of(MAIN).findAll().iterator().next().descriptor().exports().stream()
          .filter(exports -> !exports.isQualified())
          .map(ModuleDescriptor.Exports::source)
          .collect(Collectors.toSet());

  /** Their order differs from JVM to JVM, and with it whatever is printed from them. */
  @Test
  void records_keepNoMapsAndSetsOfJavasOwnOrder() {
    noClasses()
        .that()
        .areRecords()
        .should()
        .callMethod(Map.class, "copyOf", Map.class)
        .orShould()
        .callMethod(Set.class, "copyOf", Collection.class)
        .check(CLASSES);
  }

  @Test
  void transcendentalFunctions_areThoseOfStrictMath() {
    noClasses()
        .should()
        .callMethodWhere(
            describe(
                "Math's own choice of digits",
                (JavaCall<?> call) ->
                    call.getTargetOwner().isEquivalentTo(Math.class)
                        && !EXACT.contains(call.getName())))
        .check(CLASSES);
  }

  @Test
  void text_doesNotDependOnLocaleClockZoneOrJdk() {
    noClasses()
        .should()
        .callMethodWhere(describe("what differs by place, time or JDK", ArchitectureTest::ambient))
        .check(CLASSES);
  }

  private static boolean ambient(JavaCall<?> call) {
    String owner = call.getTargetOwner().getName();
    List<JavaClass> parameters = call.getTarget().getRawParameterTypes();
    boolean takesDouble = !parameters.isEmpty() && parameters.get(0).isEquivalentTo(double.class);
    return switch (call.getName()) {
      case "toLowerCase", "toUpperCase" -> owner.equals("java.lang.String") && parameters.isEmpty();
      case "format", "formatted" ->
          owner.equals("java.lang.String")
              && (parameters.isEmpty() || !parameters.get(0).getName().equals("java.util.Locale"));
      case "toString" -> owner.equals("java.lang.Double");
      case "valueOf" -> owner.equals("java.lang.String") && takesDouble;
      case "append" -> owner.equals("java.lang.StringBuilder") && takesDouble;
      case "now", "currentTimeMillis", "nanoTime", "systemDefault", "getDefault" ->
          owner.startsWith("java.");
      default -> false;
    };
  }

  @Test
  void packages_dependOneWay() {
    slices().matching(RULES + ".(*)..").should().beFreeOfCycles().check(CLASSES);
    dependsOnNoneOf(RULES + ".risk", RULES, RULES + ".json", RULES + ".standard");
    dependsOnNoneOf(RULES, RULES + ".json", RULES + ".standard");
    dependsOnNoneOf(RULES + ".json", RULES + ".standard");
    dependsOnNoneOf(RULES + ".standard", RULES + ".json");
  }

  private static void dependsOnNoneOf(String from, String... others) {
    noClasses()
        .that()
        .resideInAPackage(from)
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(others)
        .check(CLASSES);
  }

  /** What the table gives in haste, the model gives with checks: the search alone needs haste. */
  @Test
  void mixtureTable_isKnownToTheSearchOnly() {
    dependsOutside(RULES + ".search", "dev.jetting.core.mixture.table");
  }

  /** A page is the last thing made of a report; the short report is one, with words in it. */
  @Test
  void renderings_areKnownToThemselvesAndTheShortReportOnly() {
    noClasses()
        .that()
        .resideOutsideOfPackage(RULES + ".render")
        .and()
        .doNotHaveFullyQualifiedName(RULES + ".json.ShortReportForm")
        .should()
        .dependOnClassesThat()
        .resideInAPackage(RULES + ".render")
        .check(CLASSES);
  }

  private static void dependsOutside(String allowed, String used) {
    noClasses()
        .that()
        .resideOutsideOfPackage(allowed)
        .should()
        .dependOnClassesThat()
        .resideInAPackage(used)
        .check(CLASSES);
  }

  @Test
  void jackson_isKnownToTheJsonPackageOnly() {
    noClasses()
        .that()
        .resideOutsideOfPackage(RULES + ".json")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("com.fasterxml..")
        .check(CLASSES);
  }

  @Test
  void publicSignatures_nameOnlyTheJdkAndOurOwn() {
    assertThat(EXPORTED).contains(RULES, RULES + ".json", RULES + ".risk", RULES + ".standard");
    classes()
        .that(describe("exported, public, not the Jackson module", ArchitectureTest::isPublished))
        .should(nameOnlyOurs())
        .check(CLASSES);
  }

  /** The Jackson module is the one exception, and nothing of its own names Jackson but that. */
  @Test
  void jacksonModule_namesJacksonAsItsSuperclassOnly() {
    assertThat(JettingModule.class.getSuperclass()).isEqualTo(SimpleModule.class);
    assertThat(
            Arrays.stream(JettingModule.class.getDeclaredMethods())
                .filter(method -> java.lang.reflect.Modifier.isPublic(method.getModifiers()))
                .map(java.lang.reflect.Method::getName))
        .containsExactly("setupModule");
  }

  private static boolean isPublished(JavaClass type) {
    return EXPORTED.contains(type.getPackageName())
        && isVisible(type.getModifiers())
        && type.getEnclosingClass().map(ArchitectureTest::isPublished).orElse(true)
        && !type.isEquivalentTo(JettingModule.class);
  }

  private static ArchCondition<JavaClass> nameOnlyOurs() {
    return new ArchCondition<>("name only types of the JDK and of the exported packages") {
      @Override
      public void check(JavaClass type, ConditionEvents events) {
        named(type)
            .map(JavaClass::getBaseComponentType)
            .filter(used -> !isReachable(used))
            .forEach(
                used ->
                    events.add(
                        SimpleConditionEvent.violated(
                            type, type.getName() + " names " + used.getName())));
      }
    };
  }

  private static Stream<JavaClass> named(JavaClass type) {
    Stream<JavaClass> units =
        type.getCodeUnits().stream()
            .filter(unit -> isVisible(unit.getModifiers()))
            .flatMap(ArchitectureTest::named);
    Stream<JavaClass> fields =
        type.getFields().stream()
            .filter(field -> isVisible(field.getModifiers()))
            .map(JavaField::getType)
            .flatMap(t -> t.getAllInvolvedRawTypes().stream());
    Stream<JavaClass> parents =
        Stream.concat(type.getInterfaces().stream(), type.getSuperclass().stream())
            .flatMap(t -> t.getAllInvolvedRawTypes().stream());
    return Stream.of(units, fields, parents).flatMap(types -> types);
  }

  private static Stream<JavaClass> named(JavaCodeUnit unit) {
    return Stream.of(
            unit.getReturnType().getAllInvolvedRawTypes().stream(),
            unit.getParameterTypes().stream().flatMap(p -> p.getAllInvolvedRawTypes().stream()),
            unit.getThrowsClause().stream().map(thrown -> thrown.getRawType()))
        .flatMap(types -> types);
  }

  private static boolean isReachable(JavaClass used) {
    String name = used.getPackageName();
    boolean ofCore = name.startsWith("dev.jetting.core.");
    return used.isPrimitive()
        || name.startsWith("java.")
        || name.equals("dev.jetting.units")
        || ((ofCore || EXPORTED.contains(name)) && isVisible(used.getModifiers()));
  }

  private static boolean isVisible(Set<JavaModifier> modifiers) {
    return modifiers.contains(JavaModifier.PUBLIC) || modifiers.contains(JavaModifier.PROTECTED);
  }

  @Test
  void staticState_isFinalAndCannotChange() {
    fields().that().areStatic().should().beFinal().check(CLASSES);
    fields()
        .that()
        .areStatic()
        .and()
        .areNotPrivate()
        .and()
        .doNotHaveModifier(JavaModifier.SYNTHETIC)
        .should()
        .notHaveRawType(
            describe(
                "an array or a collection that may be changed",
                (JavaClass type) ->
                    type.isArray()
                        || Set.of("java.util.ArrayList", "java.util.HashMap", "java.util.EnumMap")
                            .contains(type.getName())))
        .check(CLASSES);
  }

  /** Values do not change; a parser's state lives as long as one document. */
  @Test
  void instanceState_ofPublicTypes_isFinal_butForBuilders() {
    fields()
        .that()
        .areDeclaredInClassesThat(
            describe(
                "published, and no builder",
                type -> isPublished(type) && !type.getSimpleName().endsWith("Builder")))
        .should()
        .beFinal()
        .check(CLASSES);
  }

  private static Path mainClasses() {
    try {
      return Path.of(Report.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }
}
