package dev.jetting.examples.tuningtrial;

/**
 * How one engine was tuned.
 *
 * @param tests tests ridden
 * @param changes parts changed
 * @param start what was true of the starting setting
 * @param end what is true of the setting at which it stopped
 * @param risk the highest lean risk that the library sees then; 0 where nobody asked it
 * @param held at how many openings the 90 % band held the true λ at the end
 * @param heldAtStart at how many it did before any test
 * @param gaveUp whether it was stopped because it went on and on
 */
record Course(
    int tests,
    int changes,
    Truth start,
    Truth end,
    double risk,
    int held,
    int heldAtStart,
    boolean gaveUp) {}
