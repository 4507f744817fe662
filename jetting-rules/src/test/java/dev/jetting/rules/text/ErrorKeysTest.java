package dev.jetting.rules.text;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.units.Sentence;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The keys of errors against the code of all three modules. */
class ErrorKeysTest {

  private static final List<Path> SOURCES =
      List.of(
          Path.of("../jetting-units/src/main/java"),
          Path.of("../jetting-core/src/main/java"),
          Path.of("src/main/java"));

  private static final Pattern COMMENT = Pattern.compile("/\\*.*?\\*/|//[^\\n]*", Pattern.DOTALL);
  private static final Pattern KEY = Pattern.compile("\"(error\\.[\\p{Ll}0-9.-]+)\"");
  private static final Pattern SENTENCE =
      Pattern.compile("Sentence\\s*\\.of\\(\\s*\"(error\\.[\\p{Ll}0-9.-]+)\"\\s*\\)");
  private static final Pattern WITH = Pattern.compile("\\s*\\.with\\(\\s*\"(\\w+)\"");
  private static final Pattern PROSE =
      Pattern.compile("new IllegalArgumentException\\(\\s*(?:[\\w.()]+\\s*\\+\\s*)*\"");

  /** Words that are the same in every language, where they are more than a sign or a name. */
  private static final Pattern PLAIN =
      Pattern.compile("Sentence\\s*\\.plain\\(\\s*\"[^\"]*\\b\\p{Ll}{2,}[^\"]*\"");

  private static final Pattern CHECK = Pattern.compile("Checks\\s*\\.(that|within)\\(");

  /** Files whose errors programmers cause, not what a person wrote; each with the reason. */
  private static final Map<String, String> FOR_PROGRAMMERS = forProgrammers();

  private static Map<String, String> forProgrammers() {
    Map<String, String> reasons = new TreeMap<>();
    String results = "results of this library, made again by a program";
    for (String name :
        List.of(
            "NextStep",
            "RiskLeft",
            "Correction",
            "CarburettorRating",
            "MixtureSeries",
            "UphillRisk",
            "RiskProfile",
            "ProfileDifference",
            "WorstSpot",
            "RiskPoint",
            "Report",
            "Remedy",
            "KitCoverage",
            "Coverage")) {
      reasons.put(name, results);
    }
    String calls = "arguments of a call that no reader makes";
    for (String name :
        List.of(
            "CarburettorComparison",
            "CarburettorRater",
            "EngineCount",
            "Extras",
            "Costs",
            "Choice",
            "Finding",
            "Margin",
            "SettingSearch",
            "NeedlePosition",
            "Choices",
            "Run",
            "Adviser",
            "WrongGuess",
            "MachineValue",
            "Kernel",
            "Decimals",
            "Sentence",
            "Checks")) {
      reasons.put(name, calls);
    }
    String computed = "what programs compute, or a calculation that a program calls";
    for (String name :
        List.of(
            "AirCase",
            "AirDemand",
            "CompressibleThroat",
            "Differences",
            "Disturbance",
            "ElementaryCarburettor",
            "FullThrottleDraw",
            "IntervalObservation",
            "MixtureModel",
            "MixturePoint",
            "MixtureTable",
            "Normal",
            "NormalCases",
            "Overrun",
            "PartEffect",
            "Passage",
            "PointObservation",
            "Psychrometrics",
            "Spreads",
            "Uncertain")) {
      reasons.put(name, computed);
    }
    String rules = "rules and rulebooks in Java";
    for (String name : List.of("Rule", "RulePack", "RulebookEdition", "Rulebook")) {
      reasons.put(name, rules);
    }
    String words = "words of a translator";
    for (String name : List.of("Message", "Argument", "Bundles", "Wording")) {
      reasons.put(name, words);
    }
    return reasons;
  }

