package dev.jetting.rules.json;

import com.fasterxml.jackson.core.JsonStreamContext;
import com.fasterxml.jackson.databind.JsonMappingException.Reference;
import com.google.common.base.Splitter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A place in a document.
 *
 * @param steps the way there from the root: a String for a field, an Integer for an element
 */
record Path(List<Object> steps) {

  static final Path ROOT = new Path(List.of());

  private static final Pattern PLAIN = Pattern.compile("[A-Za-z_][A-Za-z0-9_]{0,39}");
  private static final Pattern STEP = Pattern.compile("\\]?[.\\[]|\\]");
  private static final Pattern INDEX = Pattern.compile("[0-9]{1,9}");
  private static final int LONGEST_NAME = 40;
  private static final int LONGEST = 160;

  static Path of(List<Reference> references) {
    return new Path(
        references.stream()
            .<Object>map(r -> r.getFieldName() == null ? (Object) r.getIndex() : r.getFieldName())
            .toList());
  }

  static Path of(JsonStreamContext where) {
    List<Object> steps = new ArrayList<>();
    for (JsonStreamContext c = where; c != null; c = c.getParent()) {
      if (c.inObject() && c.getCurrentName() != null) {
        steps.add(c.getCurrentName());
      } else if (c.inArray() && c.hasCurrentIndex()) {
        steps.add(c.getCurrentIndex());
      }
    }
    Collections.reverse(steps);
    return new Path(List.copyOf(steps));
  }

  Path parent() {
    return new Path(steps.subList(0, steps.size() - 1));
  }

  /** The place of a field, given its name, or of an element, given its index. */
  Path child(Object step) {
    List<Object> longer = new ArrayList<>(steps);
    longer.add(step);
    return new Path(List.copyOf(longer));
  }

  /** A place below: names with full stops between, and indices in brackets. */
  Path below(String field) {
    Path place = this;
    for (String step : Splitter.on(STEP).omitEmptyStrings().split(field)) {
      place = place.child(INDEX.matcher(step).matches() ? (Object) Integer.valueOf(step) : step);
    }
    return place;
  }

  String lastName() {
    return String.valueOf(steps.get(steps.size() - 1));
  }

  /** The path as a JSON Pointer (RFC 6901). */
  String pointer() {
    return steps.stream()
        .map(step -> "/" + String.valueOf(step).replace("~", "~0").replace("/", "~1"))
        .collect(Collectors.joining());
  }

  /** The path for people; a very long one without its middle. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder("$");
    steps.forEach(step -> text.append(text(step)));
    int surplus = text.length() - LONGEST;
    if (surplus > 0) {
      text.replace(whole(text, LONGEST / 2), whole(text, LONGEST / 2 + surplus), "…");
    }
    return text.toString();
  }

  /** A place that splits no character of two units. */
  private static int whole(CharSequence text, int at) {
    boolean within =
        Character.isHighSurrogate(text.charAt(at - 1)) && Character.isLowSurrogate(text.charAt(at));
    return within ? at - 1 : at;
  }

  private static String text(Object step) {
    if (step instanceof Integer index) {
      return "[" + index + "]";
    }
    String name = (String) step;
    if (PLAIN.matcher(name).matches()) {
      return "." + name;
    }
    String shown =
        name.length() > LONGEST_NAME ? name.substring(0, whole(name, LONGEST_NAME)) + "…" : name;
    return "[" + Quote.quoted(shown) + "]";
  }
}
