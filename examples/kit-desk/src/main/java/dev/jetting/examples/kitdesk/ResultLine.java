package dev.jetting.examples.kitdesk;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * As much of a line of a result file as it takes to go on after it.
 *
 * @param line number of the line that was judged, from 1
 * @param input digest of that line
 * @param validation what was said of its kit
 * @param problem what was wrong with it
 */
record ResultLine(
    long line, @Nullable String input, @Nullable Judged validation, @Nullable String problem) {

  /** With either a validation or a problem. */
  boolean isWhole() {
    return line > 0 && input != null && (validation == null) != (problem == null);
  }

  Verdict verdict() {
    return new Verdict(line, Optional.ofNullable(validation), problem == null ? "" : problem);
  }
}
