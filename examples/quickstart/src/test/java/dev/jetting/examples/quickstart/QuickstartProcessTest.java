package dev.jetting.examples.quickstart;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The program as a process of its own: exit codes and bytes, on the module path where there is one.
 */
class QuickstartProcessTest {

  private static final String MODULE = "dev.jetting.examples.quickstart";

  @TempDir private Path directory;

  @Test
  void main_asciiTurkishProcess_printsUtf8AndExitsWithTheCode()
      throws IOException, InterruptedException {
    Path out = directory.resolve("out");
    Path err = directory.resolve("err");
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(
        List.of(
            "-Dfile.encoding=US-ASCII",
            "-Dstdout.encoding=US-ASCII",
            "-Duser.language=tr",
            "-Duser.country=TR"));
    String modulePath = System.getProperty("jdk.module.path");
    if (modulePath == null) {
      command.addAll(
          List.of("-classpath", System.getProperty("java.class.path"), MODULE + ".Quickstart"));
    } else {
      command.addAll(
          List.of("--module-path", modulePath, "--module", MODULE + "/" + MODULE + ".Quickstart"));
    }
    Process process =
        new ProcessBuilder(command)
            .redirectInput(Files.createFile(directory.resolve("in")).toFile())
            .redirectOutput(out.toFile())
            .redirectError(err.toFile())
            .start();

    assertThat(process.waitFor()).isEqualTo(1);
    assertThat(Files.readString(out, StandardCharsets.UTF_8)).isEqualTo(Run.with().out());
    assertThat(err).isEmptyFile();
  }
}
