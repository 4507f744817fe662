package dev.jetting.rules.json;

import dev.jetting.rules.Verdict;
import dev.jetting.rules.WaivedDanger;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** A verdict in JSON, its day as an ISO 8601 date. */
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
    return new Verdict(
        ruling,
        dangers,
        tooLean,
        tooLeanOnOverrun,
        unanswered,
        broken,
        waived,
        waiversJudgedOn.map(day -> IsoDate.read("waiversJudgedOn", day)));
  }
}
