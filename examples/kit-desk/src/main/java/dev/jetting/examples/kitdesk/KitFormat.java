package dev.jetting.examples.kitdesk;

/** The formats of kits. */
enum KitFormat {
  /** One kit in one JSON document. */
  JSON,
  /** A JSON document a line. */
  JSONL,
  /** A table, one kit a line, under a line with the names of the columns. */
  CSV;

  static KitFormat of(Source file) {
    if (file.isNamed(".csv")) {
      return CSV;
    }
    return file.isNamed(".json") ? JSON : JSONL;
  }
}
