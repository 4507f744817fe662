package dev.jetting.examples.shopcounter.words;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.jetting.core.mixture.Circuit;
import dev.jetting.core.typical.MachineValue;
import dev.jetting.examples.shopcounter.bench.Dial;
import dev.jetting.examples.shopcounter.bench.ReadWith;
import dev.jetting.examples.shopcounter.bench.Verdict;
import dev.jetting.examples.shopcounter.kit.KitLine;
import dev.jetting.examples.shopcounter.store.Entry;
import dev.jetting.examples.shopcounter.web.Choices;
import dev.jetting.rules.risk.WorstSpot;
import dev.jetting.rules.tuning.Check;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The files of words against each other, against the code, and against the library's words. */
class WordsTest {

  private static final Path FILES =
      Path.of("src/main/resources/dev/jetting/examples/shopcounter/words");
  private static final Pattern PLACEHOLDER = Pattern.compile("\\{(\\w+)}");
  private static final Pattern WORD = Pattern.compile("\\p{L}{3}");
  private static final Map<String, String> ENGLISH = file("en");

  private static Map<String, String> file(String tag) {
    Map<String, String> words = new TreeMap<>();
    for (String line : lines(FILES.resolve("counter_" + tag + ".properties"))) {
      if (!line.isBlank() && !line.startsWith("#")) {
        assertThat(line).matches("[a-z0-9.-]+=\\S(?:.*\\S)?");
        String key = line.substring(0, line.indexOf('='));
        assertThat(words.put(key, line.substring(key.length() + 1))).as(key).isNull();
      }
    }
    return words;
  }

