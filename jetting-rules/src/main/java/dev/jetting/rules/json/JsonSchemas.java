package dev.jetting.rules.json;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/**
 * The published JSON Schemas (2020-12) of the documents of this package, for editors and for
 * programs in other languages. They stand beside this class as {@code setup-sheet.schema.json},
 * {@code report.schema.json}, {@code short-report.schema.json}, {@code rule-file.schema.json},
 * {@code tuning-session.schema.json}, {@code catalogue.schema.json}, {@code kit.schema.json},
 * {@code kit-validation.schema.json}, {@code waivers.schema.json}, {@code kit-waivers.schema.json},
 * {@code report-difference.schema.json}, {@code sheet-impact.schema.json} and {@code
 * rule-limits.schema.json}.
 *
 * <p>Whatever a reader of this package accepts, its schema accepts. The readers refuse more: fields
 * that stand twice, quantities out of range, parts that do not fit each other.
 */
public final class JsonSchemas {

  private JsonSchemas() {}

  /** {@return the schema of what {@link SheetJson} reads and writes, as a text} */
  public static String setupSheet() {
    return text("setup-sheet.schema.json");
  }

  /** {@return the schema of what {@link ReportJson} reads and writes, as a text} */
  public static String report() {
    return text("report.schema.json");
  }

  /** {@return the schema of what {@link ShortReportJson} writes, as a text} */
  public static String shortReport() {
    return text("short-report.schema.json");
  }

  /** {@return the schema of what {@link RuleFile} reads and writes, as a text} */
  public static String ruleFile() {
    return text("rule-file.schema.json");
  }

  /** {@return the schema of what {@link SessionJson} reads and writes, as a text} */
  public static String tuningSession() {
    return text("tuning-session.schema.json");
  }

  /** {@return the schema of what {@link CatalogueJson} reads and writes, as a text} */
  public static String catalogue() {
    return text("catalogue.schema.json");
  }

  /** {@return the schema of what {@link KitJson} reads and writes, as a text} */
  public static String kit() {
    return text("kit.schema.json");
  }

  /** {@return the schema of what {@link KitValidationJson} reads and writes, as a text} */
  public static String kitValidation() {
    return text("kit-validation.schema.json");
  }

  /** {@return the schema of what {@link WaiversJson} reads and writes, as a text} */
  public static String waivers() {
    return text("waivers.schema.json");
  }

  /** {@return the schema of what {@link KitWaiversJson} reads and writes, as a text} */
  public static String kitWaivers() {
    return text("kit-waivers.schema.json");
  }

  /** {@return the schema of what {@link ReportDifferenceJson} reads and writes, as a text} */
  public static String reportDifference() {
    return text("report-difference.schema.json");
  }

  /** {@return the schema of what {@link SheetImpactJson} reads and writes, as a text} */
  public static String sheetImpact() {
    return text("sheet-impact.schema.json");
  }

  /** {@return the schema of what {@link LimitsJson} reads and writes, as a text} */
  public static String ruleLimits() {
    return text("rule-limits.schema.json");
  }

  private static String text(String name) {
    try (InputStream in =
        Objects.requireNonNull(JsonSchemas.class.getResourceAsStream(name), name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e); // a resource of the library's own jar
    }
  }
}
