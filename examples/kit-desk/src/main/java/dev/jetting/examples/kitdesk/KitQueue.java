package dev.jetting.examples.kitdesk;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.function.Function;

/**
 * Lines in the works: judged by several threads, taken in the order of the file, each as soon as it
 * and those before it are done.
 */
final class KitQueue {

  /** How many lines are in the works at a time. */
  private static final int MOST_LINES = 256;

  /**
   * The most characters in the works, except that one line may be longer. Results are longer still.
   */
  private static final long MOST_CHARACTERS = 1_000_000;

  /** A line, and its outcome to come. */
  private record Pending(int length, Future<Outcome> outcome) {}

  private final KitLines lines;
  private final Function<Numbered, Outcome> judge;
  private final ExecutorService workers;
  private final Queue<Pending> pending = new ArrayDeque<>();
  private long characters;
  private boolean ended;

  KitQueue(KitLines lines, Function<Numbered, Outcome> judge, ExecutorService workers) {
    this.lines = lines;
    this.judge = judge;
    this.workers = workers;
  }

  /** The outcome of the next line; empty after the last. */
  Optional<Outcome> next() throws UnusableException, IOException, InterruptedException {
    fill();
    Pending first = pending.poll();
    if (first == null) {
      return Optional.empty();
    }
    characters -= first.length();
    try {
      return Optional.of(first.outcome().get());
    } catch (ExecutionException e) {
      throw new IllegalStateException("stopped: " + e.getCause(), e);
    }
  }

  private void fill() throws UnusableException, IOException {
    while (!ended && pending.size() < MOST_LINES && characters < MOST_CHARACTERS) {
      Optional<Numbered> line = lines.next();
      ended = line.isEmpty();
      line.ifPresent(this::submit);
    }
  }

  private void submit(Numbered line) {
    characters += line.length();
    pending.add(new Pending(line.length(), workers.submit(() -> judge.apply(line))));
  }
}
