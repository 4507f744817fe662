package dev.jetting.examples.kitdesk;

import java.util.Optional;

/**
 * What a summary needs to know of a line: short, whatever was said of it.
 *
 * @param line its number, from 1
 * @param judged what was said of the kit; empty for a line that is none
 * @param problem what is wrong with the line; empty for a kit
 */
record Verdict(long line, Optional<Judged> judged, String problem) {

  static Verdict of(Outcome outcome) {
    return new Verdict(outcome.line(), outcome.validation().map(Judged::of), outcome.problem());
  }
}
