package dev.jetting.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.Parameter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every public method names the parameter that was null. */
class NullArgumentsTest {

  static Stream<Method> methodsWithReferences() {
    Stream<Class<?>> quantities = QuantityCatalogue.ALL.stream().map(d -> d.type());
    return Stream.concat(
            quantities, Stream.of(TradeStyle.class, JetSeries.class, JetCalibration.class))
        .flatMap(type -> Arrays.stream(type.getDeclaredMethods()))
        .filter(method -> Modifier.isPublic(method.getModifiers()) && !method.isSynthetic())
        .filter(method -> !method.getName().equals("equals"))
        .filter(
            method -> Arrays.stream(method.getParameterTypes()).anyMatch(t -> !t.isPrimitive()));
  }

  @ParameterizedTest
  @MethodSource("methodsWithReferences")
  void method_namesTheParameterThatIsNull(Method method) throws Exception {
    Parameter[] parameters = method.getParameters();
    for (int i = 0; i < parameters.length; i++) {
      if (!parameters[i].getType().isPrimitive()) {
        Object[] arguments = Arrays.stream(parameters).map(p -> sample(p.getType())).toArray();
        arguments[i] = null;
        try {
          method.invoke(receiver(method), arguments);
          fail("%s took null for %s", method, parameters[i].getName());
        } catch (InvocationTargetException e) {
          assertThat(e.getCause())
              .isInstanceOf(NullPointerException.class)
              .hasMessage(parameters[i].getName());
        }
      }
    }
  }

  private static @Nullable Object receiver(Method method) {
    return Modifier.isStatic(method.getModifiers()) ? null : sample(method.getDeclaringClass());
  }

  private static Object sample(Class<?> type) {
    List<Object> samples = new ArrayList<>(SAMPLES);
    QuantityCatalogue.ALL.forEach(d -> d.numbers().forEach(n -> samples.add(n.of().apply(1))));
    return PRIMITIVES.containsKey(type)
        ? PRIMITIVES.get(type)
        : samples.stream().filter(type::isInstance).findFirst().orElseThrow();
  }

  private static final Map<Class<?>, Object> PRIMITIVES = Map.of(double.class, 0.5, int.class, 1);

  private static final List<Object> SAMPLES =
      List.of(
          "1",
          JetBore.ofMillimetres(1),
          ClipPosition.fromTop(2, 5),
          ScrewKind.AIR,
          JetCalibrationTest.WATER,
          JetCalibrationTest.WATER.liquid(),
          JetSeries.of(List.of(JetBore.ofMillimetres(1))),
          (DoubleFunction<JetBore>) JetBore::ofMillimetres,
          (Function<String, JetBore>) JetBore::parse,
          List.of(JetBore.ofMillimetres(1)));
}
