package dev.jetting.rules.text;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.google.common.collect.Sets;
import dev.jetting.core.mixture.Circuit;
import dev.jetting.core.mixture.ErrorSource;
import dev.jetting.core.typical.MachineValue;
import dev.jetting.rules.FindingChange;
import dev.jetting.rules.ReportDifference;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.RulebookChange;
import dev.jetting.rules.Severity;
import dev.jetting.rules.kit.SeriesKind;
import dev.jetting.rules.risk.MixtureLimits;
import dev.jetting.rules.risk.ModelUncertainty;
import dev.jetting.rules.risk.RiddenSpeeds;
import dev.jetting.rules.risk.WorstSpot;
import dev.jetting.rules.standard.StandardRulebook;
import dev.jetting.rules.tuning.Check;
import dev.jetting.rules.tuning.Fault;
import dev.jetting.rules.tuning.IdleAnswer;
import dev.jetting.rules.tuning.NextChange;
import dev.jetting.rules.tuning.NextStep;
import dev.jetting.rules.tuning.PlugColour;
import dev.jetting.rules.tuning.RunDown;
import dev.jetting.rules.tuning.Symptom;
import dev.jetting.units.ScrewKind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The bundles against each other, against the code, and every key printed with its values. */
class BundlesTest {

  private static final Path FILES = Path.of("src/main/resources/dev/jetting/rules/text");
  private static final Path ERRORS =
      Path.of("../jetting-units/src/main/resources/dev/jetting/units/errors_en.properties");
  private static final Path SOURCES = Path.of("src/main/java");
  private static final Pattern WORD = Pattern.compile("\\p{L}{3}");
  private static final Map<String, String> ENGLISH = Bundles.of("en");

  @ParameterizedTest
  @ValueSource(strings = {"de", "it"})
  void everyLanguage_hasTheSameKeysWithTheSameArguments(String language) {
    Map<String, String> words = Bundles.of(language);
    assertThat(words.keySet()).isEqualTo(ENGLISH.keySet());
    assertThat(words)
        .allSatisfy(
            (key, text) ->
                assertThat(Message.names(text)).isEqualTo(Message.names(ENGLISH.get(key))));
  }

  static Stream<Path> files() throws IOException {
    try (Stream<Path> files = Files.list(FILES)) {
      return Stream.concat(files.sorted().toList().stream(), Stream.of(ERRORS));
    }
  }

  @ParameterizedTest
  @MethodSource("files")
  void everyFile_isReadAndHasNoKeyTwiceAndNoBraceAlone(Path file) throws IOException {
    String name = file.getFileName().toString();
    assertThat(Bundles.AREAS).contains(name.replaceAll("_.*", ""));
    assertThat(Bundles.LANGUAGES).contains(name.replaceAll(".*_|\\..*", ""));
    List<String> lines =
        Files.readAllLines(file, UTF_8).stream()
            .filter(line -> !line.isBlank() && !line.startsWith("#"))
            .toList();
    assertThat(lines).extracting(line -> line.replaceAll("=.*", "")).doesNotHaveDuplicates();
    assertThat(lines)
        .allSatisfy(line -> assertThat(line).matches("[\\p{Ll}0-9.-]+=[^{}]*(?:\\{\\w+}[^{}]*)*"))
        .noneMatch(line -> line.endsWith(" "));
  }

  /** Keys that are made from a name, by their beginning, with the names that there are. */
  private static Set<String> made() {
    Rulebook standard = StandardRulebook.rulebook();
    Stream<String> assumptions =
        Stream.of(
                MixtureLimits.assumed().basis(),
                ModelUncertainty.assumed().basis(),
                new RiddenSpeeds(2).basis(),
                standard.assumptions())
            .flatMap(basis -> basis.keySet().stream())
            .map(name -> Message.named("assumption", name).key());
    return Stream.of(
            assumptions,
            standard.rules().stream().map(rule -> "rule." + rule.id() + ".title"),
            standard.rules().stream().map(rule -> "rule." + rule.id() + ".rationale"),
            names("severity.", Severity.values()),
            names("rulebook.severity.", Severity.values()),
            names("rulebook.", RulebookChange.Kind.values()),
            names("circuit.", Circuit.values()),
            names("machine.", MachineValue.values()),
            names("worst.", WorstSpot.Day.values()),
            names("rule.screw-kind.kind.", ScrewKind.values()),
            Stream.of("seizure", "overrun", "road", "petrol", "hot", "law", "calculation")
                .map(caution -> "caution." + caution),
            Stream.of(
                    "rpm",
                    "turns",
                    "sizes",
                    "readings",
                    "groove from top",
                    "λ on the overrun",
                    "parts",
                    "grooves",
                    "groove",
                    "hp")
                .map(unit -> Message.named("unit", unit).key()),
            Stream.of("coldest", "hottest").map(day -> "rule.air-density-swing.day." + day),
            Stream.of("main", "pilot").map(jet -> "rule.jet-numbering.jet." + jet),
            names("kit.kind.", SeriesKind.values()),
            names("kit.screw.", ScrewKind.values()),
            names("difference.side.", ReportDifference.Side.values()),
            names("difference.kind.", FindingChange.Kind.values()),
            names("difference.", ReportDifference.VerdictChange.values())
                .map(key -> key.replace('-', '.')),
            Stream.of("bore", "lost", "left", "signal", "cruising", "cost")
                .map(heading -> "carburettors." + heading),
            Stream.of("unknown-text", "unknown-sheet").map(odd -> "remark." + odd + ".near"),
            Stream.of("status", "finding").map(what -> "remark.expected-" + what + ".because"),
            names("check.", Check.values()),
            names("fault.", Fault.values()),
            names("reason.", NextChange.Reason.values()),
            names("session.fault.why.", NextStep.LookForFault.Why.values()),
            names("seen.", Symptom.values()),
            names("seen.plug.", PlugColour.values()),
            names("seen.idle.", IdleAnswer.values()),
            names("seen.run-down.", RunDown.values()),
            Stream.of("lowest", "highest", "mean").map(take -> "condition." + take),
            names("correction.", ErrorSource.values())
                .flatMap(source -> Stream.of(".none", ".less", ".more").map(source::concat)),
            Stream.of("expected", "leaner", "richer").map(how -> "session.engine." + how),
            Stream.of("opening", "throttle").flatMap(w -> Stream.of(w + ".closed", w + ".full")))
        .flatMap(keys -> keys)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Stream<String> names(String area, Enum<?>... constants) {
    return Stream.of(constants)
        .map(constant -> area + constant.name().toLowerCase(Locale.ROOT).replace('_', '-'));
  }

  @Test
  void everyMadeKey_hasWords() {
    assertThat(Sets.difference(made(), ENGLISH.keySet())).isEmpty();
  }

  @Test
  void everyKey_isUsed() throws IOException {
    String code = code();
    Set<String> made = made();
    assertThat(ENGLISH.keySet())
        .filteredOn(key -> !key.startsWith("error.") && !key.startsWith("measure."))
        .filteredOn(key -> !made.contains(key))
        .filteredOn(key -> !code.contains('"' + key + '"'))
        .filteredOn(key -> !code.contains('"' + key.replaceAll("\\.(?:one|other)$", "") + '"'))
        .isEmpty();
  }

  private static String code() throws IOException {
    try (Stream<Path> files = Files.walk(SOURCES)) {
      List<String> sources = new ArrayList<>();
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        sources.add(Files.readString(file, UTF_8));
      }
      return String.join("\n", sources);
    }
  }

