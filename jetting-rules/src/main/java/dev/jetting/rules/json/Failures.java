package dev.jetting.rules.json;

import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.exc.UnrecognizedPropertyException;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** From what went wrong in reading a well-formed document to what the caller is told. */
final class Failures {

  static final String MISSING = "missing";

  private final Document document;
  private final Expected root;

  Failures(Document document, Expected root) {
    this.document = document;
    this.root = root;
  }

  JsonInputException of(Exception e) {
    Path path = e instanceof JsonMappingException m ? Path.of(m.getPath()) : Path.ROOT;
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
      if (cause instanceof IllegalArgumentException || cause instanceof IllegalStateException) {
        String message = String.valueOf(cause.getMessage());
        return spot.refused(path, Quote.problem(message), Quote.allowed(message));
      }
    }
    return spot.refused(path, spot.found() ? spot.value() : MISSING, root.at(path).allowed());
  }

  private JsonInputException unknown(Path object, String field) {
    List<String> known = root.at(object).fields();
    String nearest = nearest(field, known).map(name -> ", perhaps \"" + name + '"').orElse("");
    Path path = object.child(field);
    return document
        .at(path)
        .refused(path, "unknown field " + Quote.quoted(field) + nearest, String.join(", ", known));
  }

  private static Optional<String> nearest(String name, List<String> known) {
    int tolerated = 1 + name.length() / 4;
    return known.stream()
        .filter(k -> distance(name, k) <= tolerated)
        .min(Comparator.comparing(k -> distance(name, k)));
  }

  /** Letters to put in, take out or change to get from one name to the other (Levenshtein 1966). */
  private static int distance(String a, String b) {
    String from = a.toLowerCase(Locale.ROOT);
    String to = b.toLowerCase(Locale.ROOT);
    int[] row = new int[to.length() + 1];
    for (int j = 0; j < row.length; j++) {
      row[j] = j;
    }
    for (int i = 1; i <= from.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j < row.length; j++) {
        int changed = diagonal + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(changed, 1 + Math.min(row[j], row[j - 1]));
      }
    }
    return row[to.length()];
  }
}
