package dev.jetting.rules.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.DatabindContext;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.deser.std.DelegatingDeserializer;
import com.fasterxml.jackson.databind.node.TreeTraversingParser;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.Report;
import java.io.IOException;
import java.io.Serial;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A setting after a change. In a report it leaves out what is as in the sheet; elsewhere it is
 * whole.
 *
 * @param setting the setting
 */
record After(Setting setting) {

  /** What the mapper carries while it is inside of a report: the setting of its sheet. */
  private static final String BEFORE = "dev.jetting.before";

  private static Optional<Setting> before(DatabindContext context) {
    return Optional.ofNullable((Setting) context.getAttribute(BEFORE));
  }

  static final class Serializer extends JsonSerializer<After> {
    @Override
    public void serialize(After after, JsonGenerator out, SerializerProvider provider)
        throws IOException {
      provider.defaultSerializeValue(AfterForm.of(after, before(provider)), out);
    }
  }

  static final class Deserializer extends JsonDeserializer<After> {
    @Override
    public Class<?> handledType() {
      return After.class;
    }

    @Override
    public After deserialize(JsonParser in, DeserializationContext context) throws IOException {
      return context.readValue(in, AfterForm.class).after(before(context));
    }
  }

  /** Writes a report. */
  static final class ReportSerializer extends JsonSerializer<Report> {
    @Override
    public void serialize(Report report, JsonGenerator out, SerializerProvider provider)
        throws IOException {
      provider.setAttribute(BEFORE, report.sheet().setup().setting());
      try {
        provider.defaultSerializeValue(ReportForm.of(report), out);
      } finally {
        provider.setAttribute(BEFORE, null);
      }
    }
  }

  /** Reads a report, in whatever order its fields are. */
  static final class ReportDeserializer extends DelegatingDeserializer {

    @Serial private static final long serialVersionUID = 1L;

    ReportDeserializer(JsonDeserializer<?> delegate) {
      super(delegate);
    }

    @Override
    protected JsonDeserializer<?> newDelegatingInstance(JsonDeserializer<?> delegate) {
      return new ReportDeserializer(delegate);
    }

    @Override
    public Object deserialize(JsonParser in, DeserializationContext context) throws IOException {
      if (!in.hasToken(JsonToken.START_OBJECT)) {
        return super.deserialize(in, context);
      }
      JsonNode tree = context.readTree(in);
      context.setAttribute(BEFORE, setting(tree.at("/sheet/setting"), context));
      try (JsonParser again = new TreeTraversingParser(tree, in.getCodec())) {
        again.nextToken();
        return super.deserialize(again, context);
      } finally {
        context.setAttribute(BEFORE, null);
      }
    }

    /** What is wrong with it is found when the sheet is read, with its place. */
    private static @Nullable Setting setting(JsonNode tree, DeserializationContext context) {
      try {
        return tree.isObject() ? context.readTreeAsValue(tree, Setting.class) : null;
      } catch (IOException | IllegalArgumentException e) {
        return null;
      }
    }
  }
}
