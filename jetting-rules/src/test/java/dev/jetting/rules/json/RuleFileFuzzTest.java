package dev.jetting.rules.json;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Fuzzes the reader of rule files: from the seeds alone, or with the profile {@code fuzz} on from
 * them.
 */
class RuleFileFuzzTest {

  static Stream<byte[]> seeds() {
    return Fuzzed.seeds("example-rules.json");
  }

  @MethodSource("seeds")
  @FuzzTest // Jazzer wants it last
  void read_ofAnyBytes_readsOrRefuses(byte[] json) {
    Fuzzed.read(json, RuleFile::read, RuleFile::toJson);
  }
}
