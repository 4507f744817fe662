package dev.jetting.rules.search;

import java.util.Objects;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Independent pieces of work on the threads of a {@link Run}. The caller works too, so that an
 * executor without a free thread costs time and nothing else.
 */
final class Work {

  /** One worker's way to do a piece; the worker keeps what it finds. */
  @FunctionalInterface
  interface Piece {
    void run(int index);
  }

  private final Run run;
  private final long total;
  private long done;
  private final Thread caller = Thread.currentThread();
  private final AtomicReference<SearchEnding> stop = new AtomicReference<>(SearchEnding.COMPLETE);
  private final AtomicReference<@Nullable Throwable> failure = new AtomicReference<>();

  Work(Run run, long total) {
    this.run = run;
    this.total = total;
  }

  /** Whether to stop; once true it stays so. */
  boolean stopped() {
    if (stop.get() == SearchEnding.COMPLETE) {
      if (Thread.currentThread() == caller && caller.isInterrupted()) {
        stop(SearchEnding.INTERRUPTED);
      } else if (called("cancelled", () -> run.cancelled().getAsBoolean())) {
        stop(SearchEnding.CANCELLED);
      }
    }
    return stop.get() != SearchEnding.COMPLETE;
  }

  private void stop(SearchEnding why) {
    stop.compareAndSet(SearchEnding.COMPLETE, why);
  }

  /** What the caller's own code answers; what it throws is no fault of ours. */
  private static <T> T called(String callback, Supplier<T> code) {
    try {
      return code.get();
    } catch (Exception e) { // checked ones too, which code in other languages may throw
      throw new CallbackException(callback, e);
    }
  }

  synchronized void done(long more) {
    done += more;
    called(
        "progress",
        () -> {
          run.progress().done(done, total);
          return done;
        });
  }

  /** Returns how the work ended; complete if all work has been reported as done. */
  synchronized SearchEnding ending() {
    if (done == total) {
      return SearchEnding.COMPLETE;
    }
    SearchEnding why = Objects.requireNonNull(stop.get());
    return why == SearchEnding.COMPLETE ? SearchEnding.CANCELLED : why;
  }

  /**
   * Does the pieces, each once; returns when all that were begun are done.
   *
   * @param worker makes the worker of an index below the parallelism, on the caller's thread
   */
  void pieces(int count, IntFunction<Piece> worker) {
    AtomicInteger next = new AtomicInteger();
    CountDownLatch left = new CountDownLatch(count);
    int helpers = Math.min(run.parallelism(), count) - 1;
    for (int i = 0; i < helpers; i++) {
      Piece piece = worker.apply(i + 1);
      try {
        run.executor().execute(() -> drain(next, count, left, piece));
      } catch (RejectedExecutionException e) {
        break; // no thread to spare: the caller's own is enough
      } catch (RuntimeException e) {
        failure.compareAndSet(null, new CallbackException("executor", e));
        break; // what has been begun ends at once
      }
    }
    drain(next, count, left, worker.apply(0));
    boolean interrupted = false;
    while (true) {
      try {
        left.await();
        break;
      } catch (InterruptedException e) {
        interrupted = true;
        stop(SearchEnding.INTERRUPTED);
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
    rethrow();
  }

  private void drain(AtomicInteger next, int count, CountDownLatch left, Piece piece) {
    for (int i = next.getAndIncrement(); i < count; i = next.getAndIncrement()) {
      try {
        if (failure.get() == null && !stopped()) {
          piece.run(i);
        }
      } catch (RuntimeException | Error e) {
        failure.compareAndSet(null, e);
      } finally {
        left.countDown();
      }
    }
  }

  private void rethrow() {
    Throwable thrown = failure.get();
    if (thrown instanceof RuntimeException e) {
      throw e;
    }
    if (thrown instanceof Error e) {
      throw e;
    }
  }
}
