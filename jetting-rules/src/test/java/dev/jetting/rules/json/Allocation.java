package dev.jetting.rules.json;

import java.lang.reflect.Method;
import java.util.function.Supplier;

/**
 * Counts the bytes that a piece of work allocates on its thread. The same work allocates the same,
 * give or take what the compiler leaves out, on a busy machine as on an idle one.
 */
final class Allocation {

  private Allocation() {}

  /** Allocated by the work, whose classes should be loaded and its caches filled before. */
  static double megabytes(Supplier<?> work) {
    long before = bytes();
    Object kept = work.get();
    long after = bytes();
    if (kept == null) {
      throw new IllegalStateException("work without a result");
    }
    return (after - before) / 1e6;
  }

  /** Found by name, because the module under test does not read the JDK's module of it. */
  private static long bytes() {
    try {
      Object threads =
          Class.forName("java.lang.management.ManagementFactory")
              .getMethod("getThreadMXBean")
              .invoke(null);
      Method allocated =
          Class.forName("com.sun.management.ThreadMXBean")
              .getMethod("getThreadAllocatedBytes", long.class);
      return (long) allocated.invoke(threads, Thread.currentThread().getId());
    } catch (ReflectiveOperationException e) {
      throw new LinkageError("a Java that does not count what a thread allocates", e);
    }
  }
}
