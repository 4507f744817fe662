package dev.jetting.core.typical;

import dev.jetting.core.mixture.Setup;
import java.util.OptionalDouble;
import java.util.function.ToDoubleBiFunction;
import java.util.function.ToDoubleFunction;

/** Where a number stands in a setup. */
record Lens(
    ToDoubleFunction<Setup> reader, Writer writer, ToDoubleBiFunction<Setup, Double> holder) {

  /** A setup with another number. */
  interface Writer {
    Setup write(Setup setup, double value);
  }

  /** A number that may be anything above zero; {@code NaN} from the reader means none. */
  Lens(ToDoubleFunction<Setup> reader, Writer writer) {
    this(reader, writer, (setup, value) -> value);
  }

  OptionalDouble read(Setup setup) {
    double value = reader.applyAsDouble(setup);
    return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  Setup write(Setup setup, double value) {
    return writer.write(setup, value);
  }

  /** The nearest number that keeps its meaning in a setup. */
  double held(Setup setup, double value) {
    return holder.applyAsDouble(setup, value);
  }
}
