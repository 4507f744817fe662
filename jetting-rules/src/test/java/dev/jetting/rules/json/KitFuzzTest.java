package dev.jetting.rules.json;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;

/** Fuzzes the reader of kits, as {@link SheetFuzzTest} does that of setup sheets. */
class KitFuzzTest {

  static Stream<byte[]> seeds() {
    return Fuzzed.seeds("example-kit.json");
  }

  @MethodSource("seeds")
  @FuzzTest // Jazzer wants it last
  void read_ofAnyBytes_readsOrRefuses(byte[] json) {
    Fuzzed.read(json, KitJson::read, KitJson::writeLine);
  }
}
