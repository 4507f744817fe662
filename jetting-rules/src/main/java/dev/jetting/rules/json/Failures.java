package dev.jetting.rules.json;

import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.exc.UnrecognizedPropertyException;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Refusal;
import dev.jetting.units.Sentence;
import java.util.List;

/** Turns an error in reading a well-formed document into an exception for the caller. */
final class Failures {

  static final String MISSING = "error.missing";

  private final Document document;
  private final Expected root;

  Failures(Document document, Expected root) {
    this.document = document;
    this.root = root;
  }

  JsonInputException of(Exception e) {
    Path path = e instanceof JsonMappingException m ? Path.of(m.getPath()) : Path.ROOT;
    if (e instanceof Misplaced misplaced) {
      return document.at(misplaced.path()).refused(misplaced.path(), misplaced.sentence());
    }
    if (e instanceof UnrecognizedPropertyException) {
      return unknown(path.parent(), path.lastName());
    }
    Document.Spot spot = document.at(path);
    // A field by a wrong name is the better news than what is missing for want of it.
    Path object = spot.found() ? path : path.parent();
    List<String> known = root.at(object).fields();
    for (String field : document.at(object).fields()) {
      if (!known.isEmpty() && !known.contains(field)) {
        return unknown(object, field);
      }
    }
    for (Throwable cause = e; cause != null; cause = cause.getCause()) {
      if (cause instanceof InvalidValueException invalid && !invalid.field().isEmpty()) {
        return refused(path, invalid);
      }
      if (cause instanceof IllegalArgumentException || cause instanceof IllegalStateException) {
        return spot.refused(path, Refusal.of(cause));
      }
    }
    return spot.refused(
        path, spot.found() ? spot.shown() : Sentence.of(MISSING), root.at(path).allowed());
  }

  /** Of a field that stands in the document, or else of what should hold it. */
  private JsonInputException refused(Path path, InvalidValueException invalid) {
    Path field = path.below(invalid.field());
    Document.Spot spot = document.at(field);
    return spot.found()
        ? spot.refused(field, invalid.withoutField())
        : document.at(path).refused(path, invalid.sentence());
  }

  private JsonInputException unknown(Path object, String field) {
    List<String> known = root.at(object).fields();
    Path path = object.child(field);
    return document
        .at(path)
        .refused(
            path,
            Nearest.unknown("error.unknown-field", "error.unknown-field.near", field, known),
            Sentence.plain(String.join(", ", known)));
  }
}
