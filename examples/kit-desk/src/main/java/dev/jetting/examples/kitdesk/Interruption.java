package dev.jetting.examples.kitdesk;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Ctrl-C while something is done that has something to say when it is stopped: the process waits a
 * little until that is said.
 */
final class Interruption implements AutoCloseable {

  private static final long MOST_SECONDS = 10;

  private final CountDownLatch said = new CountDownLatch(1);
  private final Thread hook = new Thread(this::waitUntilSaid, "interruption");
  private volatile boolean requested;

  private Interruption() {}

  static Interruption awaited() {
    Interruption interruption = new Interruption();
    Runtime.getRuntime().addShutdownHook(interruption.hook);
    return interruption;
  }

  private void waitUntilSaid() {
    requested = true;
    try {
      boolean ignored = said.await(MOST_SECONDS, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Whether to stop. */
  boolean requested() {
    return requested;
  }

  /** All is said, and out of any buffer. */
  @Override
  public void close() {
    said.countDown();
    try {
      Runtime.getRuntime().removeShutdownHook(hook);
    } catch (IllegalStateException e) {
      // The process is on its way out; the hook has done its part.
    }
  }
}
