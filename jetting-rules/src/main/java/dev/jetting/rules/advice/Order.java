package dev.jetting.rules.advice;

import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.parts.Setting;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The order of a way's changes: towards rich first, and among those in the order of the ladders,
 * but none that would bring a danger on the way.
 */
final class Order {

  private final Judge judge;
  private final Judged start;
  private final double share;

  Order(Judge judge, Judged start, double share) {
    this.judge = judge;
    this.start = start;
    this.share = share;
  }

  /** The settings after each change; empty where every order brings a danger on the way. */
  Optional<List<Step>> of(Way way, List<Ladder> ladders) {
    List<Step> wanted = new ArrayList<>();
    for (Ladder ladder : ladders) {
      Integer rung = way.rungs().get(ladder.part());
      if (rung != null) {
        wanted.add(new Step(ladder, rung, start, start));
      }
    }
    List<Step> richFirst = new ArrayList<>();
    wanted.stream().filter(step -> isRicher(step.ladder(), way)).forEach(richFirst::add);
    wanted.stream().filter(step -> !isRicher(step.ladder(), way)).forEach(richFirst::add);
    return ordered(richFirst, start);
  }

  private static boolean isRicher(Ladder ladder, Way way) {
    Map<MeteringPart, Integer> rungs = way.rungs();
    return rungs.getOrDefault(ladder.part(), ladder.own()) > ladder.own();
  }

  private Optional<List<Step>> ordered(List<Step> left, Judged from) {
    if (left.isEmpty()) {
      return Optional.of(List.of());
    }
    for (Step step : left) {
      Optional<Judged> then =
          step.ladder()
              .on(from.setting(), step.rung())
              .flatMap((Setting setting) -> judge.of(setting))
              .filter(after -> after.bringsNoDangerTo(start, share));
      if (then.isPresent()) {
        List<Step> others =
            left.stream().filter(other -> other.ladder().part() != step.ladder().part()).toList();
        Optional<List<Step>> rest = ordered(others, then.get());
        if (rest.isPresent()) {
          List<Step> all = new ArrayList<>();
          all.add(new Step(step.ladder(), step.rung(), from, then.get()));
          all.addAll(rest.get());
          return Optional.of(all);
        }
      }
    }
    return Optional.empty();
  }
}
