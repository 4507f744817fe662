package dev.jetting.core;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import dev.jetting.core.mixture.MixtureModel;
import java.lang.module.ModuleDescriptor;
import java.lang.module.ModuleFinder;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The rules of the house that a compiler does not check. */
class ArchitectureTest {

  private static final String CORE = "dev.jetting.core.";
  private static final Path MAIN = mainClasses();
  private static final JavaClasses CLASSES = new ClassFileImporter().importPath(MAIN);

  /** What java.lang.Math does exactly, and so alike on every machine. */
  private static final Set<String> EXACT =
      Set.of("sqrt", "abs", "min", "max", "rint", "floor", "ceil", "signum", "fma");

  @Test
  void transcendentalFunctions_areThoseOfStrictMath() {
    noClasses()
        .should()
        .callMethodWhere(
            DescribedPredicate.describe(
                "Math's own choice of digits",
                (JavaCall<?> call) ->
                    call.getTargetOwner().isEquivalentTo(Math.class)
                        && !EXACT.contains(call.getName())))
        .check(CLASSES);
  }

  @Test
  void text_doesNotDependOnLocaleOrJdk() {
    DescribedPredicate<JavaCall<?>> ambient =
        DescribedPredicate.describe(
            "ambient locale, clock, zone or the JDK's way of writing a double",
            call -> {
              String owner = call.getTargetOwner().getName();
              var parameters = call.getTarget().getRawParameterTypes();
              boolean takesDouble =
                  !parameters.isEmpty() && parameters.get(0).isEquivalentTo(double.class);
              return switch (call.getName()) {
                case "toLowerCase", "toUpperCase" ->
                    owner.equals("java.lang.String") && parameters.isEmpty();
                case "format", "formatted" ->
                    owner.equals("java.lang.String")
                        && (parameters.isEmpty()
                            || !parameters.get(0).getName().equals("java.util.Locale"));
                case "toString" -> owner.equals("java.lang.Double");
                case "valueOf" -> owner.equals("java.lang.String") && takesDouble;
                case "append" -> owner.equals("java.lang.StringBuilder") && takesDouble;
                case "now", "currentTimeMillis", "nanoTime", "systemDefault", "getDefault" ->
                    owner.startsWith("java.");
                default -> false;
              };
            });
    noClasses().should().callMethodWhere(ambient).check(CLASSES);
  }

  @Test
  void packages_dependOneWay() {
    dependsOnlyOn("checks");
    dependsOnlyOn("flow");
    dependsOnlyOn("parts", "checks");
    dependsOnlyOn("engine", "parts", "checks");
    slices().matching(CORE + "(*)..").should().beFreeOfCycles().check(CLASSES);
    noClasses()
        .that(resideInAPackage("..flow.."))
        .should()
        .dependOnClassesThat(resideInAPackage("dev.jetting.units.."))
        .check(CLASSES);
  }

  /** Of the core's packages; JDK, units and libraries stay free. */
  private static void dependsOnlyOn(String from, String... allowed) {
    Set<String> packages =
        Stream.concat(Stream.of(from), Stream.of(allowed))
            .map(name -> CORE + name)
            .collect(Collectors.toSet());
    noClasses()
        .that(resideInAPackage(CORE + from))
        .should()
        .dependOnClassesThat(
            DescribedPredicate.describe(
                "in another package of the core than " + packages,
                (JavaClass used) ->
                    used.getPackageName().startsWith(CORE)
                        && !packages.contains(used.getPackageName())))
        .check(CLASSES);
  }

  @Test
  void publicSignatures_nameOnlyWhatACallerCanReach() {
    Set<String> exported =
        descriptor().exports().stream()
            .filter(exports -> !exports.isQualified())
            .map(ModuleDescriptor.Exports::source)
            .collect(Collectors.toSet());
    assertThat(exported)
        .contains("dev.jetting.core.mixture")
        .doesNotContain("dev.jetting.core.flow");

    ArchRule rule =
        classes()
            .that(
                DescribedPredicate.describe(
                    "exported and public",
                    (JavaClass c) ->
                        exported.contains(c.getPackageName())
                            && c.getModifiers().contains(JavaModifier.PUBLIC)))
            .should(nameOnly(exported));
    rule.check(CLASSES);
  }

  private static ArchCondition<JavaClass> nameOnly(Set<String> exported) {
    return new ArchCondition<>("name only types of the JDK, of units and its own exported ones") {
      @Override
      public void check(JavaClass type, ConditionEvents events) {
        Set<JavaClass> named = new LinkedHashSet<>();
        for (JavaCodeUnit unit : type.getCodeUnits()) {
          if (isVisible(unit.getModifiers())) {
            named.addAll(unit.getReturnType().getAllInvolvedRawTypes());
            unit.getParameterTypes().forEach(p -> named.addAll(p.getAllInvolvedRawTypes()));
            unit.getThrowsClause().forEach(t -> named.add(t.getRawType()));
          }
        }
        for (JavaField field : type.getFields()) {
          if (isVisible(field.getModifiers())) {
            named.addAll(field.getType().getAllInvolvedRawTypes());
          }
        }
        // A hidden interface of the same package is nobody's signature.
        type.getInterfaces().stream()
            .flatMap(i -> i.getAllInvolvedRawTypes().stream())
            .filter(i -> !i.getPackage().equals(type.getPackage()))
            .forEach(named::add);
        for (JavaClass used : named) {
          JavaClass base = used.getBaseComponentType();
          boolean reachable =
              base.isPrimitive()
                  || base.getPackageName().startsWith("java.")
                  || base.getPackageName().equals("dev.jetting.units")
                  || (exported.contains(base.getPackageName())
                      && base.getModifiers().contains(JavaModifier.PUBLIC));
          if (!reachable) {
            events.add(
                SimpleConditionEvent.violated(type, type.getName() + " names " + base.getName()));
          }
        }
      }
    };
  }

  private static boolean isVisible(Set<JavaModifier> modifiers) {
    return modifiers.contains(JavaModifier.PUBLIC) || modifiers.contains(JavaModifier.PROTECTED);
  }

  @Test
  void state_isFinal_butForBuilders() {
    fields()
        .that()
        .areStatic()
        .or()
        .areDeclaredInClassesThat()
        .haveSimpleNameNotEndingWith("Builder")
        .should()
        .beFinal()
        .check(CLASSES);
  }

  @Test
  void staticStateInReach_cannotChange() {
    fields()
        .that()
        .areStatic()
        .and()
        .areNotPrivate()
        .and()
        .doNotHaveModifier(JavaModifier.SYNTHETIC)
        .should()
        .haveRawType(
            DescribedPredicate.describe(
                "no array and nothing of java.util, which may be changed",
                (JavaClass type) ->
                    !type.isArray() && !type.getPackageName().startsWith("java.util")))
        .check(CLASSES);
  }

  private static ModuleDescriptor descriptor() {
    return ModuleFinder.of(MAIN).findAll().iterator().next().descriptor();
  }

  private static Path mainClasses() {
    try {
      return Path.of(
          MixtureModel.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }
}
