package dev.jetting.core.typical;

import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.Setup;
import dev.jetting.units.ThrottleOpening;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * How much a wrong guess of one value matters on one machine: by how much ln λ changes over the
 * throttle range if the value is larger by its plausible error. Computed by the model, not assumed;
 * only the error itself is.
 *
 * @param value which value
 * @param guess the value that was taken, in its unit
 * @param change half the change of ln λ from one plausible error below to one above, by throttle
 *     opening, rising; above zero where a larger value is leaner
 */
public record WrongGuess(MachineValue value, double guess, Map<ThrottleOpening, Double> change) {

  private static final List<ThrottleOpening> OPENINGS =
      List.of(
          ThrottleOpening.CLOSED,
          ThrottleOpening.ofEighths(1),
          ThrottleOpening.ofEighths(2),
          ThrottleOpening.ofEighths(4),
          ThrottleOpening.FULL);

  /**
   * Copies the changes.
   *
   * @param value which value
   * @param guess the value that was taken, in its unit
   * @param change half the change of ln λ from one plausible error below to one above, by throttle
   *     opening, rising
   * @throws IllegalArgumentException if there is no opening
   */
  public WrongGuess {
    Objects.requireNonNull(value, "value");
    change = Collections.unmodifiableMap(new LinkedHashMap<>(change));
    if (change.isEmpty()) {
      throw new IllegalArgumentException(
          "throttle openings of a wrong guess: allowed at least one");
    }
  }

  /** {@return the openings of {@link #of(Setup, Collection)}: closed, 1/8, 1/4, 1/2 and full} */
  public static List<ThrottleOpening> openings() {
    return OPENINGS;
  }

  /**
   * How much wrong guesses matter on a machine.
   *
   * @param setup the machine
   * @param guessed the values that were guessed; those that the machine does not have are passed
   *     over
   * @return one for each, the one that matters most first
   */
  public static List<WrongGuess> of(Setup setup, Collection<MachineValue> guessed) {
    return of(setup, guessed, OPENINGS);
  }

  /**
   * How much wrong guesses matter on a machine, at openings of the caller's choice.
   *
   * @param setup the machine
   * @param guessed the values that were guessed; those that the machine does not have are passed
   *     over
   * @param openings throttle openings, rising; at least one
   * @return one for each, the one that matters most at these openings first
   */
  public static List<WrongGuess> of(
      Setup setup, Collection<MachineValue> guessed, List<ThrottleOpening> openings) {
    return guessed.stream()
        .distinct()
        .flatMap(value -> of(setup, value, openings).stream())
        .sorted(
            Comparator.comparingDouble(WrongGuess::most)
                .reversed()
                .thenComparing(WrongGuess::value))
        .toList();
  }

  private static Optional<WrongGuess> of(
      Setup setup, MachineValue value, List<ThrottleOpening> openings) {
    Optional<MixtureModel> more = value.off(setup, 1).map(MixtureModel::of);
    Optional<MixtureModel> less = value.off(setup, -1).map(MixtureModel::of);
    if (more.isEmpty() || less.isEmpty()) {
      return Optional.empty();
    }
    Map<ThrottleOpening, Double> change = new LinkedHashMap<>();
    for (ThrottleOpening opening : openings) {
      change.put(opening, (lnLambda(more.get(), opening) - lnLambda(less.get(), opening)) / 2);
    }
    return Optional.of(new WrongGuess(value, value.in(setup).orElseThrow(), change));
  }

  private static double lnLambda(MixtureModel model, ThrottleOpening opening) {
    return StrictMath.log(model.at(opening).lambda().value());
  }

  /**
   * The change at an opening.
   *
   * @param opening one of the openings that this was computed for
   * @return change of ln λ
   * @throws IllegalArgumentException if it was not computed there
   */
  public double changeAt(ThrottleOpening opening) {
    Double there = change.get(opening);
    if (there == null) {
      throw new IllegalArgumentException(
          "throttle opening " + opening + " of a wrong guess: allowed " + change.keySet());
    }
    return there;
  }

  /** {@return the largest change at any of the openings, without its sign} */
  public double most() {
    return change.values().stream().mapToDouble(Math::abs).max().orElseThrow();
  }
}