  private static Map<Path, String> sources() throws IOException {
    Map<Path, String> sources = new TreeMap<>();
    for (Path root : SOURCES) {
      try (Stream<Path> files = Files.walk(root)) {
        for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
          sources.put(file, COMMENT.matcher(Files.readString(file, UTF_8)).replaceAll(""));
        }
      }
    }
    return sources;
  }

  private static Map<String, String> templates() {
    return Sentence.templates();
  }

  @Test
  void everyKeyInCode_hasWords() throws IOException {
    Set<String> unknown = new TreeSet<>();
    for (String code : sources().values()) {
      KEY.matcher(code).results().map(key -> key.group(1)).forEach(unknown::add);
    }
    assertThat(unknown).hasSizeGreaterThan(250);
    unknown.removeAll(templates().keySet());
    assertThat(unknown).isEmpty();
  }

  /** By its key; or a name without values by its English words, which give its key. */
  @Test
  void everyKey_isUsed() throws IOException {
    String code = String.join("\n", sources().values());
    assertThat(templates())
        .allSatisfy(
            (key, words) ->
                assertThat(
                        code.contains('"' + key + '"')
                            || (code.contains('"' + words + '"')
                                && Sentence.name(words).key().equals(key))
                            || kind(key, words, code))
                    .as(key)
                    .isTrue());
  }

  /** Names of kinds of parts are those of constants. */
  private static boolean kind(String key, String words, String code) {
    return code.contains("  " + words.toUpperCase(Locale.ROOT).replace(' ', '_'))
        && Sentence.name(words).key().equals(key);
  }

  @Test
  void everySentence_hasTheValuesThatItsWordsShow() throws IOException {
    List<String> wrong = new ArrayList<>();
    for (var source : sources().entrySet()) {
      String code = source.getValue();
      Matcher sentence = SENTENCE.matcher(code);
      while (sentence.find()) {
        Set<String> given = new TreeSet<>();
        int at = sentence.end();
        Matcher with = WITH.matcher(code).region(at, code.length());
        while (with.lookingAt()) {
          given.add(with.group(1));
          at = close(code, code.indexOf('(', with.start()));
          with.region(at, code.length());
        }
        String words = templates().get(sentence.group(1));
        if (words != null && !given.equals(new TreeSet<>(Message.names(words)))) {
          wrong.add(source.getKey().getFileName() + ": " + sentence.group(1) + " " + given);
        }
      }
    }
    assertThat(wrong).isEmpty();
  }

  /** The place after the parenthesis that ends what one begins. */
  private static int close(String code, int open) {
    int depth = 0;
    boolean text = false;
    for (int at = open; at < code.length(); at++) {
      char c = code.charAt(at);
      if (text) {
        if (c == '\\') {
          at++;
        } else if (c == '"') {
          text = false;
        }
      } else if (c == '"') {
        text = true;
      } else if (c == '(') {
        depth++;
      } else if (c == ')' && --depth == 0) {
        return at + 1;
      }
    }
    throw new AssertionError("no end");
  }

  /**
   * Whether a check takes the name of its value as words: the first argument behind a condition.
   */
  private static boolean checksInWords(String code) {
    return CHECK
        .matcher(code)
        .results()
        .anyMatch(
            check -> {
              int name = check.end();
              if (check.group(1).equals("that")) {
                name = comma(code, name) + 1;
              }
              return code.substring(name).stripLeading().startsWith("\"");
            });
  }

  /** The comma that ends an argument. */
  private static int comma(String code, int from) {
    for (int at = from; at < code.length(); at++) {
      char c = code.charAt(at);
      if (c == ',') {
        return at;
      }
      if (c == '(') {
        at = close(code, at) - 1;
      }
    }
    throw new AssertionError("no comma");
  }

  @Test
  void proseOfEachForm_isSeen() {
    assertThat(checksInWords("Checks.that(a(1, 2) > 0, \"height\", x, \"above 0\")")).isTrue();
    assertThat(checksInWords("Checks\n.within(\n\"height\", x, 0, 1)")).isTrue();
    assertThat(checksInWords("Checks.that(a(1, 2) > 0, () -> Sentence.of(\"error.x\"), x, y)"))
        .isFalse();
    assertThat(PLAIN.matcher("Sentence.plain(\n\"a line\")").find()).isTrue();
    assertThat(PLAIN.matcher("Sentence.plain(\"UTF-8\")").find()).isFalse();
    assertThat(PLAIN.matcher("Sentence.plain(text)").find()).isFalse();
  }

  @Test
  void proseInAnError_isForProgrammersAlone() throws IOException {
    Set<String> prose = new TreeSet<>();
    for (var source : sources().entrySet()) {
      String code = source.getValue();
      if (PROSE.matcher(code).find() || PLAIN.matcher(code).find() || checksInWords(code)) {
        prose.add(source.getKey().getFileName().toString().replace(".java", ""));
      }
    }
    assertThat(prose).isSubsetOf(FOR_PROGRAMMERS.keySet());
    assertThat(FOR_PROGRAMMERS.keySet()).isSubsetOf(prose);
  }
}
