package dev.jetting.rules.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.Serial;

/** A field a line, and a column of numbers on the line of its field. */
final class ReadablePrinter extends DefaultPrettyPrinter {

  @Serial private static final long serialVersionUID = 1L;

  private static final DefaultIndenter INDENTER = new DefaultIndenter("  ", "\n");

  private boolean onOneLine;

  ReadablePrinter() {
    super(
        Separators.createDefaultInstance()
            .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
            .withObjectEmptySeparator("")
            .withArrayEmptySeparator(""));
    indentObjectsWith(INDENTER);
    indentArraysWith(INDENTER);
  }

  @Override
  public DefaultPrettyPrinter createInstance() {
    return new ReadablePrinter();
  }

  /** Whether the array to come is on one line. It holds numbers alone. */
  static void onOneLine(JsonGenerator out, boolean wanted) {
    if (out.getPrettyPrinter() instanceof ReadablePrinter printer) {
      printer.onOneLine = wanted;
    }
  }

  @Override
  public void beforeArrayValues(JsonGenerator out) throws IOException {
    if (!onOneLine) {
      super.beforeArrayValues(out);
    }
  }

  @Override
  public void writeArrayValueSeparator(JsonGenerator out) throws IOException {
    if (onOneLine) {
      out.writeRaw(',');
    } else {
      super.writeArrayValueSeparator(out);
    }
  }

  @Override
  public void writeEndArray(JsonGenerator out, int count) throws IOException {
    if (onOneLine) {
      _nesting--;
      out.writeRaw(']');
    } else {
      super.writeEndArray(out, count);
    }
  }
}
