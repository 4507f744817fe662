package dev.jetting.rules.json;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.rules.kit.KitDepth;
import dev.jetting.rules.kit.KitValidator;
import dev.jetting.rules.kit.Shop;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.StringReader;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each kind of document is read alike from a text, a reader and a stream. */
class EveryReaderTest {

  record Kind(
      String name,
      String document,
      Function<String, ?> fromText,
      From<Reader> fromReader,
      From<InputStream> fromStream) {

    @Override
    public String toString() {
      return name;
    }
  }

  interface From<I> {
    Object read(I in) throws IOException;
  }

  static Stream<Kind> kinds() {
    String validation =
        KitValidationJson.write(KitValidator.of(Shop.CATALOGUE).validate(Shop.kit(), KitDepth.FIT));
    return Stream.of(
        new Kind(
            "sheet",
            Documents.read("example-sheet.json"),
            SheetJson::read,
            SheetJson::read,
            SheetJson::read),
        new Kind(
            "report",
            Documents.read("report.golden.json"),
            ReportJson::read,
            ReportJson::read,
            ReportJson::read),
        new Kind(
            "rule file",
            Documents.read("example-rules.json"),
            RuleFile::read,
            RuleFile::read,
            RuleFile::read),
        new Kind(
            "session",
            Documents.read("example-session.json"),
            SessionJson::read,
            SessionJson::read,
            SessionJson::read),
        new Kind(
            "catalogue",
            Documents.read("example-catalogue.json"),
            CatalogueJson::read,
            CatalogueJson::read,
            CatalogueJson::read),
        new Kind(
            "kit", Documents.read("example-kit.json"), KitJson::read, KitJson::read, KitJson::read),
        new Kind(
            "kit validation",
            validation,
            KitValidationJson::read,
            KitValidationJson::read,
            KitValidationJson::read));
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void read_fromReaderAndStream_asFromText(Kind kind) throws IOException {
    Object value = kind.fromText.apply(kind.document);
    String marked = "\ufeff" + kind.document;

    for (String text : new String[] {kind.document, marked}) {
      assertThat(kind.fromReader.read(new StringReader(text))).isEqualTo(value);
      assertThat(kind.fromStream.read(new ByteArrayInputStream(text.getBytes(UTF_8))))
          .isEqualTo(value);
    }
  }
}
