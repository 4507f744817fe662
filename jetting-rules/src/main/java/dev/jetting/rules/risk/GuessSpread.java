package dev.jetting.rules.risk;

import dev.jetting.core.engine.LoadLine;
import dev.jetting.core.mixture.ErrorSource;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.Sensitivities;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.typical.MachineValue;
import dev.jetting.core.typical.WrongGuess;
import dev.jetting.units.ThrottleOpening;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What guessed values add to the spread of each error source.
 *
 * <p>A plausible error of a value changes the mixture over the throttle range. That change is added
 * to the source whose sensitivity has the most similar shape, at the size of its largest value.
 * What the source then leaves of the square is summed over the values; the opening where most is
 * left gives the residual's. So at no opening is the sum smaller than all plausible errors
 * together, and one more guess never narrows it.
 *
 * @param sources standard deviation that each source gains
 * @param residual standard deviation that the residual gains
 */
record GuessSpread(Map<ErrorSource, Double> sources, double residual) {

  private static final List<ThrottleOpening> OPENINGS =
      Stream.of(0, 1, 2, 3, 4, 6, 8, 12, 16, 24, 32)
          .map(parts -> ThrottleOpening.ofShare(parts / 32.0))
          .toList();

  static List<ThrottleOpening> openings() {
    return OPENINGS;
  }

  static GuessSpread of(Setup setup, Collection<MachineValue> guessed) {
    if (guessed.isEmpty()) {
      return new GuessSpread(Map.of(), 0);
    }
    List<Sensitivities> sensitivities = sensitivities(setup);
    double[] left = new double[OPENINGS.size()];
    Map<ErrorSource, Double> variances = new EnumMap<>(ErrorSource.class);
    for (WrongGuess guess : WrongGuess.of(setup, guessed, OPENINGS)) {
      double[] change = guess.change().values().stream().mapToDouble(d -> d).toArray();
      Share share = nearest(sensitivities, change);
      variances.merge(share.source, share.z * share.z, Double::sum);
      for (int i = 0; i < left.length; i++) {
        double covered = share.z * sensitivities.get(i).to(share.source);
        left[i] += Math.max(0, change[i] * change[i] - covered * covered);
      }
    }
    double most = 0;
    for (double variance : left) {
      most = Math.max(most, variance);
    }
    variances.replaceAll((source, variance) -> Math.sqrt(variance));
    return new GuessSpread(variances, Math.sqrt(most));
  }

  static List<Sensitivities> sensitivities(Setup setup) {
    MixtureModel model = MixtureModel.of(setup);
    LoadLine loadLine = setup.engine().loadLine();
    return OPENINGS.stream()
        .map(opening -> model.sensitivities(opening, loadLine.at(opening)))
        .toList();
  }

  /** A source and how far it must be off to make a change. */
  private record Share(ErrorSource source, double z, double missed) {}

  /**
   * Of the sources that act where the change is largest, at that size the one that misses least.
   */
  private static Share nearest(List<Sensitivities> sensitivities, double[] change) {
    int most = 0;
    for (int i = 0; i < change.length; i++) {
      most = Math.abs(change[i]) > Math.abs(change[most]) ? i : most;
    }
    Share nearest = new Share(ErrorSource.PILOT, 0, Double.POSITIVE_INFINITY);
    for (ErrorSource source : ErrorSource.values()) {
      double there = sensitivities.get(most).to(source);
      double z = there == 0 ? 0 : Math.max(-1, Math.min(change[most] / there, 1));
      double missed = 0;
      for (int i = 0; i < change.length; i++) {
        double miss = change[i] - z * sensitivities.get(i).to(source);
        missed += miss * miss;
      }
      if (missed < nearest.missed) {
        nearest = new Share(source, z, missed);
      }
    }
    return nearest;
  }

  double of(ErrorSource source) {
    return sources.getOrDefault(source, 0.0);
  }
}
