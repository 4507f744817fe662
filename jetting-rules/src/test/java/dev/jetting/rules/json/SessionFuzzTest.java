package dev.jetting.rules.json;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Fuzzes the reader of tuning sessions: from the seeds alone, or with the profile {@code fuzz} on
 * from them.
 */
class SessionFuzzTest {

  static Stream<byte[]> seeds() {
    return Fuzzed.seeds("example-session.json");
  }

  @MethodSource("seeds")
  @FuzzTest // Jazzer wants it last
  void read_ofAnyBytes_readsOrRefuses(byte[] json) {
    Fuzzed.read(json, SessionJson::read, SessionJson::write);
  }
}