  @Test
  void everyNameOfAnAssumption_isItsOwnInEnglish() {
    Map<String, String> byKey =
        StandardRulebook.rulebook().assumptions().keySet().stream()
            .collect(
                Collectors.toMap(
                    name -> Message.named("assumption", name).key(), Function.identity()));
    assertThat(ENGLISH).containsAllEntriesOf(byKey);
  }

  @Test
  void everyMachineValue_isItsOwnInEnglish() {
    assertThat(MachineValue.values())
        .allSatisfy(
            value ->
                assertThat(ENGLISH)
                    .containsEntry(
                        "machine." + value.name().toLowerCase(Locale.ROOT).replace('_', '-'),
                        value.toString()));
  }

  /** A value for each name that a message shows: one name is one kind of value everywhere. */
  private static Argument sample(String name) {
    return switch (name) {
      case "throttle", "otherFrom", "otherTo" -> new Argument.Amount(throttle(), 0.375, none());
      case "lambda", "limit" -> new Argument.Amount(Argument.Style.LAMBDA, 0.88, none());
      case "risk", "accepted", "level", "mean", "usual" ->
          new Argument.Amount(Argument.Style.RISK, 0.12, none());
      case "percent", "spread" -> Argument.exact(8, "%");
      case "by", "share", "lost", "room", "band", "bandWithout", "shift" -> Argument.share(0.08);
      case "change" -> Argument.change(0.001);
      case "speed" -> Argument.measured(7000, "rpm");
      case "count", "number", "groove", "grooves" -> Argument.count(3);
      case "turns" -> new Argument.Amount(Argument.Style.TURNS, 1.5, none());
      case "temperature" -> new Argument.Amount(Argument.Style.TEMPERATURE, -4, none());
      case "pressure" -> new Argument.Amount(Argument.Style.PRESSURE, 1013, none());
      case "side" -> Argument.word("side.leaner");
      case "changes", "rules", "parts", "values" ->
          Argument.items(List.of(Argument.word("side.leaner"), Argument.name("id")));
      default -> Argument.name("id-" + name);
    };
  }

  private static Argument.Style throttle() {
    return Argument.Style.THROTTLE;
  }

  private static Optional<Double> none() {
    return Optional.empty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "de", "it"})
  void everyKey_isPrintedWithItsValues(String language) {
    Wording wording = Wording.of(Locale.forLanguageTag(language));
    assertThat(ENGLISH)
        .allSatisfy(
            (key, template) -> {
              Message message = Message.of(key, template);
              for (String name : Message.names(template)) {
                message = message.with(name, sample(name));
              }
              assertThat(wording.has(message)).isTrue();
              String text = wording.text(message);
              assertThat(text).doesNotContain("{").doesNotContain("}");
              for (String name : Message.names(template)) {
                assertThat(text).contains(wording.text(sample(name)));
              }
            });
  }

  @Test
  void keyThatIsNone_isRefused() {
    assertThatThrownBy(() -> Message.of("no.such"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("no.such");
  }

  /** A sentence of one language that stands in another was forgotten. */
  @ParameterizedTest
  @ValueSource(strings = {"de", "it"})
  void noSentence_isLeftInEnglish(String language) {
    Set<String> same =
        Bundles.of(language).entrySet().stream()
            .filter(entry -> WORD.matcher(entry.getValue().replaceAll("\\{\\w+}", "")).find())
            .filter(entry -> entry.getValue().equals(ENGLISH.get(entry.getKey())))
            .filter(entry -> !entry.getKey().startsWith("error.name."))
            .map(Map.Entry::getKey)
            .collect(Collectors.toSet());
    assertThat(same).containsExactly("pressure");
  }
}
