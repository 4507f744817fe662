package dev.jetting.rules.laws;

import dev.jetting.core.mixture.CustomarySteps;
import dev.jetting.rules.SetupSheet;
import java.util.List;
import java.util.function.Predicate;

/**
 * Shrinks a trial towards a plain sheet while it still violates the law. It takes all pieces of the
 * plain sheet at once. If the trial then no longer violates the law, it takes half of them, and so
 * on down to each, until no further piece can be taken. The same trial always shrinks to the same
 * one.
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
      smallest = plainer(SheetPropertyTable.ALL, smallest, violates);
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

  private Trial plainer(List<SheetProperty<?>> pieces, Trial trial, Predicate<Trial> violates) {
    List<SheetProperty<?>> open =
        pieces.stream().filter(piece -> piece.differs(trial.sheet(), base)).toList();
    if (open.isEmpty()) {
      return trial;
    }
    Trial all = new Trial(taken(open, trial.sheet()), trial.change());
    if (!all.equals(trial) && violates.test(all)) {
      return all;
    }
    if (open.size() == 1) {
      return trial;
    }
    int half = open.size() / 2;
    Trial first = plainer(open.subList(0, half), trial, violates);
    return plainer(open.subList(half, open.size()), first, violates);
  }

  /** Twice over, for one piece may only go in after another. */
  private SetupSheet taken(List<SheetProperty<?>> pieces, SetupSheet sheet) {
    SetupSheet taken = sheet;
    for (int round = 0; round < 2; round++) {
      for (SheetProperty<?> piece : pieces) {
        taken = piece.taken(taken, base).orElse(taken);
      }
    }
    return taken;
  }

  List<String> differences(SetupSheet sheet) {
    return SheetPropertyTable.ALL.stream()
        .filter(piece -> piece.differs(sheet, base))
        .map(piece -> piece.difference(sheet, base))
        .toList();
  }
}
