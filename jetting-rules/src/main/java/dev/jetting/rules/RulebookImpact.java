package dev.jetting.rules;

import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * What a new rulebook, version or limit does to the sheets of a shop, before it is put to work.
 *
 * <pre>{@code
 * RulebookImpact impact = RulebookImpact.of(standard, standard.withLimit(name, number));
 * impact.over(lines, SheetJson::read).filter(SheetImpact::differs).forEach(out::println);
 * }</pre>
 *
 * <p>Immutable. Sheets are read and assessed one by one, as the stream is consumed.
 */
public final class RulebookImpact {

  private final Rulebook before;
  private final Rulebook after;
  private final Function<? super SetupSheet, AssessedSetting> assessment;
  private final Function<? super SetupSheet, AssessedSetting> reassessment;

  private RulebookImpact(
      Rulebook before,
      Rulebook after,
      Function<? super SetupSheet, AssessedSetting> assessment,
      Function<? super SetupSheet, AssessedSetting> reassessment) {
    this.before = Objects.requireNonNull(before, "before");
    this.after = Objects.requireNonNull(after, "after");
    this.assessment = Objects.requireNonNull(assessment, "assessment");
    this.reassessment = Objects.requireNonNull(reassessment, "reassessment");
  }

  /**
   * Compares two rulebooks on settings that are assessed with the library's own risk model.
   *
   * @param before the rulebook at work
   * @param after the rulebook to be put to work; its former ids are known
   * @return the comparison
   */
  public static RulebookImpact of(Rulebook before, Rulebook after) {
    return new RulebookImpact(before, after, AssessedSetting::of, AssessedSetting::of);
  }

  /**
   * This comparison with other ways to assess a sheet, such as with other limits of the mixture.
   *
   * @param newAssessment the way at work
   * @param newReassessment the way to be put to work
   * @return the changed comparison
   */
  public RulebookImpact assessing(
      Function<? super SetupSheet, AssessedSetting> newAssessment,
      Function<? super SetupSheet, AssessedSetting> newReassessment) {
    return new RulebookImpact(before, after, newAssessment, newReassessment);
  }

  /**
   * Compares the reports on each sheet. A sheet that cannot be read or assessed is reported with
   * its number, and the rest goes on.
   *
   * @param sheets the sheets in whatever form, such as lines of text
   * @param reading from that form to a sheet; an {@code IllegalArgumentException} says what is
   *     wrong with it
   * @param <T> the form of a sheet
   * @return what the change does to each sheet, in their order
   */
  public <T> Stream<SheetImpact> over(
      Stream<? extends T> sheets, Function<? super T, SetupSheet> reading) {
    AtomicLong number = new AtomicLong();
    return sheets.sequential().map(sheet -> on(number.incrementAndGet(), sheet, reading));
  }

  private <T> SheetImpact on(long number, T sheet, Function<? super T, SetupSheet> reading) {
    String title = "";
    try {
      SetupSheet read = reading.apply(sheet);
      title = read.title();
      Report was = before.evaluate(assessment.apply(read));
      Report is = after.evaluate(reassessment.apply(read));
      return new SheetImpact(
          number, title, Optional.of(ReportDifference.between(was, is, after)), "");
    } catch (IllegalArgumentException e) {
      return new SheetImpact(number, title, Optional.empty(), String.valueOf(e.getMessage()));
    }
  }
}
