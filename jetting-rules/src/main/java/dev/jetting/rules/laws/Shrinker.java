package dev.jetting.rules.laws;

import dev.jetting.core.mixture.CustomarySteps;
import dev.jetting.rules.SetupSheet;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Brings a trial as near to a plain sheet as it goes on violating the law: piece by piece, coarse
 * ones first, until no piece more can be replaced. The same trial always shrinks to the same one.
 */
final class Shrinker {

  private final SetupSheet base;

  Shrinker(SetupSheet base) {
    this.base = base;
  }

  Trial shrunk(Trial trial, Predicate<Trial> violates) {
    Trial smallest = withoutChange(trial, violates);
    boolean smaller = true;
    while (smaller) {
      Trial start = smallest;
      for (Piece<?> piece : Stream.concat(Pieces.COARSE.stream(), Pieces.FINE.stream()).toList()) {
        smallest = replaced(piece, smallest, violates);
      }
      smaller = !smallest.equals(start);
    }
    return customary(smallest, violates);
  }

  private static Trial withoutChange(Trial trial, Predicate<Trial> violates) {
    Trial plain = Trial.of(trial.sheet());
    return trial.change().isPresent() && violates.test(plain) ? plain : trial;
  }

  /** The customary step where it violates the law too, for it says more. */
  private static Trial customary(Trial trial, Predicate<Trial> violates) {
    return trial
        .change()
        .map(c -> PartChange.customary(c.part(), c.way(), CustomarySteps.assumed()))
        .map(change -> Trial.of(trial.sheet(), change))
        .filter(violates)
        .orElse(trial);
  }

  private Trial replaced(Piece<?> piece, Trial trial, Predicate<Trial> violates) {
    if (!piece.differs(trial.sheet(), base)) {
      return trial;
    }
    Optional<Trial> plainer =
        piece.taken(trial.sheet(), base).map(sheet -> new Trial(sheet, trial.change()));
    return plainer.filter(violates).orElse(trial);
  }

  List<String> differences(SetupSheet sheet) {
    return Pieces.FINE.stream()
        .filter(piece -> piece.differs(sheet, base))
        .map(piece -> piece.difference(sheet, base))
        .toList();
  }
}
