package dev.jetting.rules.json;

import com.code_intelligence.jazzer.junit.FuzzTest;
import dev.jetting.rules.kit.KitDepth;
import dev.jetting.rules.kit.KitValidator;
import dev.jetting.rules.kit.Shop;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;

/** Fuzzes the reader of kit validations, as {@link SheetFuzzTest} does that of setup sheets. */
class KitValidationFuzzTest {

  static Stream<byte[]> seeds() {
    KitValidator validator = KitValidator.of(Shop.CATALOGUE);
    return Stream.concat(
        Fuzzed.seeds(),
        Arrays.stream(KitDepth.values())
            .map(depth -> KitValidationJson.write(validator.validate(Shop.kit(), depth)))
            .map(json -> json.getBytes(StandardCharsets.UTF_8)));
  }

  @MethodSource("seeds")
  @FuzzTest // Jazzer wants it last
  void read_ofAnyBytes_readsOrRefuses(byte[] json) {
    Fuzzed.read(json, KitValidationJson::read, KitValidationJson::writeLine);
  }
}
