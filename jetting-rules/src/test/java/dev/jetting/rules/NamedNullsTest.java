package dev.jetting.rules;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.rules.standard.StandardRulebook;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** A null argument is refused by name, in whatever a caller can reach from a report. */
class NamedNullsTest {

  /** Null is the loader of the platform, by the contract of the service loader. */
  private static final Set<String> NULL_ALLOWED = Set.of("RulePack.load");

  private final Map<Class<?>, Object> samples = new HashMap<>();

  private void collect(Object thing) throws ReflectiveOperationException {
    if (thing instanceof Collection<?> all) {
      for (Object each : all) {
        collect(each);
      }
    } else if (thing instanceof Optional<?> maybe) {
      collect(maybe.map(List::<Object>of).orElse(List.of()));
    } else if (thing.getClass().getName().startsWith("dev.jetting")
        && samples.putIfAbsent(thing.getClass(), thing) == null
        && thing.getClass().isRecord()
        && Modifier.isPublic(thing.getClass().getModifiers())) {
      for (RecordComponent component : thing.getClass().getRecordComponents()) {
        collect(component.getAccessor().invoke(thing));
      }
    }
  }

  @Test
  void methodsOfOneArgument_nameTheNull() throws ReflectiveOperationException {
    AssessedSetting setting =
        AssessedSetting.of(TwoHundred.sheet(TwoHundred.STANDARD, TwoHundred.ALL_ROUND));
    collect(setting);
    collect(StandardRulebook.rulebook());
    collect(StandardRulebook.rulebook().rules());
    collect(StandardRulebook.rulebook().evaluate(setting));

    List<String> unnamed = new ArrayList<>();
    int tried = 0;
    for (Class<?> type : Library.exported()) {
      for (Method method : type.getDeclaredMethods()) {
        Object self = samples.get(type);
        if (takesOneReference(method) && (self != null || isStatic(method))) {
          tried++;
          String name = type.getSimpleName() + "." + method.getName();
          String parameter = method.getParameters()[0].getName();
          String answer = answer(method, self);
          String component = name.replaceFirst(".*\\.with", "");
          Pattern named = Pattern.compile("(?i)\\b(?:" + parameter + "|" + component + ")\\b");
          if (!named.matcher(answer).find() && !NULL_ALLOWED.contains(name)) {
            unnamed.add(name + "(" + parameter + "): " + answer);
          }
        }
      }
    }
    assertThat(tried).isGreaterThan(300);
    assertThat(unnamed).isEmpty();
  }

  private static boolean isStatic(Method method) {
    return Modifier.isStatic(method.getModifiers());
  }

  private static boolean takesOneReference(Method method) {
    return Modifier.isPublic(method.getModifiers())
        && !method.isSynthetic()
        && method.getParameterCount() == 1
        && !method.isVarArgs()
        && !method.getParameterTypes()[0].isPrimitive()
        && !Set.of("equals", "compareTo", "valueOf").contains(method.getName());
  }

  private static String answer(Method method, @Nullable Object self)
      throws ReflectiveOperationException {
    try {
      method.invoke(self, (Object) null);
      return "taken";
    } catch (InvocationTargetException e) {
      return String.valueOf(e.getCause().getMessage());
    }
  }
}
