package dev.jetting.rules.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.google.common.base.CaseFormat;
import dev.jetting.core.air.Air;
import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.fuel.FuelComponent;
import dev.jetting.core.parts.Intake;
import dev.jetting.rules.Measure;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.kit.Part;
import dev.jetting.rules.tuning.Evidence;
import dev.jetting.units.JetCalibration;
import dev.jetting.units.PremixRatio;
import dev.jetting.units.Quantity;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Makes the schemas from what the readers use: the records, their forms and shorthands, the
 * quantities and the table of measures. Where it has a choice, it allows more than the reader does.
 */
final class SchemaWriter {

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final String DIALECT = "https://json-schema.org/draft/2020-12/schema";

  /** How {@link Quantities#allowed} begins the units without which a quantity is not read. */
  private static final String UNITS = "a decimal number with ";

  private final Map<String, ObjectNode> definitions = new TreeMap<>();

  private SchemaWriter() {}

  /** The schema of a document whose header fields have one value each. */
  static String of(String id, String title, Class<?> root, Map<String, String> header) {
    SchemaWriter writer = new SchemaWriter();
    ObjectNode schema = NODES.objectNode();
    schema.put("$schema", DIALECT);
    schema.put("$id", "urn:jetting:" + id + ":1");
    schema.put("title", title);
    schema.setAll(writer.object(form(root), root));
    header.forEach(
        (field, value) -> schema.withObject("/properties").set(field, constant(field, value)));
    ObjectNode defined = schema.putObject("$defs");
    writer.definitions.forEach(defined::set);
    return printed(schema);
  }

  private static ObjectNode constant(String field, String value) {
    ObjectNode constant = NODES.objectNode();
    return field.equals("format")
        ? constant.put("const", value.substring(1, value.length() - 1))
        : constant.put("const", Integer.parseInt(value));
  }

  private static Class<?> form(Class<?> type) {
    return Form.of(type).<Class<?>>map(Form::form).orElse(type);
  }

  /**
   * @param type the type that the form represents; it may document a field better
   */
  private ObjectNode object(Class<?> form, Class<?> type) {
    Map<String, String> words = new HashMap<>(RecordDocs.of(type));
    words.putAll(RecordDocs.of(form));
    ObjectNode schema = NODES.objectNode();
    schema.put("type", "object");
    ObjectNode properties = schema.putObject("properties");
    ArrayNode required = NODES.arrayNode();
    for (RecordComponent component : form.getRecordComponents()) {
      ObjectNode field = component(component);
      Optional.ofNullable(words.get(component.getName()))
          .ifPresent(said -> field.put("description", said));
      properties.set(component.getName(), field);
      if (component.getType() != Optional.class) {
        required.add(component.getName());
      }
    }
    if (!required.isEmpty()) {
      schema.set("required", required);
    }
    schema.put("additionalProperties", false);
    return schema;
  }

  private ObjectNode component(RecordComponent component) {
    ObjectNode schema = schema(component.getGenericType());
    return Expected.isId(component) ? schema.put("maxLength", Scalars.LONGEST_ID) : schema;
  }

  private ObjectNode schema(Type type) {
    if (type instanceof ParameterizedType generic) {
      Type[] arguments = generic.getActualTypeArguments();
      ObjectNode content = schema(arguments[arguments.length - 1]);
      if (generic.getRawType() == Optional.class) {
        return content;
      }
      boolean list = generic.getRawType() == List.class;
      ObjectNode schema = typed(list ? "array" : "object");
      schema.set(list ? "items" : "additionalProperties", content);
      return schema;
    }
    if (type == double.class || type == Double.class || type == BigDecimal.class) {
      return typed("number");
    }
    if (type == boolean.class || type == Boolean.class) {
      return typed("boolean");
    }
    if (type == int.class || type == long.class) {
      return typed("integer");
    }
    if (type == JsonText.class) {
      return NODES.objectNode(); // any value
    }
    return type == String.class ? typed("string") : reference((Class<?>) type);
  }

  private static ObjectNode typed(String type) {
    return NODES.objectNode().put("type", type);
  }

  private ObjectNode reference(Class<?> type) {
    String name = CaseFormat.UPPER_CAMEL.to(CaseFormat.LOWER_CAMEL, name(type));
    if (!definitions.containsKey(name)) {
      definitions.put(name, NODES.objectNode()); // a type may hold itself
      definitions.put(name, definition(type));
    }
    return NODES.objectNode().put("$ref", "#/$defs/" + name);
  }

  private static String name(Class<?> type) {
    return Stream.of(type.getName().substring(type.getPackageName().length() + 1).split("\\$"))
        .map(part -> part.replaceAll("Form$", ""))
        .collect(Collectors.joining());
  }

