package dev.jetting.examples.benchmarks;

import java.io.IOException;
import java.nio.file.Path;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;

/**
 * Runs the benchmarks, writes results.json and the table of the README.
 *
 * <pre>mvn -Pbenchmarks -pl examples/benchmarks -am process-classes</pre>
 */
public final class Benchmarks {

  private Benchmarks() {}

  /**
   * Runs the long form.
   *
   * @param args the module's folder; then, if wanted, a pattern of benchmark names
   * @throws RunnerException if a benchmark fails
   * @throws IOException if a file cannot be written
   */
  public static void main(String[] args) throws RunnerException, IOException {
    Path folder = Path.of(args[0]);
    String pattern = args.length > 1 ? args[1] : "dev.jetting.examples.benchmarks";
    ChainedOptionsBuilder options =
        new OptionsBuilder()
            .include(pattern)
            .forks(1)
            .warmupIterations(3)
            .warmupTime(TimeValue.seconds(2))
            .measurementIterations(5)
            .measurementTime(TimeValue.seconds(2))
            .addProfiler(GCProfiler.class);
    Results results =
        Results.of(
            "1 fork, 3 warm-ups and 5 measurements of 2 s", new Runner(options.build()).run());
    results.write(folder.resolve("results.json"));
    Table.into(folder.resolve("README.md"), results);
  }

  /** Each benchmark once, in this virtual machine: shows that they run, and measures nothing. */
  static Results smoke() throws RunnerException, IOException {
    ChainedOptionsBuilder options =
        new OptionsBuilder()
            .include("dev.jetting.examples.benchmarks")
            .param("settings", "10000")
            .param("kits", "100")
            .mode(Mode.SingleShotTime)
            .forks(0)
            .warmupIterations(0)
            .measurementIterations(1);
    return Results.of("each once, cold", new Runner(options.build()).run());
  }
}
