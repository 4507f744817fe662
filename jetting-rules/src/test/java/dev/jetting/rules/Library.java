package dev.jetting.rules;

import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.units.Quantity;
import java.io.IOException;
import java.lang.module.ModuleDescriptor;
import java.lang.module.ModuleFinder;
import java.lang.reflect.Modifier;
import java.net.URISyntaxException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The classes of units, core and rules, as they are compiled or packaged. */
final class Library {

  private static final List<Path> MODULES =
      Stream.of(Quantity.class, MixtureModel.class, Report.class).map(Library::root).toList();

  private static final Set<String> EXPORTED =
      MODULES.stream()
          .flatMap(root -> ModuleFinder.of(root).findAll().stream())
          .flatMap(module -> module.descriptor().exports().stream())
          .filter(exports -> !exports.isQualified())
          .map(ModuleDescriptor.Exports::source)
          .collect(Collectors.toSet());

  private Library() {}

  /** All classes, nested ones too. */
  static List<Class<?>> classes() {
    return MODULES.stream().flatMap(Library::classes).toList();
  }

  /** Those that another module can name. */
  static List<Class<?>> exported() {
    return classes().stream().filter(Library::isExported).toList();
  }

  private static boolean isExported(Class<?> type) {
    for (Class<?> each = type; each != null; each = each.getEnclosingClass()) {
      if (!Modifier.isPublic(each.getModifiers())) {
        return false;
      }
    }
    return EXPORTED.contains(type.getPackageName());
  }

  private static Path root(Class<?> type) {
    try {
      return Path.of(type.getProtectionDomain().getCodeSource().getLocation().toURI());
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Stream<Class<?>> classes(Path root) {
    try {
      if (Files.isDirectory(root)) {
        return under(root);
      }
      try (FileSystem jar = FileSystems.newFileSystem(root)) {
        return under(jar.getPath("/"));
      }
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Stream<Class<?>> under(Path root) throws IOException {
    try (Stream<Path> files = Files.walk(root)) {
      List<String> names =
          files
              .map(file -> root.relativize(file).toString().replace('\\', '/'))
              .filter(name -> name.endsWith(".class") && !name.endsWith("-info.class"))
              .sorted()
              .toList();
      return names.stream().map(Library::named);
    }
  }

  private static Class<?> named(String file) {
    try {
      String name = file.substring(0, file.length() - ".class".length()).replace('/', '.');
      return Class.forName(name, false, Library.class.getClassLoader());
    } catch (ClassNotFoundException e) {
      throw new IllegalStateException(file, e);
    }
  }
}
