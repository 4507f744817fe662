package dev.jetting.rules;

import java.util.Optional;
import java.util.function.Consumer;
import net.jqwik.api.statistics.Statistics;

/**
 * An assertion of a property on what is not there in every try. It has to be there often enough, or
 * the property has shown nothing.
 */
public final class Present {

  private static final double LEAST_PERCENT = 10;

  private Present() {}

  /** Asserts where there is something. A tenth of the tries must have it. */
  public static <T> void often(Optional<T> what, Consumer<? super T> assertion) {
    Statistics.label("there is something to assert")
        .collect(what.isPresent())
        .coverage(seen -> seen.check(true).percentage(there -> there >= LEAST_PERCENT));
    what.ifPresent(assertion);
  }
}