  private ObjectNode definition(Class<?> type) {
    if (Quantity.class.isAssignableFrom(type)) {
      return quantity(type);
    }
    if (type.isEnum()) {
      return among(Enums.names(type));
    }
    if (type == ConditionForm.class) {
      return condition();
    }
    ObjectNode object = object(form(type), type);
    choice(type).ifPresent(choices -> object.set("oneOf", choices));
    if (type == Evidence.class) {
      object.put("minProperties", 1).put("maxProperties", 1);
    }
    List<ObjectNode> forms = new ArrayList<>();
    Map<String, ?> named = Shorthands.of(type);
    if (!named.isEmpty()) {
      forms.add(among(named.keySet()));
    }
    Curve.of(type)
        .ifPresent(curve -> forms.add(typed("array").set("items", schema(curve.point()))));
    forms.add(object);
    return forms.size() == 1 ? object : either(forms);
  }

  /** Which fields of an object exclude each other; its form checks that. */
  private static Optional<ArrayNode> choice(Class<?> type) {
    if (type == Air.class) {
      return Optional.of(requiring(List.of("pressure"), List.of("altitude")));
    }
    if (type == Intake.class) {
      return Optional.of(requiring(List.of("effectiveArea"), List.of("openMouth")));
    }
    if (type == FuelComponent.class) {
      return Optional.of(requiring(List.of("composition"), List.of("stoichiometricRatio")));
    }
    if (type == Part.class) {
      return Optional.of(requiring(PartForm.SHAPES.stream().map(List::of).toList()));
    }
    if (type == JetCalibration.class) {
      return Optional.of(requiring(List.of("dischargeCoefficient"), List.of("lengthToDiameter")));
    }
    return type == Fuel.class
        ? Optional.of(
            requiring(
                List.of("blend", "premix"),
                List.of("density", "dynamicViscosity", "stoichiometricRatio", "premix")))
        : Optional.empty();
  }

  private static ArrayNode requiring(List<String> one, List<String> other) {
    return requiring(List.of(one, other));
  }

  private static ArrayNode requiring(List<List<String>> choices) {
    ArrayNode choice = NODES.arrayNode();
    for (List<String> names : choices) {
      ArrayNode required = choice.addObject().putArray("required");
      names.forEach(required::add);
    }
    return choice;
  }

  private ObjectNode quantity(Class<?> type) {
    ArrayNode forms = NODES.arrayNode().add(text(type));
    if (readsBareNumber(type)) {
      forms.add(typed("number"));
    }
    forms.add(schema(Measure.class));
    ObjectNode quantity =
        NODES.objectNode().put("description", Quantities.allowed(type).toString());
    quantity.set("anyOf", forms);
    return quantity;
  }

  private static ObjectNode text(Class<?> type) {
    return units(type)
        .map(units -> typed("string").put("pattern", units))
        .orElseGet(() -> typed("string"));
  }

  /** A text of the quantity has one of these in it. */
  private static Optional<String> units(Class<?> type) {
    String allowed = Quantities.allowed(type).toString();
    int at = allowed.indexOf(UNITS);
    if (at < 0) {
      return Optional.empty();
    }
    Stream<String> units = Stream.of(allowed.substring(at + UNITS.length()).split(", "));
    Stream<String> more =
        type == PremixRatio.class ? Stream.of(PremixRatio.NO_OIL.toString()) : Stream.of();
    return Optional.of(
        Stream.concat(units, more).map(SchemaWriter::escaped).collect(Collectors.joining("|")));
  }

  private static String escaped(String unit) {
    return Pattern.compile("[^\\p{L}\\p{N} %/:²³°·]")
        .matcher(unit)
        .replaceAll(match -> "\\\\" + match.group());
  }

  private static boolean readsBareNumber(Class<?> type) {
    Function<String, ?> parse = Quantities.PARSERS.get(type);
    try {
      return parse.apply("1") != null;
    } catch (IllegalArgumentException e) {
      return false;
    }
  }

  private static ObjectNode among(Collection<String> names) {
    ObjectNode schema = NODES.objectNode();
    ArrayNode values = schema.putArray("enum");
    names.forEach(values::add);
    return schema;
  }

  private static ObjectNode either(List<ObjectNode> forms) {
    ObjectNode schema = NODES.objectNode();
    schema.putArray("anyOf").addAll(forms);
    return schema;
  }

  /**
   * A condition is of other conditions, or on a measure; the dimension of that decides the rest.
   */
  private ObjectNode condition() {
    ObjectNode schema = NODES.objectNode();
    ArrayNode kinds = schema.putArray("oneOf");
    ObjectNode self = NODES.objectNode().put("$ref", "#/$defs/condition");
    for (String list : List.of("all", "any")) {
      ObjectNode conditions = typed("array").put("minItems", 1);
      kinds.add(only(list, conditions.set("items", self)));
    }
    kinds.add(only("not", self));
    kinds.add(NODES.objectNode().put("$ref", "#/$defs/textCondition"));
    definitions.put("textCondition", textCondition());
    for (Dimension dimension : Dimension.values()) {
      for (boolean swept : new boolean[] {false, true}) {
        List<MeasureDefinition> measures = measures(dimension, swept);
        if (!measures.isEmpty()) {
          String name = conditionName(dimension, swept);
          definitions.put(name, numberCondition(dimension, swept, measures));
          kinds.add(NODES.objectNode().put("$ref", "#/$defs/" + name));
        }
      }
    }
    return schema;
  }

