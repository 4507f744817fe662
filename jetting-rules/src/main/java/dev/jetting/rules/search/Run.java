package dev.jetting.rules.search;

import java.util.Objects;
import java.util.concurrent.Executor;
import java.util.function.BooleanSupplier;

/**
 * How a search is run: on which threads, until when, and with which listener. The result does not
 * depend on it, unless the search is cancelled or the caller's thread is interrupted. The search
 * then ends within one setting or engine and leaves the interrupt status set; the {@link
 * SearchEnding} is in the result.
 *
 * <p>An exception from the caller's own code ends the search with a {@link CallbackException};
 * errors pass unchanged.
 *
 * @param parallelism how many threads work at most, the caller's included; 1 to 1024
 * @param executor gives the threads beyond the caller's; if it has none to spare, the caller does
 *     the work
 * @param cancelled asked often, from every thread; once true the search ends with what it has
 * @param progress receives the progress of the search
 */
public record Run(
    int parallelism, Executor executor, BooleanSupplier cancelled, Progress progress) {

  /**
   * Checks the parallelism.
   *
   * @param parallelism how many threads work at most, the caller's included; 1 to 1024
   * @param executor gives the threads beyond the caller's
   * @param cancelled asked often, from every thread
   * @param progress receives the progress of the search
   * @throws IllegalArgumentException if the parallelism is out of range
   */
  public Run {
    Objects.requireNonNull(executor, "executor");
    Objects.requireNonNull(cancelled, "cancelled");
    Objects.requireNonNull(progress, "progress");
    if (parallelism < 1 || parallelism > 1024) {
      throw new IllegalArgumentException("parallelism " + parallelism + ": allowed 1 to 1024");
    }
  }

  /** {@return a run on the caller's thread alone, to the end} */
  public static Run alone() {
    return new Run(1, Runnable::run, () -> false, (done, total) -> {});
  }

  /**
   * A run on several threads, to the end.
   *
   * @param parallelism how many threads work at most, the caller's included; 1 to 1024
   * @param executor gives the threads beyond the caller's
   * @return the run
   * @throws IllegalArgumentException if the parallelism is out of range
   */
  public static Run on(int parallelism, Executor executor) {
    return new Run(parallelism, executor, () -> false, (done, total) -> {});
  }

  /**
   * This run with another condition that ends it.
   *
   * @param other asked often, from every thread; once true the search ends with what it has
   * @return the changed run
   */
  public Run until(BooleanSupplier other) {
    return new Run(parallelism, executor, other, progress);
  }

  /**
   * This run with another listener to its progress.
   *
   * @param other receives the progress of the search
   * @return the changed run
   */
  public Run reportingTo(Progress other) {
    return new Run(parallelism, executor, cancelled, other);
  }
}
