package dev.jetting.rules.json;

import com.fasterxml.jackson.core.ErrorReportConfiguration;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import dev.jetting.units.Sentence;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * A document that is well-formed JSON within its limits, without duplicate fields: what stands at
 * which path.
 */
final class Document {

  private static final int LONGEST_TOKEN = 40;

  /** The parser's hint how to make it less strict. */
  private static final Pattern SWITCH = Pattern.compile(": enable `.*");

  private static final String OBJECT = "an object";
  private static final String ARRAY = "an array";

  private final JsonFactory factory;
  private final String text;

  private Document(JsonFactory factory, String text) {
    this.factory = factory;
    this.text = text;
  }

  /** A factory of strict parsers, and of generators that print numbers alike on every JDK. */
  static JsonFactory factory(DocumentLimits limits) {
    return JsonFactory.builder()
        .streamReadConstraints(limits.constraints())
        .errorReportConfiguration(
            ErrorReportConfiguration.builder().maxErrorTokenLength(LONGEST_TOKEN).build())
        // Symbol tables outlive a document; one made to collide would slow down all that follow.
        .disable(JsonFactory.Feature.CANONICALIZE_FIELD_NAMES)
        .disable(JsonFactory.Feature.INTERN_FIELD_NAMES)
        .disable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION)
        .disable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
        .enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER)
        .build();
  }

  /**
   * Reads the whole document once.
   *
   * @throws JsonInputException if it is too large, not JSON, or has a field twice
   */
  static Document of(String text, JsonFactory factory, DocumentLimits limits) {
    if (text.length() > limits.characters()) {
      throw new JsonInputException(
          Path.ROOT.toString(),
          Sentence.refused(Sentence.of("error.too-large"), limits.sentence()),
          "",
          1,
          1);
    }
    try (JsonParser parser = factory.createParser(text)) {
      try {
        checkTokens(parser);
      } catch (JsonProcessingException e) {
        throw unreadable(e, parser, limits);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e); // a string has no I/O to fail
    }
    return new Document(factory, text);
  }

  private static void checkTokens(JsonParser parser) throws IOException {
    Deque<Set<String>> open = new ArrayDeque<>();
    boolean complete = false;
    for (JsonToken t = parser.nextToken(); t != null; t = parser.nextToken()) {
      if (complete) {
        throw failure(parser, "error.more-after", "error.one-object");
      }
      if (t == JsonToken.START_OBJECT) {
        open.push(new HashSet<>());
      } else if (t == JsonToken.END_OBJECT) {
        open.pop();
      } else if (t == JsonToken.FIELD_NAME && !open.element().add(parser.currentName())) {
        throw failure(parser, "error.duplicate-field", "error.each-field-once");
      }
      finish(parser);
      complete = parser.getParsingContext().inRoot() && !t.isStructStart();
    }
    if (!complete) {
      throw failure(parser, "error.empty", "error.one-object");
    }
  }

  /** Parsers are lazy: a token meets its limits when it is asked for. */
  private static void finish(JsonParser parser) throws IOException {
    if (parser.currentToken().isNumeric()) {
      parser.getDoubleValue();
    } else {
      parser.getText();
    }
  }

  private static JsonInputException failure(JsonParser parser, String problem, String allowed) {
    JsonLocation at = parser.currentTokenLocation();
    return new JsonInputException(
        Path.of(parser.getParsingContext()).toString(),
        Sentence.refused(Sentence.of(problem), Sentence.of(allowed)),
        "",
        Math.max(1, at.getLineNr()),
        Math.max(1, at.getColumnNr()));
  }

  private static JsonLocation place(JsonProcessingException e, JsonParser parser) {
    return e.getLocation() == null ? parser.currentLocation() : e.getLocation();
  }

  /**
   * The error names the place where a value that is too large begins. The place where the parser
   * stops depends on its buffers.
   */
  private static JsonInputException unreadable(
      JsonProcessingException e, JsonParser parser, DocumentLimits limits) {
    boolean tooLarge = e instanceof StreamConstraintsException;
    JsonLocation at = tooLarge ? parser.currentTokenLocation() : place(e, parser);
    Sentence detail =
        e instanceof JsonEOFException
            ? Sentence.of("error.ends-early")
            : Sentence.plain(Quote.detail(SWITCH.matcher(e.getOriginalMessage()).replaceFirst("")));
    Sentence said =
        tooLarge
            ? Sentence.refused(
                Sentence.of("error.too-deep")
                    .with("line", at.getLineNr())
                    .with("column", at.getColumnNr()),
                limits.sentence())
            : Sentence.of("error.syntax")
                .with("line", at.getLineNr())
                .with("column", at.getColumnNr())
                .with("detail", detail);
    return new JsonInputException(
        Path.of(parser.getParsingContext()).toString(), said, "", at.getLineNr(), at.getColumnNr());
  }

  /**
   * What stands at a path.
   *
   * @param found whether anything does; otherwise line and column are of what should hold it
   * @param value the value as messages show it
   * @param fields the names of its fields, if it is an object
   */
  record Spot(boolean found, String value, List<String> fields, int line, int column) {

    boolean isObject() {
      return value.equals(OBJECT);
    }

    /** The value as what is wrong. */
    Sentence shown() {
      return switch (value) {
        case OBJECT -> Sentence.of("error.an-object");
        case ARRAY -> Sentence.of("error.an-array");
        default -> Sentence.plain(value);
      };
    }

    JsonInputException refused(Path path, Sentence problem, Sentence allowed) {
      return refused(path, Sentence.refused(problem, allowed));
    }

    JsonInputException refused(Path path, Sentence said) {
      return new JsonInputException(path.toString(), said, value, line, column);
    }
  }

  /** Where the values at some paths begin. */
  Places places(Collection<Path> paths) {
    try (JsonParser parser = factory.createParser(text)) {
      return new Places(parser, paths);
    } catch (IOException e) {
      throw new UncheckedIOException(e); // the document was read to its end before
    }
  }

  Spot at(Path path) {
    try (JsonParser parser = factory.createParser(text)) {
      parser.nextToken();
      JsonLocation last = parser.currentTokenLocation();
      for (Object step : path.steps()) {
        if (!enter(parser, step)) {
          return new Spot(false, "", List.of(), last.getLineNr(), last.getColumnNr());
        }
        last = parser.currentTokenLocation();
      }
      return new Spot(true, shown(parser), fields(parser), last.getLineNr(), last.getColumnNr());
    } catch (IOException e) {
      throw new UncheckedIOException(e); // the document was read to its end before
    }
  }

  /** Moves from a value to the value of one of its fields or elements, if it has that. */
  private static boolean enter(JsonParser parser, Object step) throws IOException {
    boolean object = step instanceof String && parser.isExpectedStartObjectToken();
    boolean array = step instanceof Integer && parser.isExpectedStartArrayToken();
    if (!object && !array) {
      return false;
    }
    for (int index = 0; !parser.nextToken().isStructEnd(); index++) {
      Object here = index;
      if (object) {
        here = parser.currentName();
        parser.nextToken();
      }
      if (step.equals(here)) {
        return true;
      }
      parser.skipChildren();
    }
    return false;
  }

  private static List<String> fields(JsonParser parser) throws IOException {
    List<String> names = new ArrayList<>();
    if (parser.isExpectedStartObjectToken()) {
      while (parser.nextToken() == JsonToken.FIELD_NAME) {
        names.add(parser.currentName());
        parser.nextToken();
        parser.skipChildren();
      }
    }
    return names;
  }

  private static String shown(JsonParser parser) throws IOException {
    return switch (parser.currentToken()) {
      case START_OBJECT -> OBJECT;
      case START_ARRAY -> ARRAY;
      case VALUE_STRING -> Quote.quoted(parser.getText());
      default -> Quote.plain(parser.getText());
    };
  }
}
