package dev.jetting.rules.json;

import com.fasterxml.jackson.core.StreamReadConstraints;

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
    return "at most "
        + characters
        + " characters, nested "
        + depth
        + " deep, names of "
        + NAME
        + ", texts of "
        + STRING
        + " and numbers of "
        + NUMBER
        + " characters";
  }
}
