package dev.jetting.examples.tuningtrial;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * How a way to tune ended over many engines.
 *
 * @param world where the engines come from
 * @param way the way
 * @param acceptedPercent the risk that the owners accept
 * @param engines how many engines
 * @param leanAtStart on how many of them the starting setting is lean somewhere
 * @param leanAtEnd on how many the last setting is, if the session leaves it to be ridden
 * @param words on how many the session said what; of no meaning for habit
 * @param tests mean number of tests
 * @param changes mean number of changes
 * @param heldAtStart share of openings at which the 90 % band held the true λ before any test; 0
 *     for habit
 * @param spreadAtStart the spread of the engines divided by the spread that the library assumes, 1
 *     for just as far; 0 for habit
 * @param heldAtEnd the same on the last setting
 * @param richerAtStart by how much richer than needed in ln λ, over riding and engines
 * @param richerAtEnd the same on the last setting
 * @param riskAtEnd mean of the highest lean risk that the library saw at the end; 0 for habit
 */
record Row(
    World world,
    Way way,
    int acceptedPercent,
    int engines,
    int leanAtStart,
    int leanAtEnd,
    Words words,
    BigDecimal tests,
    BigDecimal changes,
    BigDecimal heldAtStart,
    BigDecimal spreadAtStart,
    BigDecimal heldAtEnd,
    BigDecimal richerAtStart,
    BigDecimal richerAtEnd,
    BigDecimal riskAtEnd) {

  static Row of(World world, Way way, int acceptedPercent, List<Course> courses) {
    return new Row(
        world,
        way,
        acceptedPercent,
        courses.size(),
        (int) courses.stream().filter(course -> course.start().leanAnywhere()).count(),
        (int) courses.stream().filter(Course::endsLean).count(),
        Words.of(courses),
        mean(courses, Course::tests),
        mean(courses, Course::changes),
        mean(courses, course -> course.heldAtStart() / (double) Truth.OPENINGS.size()),
        decimal(Math.sqrt(meanOf(courses, c -> c.squaresAtStart() / Truth.OPENINGS.size()))),
        mean(courses, course -> course.heldAtEnd() / (double) Truth.OPENINGS.size()),
        mean(courses, course -> course.start().richer()),
        mean(courses, course -> course.end().richer()),
        mean(courses, Course::riskAtEnd));
  }

  private static BigDecimal mean(List<Course> courses, ToDoubleFunction<Course> of) {
    return decimal(meanOf(courses, of));
  }

  private static double meanOf(List<Course> courses, ToDoubleFunction<Course> of) {
    double sum = 0;
    for (Course course : courses) {
      sum += of.applyAsDouble(course);
    }
    return sum / courses.size();
  }

  private static BigDecimal decimal(double value) {
    return new BigDecimal(value).setScale(5, RoundingMode.HALF_EVEN);
  }
}
