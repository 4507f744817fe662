package dev.jetting.rules.json;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Where some values of a document begin, found in one reading of it. */
final class Places {

  /** A step of the wanted paths, with the steps below it. */
  private static final class Step {
    private final Map<Object, Step> below = new HashMap<>();
    private @Nullable JsonLocation begins;
  }

  private final Step root = new Step();

  /** Reads a parser, which stands before its first token, for the places of some paths. */
  Places(JsonParser parser, Collection<Path> wanted) throws IOException {
    wanted.forEach(
        path -> {
          Step step = root;
          for (Object name : path.steps()) {
            step = step.below.computeIfAbsent(name, any -> new Step());
          }
        });
    parser.nextToken();
    read(parser, root);
  }

  private static void read(JsonParser parser, Step step) throws IOException {
    step.begins = parser.currentTokenLocation();
    boolean object = parser.isExpectedStartObjectToken();
    if (step.below.isEmpty() || !(object || parser.isExpectedStartArrayToken())) {
      parser.skipChildren();
      return;
    }
    int index = 0;
    for (JsonToken t = parser.nextToken(); !t.isStructEnd(); t = parser.nextToken()) {
      Object here = object ? parser.currentName() : (Object) index;
      if (object) {
        parser.nextToken();
      }
      Step next = step.below.get(here);
      if (next == null) {
        parser.skipChildren();
      } else {
        read(parser, next);
      }
      index++;
    }
  }

  /** Where the value at a path begins, or the last value on the way there. */
  JsonLocation of(Path path) {
    JsonLocation last = Objects.requireNonNull(root.begins);
    Step step = root;
    for (Object name : path.steps()) {
      step = step.below.get(name);
      if (step == null || step.begins == null) {
        return last;
      }
      last = step.begins;
    }
    return last;
  }
}
