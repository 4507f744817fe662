package dev.jetting.rules;

import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;
import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.rules.laws.LawKit;
import dev.jetting.units.Quantity;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What a stranger meets in the library: names, parameters, and how values are made and copied. */
class PublicApiTest {

  /** Units, core, rules and the law kit. */
  private static final List<Class<?>> ALL =
      Stream.of(Quantity.class, MixtureModel.class, Report.class, LawKit.class)
          .map(PublicApiTest::root)
          .distinct()
          .flatMap(PublicApiTest::classes)
          .toList();

  @Test
  void simpleNames_standOnceInTheLibrary() {
    Map<String, Long> times =
        ALL.stream()
            .filter(type -> type.getEnclosingClass() == null)
            .map(Class::getSimpleName)
            .filter(name -> !name.equals("package-info"))
            .collect(groupingBy(name -> name, TreeMap::new, counting()));
    assertThat(times).containsKeys("Report", "Lambda", "MixtureModel").hasSizeGreaterThan(500);
    assertThat(times.entrySet()).allMatch(entry -> entry.getValue() == 1);
  }

  private static Path root(Class<?> type) {
    try {
      return Path.of(type.getProtectionDomain().getCodeSource().getLocation().toURI());
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Stream<Class<?>> classes(Path root) {
    try (Stream<Path> files = Files.walk(root)) {
      return files
          .map(file -> root.relativize(file).toString().replace('\\', '/'))
          .filter(name -> name.endsWith(".class") && !name.endsWith("-info.class"))
          .sorted()
          .<Class<?>>map(PublicApiTest::named)
          .toList()
          .stream();
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Class<?> named(String file) {
    try {
      String name = file.substring(0, file.length() - ".class".length()).replace('/', '.');
      return Class.forName(name, false, PublicApiTest.class.getClassLoader());
    } catch (ClassNotFoundException e) {
      throw new IllegalStateException(file, e);
    }
  }
}