  private static List<String> lines(Path file) {
    try {
      return Files.readAllLines(file, UTF_8);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Set<String> names(String text) {
    return PLACEHOLDER
        .matcher(text)
        .results()
        .map(found -> found.group(1))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @ParameterizedTest
  @ValueSource(strings = {"de", "it"})
  void everyLanguage_hasTheSameKeysWithTheSameArguments(String tag) {
    Map<String, String> words = file(tag);
    assertThat(words.keySet()).isEqualTo(ENGLISH.keySet());
    assertThat(words)
        .allSatisfy(
            (key, text) -> assertThat(names(text)).as(key).isEqualTo(names(ENGLISH.get(key))));
  }

  /** A text of one language that stands in another was forgotten. */
  @ParameterizedTest
  @ValueSource(strings = {"de", "it"})
  void noText_isLeftInEnglish(String tag) {
    assertThat(file(tag))
        .allSatisfy(
            (key, text) -> {
              if (WORD.matcher(PLACEHOLDER.matcher(text).replaceAll("")).find()) {
                assertThat(text)
                    .as(key)
                    .satisfiesAnyOf(
                        words -> assertThat(words).isNotEqualTo(ENGLISH.get(key)),
                        words -> assertThat(key).isIn("tabs.plan"));
              }
            });
  }

  /** Keys that are made from a name, by their beginning, with the names that there are. */
  private static Set<String> made() {
    return Stream.of(
            names("dial.", Dial.values()),
            names("circuit.", Circuit.values()),
            names("measuring.", MachineValue.values()),
            names("looked.", Check.values()),
            names("verdict.", WorstSpot.Day.values()),
            names("verdict.", Verdict.Kind.values()),
            names("verdict.", Verdict.Kind.values()).map(key -> key + ".then"),
            names("day.", WorstSpot.Day.values()),
            names("cards.risk.", WorstSpot.Day.values()),
            names("session.with.", ReadWith.values()),
            names("kits.", KitLine.State.values()),
            names("log.", Entry.Kind.values()),
            Stream.of("mild-all-round", "lean-in-the-middle", "tuned-on-mild-main")
                .map(demo -> "demo." + demo),
            Stream.of("picture", "plan", "session", "known", "cards", "log")
                .map(tab -> "tabs." + tab),
            Stream.of(
                    "closed", "full", "band", "limit", "wanted", "risk", "climb", "metered",
                    "beside")
                .map(name -> "chart." + name),
            choices("tune", Choices.TUNES),
            choices("inlet", Choices.INLETS),
            choices("cooling", Choices.COOLING),
            choices("screw", Choices.SCREWS),
            choices("seen", Choices.COLOURS),
            choices("seen", Choices.SYMPTOMS),
            choices("seen", Choices.IDLES),
            choices("seen", Choices.ALARMS),
            choices("seen", Choices.RUN_DOWNS))
        .flatMap(keys -> keys)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Stream<String> names(String area, Enum<?>... constants) {
    return Stream.of(constants).map(constant -> area + Words.key(constant));
  }

  private static Stream<String> choices(String area, List<String> choices) {
    return choices.stream().map(choice -> Choices.key(area, choice));
  }

  @Test
  void everyMadeKey_hasWords() {
    assertThat(ENGLISH.keySet()).containsAll(made());
  }

  @Test
  void everyKey_isUsed() throws IOException {
    String code = code();
    Set<String> made = made();
    assertThat(ENGLISH.keySet())
        .filteredOn(key -> !made.contains(key))
        .filteredOn(key -> !code.contains('"' + key.replaceAll("\\.(?:one|other|hint)$", "") + '"'))
        .isEmpty();
  }

  /** What a page says stands in the files: no word of it in a template. */
  @Test
  void noTemplate_hasWordsOfItsOwn() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src/main/jte"))) {
      assertThat(files.filter(Files::isRegularFile))
          .allSatisfy(
              file -> assertThat(text(file)).as(file.toString()).doesNotContainPattern(WORD));
    }
  }

  /** What a template shows beside what it computes, without what programs and addresses need. */
  private static String text(Path template) {
    String text = String.join("\n", lines(template));
    return text.replaceAll("(?m)^(?:@import|@param|!\\{).*$", "")
        .replaceAll("(?s)\\$\\{(?:[^{}\"]|\"[^\"]*\")*}", "")
        .replaceAll("(?m)@template\\.\\w+\\(.*$|^`\\)$", "")
        .replaceAll("@(?:for|if|elseif)\\((?:[^()]|\\((?:[^()]|\\([^()]*\\))*\\))*\\)", "")
        .replaceAll("@(?:else|endif|endfor)", "")
        .replaceAll("(?:aria-label|placeholder|title|alt)=\"([^\"]*)\"", ">$1<")
        .replaceAll("(?s)<(?:pre|th scope=\"row\")>.*?</(?:pre|th)>", "")
        .replaceAll("(?s)<[^>]*>", "")
        .replace("openapi.json", "");
  }

  private static String code() throws IOException {
    List<String> sources = new ArrayList<>();
    for (String folder : List.of("src/main/java", "src/main/jte")) {
      try (Stream<Path> files = Files.walk(Path.of(folder))) {
        for (Path file : files.filter(Files::isRegularFile).toList()) {
          sources.add(Files.readString(file, UTF_8));
        }
      }
    }
    return String.join("\n", sources);
  }

  @Test
  void howToMeasure_isTheLibrarysOwnInEnglish() {
    assertThat(MachineValue.values())
        .allSatisfy(
            value ->
                assertThat(ENGLISH)
                    .containsEntry("measuring." + Words.key(value), value.measuring()));
  }

  @Test
  void count_choosesSingularOrPlural() {
    assertThat(Words.of("de").say("known.count", "count", 1)).startsWith("Ein Wert ist");
    assertThat(Words.of("de").say("known.count", "count", 3)).startsWith("3 Werte sind");
  }

  @Test
  void value_isPrintedInTheLanguage_andATextAsItIs() {
    assertThat(Words.of("it").say("bench.fitted", "size", "{size} 1.5"))
        .isEqualTo("montato: {size} 1.5");
    assertThat(Words.of("it").say(Words.message("step.test.idle"))).isEqualTo("Prova al minimo");
  }

  @Test
  void key_thatIsNone_isRefused() {
    assertThatThrownBy(() -> Words.message("no.such"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("no.such");
  }
}
