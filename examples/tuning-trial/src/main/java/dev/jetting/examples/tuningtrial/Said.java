package dev.jetting.examples.tuningtrial;

/**
 * What a session said of an engine.
 *
 * @param fault whether it asked to look for a fault
 * @param itsFault whether what it asked to look at would have found the fault there is
 * @param readAgain whether it asked to take a reading again
 * @param rodeLean whether it asked for a test at an opening at which the engine was too lean
 * @param ending how it ended
 */
record Said(boolean fault, boolean itsFault, boolean readAgain, boolean rodeLean, Ending ending) {

  static final Said NOTHING = new Said(false, false, false, false, Ending.NONE);

  /** How a session ends. */
  enum Ending {
    /** On a confirmed setting. */
    CONFIRMED,
    /** Safe, but too rich somewhere with the parts at hand. */
    LEFT_RICH,
    /** Safe if the engine is sound; a fault that was not found may be there. */
    RESERVED,
    /** Too lean with the parts at hand: not to be ridden. */
    NOT_TO_BE_RIDDEN,
    /** Not by itself. */
    NONE
  }

  Said withFault(boolean its) {
    return new Said(true, itsFault || its, readAgain, rodeLean, ending);
  }

  Said withReadAgain() {
    return new Said(fault, itsFault, true, rodeLean, ending);
  }

  Said withTest(boolean lean) {
    return new Said(fault, itsFault, readAgain, rodeLean || lean, ending);
  }

  Said with(Ending other) {
    return new Said(fault, itsFault, readAgain, rodeLean, other);
  }
}
