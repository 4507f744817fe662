package dev.jetting.rules.json;

import dev.jetting.rules.Measure;
import dev.jetting.units.Quantity;
import dev.jetting.units.Sentence;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What should stand at a place of a document.
 *
 * @param type the type, with its type arguments
 * @param id whether it is the id of a part
 */
record Expected(Type type, boolean id) {

  static Expected root(Class<?> type) {
    return new Expected(type, false);
  }

  static boolean isId(RecordComponent component) {
    return component.getType() == String.class && component.getName().equals("id");
  }

  /** What should stand at a path below; as far along it as the type knows the way. */
  Expected at(Path path) {
    Expected here = this;
    for (Object step : path.steps()) {
      Optional<Expected> next = here.step(step);
      if (next.isEmpty()) {
        return here;
      }
      here = next.get();
    }
    return here;
  }

  private Optional<Expected> step(Object step) {
    Class<?> raw = raw();
    if (raw == List.class || raw == Map.class) {
      Type[] arguments = ((ParameterizedType) type).getActualTypeArguments();
      return Optional.of(new Expected(content(arguments[arguments.length - 1]), false));
    }
    if (step instanceof Integer) {
      return Curve.of(raw).map(curve -> root(curve.point()));
    }
    return components()
        .filter(component -> component.getName().equals(step))
        .map(component -> new Expected(content(component.getGenericType()), isId(component)))
        .findFirst();
  }

  private static Type content(Type type) {
    return type instanceof ParameterizedType p && p.getRawType() == Optional.class
        ? p.getActualTypeArguments()[0]
        : type;
  }

  private Class<?> raw() {
    return (Class<?>) (type instanceof ParameterizedType p ? p.getRawType() : type);
  }

  private Stream<RecordComponent> components() {
    Class<?> raw = raw();
    Class<?> form = form(raw);
    return form.isRecord() && raw != JsonText.class
        ? Stream.of(form.getRecordComponents())
        : Stream.empty();
  }

  private static Class<?> form(Class<?> raw) {
    if (raw == Threshold.class) {
      return Threshold.OtherMeasure.class;
    }
    return Quantity.class.isAssignableFrom(raw)
        ? Measure.class
        : Form.of(raw).<Class<?>>map(Form::form).orElse(raw);
  }

  /** The fields of an object here, in their order. */
  List<String> fields() {
    return components().map(RecordComponent::getName).toList();
  }

  /** What is allowed here, for people. */
  Sentence allowed() {
    Class<?> raw = raw();
    if (Quantity.class.isAssignableFrom(raw)) {
      return Quantities.allowed(raw);
    }
    if (raw.isEnum()) {
      return Sentence.plain(quoted(Enums.names(raw)));
    }
    if (raw == double.class || raw == Double.class || raw == BigDecimal.class) {
      return Sentence.of("error.finite");
    }
    if (raw == boolean.class || raw == Boolean.class) {
      return Sentence.of("error.true-false");
    }
    if (raw == int.class || raw == long.class) {
      return Sentence.of("error.whole");
    }
    if (raw == String.class) {
      return id
          ? Sentence.of("error.text.most").with("most", Scalars.LONGEST_ID)
          : Sentence.of("error.text");
    }
    if (raw == List.class) {
      return Sentence.of("error.an-array");
    }
    if (raw == Map.class) {
      return Sentence.of("error.an-object");
    }
    return raw == JsonText.class ? Sentence.of("error.any-value") : object(raw);
  }

  private Sentence object(Class<?> raw) {
    String fields = String.join(", ", fields());
    String names = quoted(Shorthands.of(raw).keySet());
    if (raw == Threshold.class) {
      return Sentence.of("error.quantity-or-object").with("fields", fields);
    }
    if (Curve.of(raw).isPresent()) {
      return names.isEmpty()
          ? Sentence.of("error.points-or-object").with("fields", fields)
          : Sentence.of("error.points-names-or-object").with("names", names).with("fields", fields);
    }
    return names.isEmpty()
        ? Sentence.of("error.object-with").with("fields", fields)
        : Sentence.of("error.names-or-object").with("names", names).with("fields", fields);
  }

  private static String quoted(Collection<String> names) {
    return names.stream().map(name -> '"' + name + '"').collect(Collectors.joining(", "));
  }
}
