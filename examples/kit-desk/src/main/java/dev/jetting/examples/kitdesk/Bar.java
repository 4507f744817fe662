package dev.jetting.examples.kitdesk;

import java.io.PrintStream;
import me.tongfei.progressbar.ConsoleProgressBarConsumer;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;
import org.jspecify.annotations.Nullable;

/** A progress bar on a terminal, and nothing anywhere else. */
final class Bar implements AutoCloseable {

  private static final int WIDTH = 79;

  private final @Nullable ProgressBar bar;

  private Bar(@Nullable ProgressBar bar) {
    this.bar = bar;
  }

  /** A bar with the given number of steps; negative if the number is unknown. */
  static Bar of(String what, long steps, PrintStream err, boolean terminal) {
    return new Bar(
        terminal
            ? new ProgressBarBuilder()
                .setTaskName(what)
                .setInitialMax(steps)
                .setStyle(ProgressBarStyle.ASCII)
                .setConsumer(new ConsoleProgressBarConsumer(err, WIDTH))
                .build()
            : null);
  }

  void at(long step) {
    if (bar != null) {
      bar.stepTo(step);
    }
  }

  void of(long step, long steps) {
    if (bar != null) {
      bar.maxHint(steps);
      bar.stepTo(step);
    }
  }

  @Override
  public void close() {
    if (bar != null) {
      bar.close();
    }
  }
}
