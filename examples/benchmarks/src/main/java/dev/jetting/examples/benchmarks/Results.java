package dev.jetting.examples.benchmarks;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;

/**
 * What a run has measured, and on what machine.
 *
 * @param machine the machine, in words
 * @param form how long the run measured
 * @param results a line for each benchmark
 */
record Results(Machine machine, String form, List<Line> results) {

  private static final ObjectMapper MAPPER =
      new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

  /**
   * @param processor model of the processor, as the system reports it
   * @param cores processors that the virtual machine sees
   * @param java version and vendor of the virtual machine
   */
  record Machine(String processor, int cores, String java) {

    static Machine here() throws IOException {
      return new Machine(
          model(),
          Runtime.getRuntime().availableProcessors(),
          System.getProperty("java.vm.name") + " " + System.getProperty("java.runtime.version"));
    }

    private static String model() throws IOException {
      Path info = Path.of("/proc/cpuinfo");
      if (Files.isReadable(info)) {
        for (String line : Files.readAllLines(info)) {
          if (line.startsWith("model name")) {
            return line.substring(line.indexOf(':') + 1).strip();
          }
        }
      }
      return System.getProperty("os.arch");
    }
  }

  /**
   * @param benchmark class and method
   * @param parameters by name
   * @param score time for one operation
   * @param error half the width of the 99.9 % interval; 0 if too little was measured for one
   * @param unit of both
   * @param bytes allocated in one operation
   */
  record Line(
      String benchmark,
      Map<String, String> parameters,
      double score,
      double error,
      String unit,
      double bytes) {}

  static Results of(String form, Collection<RunResult> runs) throws IOException {
    List<Line> lines = new ArrayList<>();
    for (RunResult run : runs) {
      Map<String, String> parameters = new TreeMap<>();
      for (String key : run.getParams().getParamsKeys()) {
        parameters.put(key, run.getParams().getParam(key));
      }
      Result<?> primary = run.getPrimaryResult();
      double error = primary.getScoreError();
      String full = run.getParams().getBenchmark();
      String name = full.substring(full.lastIndexOf('.', full.lastIndexOf('.') - 1) + 1);
      double bytes =
          run.getSecondaryResults().entrySet().stream()
              .filter(entry -> entry.getKey().contains("gc.alloc.rate.norm"))
              .mapToDouble(entry -> entry.getValue().getScore())
              .findFirst()
              .orElse(0);
      lines.add(
          new Line(
              name,
              parameters,
              primary.getScore(),
              Double.isFinite(error) ? error : 0,
              primary.getScoreUnit(),
              bytes));
    }
    return new Results(Machine.here(), form, lines);
  }

  void write(Path file) throws IOException {
    Files.writeString(file, MAPPER.writeValueAsString(this) + "\n");
  }

  static Results read(Path file) throws IOException {
    return MAPPER.readValue(Files.readString(file), Results.class);
  }
}
