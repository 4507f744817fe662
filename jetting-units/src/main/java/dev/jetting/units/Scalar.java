package dev.jetting.units;

import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A quantity that is one double in its canonical unit: finite, within its kind's range, never -0.0.
 * Comparing with {@code ==} is therefore right, and consistent with {@code compareTo}.
 *
 * <p>No signature may mention this class, not even after erasure: {@code JetBore::compareTo} would
 * then fail to link in other packages. Hence the bound of {@code Q}.
 */
abstract non-sealed class Scalar<Q extends Quantity<Q>> implements Quantity<Q> {
  final double canonical;

  Scalar(double canonical) {
    this.canonical = canonical;
  }

  abstract Kind kind();

  /** Returns the canonical number of an argument. */
  static double given(Scalar<?> argument, String name) {
    return Objects.requireNonNull(argument, name).canonical;
  }

  @Override
  public Optional<Sentence.Amount> amount() {
    return Optional.of(new Sentence.Amount(canonical, kind().canonicalUnit().symbol()));
  }

  @Override
  public int compareTo(Q other) {
    return Double.compare(
        canonical, ((Scalar<?>) Objects.requireNonNull(other, "other")).canonical);
  }

  @Override
  @SuppressWarnings("EqualsGetClass") // equal numbers of different quantities are not equal
  public final boolean equals(@Nullable Object other) {
    return other != null
        && other.getClass() == getClass()
        && ((Scalar<?>) other).canonical == canonical;
  }

  @Override
  public final int hashCode() {
    return Double.hashCode(canonical);
  }

  @Override
  public String toString() {
    return kind().format(canonical);
  }
}
