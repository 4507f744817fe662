package dev.jetting.rules.laws;

import java.util.Locale;
import java.util.TimeZone;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/** Runs something on another thread, under another default locale and time zone. */
final class Elsewhere {

  /** Turkish letters, whose i has a capital of its own, and Arabic digits. */
  private static final Locale LOCALE = Locale.forLanguageTag("tr-TR-u-nu-arab");

  /** Fourteen hours ahead, and eleven behind for who lives there. */
  private static final TimeZone AHEAD = TimeZone.getTimeZone("Pacific/Kiritimati");

  private static final TimeZone BEHIND = TimeZone.getTimeZone("Pacific/Niue");

  private Elsewhere() {}

  /** One at a time, for the defaults are those of the whole process. */
  static synchronized <T> T call(Callable<T> what) {
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    FutureTask<T> task = new FutureTask<>(what);
    try {
      Locale.setDefault(LOCALE);
      TimeZone.setDefault(zone.hasSameRules(AHEAD) ? BEHIND : AHEAD);
      Thread thread = new Thread(task, "jetting-laws-elsewhere");
      thread.setDaemon(true);
      thread.start();
      return task.get();
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuntimeException cause) {
        throw cause;
      }
      throw new IllegalStateException(e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while trying the law", e);
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }
}
