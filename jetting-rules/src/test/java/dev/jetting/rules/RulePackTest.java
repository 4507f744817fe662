package dev.jetting.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.spi.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Packs on a class path of their own, compiled here: those of the tests are in this module. */
class RulePackTest {

  @TempDir Path folder;

  /** A folder of a class path that holds one pack. */
  private URL pack(String className, String id) throws IOException, URISyntaxException {
    Path root = Files.createDirectories(folder.resolve(className));
    Path source = root.resolve(className + ".java");
    Files.writeString(
        source,
        """
        public class %s implements dev.jetting.rules.RulePack {
          public String id() { return "%s"; }
          public String version() { return "1"; }
          public java.util.List<dev.jetting.rules.Rule> rules() { return java.util.List.of(); }
        }
        """
            .formatted(className, id));
    Path library =
        Path.of(RulePack.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    int failures =
        ToolProvider.findFirst("javac")
            .orElseThrow()
            .run(
                System.out,
                System.err,
                "-proc:none",
                "-classpath",
                library.toString(),
                "-d",
                root.toString(),
                source.toString());
    assertThat(failures).isZero();
    Path services = Files.createDirectories(root.resolve("META-INF/services"));
    Files.writeString(services.resolve("dev.jetting.rules.RulePack"), className + "\n");
    return root.toUri().toURL();
  }

  private static List<String> loaded(URL... classPath) throws IOException {
    try (URLClassLoader loader = new URLClassLoader(classPath, RulePack.class.getClassLoader())) {
      return RulePack.load(loader).stream().map(RulePack::id).toList();
    }
  }

  @Test
  void load_givesTheSameOrder_whateverTheOrderOfTheClassPath() throws Exception {
    URL first = pack("First", "zinc");
    URL second = pack("Second", "brass");

    assertThat(loaded(first, second)).containsExactly("brass", "zinc");
    assertThat(loaded(second, first)).containsExactly("brass", "zinc");
  }

  @Test
  void load_ofTwoPacksOfOneId_isRefused() throws Exception {
    URL one = pack("One", "brass");
    URL other = pack("Other", "brass");

    assertThatThrownBy(() -> loaded(one, other))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("rule pack id brass 2 times: allowed once");
  }
}
