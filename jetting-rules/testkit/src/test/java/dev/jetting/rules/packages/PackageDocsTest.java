package dev.jetting.rules.packages;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.Diagnostic;
import javax.tools.DiagnosticCollector;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Each published package lists its public types, and shows an example that compiles. */
class PackageDocsTest {

  private static final List<String> MODULES =
      List.of("jetting-units", "jetting-core", "jetting-core/cycle", "jetting-rules");

  /** This artifact has no module descriptor: all of its packages are published. */
  private static final String TESTKIT = "jetting-rules/testkit";

  private static final Pattern EXPORTS = Pattern.compile("exports ([a-z.]+);");
  private static final Pattern PUBLIC_TYPE =
      Pattern.compile("(?m)^public (?:[a-z-]+ )*(?:class|record|enum|interface|@interface) (\\w+)");
  private static final Pattern ITEM = Pattern.compile("<li>\\{@link (\\w+)}: (?=\\S)");
  private static final Pattern EXAMPLE = Pattern.compile("(?s)<pre>\\{@code\n(.*?)\n}</pre>");

  private static final String JQWIK =
      "import net.jqwik.api.Arbitrary;\nimport net.jqwik.api.Provide;\n";

  private static Path root() {
    return Path.of("..", "..");
  }

  /** The folder of each published package, by its name. */
  private static Map<String, Path> packages() throws IOException {
    Map<String, Path> packages = new TreeMap<>();
    for (String module : MODULES) {
      Path sources = root().resolve(module).resolve("src/main/java");
      EXPORTS
          .matcher(Files.readString(sources.resolve("module-info.java"), UTF_8))
          .results()
          .map(found -> found.group(1))
          .forEach(name -> packages.put(name, sources.resolve(name.replace('.', '/'))));
    }
    Path testkit = root().resolve(TESTKIT).resolve("src/main/java/dev/jetting/rules");
    for (String name : List.of("laws", "arbitraries")) {
      packages.put("dev.jetting.rules." + name, testkit.resolve(name));
    }
    return packages;
  }

  /** What a package says of itself, without the stars of the comment. */
  private static String document(Path folder) throws IOException {
    return Files.readString(folder.resolve("package-info.java"), UTF_8)
        .replaceAll("(?m)^ \\* ?", "");
  }

  private static Set<String> publicTypes(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      Set<String> types = new TreeSet<>();
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        PUBLIC_TYPE
            .matcher(Files.readString(file, UTF_8))
            .results()
            .map(found -> found.group(1))
            .forEach(types::add);
      }
      return types;
    }
  }

  @Test
  void everyPublicType_isListedWithALine() throws IOException {
    Map<String, Path> packages = packages();
    assertThat(packages).hasSizeGreaterThan(20);
    for (Map.Entry<String, Path> entry : packages.entrySet()) {
      List<String> listed =
          ITEM.matcher(document(entry.getValue()).replaceAll("\\s+", " "))
              .results()
              .map((MatchResult found) -> found.group(1))
              .toList();
      assertThat(listed).as(entry.getKey()).doesNotHaveDuplicates();
      assertThat(listed)
          .as(entry.getKey())
          .containsExactlyInAnyOrderElementsOf(publicTypes(entry.getValue()));
    }
  }

  /** With the imports that an editor would add: of the library, of {@code java.util} and jqwik. */
  @Test
  void everyExample_compiles(@TempDir Path folder) throws IOException {
    Map<String, Path> packages = packages();
    String imports =
        Stream.concat(packages.keySet().stream(), Stream.of("java.util", "java.util.stream"))
            .map(name -> "import " + name + ".*;\n")
            .collect(Collectors.joining("", "", JQWIK));
    List<Source> sources =
        packages.entrySet().stream().map(entry -> example(entry, imports)).toList();
    DiagnosticCollector<JavaFileObject> problems = new DiagnosticCollector<>();
    JavaCompiler compiler = Objects.requireNonNull(ToolProvider.getSystemJavaCompiler());
    List<String> options =
        List.of("-proc:none", "-d", folder.toString(), "-classpath", classpath());
    compiler.getTask(null, null, problems, options, null, sources).call();
    assertThat(problems.getDiagnostics())
        .filteredOn(problem -> problem.getKind() == Diagnostic.Kind.ERROR)
        .extracting(
            problem -> problem.getSource().getName() + ": " + problem.getMessage(Locale.ROOT))
        .isEmpty();
    assertThat(folder).isDirectoryContaining("glob:**.class");
  }

  private static String classpath() {
    return System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
  }

  private static Source example(Map.Entry<String, Path> entry, String imports) {
    try {
      List<String> examples =
          EXAMPLE
              .matcher(document(entry.getValue()))
              .results()
              .map(found -> found.group(1))
              .toList();
      assertThat(examples).as(entry.getKey()).hasSize(1);
      String name = "ExampleOf_" + entry.getKey().replace('.', '_');
      return new Source(name, imports + "class " + name + " {\n" + examples.get(0) + "\n}\n");
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  /** A class that stands in no file. */
  private static final class Source extends SimpleJavaFileObject {

    private final String text;

    Source(String name, String text) {
      super(URI.create("string:///" + name + ".java"), Kind.SOURCE);
      this.text = text;
    }

    @Override
    public CharSequence getCharContent(boolean ignoreEncodingErrors) {
      return text;
    }
  }
}
