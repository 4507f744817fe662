package dev.jetting.examples.tuningtrial;

import java.util.List;
import java.util.function.Predicate;

/**
 * On how many engines the sessions of a row said what.
 *
 * @param fault asked to look for a fault
 * @param itsFault asked to look where the fault is
 * @param readAgain asked to take a reading again
 * @param rodeLean asked for a test at an opening at which the engine was too lean
 * @param leftRich ended safe but too rich somewhere
 * @param reserved ended with a reservation
 * @param notToBeRidden ended with "not to be ridden"
 * @param wentOn had not ended after a hundred tests and changes
 */
record Words(
    int fault,
    int itsFault,
    int readAgain,
    int rodeLean,
    int leftRich,
    int reserved,
    int notToBeRidden,
    int wentOn) {

  static Words of(List<Course> courses) {
    return new Words(
        count(courses, Said::fault),
        count(courses, Said::itsFault),
        count(courses, Said::readAgain),
        count(courses, Said::rodeLean),
        count(courses, said -> said.ending() == Said.Ending.LEFT_RICH),
        count(courses, said -> said.ending() == Said.Ending.RESERVED),
        count(courses, said -> said.ending() == Said.Ending.NOT_TO_BE_RIDDEN),
        count(courses, said -> said.ending() == Said.Ending.NONE));
  }

  private static int count(List<Course> courses, Predicate<Said> which) {
    return (int) courses.stream().map(Course::said).filter(which).count();
  }
}
