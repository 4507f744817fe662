package dev.jetting.rules.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Sentence;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads and writes one kind of document. Immutable and thread-safe. */
final class Codec<T> {

  private static final char BYTE_ORDER_MARK = '\ufeff';
  private static final int CHUNK = 8192;

  private final Class<T> type;
  private final Map<String, String> header;
  private final DocumentLimits limits;
  private final JsonFactory factory;
  private final ObjectReader reader;
  private final ObjectWriter writer;
  private final ObjectWriter lineWriter;

  /**
   * @param header fields of the root that are looked at before anything else, with the one value
   *     that each must have, as it is written
   */
  Codec(Class<T> type, JettingModule module, Map<String, String> header, DocumentLimits limits) {
    this.type = type;
    this.header = header;
    this.limits = limits;
    this.factory = Document.factory(limits);
    JsonMapper mapper = JsonMapper.builder(factory).addModule(module).build();
    this.reader =
        mapper
            .readerFor(type)
            .with(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .with(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);
    this.lineWriter = mapper.writer();
    this.writer = mapper.writer(new ReadablePrinter());
  }

  /**
   * Reads once what is as it should be. What is not, and what is another kind of document, is read
   * again with an eye for what is wrong and where.
   */
  T read(String text) {
    if (text.length() <= limits.characters()) {
      try {
        @Nullable T value = reader.readValue(text);
        if (value != null) { // the document may be the word null
          return value;
        }
      } catch (JsonProcessingException | IllegalArgumentException | IllegalStateException e) {
        // The error is reported below, with place and reason.
      }
    }
    return readAgain(text);
  }

  private T readAgain(String text) {
    Document document = Document.of(text, factory, limits);
    checkHeader(document);
    try {
      return reader.readValue(text);
    } catch (JsonProcessingException | IllegalArgumentException | IllegalStateException e) {
      throw new Failures(document, Expected.root(type)).of(e);
    }
  }

  T read(Reader in) throws IOException {
    return read(text(in));
  }

  /** What a reader gives, to its end or the limit, without a byte order mark. */
  String text(Reader in) throws IOException {
    StringBuilder text = new StringBuilder();
    char[] chunk = new char[CHUNK];
    for (int n = in.read(chunk); n >= 0 && text.length() <= limits.characters(); ) {
      text.append(chunk, 0, n);
      n = in.read(chunk);
    }
    boolean marked = text.length() > 0 && text.charAt(0) == BYTE_ORDER_MARK;
    return marked ? text.substring(1) : text.toString();
  }

  T read(InputStream in) throws IOException {
    return read(text(in));
  }

  String text(InputStream in) throws IOException {
    try {
      // A decoder reports what is no UTF-8; a charset would put something else in its place.
      return text(new InputStreamReader(in, StandardCharsets.UTF_8.newDecoder()));
    } catch (CharacterCodingException e) {
      throw new JsonInputException(
          Path.ROOT.toString(),
          Sentence.refused(Sentence.of("error.not-utf8"), Sentence.plain("UTF-8")),
          "",
          1,
          1);
    }
  }

  private void checkHeader(Document document) {
    Document.Spot root = document.at(Path.ROOT);
    if (!root.isObject()) {
      throw root.refused(Path.ROOT, root.shown(), Expected.root(type).allowed());
    }
    header.forEach(
        (field, value) -> {
          Path path = Path.ROOT.child(field);
          Document.Spot spot = document.at(path);
          if (!spot.value().equals(value)) {
            throw spot.refused(
                path,
                spot.found() ? spot.shown() : Sentence.of(Failures.MISSING),
                Sentence.plain(value));
          }
        });
  }

  /** A text that this reads, for places in it. */
  Document document(String text) {
    return Document.of(text, factory, limits);
  }

  String write(T value) {
    return readable(written(writer, value) + "\n");
  }

  /** On one line, which it does not end. */
  String writeLine(T value) {
    return readable(written(lineWriter, value));
  }

  /** What the reader would refuse for its size is not written. */
  private String readable(String text) {
    try {
      Document.of(text, factory, limits);
    } catch (JsonInputException e) {
      throw InvalidValueException.worded(
              Sentence.of("error.too-large-at").with("path", e.path()), limits.sentence())
          .causedBy(e);
    }
    return text;
  }

  private static String written(ObjectWriter writer, Object value) {
    try {
      return writer.writeValueAsString(value);
    } catch (JsonMappingException e) {
      throw InvalidValueException.saying(
              Sentence.of("error.at-path")
                  .with("path", Path.of(e.getPath()).toString())
                  .with("problem", Sentence.plain(e.getOriginalMessage())))
          .causedBy(e);
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException(e); // a string has no I/O to fail
    }
  }
}
