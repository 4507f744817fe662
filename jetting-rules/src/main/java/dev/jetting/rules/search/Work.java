package dev.jetting.rules.search;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.IntFunction;
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
  private final AtomicBoolean cancelled = new AtomicBoolean();
  private final AtomicReference<@Nullable Throwable> failure = new AtomicReference<>();

  Work(Run run, long total) {
    this.run = run;
    this.total = total;
  }

  /** Whether to stop; once true it stays so. */
  boolean stopped() {
    if (!cancelled.get() && run.cancelled().getAsBoolean()) {
      cancelled.set(true);
    }
    return cancelled.get();
  }

  synchronized void done(long more) {
    done += more;
    run.progress().done(done, total);
  }

  /** Whether all work has been reported as done. */
  synchronized boolean isComplete() {
    return done == total;
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
        cancelled.set(true);
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
