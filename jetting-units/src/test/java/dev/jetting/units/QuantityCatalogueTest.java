package dev.jetting.units;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.units.QuantityCatalogue.Described;
import java.io.IOException;
import java.lang.reflect.Modifier;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class QuantityCatalogueTest {

  @Test
  void all_hasEveryPublicQuantity() throws Exception {
    assertThat(QuantityCatalogue.ALL.stream().<Class<?>>map(Described::type).toList())
        .containsExactlyInAnyOrderElementsOf(publicQuantities());
  }

  @Test
  void quantities_areFinalWithFinalFieldsAndWithoutPublicConstructors() throws Exception {
    for (Class<?> type : publicQuantities()) {
      assertThat(type).isFinal();
      assertThat(type.getConstructors()).as(type.getName()).isEmpty();
      assertThat(Arrays.stream(type.getDeclaredFields()).filter(f -> !f.isSynthetic()))
          .as(type.getName())
          .allMatch(field -> Modifier.isFinal(field.getModifiers()));
    }
  }

  private static List<Class<?>> publicQuantities() throws IOException, URISyntaxException {
    Path classes =
        Path.of(Quantity.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    Path thePackage = classes.resolve(Quantity.class.getPackageName().replace('.', '/'));
    try (Stream<Path> files = Files.list(thePackage)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(".class") && !name.equals("package-info.class"))
          .<Class<?>>map(name -> load(name.substring(0, name.length() - ".class".length())))
          .filter(type -> Modifier.isPublic(type.getModifiers()) && !type.isInterface())
          .filter(Quantity.class::isAssignableFrom)
          .toList();
    }
  }

  private static Class<?> load(String name) {
    try {
      return Class.forName(Quantity.class.getPackageName() + "." + name);
    } catch (ClassNotFoundException e) {
      throw new AssertionError(e);
    }
  }
}
