package dev.jetting.rules.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.DictionaryEntries;
import com.code_intelligence.jazzer.junit.FuzzTest;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.TwoHundred;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.RandomGenerator;
import net.jqwik.api.sessions.JqwikSession;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Fuzzes the reader of rule files: from the seeds alone, or with the profile {@code fuzz} on from
 * them. The seeds hold the whole grammar over the table of measures.
 */
class RuleFileFuzzTest {

  private static final int FILES = 60;

  private static final AssessedSetting SETTING =
      TwoHundred.assessed(TwoHundred.STANDARD, TwoHundred.ALL_ROUND);

  static Stream<byte[]> seeds() {
    return Stream.concat(
        Fuzzed.seeds("example-rules.json"),
        drawn(FILES).map(json -> json.getBytes(StandardCharsets.UTF_8)));
  }

  /** Rule files of the whole grammar. */
  static Stream<String> drawn(int count) {
    List<String> files = new ArrayList<>();
    JqwikSession.run(
        () -> {
          RandomGenerator<RuleFile> generator = RuleFileArbitraries.files().generator(1000);
          Random random = new Random(1);
          for (int i = 0; i < count; i++) {
            files.add(generator.next(random).value().toJson());
          }
        });
    return files.stream();
  }

  @MethodSource("seeds")
  @DictionaryEntries({
    "\"all\": [",
    "\"any\": [",
    "\"not\": {",
    "\"measure\": \"",
    "\"take\": \"highest\"",
    "\"take\": \"lowest\"",
    "\"take\": \"mean\"",
    "\"within\": {\"from\": \"1/4\", \"to\": 1}",
    "\"atLeast\": ",
    "\"atMost\": ",
    "\"times\": 1e300",
    "\"equals\": \"",
    "\"oneOf\": [",
    "{measured}",
    "{limit}",
    "{throttle}",
    "1.2 mm"
  })
  @FuzzTest // Jazzer wants it last
  void read_ofAnyBytes_readsOrRefuses(byte[] json) {
    Fuzzed.read(json, RuleFile::read, RuleFile::toJson)
        .ifPresent(
            file ->
                assertThat(file.rules())
                    .extracting(rule -> rule.evaluate(SETTING).status())
                    .doesNotContain(Outcome.Status.BROKEN));
  }
}
