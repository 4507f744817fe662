package dev.jetting.rules.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.FuzzTest;
import dev.jetting.core.fuel.FuelInput;
import dev.jetting.units.RiderInput;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;

/** Fuzzes all readers of what riders type, and the strict parsers of all quantities. */
class RiderInputFuzzTest {

  private static final List<Method> READERS =
      Stream.concat(
              Stream.of(RiderInput.class, FuelInput.class)
                  .flatMap(c -> Arrays.stream(c.getMethods())),
              Quantities.PARSERS.keySet().stream().map(RiderInputFuzzTest::parse))
          .filter(method -> Modifier.isStatic(method.getModifiers()))
          .filter(method -> List.of(method.getParameterTypes()).equals(List.of(String.class)))
          .toList();

  static Stream<byte[]> seeds() {
    return Stream.of(
            "#125",
            "main 125",
            "needle 3rd groove from top",
            "half",
            "WOT",
            "3/8 throttle",
            "1-1/2 out",
            "20 C",
            "68F",
            "1:40",
            "E5",
            "1/3 of 7",
            "1e999999999",
            "9".repeat(2000),
            "1/0",
            "-0",
            "\u202e12 mm",
            "½",
            "12\u0000mm",
            "1.2.3",
            "")
        .map(text -> text.getBytes(StandardCharsets.UTF_8));
  }

  private static Method parse(Class<?> quantity) {
    try {
      return quantity.getMethod("parse", String.class);
    } catch (NoSuchMethodException e) {
      throw new AssertionError(e);
    }
  }

  @MethodSource("seeds")
  @FuzzTest // Jazzer wants it last
  void read_ofAnyText_readsOrRefuses(byte[] bytes) throws IllegalAccessException {
    String text = new String(bytes, StandardCharsets.UTF_8);
    for (Method reader : READERS) {
      try {
        assertThat(reader.invoke(null, text)).isNotNull();
      } catch (InvocationTargetException e) {
        assertThat(e.getCause()).isInstanceOf(IllegalArgumentException.class);
        assertThat(e.getCause().getMessage())
            .doesNotContainPattern("[\\p{Cntrl}\\p{Cf}\\p{Cs}\\p{Zl}\\p{Zp}]")
            .hasSizeLessThan(1000);
      }
    }
  }
}
