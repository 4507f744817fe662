package dev.jetting.rules.json;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import com.networknt.schema.dialect.DialectId;
import java.util.List;

/** A general validator, set to the published schemas. */
final class Validators {

  static final Validators SHEET = new Validators(JsonSchemas.setupSheet());
  static final Validators REPORT = new Validators(JsonSchemas.report());
  static final Validators SHORT_REPORT = new Validators(JsonSchemas.shortReport());
  static final Validators RULE_FILE = new Validators(JsonSchemas.ruleFile());
  static final Validators SESSION = new Validators(JsonSchemas.tuningSession());
  static final Validators CATALOGUE = new Validators(JsonSchemas.catalogue());
  static final Validators KIT = new Validators(JsonSchemas.kit());
  static final Validators RULE_LIMITS = new Validators(JsonSchemas.ruleLimits());
  static final Validators WAIVERS = new Validators(JsonSchemas.waivers());
  static final Validators KIT_WAIVERS = new Validators(JsonSchemas.kitWaivers());
  static final Validators DIFFERENCE = new Validators(JsonSchemas.reportDifference());
  static final Validators IMPACT = new Validators(JsonSchemas.sheetImpact());
  static final Validators KIT_VALIDATION = new Validators(JsonSchemas.kitValidation());

  private static final SchemaRegistry REGISTRY =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

  private final Schema schema;

  private Validators(String schema) {
    this.schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(schema);
  }

  List<Error> complaints(String json) {
    return schema.validate(json, InputFormat.JSON);
  }

  /** What the schema of schemas has to say. */
  static List<Error> complaintsOfSchema(String schema) {
    return REGISTRY
        .getSchema(SchemaLocation.of(DialectId.DRAFT_2020_12))
        .validate(schema, InputFormat.JSON);
  }
}
