package dev.jetting.rules.text;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import com.google.common.base.Splitter;
import dev.jetting.rules.json.SheetJson;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.RiderInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

/** Errors of readers in each language. */
class ErrorWordsTest {

  private static final Wording GERMAN = Wording.of(Locale.GERMAN);
  private static final Wording ITALIAN = Wording.of(Locale.ITALIAN);

  private static final Path TESTS = Path.of("src/test/java/dev/jetting/rules");

  private static final Path GOLDEN =
      Path.of("src/test/resources/dev/jetting/rules/text/errors.txt");

  /** Where tests list what readers refuse, with the whole line of each error. */
  private static final List<String> REFUSALS =
      List.of(
          "json/BadSheetTest.java",
          "json/BadRuleFileTest.java",
          "json/RuleFileTest.java",
          "json/RuleExamplesTest.java",
          "kit/RowsTest.java");

  private static final List<Path> SOURCES =
      List.of(
          Path.of("../jetting-units/src/main/java"),
          Path.of("../jetting-core/src/main/java"),
          Path.of("src/main/java"));

  private static final Pattern COMMENT = Pattern.compile("/\\*.*?\\*/", Pattern.DOTALL);
  private static final Pattern JOINT = Pattern.compile("\"\\s*\\+\\s*\"");
  private static final Pattern BETWEEN_WORDS =
      Pattern.compile("\\{\\w+}|\"|(?<=[ ,]) *or (?=an object)|[:,;?] | \\(|\\), ");
  private static final Pattern LITERAL = Pattern.compile("\"[^\"\\n]*\"");
  private static final Pattern WORD = Pattern.compile("[^\\p{L}]+");
  private static final Pattern ENGLISH =
      Pattern.compile("(?<![\\w\"])[a-z]{2,} [a-z]{2,} [a-z]{2,}");

  /** Arguments that list fields, columns or ids. */
  private static final Set<String> IDENTIFIERS = Set.of("fields", "columns", "names", "sample");

  private static IllegalArgumentException error(ThrowingCallable code) {
    return catchThrowableOfType(IllegalArgumentException.class, code);
  }

  @Test
  void whatARiderTyped_isRefusedInHisLanguage() {
    IllegalArgumentException jet = error(() -> RiderInput.mainJet("1200"));
    assertThat(jet).hasMessage("main jet \"1200\" is ambiguous: did you mean 1.2 mm?");
    assertThat(GERMAN.text(jet))
        .isEqualTo("Hauptdüse \"1200\" ist mehrdeutig: Ist 1.2 mm gemeint?");

    IllegalArgumentException comma = error(() -> RiderInput.temperature("20,5,1 C"));
    assertThat(GERMAN.text(comma))
        .isEqualTo(
            "Temperatur \"20,5,1 C\" ist nicht lesbar (Punkt statt Komma schreiben);"
                + " zum Beispiel: 20 °C, 20 C oder 68F");
    assertThat(Wording.english().text(comma)).isEqualTo(comma.getMessage());
  }

  @Test
  void document_isRefusedWithItsPlaceInEachLanguage() {
    IllegalArgumentException missing =
        error(() -> SheetJson.read("{\"format\": \"jetting setup sheet\"}"));
    assertThat(missing).hasMessage("$.schemaVersion: missing: allowed 1");
    assertThat(GERMAN.text(missing)).isEqualTo("$.schemaVersion: fehlt; erlaubt: 1");
    assertThat(ITALIAN.text(missing)).isEqualTo("$.schemaVersion: manca; ammesso: 1");
  }

  @Test
  void message_hasKeyAndValues() {
    Message message =
        Message.of(InvalidValueException.of("bore of carburettor old", "3 mm", "5 mm to 80 mm"));

    assertThat(message.key()).isEqualTo("error.allowed");
    assertThat(message.arguments().get("allowed"))
        .isEqualTo(
            Argument.words(
                Message.of("error.to")
                    .with("low", Argument.name("5 mm"))
                    .with("high", Argument.name("80 mm"))));
  }

