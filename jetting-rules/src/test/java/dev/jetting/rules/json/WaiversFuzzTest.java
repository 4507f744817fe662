package dev.jetting.rules.json;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;

/** Fuzzes the reader of waivers of findings, as {@link SheetFuzzTest} does that of setup sheets. */
class WaiversFuzzTest {

  static Stream<byte[]> seeds() {
    return Fuzzed.seeds(FuzzedKind.WAIVERS);
  }

  @MethodSource("seeds")
  @FuzzTest // Jazzer wants it last
  void read_ofAnyBytes_readsOrRefuses(byte[] json) {
    FuzzedKind.WAIVERS.read(json);
  }
}
