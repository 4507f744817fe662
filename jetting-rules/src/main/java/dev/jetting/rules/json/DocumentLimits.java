package dev.jetting.rules.json;

import com.fasterxml.jackson.core.StreamReadConstraints;
import dev.jetting.units.Sentence;

/**
 * How large a document may be.
 *
 * @param characters length of the whole document
 * @param depth how deep objects and arrays may be nested
 */
record DocumentLimits(int characters, int depth) {

  private static final int NAME = 200;
  private static final int STRING = 10_000;
  private static final int NUMBER = 100;

  StreamReadConstraints constraints() {
    return StreamReadConstraints.builder()
        .maxNestingDepth(depth)
        .maxDocumentLength(characters)
        .maxNameLength(NAME)
        .maxStringLength(STRING)
        .maxNumberLength(NUMBER)
        .build();
  }

  @Override
  public String toString() {
    return sentence().toString();
  }

  /** What a document may have. */
  Sentence sentence() {
    return Sentence.of("error.document-limits")
        .with("characters", characters)
        .with("depth", depth)
        .with("names", NAME)
        .with("texts", STRING)
        .with("numbers", NUMBER);
  }
}
