package dev.jetting.rules.laws;

import dev.jetting.core.mixture.Setup;
import dev.jetting.rules.SetupSheet;
import java.lang.reflect.Method;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Paths such as {@code setting.carburettor.floatValve}, from a sheet or its setup. */
final class SubjectPath {

  private SubjectPath() {}

  static boolean exists(String path) {
    return Stream.of(SetupSheet.class, Setup.class).anyMatch(root -> leads(root, path));
  }

  private static boolean leads(Class<?> root, String path) {
    Optional<Class<?>> at = Optional.of(root);
    for (String name : path.split("\\.", -1)) {
      at = at.flatMap(type -> next(type, name));
    }
    return at.isPresent();
  }

  /** The type behind an accessor; of an optional or a list that of what is in it. */
  private static Optional<Class<?>> next(Class<?> type, String name) {
    String accessor = name.replaceFirst("\\[[0-9]+]$", "");
    if (accessor.equals("toString") || accessor.equals("hashCode")) {
      return Optional.empty();
    }
    try {
      Method method = type.getMethod(accessor);
      boolean ours = method.getDeclaringClass().getName().startsWith("dev.jetting.");
      return ours ? Optional.of(held(method)) : Optional.empty();
    } catch (NoSuchMethodException e) {
      return Optional.empty();
    }
  }

  private static Class<?> held(Method method) {
    Class<?> raw = method.getReturnType();
    if ((raw == Optional.class || raw == List.class)
        && method.getGenericReturnType() instanceof ParameterizedType generic) {
      Type argument = generic.getActualTypeArguments()[0];
      return argument instanceof Class<?> inside ? inside : raw;
    }
    return raw;
  }
}
