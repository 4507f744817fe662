package dev.jetting.rules.json;

import dev.jetting.rules.Verdict;
import dev.jetting.rules.Verdict.Lean;
import dev.jetting.rules.WaivedDanger;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A verdict in JSON, its day as an ISO 8601 date.
 *
 * @param tooLean whether the mixture is too lean, on any assessed day, at an opening that no waiver
 *     of a lean risk covers
 * @param tooLeanOnOverrun whether the overrun is too lean and no waiver covers it
 */
record VerdictForm(
    Verdict.Ruling ruling,
    List<String> dangers,
    boolean tooLean,
    boolean tooLeanOnOverrun,
    List<String> unanswered,
    List<String> broken,
    List<WaivedDanger> waived,
    Optional<String> waiversJudgedOn) {

  static VerdictForm of(Verdict verdict) {
    return new VerdictForm(
        verdict.ruling(),
        verdict.dangers(),
        verdict.tooLean(),
        verdict.tooLeanOnOverrun(),
        verdict.unanswered(),
        verdict.broken(),
        verdict.waived(),
        verdict.waiversJudgedOn().map(LocalDate::toString));
  }

  Verdict verdict() {
    Set<Lean> lean = EnumSet.noneOf(Lean.class);
    if (tooLean) {
      lean.add(Lean.RIDDEN);
    }
    if (tooLeanOnOverrun) {
      lean.add(Lean.OVERRUN);
    }
    return new Verdict(
        ruling,
        dangers,
        lean,
        unanswered,
        broken,
        waived,
        waiversJudgedOn.map(day -> IsoDate.read("waiversJudgedOn", day)));
  }
}
