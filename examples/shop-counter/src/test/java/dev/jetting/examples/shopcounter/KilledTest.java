package dev.jetting.examples.shopcounter;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.examples.shopcounter.store.Database;
import dev.jetting.examples.shopcounter.store.Machine;
import dev.jetting.examples.shopcounter.store.Machines;
import dev.jetting.rules.json.SheetJson;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A program that writes is killed in the middle; what it had answered is there afterwards. */
class KilledTest {

  private static final String VISITOR = "somebody";

  @Test
  void answeredChanges_surviveAKill(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("counter.db");
    for (int kill = 1; kill <= 3; kill++) {
      List<String> answered = writeUntilKilled(file, 5 * kill);
      Machines machines = new Machines(Database.open(file), Clock.systemUTC());
      assertThat(machines.of(VISITOR)).extracting(Machine::id).containsAll(answered);
      for (String id : answered) {
        assertThat(machines.log(VISITOR, id)).hasSize(1);
      }
    }
  }

  private static List<String> writeUntilKilled(Path file, int answers) throws Exception {
    Process writer =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                Writer.class.getName(),
                file.toString())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    List<String> answered = new ArrayList<>();
    try (BufferedReader lines = writer.inputReader(StandardCharsets.UTF_8)) {
      String line;
      while (answered.size() < answers && (line = lines.readLine()) != null) {
        answered.add(line);
      }
      writer.destroyForcibly();
    }
    writer.waitFor();
    assertThat(answered).hasSize(answers);
    return answered;
  }

  /** Adds machines without end and prints the id of each that is answered. */
  static final class Writer {

    private Writer() {}

    public static void main(String[] args) throws IOException {
      Machines machines = new Machines(Database.open(Path.of(args[0])), Clock.systemUTC());
      String demo = "/dev/jetting/examples/shopcounter/demo/mild-all-round.json";
      try (InputStream in = Objects.requireNonNull(Writer.class.getResourceAsStream(demo))) {
        var sheet = SheetJson.read(in);
        while (true) {
          System.out.println(machines.add(VISITOR, sheet));
        }
      }
    }
  }
}
