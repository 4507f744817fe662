package dev.jetting.rules.json;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Fuzzes the reader of reports: from the seeds alone, or with the profile {@code fuzz} on from
 * them.
 */
class ReportFuzzTest {

  static Stream<byte[]> seeds() {
    return Fuzzed.seeds("report.golden.json");
  }

  @MethodSource("seeds")
  @FuzzTest // Jazzer wants it last
  void read_ofAnyBytes_readsOrRefuses(byte[] json) {
    Fuzzed.read(json, ReportJson::read, ReportJson::write);
  }
}