  @Test
  void errorOfOthers_staysAsItIs() {
    IllegalArgumentException other = new IllegalArgumentException("No such thing as {limit}");
    assertThat(GERMAN.text(other)).isEqualTo("No such thing as {limit}");
    assertThat(GERMAN.text(new IllegalArgumentException())).isEqualTo("null");
  }

  @Test
  void wordsOfAShop_areUsedForErrorsToo() {
    Wording shop = GERMAN.with(Map.of("error.missing", "nicht angegeben"));
    assertThat(shop.text(new IllegalArgumentException("$.title: missing: allowed a text")))
        .isEqualTo("$.title: nicht angegeben; erlaubt: ein Text");
  }

  /** The lines that the tests of the readers hold, each in all languages, to be read. */
  @Test
  void everyRefusalOfTheReaders_hasWordsInEachLanguage() throws IOException {
    List<String> page = new ArrayList<>();
    Set<String> english = new TreeSet<>();
    for (String line : refusals()) {
      Message message = ErrorWords.message(line);
      assertThat(Wording.english().text(message)).isEqualTo(line);
      inEnglish(message, english);
      page.add(line + "\n  " + GERMAN.text(message) + "\n  " + ITALIAN.text(message));
    }
    assertThat(page).hasSizeGreaterThan(100);
    assertThat(english).isEmpty();
    String text = String.join("\n", page) + "\n";
    if (Boolean.getBoolean("golden.update")) {
      Files.writeString(GOLDEN, text, UTF_8);
    }
    assertThat(text).isEqualTo(Files.readString(GOLDEN, UTF_8));
  }

  private static Set<String> refusals() throws IOException {
    Set<String> lines = new TreeSet<>();
    for (String file : REFUSALS) {
      for (String line : Files.readAllLines(TESTS.resolve(file), UTF_8)) {
        List<String> cells = Splitter.on(" => ").splitToList(line);
        String last = cells.get(cells.size() - 1).strip();
        if (cells.size() > 1 && last.contains(": allowed ")) {
          lines.add(last.replace("\\\\", "\\"));
        }
      }
    }
    return lines;
  }

  private static void inEnglish(Message message, Set<String> found) {
    if (message.key().isEmpty()) {
      found.add(message.template());
    }
    message.arguments().entrySet().stream()
        .filter(argument -> !IDENTIFIERS.contains(argument.getKey()))
        .forEach(argument -> inEnglish(argument.getValue(), found));
  }

  private static void inEnglish(Argument argument, Set<String> found) {
    if (argument instanceof Argument.Words words) {
      inEnglish(words.message(), found);
    } else if (argument instanceof Argument.Items items) {
      items.items().forEach(item -> inEnglish(item, found));
    } else if (ENGLISH.matcher(argument.text()).find()) {
      found.add(argument.text());
    }
  }

  /** A sentence that no check writes any more would never be found. */
  @Test
  void everyTemplate_isWrittenSomewhere() throws IOException {
    StringBuilder code = new StringBuilder();
    for (Path sources : SOURCES) {
      try (Stream<Path> files = Files.walk(sources)) {
        for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
          code.append(COMMENT.matcher(Files.readString(file, UTF_8)).replaceAll(""));
        }
      }
    }
    String joined = JOINT.matcher(code).replaceAll("").replace("\\\"", "\"");
    Set<String> words =
        LITERAL
            .matcher(joined)
            .results()
            .flatMap(literal -> WORD.splitAsStream(literal.group()))
            .collect(Collectors.toSet());
    Set<String> missing = new TreeSet<>();
    Bundles.of(Bundles.ENGLISH).entrySet().stream()
        .filter(entry -> entry.getKey().startsWith("error."))
        .forEach(
            entry ->
                BETWEEN_WORDS
                    .splitAsStream(entry.getValue())
                    .map(String::strip)
                    .filter(piece -> !joined.contains(piece))
                    .flatMap(WORD::splitAsStream)
                    .filter(word -> word.length() > 2 && !words.contains(word))
                    .forEach(piece -> missing.add(entry.getKey() + ": " + piece)));
    assertThat(missing).isEmpty();
  }
}
