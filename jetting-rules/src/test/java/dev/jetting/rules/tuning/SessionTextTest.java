package dev.jetting.rules.tuning;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.jetting.core.parts.Setting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Rule;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.text.Wording;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.JetBore;
import dev.jetting.units.Lambda;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SessionTextTest {

  private static final Tuner PLUG = Tuner.readingWith(Set.of(Instrument.PLUG));
  private static final Outcome NEVER =
      Outcome.failed(
          Finding.above("setting", Measure.ratio(2), Measure.ratio(1), ThrottleBand.WHOLE)
              .says("No cart may leave the yard today.", "Wait for tomorrow."));
  private static final Tuner SENSOR = Tuner.readingWith(Set.of(Instrument.WIDEBAND));

  @Test
  void of_nothingDone_isTheChecklist() {
    String text = SessionText.of(TuningSession.beginning(Workshop.sheet(ALL_ROUND)), PLUG);
    assertThat(text)
        .contains("Setting: main 126, pilot 55, ")
        .contains("Lean risk on the worst day: ", "10 % accepted.")
        .contains("Before the next test, check and tick off\n- Air leak: ")
        .doesNotContain("What the readings say");
  }

  @Test
  void of_checksDone_isTheTestAndHowToDoIt() {
    assertThat(text(begin(ALL_ROUND)))
        .contains("Test next: idle\n- The test: idle at about 1400 rpm.")
        .contains("Blip the throttle.");
  }

  @Test
  void howTo_plugChop_givesTheCautions() {
    NextTest chop =
        new NextTest(
            NextTest.Kind.PLUG_CHOP,
            ThrottleOpening.FULL,
            EngineSpeed.ofRpm(7500),
            Instrument.PLUG,
            Probability.of(0.01));
    assertThat(chop.howTo().get(0)).isEqualTo("The test: full throttle at about 7500 rpm.");
    assertThat(String.join(" ", chop.howTo()))
        .contains("Off public roads", "closed", "clutch", "cool", "rich side");
  }

  @Test
  void of_readingsThere_saysHowTheEngineDiffersWhereTheThrottleIsHeld() {
    assertThat(text(begin(ALL_ROUND).observing(full(new Evidence.Wideband(Lambda.of(0.86))))))
        .containsPattern(
            "- Full throttle: it runs [0-9]+ % leaner than expected, give or take [0-9]+ %\\.");
  }

  @Test
  void of_leanSetting_isTheChangeWithLambdaBeforeAndAfter() {
    assertThat(text(begin(ALL_ROUND.withMainJet(JetBore.ofMillimetres(1.12)))))
        .containsPattern("Change next: main 1[1-9][0-9]\n")
        .containsPattern("- full throttle: λ 0\\.[0-9]+ becomes λ 0\\.[0-9]+, lean risk ");
  }

  @Test
  void of_whitePlug_saysStop_whatItMeans_andWhatToDo() {
    assertThat(text(begin(ALL_ROUND).observing(full(new Evidence.Colour(PlugColour.WHITE)))))
        .contains("Stop. Make it richer before it is ridden again: main 13")
        .contains("A white plug at full throttle means that the engine is being hurt there.");
  }

  @Test
  void of_readingFarOff_asksToReadAgain() {
    assertThat(
            SessionText.of(
                begin(ALL_ROUND).observing(full(new Evidence.Wideband(Lambda.of(0.5)))), SENSOR))
        .contains("Check the reading: λ 0.50 at full throttle")
        .contains("Change no part.");
  }

  @Test
  void of_readingFarOffTwice_namesTheFaultsAndWhatSettlesEach() {
    Observation wrong = full(new Evidence.Wideband(Lambda.of(0.5)));
    assertThat(SessionText.of(begin(ALL_ROUND).observing(wrong).observing(wrong), SENSOR))
        .contains("Look for a fault: λ 0.50 at full throttle")
        .contains("It may be a high float level. Check: The float level is as specified.");
  }

  @Test
  void of_crisp_isNoProof() {
    TuningSession session =
        begin(ALL_ROUND).observing(Workshop.observation(2, 4400, new Evidence.Felt(Symptom.CRISP)));
    assertThat(text(session)).contains("Be wary\n- Crisp at 1/4 throttle is no proof");
  }

  @Test
  void of_sessionLedToItsEnd_saysThatNothingIsLeft() {
    SetupSheet sheet = Workshop.sheet(ALL_ROUND);
    TuningSession session = begin(SENSOR.start(sheet).setting());
    NextStep step = SENSOR.next(session);
    while (!step.isEnd()) {
      session = Sessions.take(session, step, (now, test) -> Sessions.read(now, test, 0));
      step = SENSOR.next(session);
    }
    assertThat(SessionText.of(session, SENSOR))
        .contains("Nothing to test or change\n- Full throttle was read on this setting")
        .containsPattern(
            "The lean risk that is left is .*%, with climbs and with the faults that are not ruled"
                + " out")
        .contains("coldest morning");
  }

  /** Sentences of at most 25 words. */
  @Test
  void words_areShortSentences() {
    Stream.concat(
            Stream.of(Check.values()).map(Check::text),
            Stream.of(Fault.values()).map(fault -> "It may be " + fault.text() + "."))
        .flatMap(text -> Stream.of(text.split("[.;:] ")))
        .forEach(sentence -> assertThat(sentence.split(" ")).hasSizeLessThanOrEqualTo(25));
  }

  static Stream<TuningSession> sessions() {
    Observation wrong = full(new Evidence.Wideband(Lambda.of(0.5)));
    return Stream.of(
        TuningSession.beginning(Workshop.sheet(ALL_ROUND)),
        begin(ALL_ROUND),
        begin(ALL_ROUND).observing(full(new Evidence.Wideband(Lambda.of(0.86)))),
        begin(ALL_ROUND).observing(full(new Evidence.Colour(PlugColour.WHITE))),
        begin(ALL_ROUND).observing(wrong),
        begin(ALL_ROUND).observing(wrong).observing(wrong),
        begin(ALL_ROUND).observing(Workshop.observation(2, 4400, new Evidence.Felt(Symptom.CRISP))),
        begin(ALL_ROUND.withMainJet(JetBore.ofMillimetres(1.12))));
  }

  /** Of each kind of step: a page that a rider reads at the machine. */
  @ParameterizedTest
  @MethodSource("sessions")
  void of_session_isOnePageOfShortSentences(TuningSession session) {
    for (Tuner tuner : List.of(SENSOR, PLUG)) {
      List<String> lines = SessionText.of(session, tuner).lines().toList();
      assertThat(lines).hasSizeLessThanOrEqualTo(25);
      lines.stream()
          .skip(2) // the title and the parts
          .flatMap(line -> Stream.of(line.split("[.;:] ")))
          .forEach(sentence -> assertThat(sentence.split(" ")).hasSizeLessThanOrEqualTo(25));
    }
  }

  @Test
  void of_whiteOnRicherJets_looksForAFault_andSaysSoAtTheEnd() {
    TuningSession session = begin(ALL_ROUND);
    Observation white = full(new Evidence.Colour(PlugColour.WHITE));
    NextStep step = PLUG.next(session);
    boolean looked = false;
    while (!step.isEnd()) {
      looked |= step instanceof NextStep.LookForFault && session.steps().size() > 2;
      session =
          Sessions.test(step).filter(test -> test.throttle().equals(ThrottleOpening.FULL)).isEmpty()
              ? Sessions.take(session, step, (now, test) -> Sessions.read(now, test, 0))
              : session.observing(white);
      step = PLUG.next(session);
    }
    assertThat(looked).isTrue();
    assertThat(text(session))
        .contains("Not to be ridden: a white plug at full throttle, and no fault was found")
        .contains("Find it before another jet is changed.")
        .contains("It may be a fuel supply that does not keep up. Check: ");
  }

  @Test
  void of_dangerThatNoReadingAnswers_isSaidBeforeTheFirstRide() {
    Rule never = Rule.named("never").severity(Severity.DANGER).judging(setting -> NEVER);
    Tuner strict = PLUG.withRulebook(Rulebook.of("shop", "1", List.of(never)));
    TuningSession session = begin(ALL_ROUND);
    assertThat(strict.next(session)).isInstanceOf(NextStep.Refused.class);
    assertThat(SessionText.of(session, strict))
        .contains("Not to be ridden: a rule finds a danger\n- No cart may leave the yard today.");
  }

  /** A line that both pages have was forgotten; a title is somebody's own. */
  @ParameterizedTest
  @MethodSource("sessions")
  void of_anotherLanguage_hasNoLineInEnglish(TuningSession session) {
    List<String> english = SessionText.of(session, SENSOR).lines().skip(1).toList();
    for (Locale locale : List.of(Locale.GERMAN, Locale.ITALIAN)) {
      String page = SessionText.of(session, SENSOR, Wording.of(locale));
      assertThat(page.lines().skip(1).filter(line -> !line.isEmpty()))
          .hasSize((int) english.stream().filter(line -> !line.isEmpty()).count())
          .doesNotContainAnyElementsOf(english);
      assertThat(page).doesNotContain("{");
    }
  }

  @Test
  void of_whitePlug_inGermanAndItalian() {
    TuningSession session = begin(ALL_ROUND).observing(full(new Evidence.Colour(PlugColour.WHITE)));
    assertThat(SessionText.of(session, PLUG, Wording.of(Locale.GERMAN)))
        .contains("Halt. Anfetten, bevor wieder gefahren wird: Hauptdüse 13")
        .contains("Eine weiße Kerze bei Vollgas heißt: Der Motor nimmt dort Schaden.");
    assertThat(SessionText.of(session, PLUG, Wording.of(Locale.ITALIAN)))
        .contains("Fermi. Ingrassare prima di guidare ancora: getto del massimo 13")
        .contains("Una candela bianca a tutto gas vuol dire che lì il motore si fa male.");
  }

  /** What is worked out from part and setting is what the change says in trade style. */
  @Test
  void change_hasItsPartForEachLanguage() {
    NextStep step = SENSOR.next(begin(ALL_ROUND.withMainJet(JetBore.ofMillimetres(1.12))));
    assertThat(step)
        .isInstanceOfSatisfying(
            NextStep.Change.class,
            next -> {
              assertThat(next.change().to().text()).isEqualTo(next.change().what());
              assertThat(Wording.of(Locale.GERMAN).text(next.change().to()))
                  .startsWith("Hauptdüse 1");
            });
  }

  /** Titles come from outside. */
  @Test
  void titleThatSteersTheTerminal_isRefused() {
    SetupSheet sheet = Workshop.sheet(ALL_ROUND);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> sheet.withTitle("\u001b[2Jtitle\n"))
        .withMessageStartingWith("title of a setup sheet with the character U+0001B");
  }

  private static Observation full(Evidence evidence) {
    return Workshop.observation(8, 7500, evidence);
  }

  private static TuningSession begin(Setting setting) {
    return Sessions.begin(Workshop.sheet(setting));
  }

  private static String text(TuningSession session) {
    return SessionText.of(session, PLUG);
  }

  /** A rider who says "crisp" is asked again, and reads why. */
  @Test
  void crispAtFull_isAskedAgain_andTheTextSaysWhy() {
    TuningSession session = Sessions.begin(Workshop.sheet(ALL_ROUND));
    Tuner tuner = Tuner.readingWith(Set.of(Instrument.PLUG));
    session = observing(session, ThrottleOpening.CLOSED, new Evidence.Idle(IdleAnswer.BEST));
    session = observing(session, ThrottleOpening.FULL, new Evidence.Felt(Symptom.CRISP));
    assertThat(SessionText.of(session, tuner))
        .contains("Test next: full throttle", "The last answer says too little of the mixture");
  }

  private static TuningSession observing(
      TuningSession session, ThrottleOpening throttle, Evidence seen) {
    return session.observing(
        new Observation(throttle, session.now().setup().engine().loadLine().at(throttle), seen));
  }

  @Test
  void hangingIdle_isNotSaidTwice() {
    assertThat(
            new Observation(
                    ThrottleOpening.CLOSED,
                    EngineSpeed.ofRpm(1400),
                    new Evidence.Felt(Symptom.HANGS))
                .text())
        .isEqualTo("an idle that hangs");
  }
}
