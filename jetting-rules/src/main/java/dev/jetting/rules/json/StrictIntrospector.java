package dev.jetting.rules.json;

import com.fasterxml.jackson.annotation.JsonAutoDetect;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.Nulls;
import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.introspect.Annotated;
import com.fasterxml.jackson.databind.introspect.AnnotatedClass;
import com.fasterxml.jackson.databind.introspect.AnnotatedMember;
import com.fasterxml.jackson.databind.introspect.AnnotatedParameter;
import com.fasterxml.jackson.databind.introspect.NopAnnotationIntrospector;
import com.fasterxml.jackson.databind.introspect.VisibilityChecker;
import dev.jetting.units.Quantity;
import java.io.Serial;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What annotations would say on the project's records. Every component must be there unless it is
 * optional, none may be null, and numbers and texts are read as they are written.
 */
final class StrictIntrospector extends NopAnnotationIntrospector {

  @Serial private static final long serialVersionUID = 1L;

  @Override
  public @Nullable Boolean hasRequiredMarker(AnnotatedMember member) {
    return isOurs(member) ? member.getRawType() != Optional.class : null;
  }

  /** What a record answers, such as {@code isEnd()} of a step, is none of its components. */
  @Override
  public VisibilityChecker<?> findAutoDetectVisibility(
      AnnotatedClass type, VisibilityChecker<?> checker) {
    return Ours.is(type.getRawType())
        ? checker.withIsGetterVisibility(JsonAutoDetect.Visibility.NONE)
        : checker;
  }

  @Override
  public JsonSetter.Value findSetterInfo(Annotated annotated) {
    if (!isOurs(annotated)) {
      return JsonSetter.Value.empty();
    }
    // What refuses null would refuse absence too; an optional refuses null by itself.
    Nulls values = annotated.getRawType() == Optional.class ? Nulls.DEFAULT : Nulls.FAIL;
    return JsonSetter.Value.forValueNulls(values, Nulls.FAIL);
  }

  @Override
  public JsonInclude.Value findPropertyInclusion(Annotated annotated) {
    return isOurs(annotated) && annotated.getRawType() == Optional.class
        ? JsonInclude.Value.construct(JsonInclude.Include.NON_EMPTY, null)
        : JsonInclude.Value.empty();
  }

  @Override
  public @Nullable Object findDeserializer(Annotated annotated) {
    if (!isOurs(annotated)) {
      return null;
    }
    if (annotated.getRawType() == Optional.class) {
      return new Optionals.Deserializer();
    }
    return annotated instanceof AnnotatedParameter parameter && isId(parameter)
        ? Scalars.ID
        : reader(annotated.getRawType());
  }

  @Override
  public @Nullable Object findContentDeserializer(Annotated annotated) {
    JavaType content = isOurs(annotated) ? annotated.getType().getContentType() : null;
    return content == null ? null : reader(content.getRawClass());
  }

  /** The type of a component; that of the content where the component is optional. */
  private static JavaType stated(Annotated annotated) {
    JavaType type = annotated.getType();
    return type.hasRawClass(Optional.class) ? type.containedTypeOrUnknown(0) : type;
  }

  private static boolean isNumbers(Annotated annotated) {
    JavaType type = stated(annotated);
    return type.hasRawClass(List.class) && type.getContentType().hasRawClass(Double.class);
  }

  @Override
  public @Nullable Object findSerializer(Annotated annotated) {
    if (!isOurs(annotated)) {
      return null;
    }
    if (annotated.getRawType() == Optional.class) {
      return new Optionals.Serializer(isNumbers(annotated) ? Scalars.NUMBERS : null);
    }
    if (isNumbers(annotated)) {
      return Scalars.NUMBERS;
    }
    return annotated.getRawType() == double.class
        ? Scalars.FINITE_NUMBER
        : computed(annotated, annotated.getRawType());
  }

  @Override
  public @Nullable Object findContentSerializer(Annotated annotated) {
    JavaType content = isOurs(annotated) ? annotated.getType().getContentType() : null;
    return content == null ? null : computed(annotated, content.getRawClass());
  }

  /** What writes a quantity that was computed. */
  private static @Nullable Object computed(Annotated annotated, Class<?> type) {
    return Quantity.class.isAssignableFrom(type)
            && annotated instanceof AnnotatedMember member
            && Computed.is(member.getDeclaringClass())
        ? new Quantities.MeasureSerializer()
        : null;
  }

  /** The strict reader of a plain type; null for all others. */
  static @Nullable JsonDeserializer<?> reader(Class<?> type) {
    if (type == double.class || type == Double.class) {
      return Scalars.NUMBER;
    }
    if (type == boolean.class || type == Boolean.class) {
      return Scalars.TRUTH;
    }
    if (type == BigDecimal.class) {
      return Scalars.DECIMAL;
    }
    if (type == int.class) {
      return Scalars.WHOLE_NUMBER;
    }
    if (type == long.class) {
      return Scalars.LONG_NUMBER;
    }
    return type == String.class ? Scalars.TEXT : null;
  }

  private static boolean isId(AnnotatedParameter parameter) {
    return Expected.isId(parameter.getDeclaringClass().getRecordComponents()[parameter.getIndex()]);
  }

  static boolean isOurs(@Nullable Annotated annotated) {
    return annotated instanceof AnnotatedMember member
        && member.getDeclaringClass().isRecord()
        && Ours.is(member.getDeclaringClass());
  }
}
