package dev.jetting.rules.json;

import com.code_intelligence.jazzer.junit.FuzzTest;
import com.google.common.collect.Maps;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Fuzzes every reader of documents in one virtual machine, for a machine with little time to spare:
 * the first byte chooses the reader.
 */
class EveryReaderFuzzTest {

  private static final FuzzedKind[] KINDS = FuzzedKind.values();
  private static final Map<FuzzedKind, AtomicLong> EXECUTIONS =
      Maps.immutableEnumMap(Maps.toMap(Arrays.asList(KINDS), kind -> new AtomicLong()));

  static {
    if (Boolean.getBoolean("fuzz.counts")) {
      Runtime.getRuntime()
          .addShutdownHook(new Thread(() -> System.out.println("executions " + EXECUTIONS)));
    }
  }

  static Stream<byte[]> seeds() {
    return IntStream.range(0, KINDS.length)
        .boxed()
        .flatMap(i -> KINDS[i].examples().map(json -> (char) i.intValue() + json))
        .map(text -> text.getBytes(StandardCharsets.UTF_8));
  }

  @MethodSource("seeds")
  @FuzzTest // Jazzer wants it last
  void read_ofAnyBytesByAnyReader_readsOrRefuses(byte[] json) {
    if (json.length > 0) {
      FuzzedKind kind = KINDS[(json[0] & 0xff) % KINDS.length];
      EXECUTIONS.get(kind).incrementAndGet();
      kind.read(Arrays.copyOfRange(json, 1, json.length));
    }
  }
}