  private static ObjectNode only(String field, ObjectNode content) {
    ObjectNode schema = typed("object");
    schema.putObject("properties").set(field, documented(field, content));
    schema.putArray("required").add(field);
    return schema.put("additionalProperties", false);
  }

  /** With what the form of a condition says of its field. */
  private static ObjectNode documented(String field, ObjectNode content) {
    return content.deepCopy().put("description", RecordDocs.of(ConditionForm.class).get(field));
  }

  private static String conditionName(Dimension dimension, boolean swept) {
    return camel(dimension) + (swept ? "OverThrottle" : "") + "Condition";
  }

  private static List<MeasureDefinition> measures(Dimension dimension, boolean swept) {
    return MeasureDefinitions.all().stream()
        .filter(
            g -> g instanceof MeasureDefinition.Numeric number && number.dimension() == dimension)
        .filter(g -> g instanceof MeasureDefinition.Swept == swept)
        .toList();
  }

  private static ObjectNode textCondition() {
    ObjectNode schema =
        only(
            "measure",
            described(
                MeasureDefinitions.all().stream()
                    .filter(g -> g instanceof MeasureDefinition.Word)));
    ObjectNode properties = schema.withObject("/properties");
    properties.set("is", documented("is", typed("string")));
    ObjectNode texts = typed("array").put("minItems", 1).put("maxItems", RuleFileReader.MOST_TEXTS);
    texts.set("items", typed("string"));
    properties.set("oneOf", documented("oneOf", texts));
    schema.set("oneOf", requiring(List.of("is"), List.of("oneOf")));
    return schema;
  }

  private ObjectNode numberCondition(
      Dimension dimension, boolean swept, List<MeasureDefinition> measures) {
    ObjectNode schema = only("measure", described(measures.stream()));
    ObjectNode properties = schema.withObject("/properties");
    if (swept) {
      schema.withArray("/required").add("take");
      properties.set("take", documented("take", schema(Take.class)));
      properties.set("within", documented("within", schema(ThrottleBand.class)));
    }
    ObjectNode limit = limit(dimension);
    properties.set("atMost", documented("atMost", limit));
    properties.set("atLeast", documented("atLeast", limit));
    ArrayNode sides = schema.putArray("anyOf");
    sides.addObject().putArray("required").add("atMost");
    sides.addObject().putArray("required").add("atLeast");
    return schema;
  }

  private static ObjectNode described(Stream<? extends MeasureDefinition> measures) {
    ObjectNode schema = NODES.objectNode();
    ArrayNode choices = schema.putArray("oneOf");
    measures.forEach(g -> choices.addObject().put("const", g.name()).put("description", g.words()));
    return schema;
  }

  private ObjectNode limit(Dimension dimension) {
    String name = camel(dimension) + "Limit";
    definitions.computeIfAbsent(name, n -> NODES.objectNode()).setAll(limitDefinition(dimension));
    return NODES.objectNode().put("$ref", "#/$defs/" + name);
  }

  private ObjectNode limitDefinition(Dimension dimension) {
    ObjectNode limit = NODES.objectNode().put("description", dimension.allowed().toString());
    ArrayNode forms = limit.putArray("anyOf");
    Optional<String> units = dimension.type().flatMap(SchemaWriter::units);
    forms.add(
        units
            .map(pattern -> typed("string").put("pattern", pattern))
            .orElseGet(() -> typed("string")));
    if (units.isEmpty()) {
      forms.add(typed("number"));
    }
    ObjectNode other = object(Threshold.OtherMeasure.class, Threshold.OtherMeasure.class);
    List<String> comparable =
        MeasureDefinitions.all().stream()
            .filter(g -> g instanceof MeasureDefinition.Numeric number && alike(dimension, number))
            .map(MeasureDefinition::name)
            .toList();
    other
        .withObject("/properties")
        .set(
            "measure",
            among(comparable)
                .put("description", RecordDocs.of(Threshold.OtherMeasure.class).get("measure")));
    forms.add(other);
    return limit;
  }

  private static boolean alike(Dimension dimension, MeasureDefinition.Numeric other) {
    return dimension.differsFrom(other.dimension()).isEmpty();
  }

  private static String camel(Dimension dimension) {
    return CaseFormat.UPPER_UNDERSCORE.to(CaseFormat.LOWER_CAMEL, dimension.name());
  }

  private static String printed(ObjectNode schema) {
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter(
                Separators.createDefaultInstance()
                    .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
                    .withObjectEmptySeparator("")
                    .withArrayEmptySeparator(""))
            .withObjectIndenter(indenter);
    try {
      return JsonMapper.builder().build().writer(printer).writeValueAsString(schema) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }
}
