package dev.jetting.rules.tuning;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.tuning.Alternatives.Alternative;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** One part answers a sign, where one can. */
class SignedChangeTest {

  private static final Tuner TUNER = Tuner.readingWith(Set.of(Instrument.PLUG));
  private static final SetupSheet SHEET = Workshop.sheet(ALL_ROUND);
  private static final ThrottleOpening FIVE_EIGHTHS = ThrottleOpening.ofEighths(5);

  /** Surging between a quarter and three quarters: a groove richer (common practice, no source). */
  @Test
  void richer_leanInTheMiddle_isAGroove() {
    for (int eighths = 2; eighths <= 4; eighths++) {
      Sign sign = sign(ThrottleOpening.ofEighths(eighths), Sign.Kind.LEAN);
      Alternative richer = changes().richer(sign).orElseThrow();
      assertThat(richer.setting()).isEqualTo(ALL_ROUND.withClip(richer.setting().clip()));
      assertThat(richer.setting().clip().grooveFromTop())
          .isEqualTo(ALL_ROUND.clip().grooveFromTop() + 1);
    }
  }

  /** A clip does little at five eighths: after harm the main jet does what the sign asks for. */
  @Test
  void richer_harmAtFiveEighths_isOnePartThatIsEnough() {
    Sign sign = sign(FIVE_EIGHTHS, Sign.Kind.STOP);
    assertThat(firstActing(sign))
        .isPresent()
        .get()
        .matches(clip -> sign.isOpen(with(clip.setting())));

    Alternative richer = changes().richer(sign).orElseThrow();

    assertThat(sign.isOpen(with(richer.setting()))).isFalse();
    assertThat(TradeOrder.at(sign)).contains(richer.part());
  }

  /** What the engine would not run on is no remedy while another part is. */
  @Test
  void richer_atAnEighth_doesNotDrownTheIdle() {
    Sign sign = sign(ThrottleOpening.ofEighths(1), Sign.Kind.LEAN);
    ChangeChooser chooser =
        new ChangeChooser(SHEET, TUNER.riskModel(), TUNER.calibration(Sessions.begin(SHEET)));
    assertThat(chooser.scorer().runs(changes().richer(sign).orElseThrow().setting())).isTrue();
  }

  /**
   * Wherever one part at hand is enough by itself; after harm the trade's first part that acts goes
   * first, except between half and full.
   */
  @Test
  void richer_anywhere_isEnough_whereAPartOfTheOrderIs() {
    for (Sign.Kind kind : List.of(Sign.Kind.LEAN, Sign.Kind.STOP)) {
      for (ThrottleOpening mark : Held.MARKS) {
        Sign sign = sign(mark, kind);
        boolean any = kind == Sign.Kind.STOP && TradeOrder.isNeedleAndMain(sign);
        Optional<MeteringPart> first = firstActing(sign).map(Alternative::part);
        boolean one =
            inOrder(sign)
                .filter(to -> any || first.equals(Optional.of(to.part())))
                .anyMatch(to -> !sign.isOpen(with(to.setting())));
        Optional<Alternative> richer = changes().richer(sign);
        assertThat(richer.filter(to -> !sign.isOpen(with(to.setting()))).isPresent())
            .as("%s at %s", kind, mark)
            .isEqualTo(one);
      }
    }
  }

  /** White at full throttle changes the main jet (common practice, no source). */
  @Test
  void richer_whiteAtFull_isTheMainJet() {
    Sign sign = sign(ThrottleOpening.FULL, Sign.Kind.STOP);
    assertThat(changes().richer(sign).orElseThrow().part()).isEqualTo(MeteringPart.MAIN_JET);
  }

  private static Optional<Alternative> firstActing(Sign sign) {
    return inOrder(sign)
        .filter(to -> sign.lnLambda(SHEET.setup()) - sign.lnLambda(with(to.setting())) > 0.01)
        .findFirst();
  }

  /** What makes no other opening leaner, in the order of the trade. */
  private static Stream<Alternative> inOrder(Sign sign) {
    List<Alternative> all = Alternatives.to(SHEET.setup().setting(), SHEET.parts());
    return TradeOrder.at(sign).stream()
        .flatMap(part -> all.stream().filter(to -> to.part() == part))
        .filter(to -> leansNothing(to.setting()));
  }

  private static Setup with(Setting setting) {
    return SHEET.setup().withSetting(setting);
  }

  private static boolean leansNothing(Setting to) {
    return IntStream.rangeClosed(0, 32)
        .mapToObj(i -> ThrottleOpening.ofShare(i / 32.0))
        .allMatch(at -> Sessions.leaner(SHEET, SHEET.setup().setting(), to, at) <= 0.002);
  }

  private static SignedChange changes() {
    TuningSession session = Sessions.begin(SHEET);
    Findings findings = new Findings(TUNER, session);
    ChangeChooser chooser = new ChangeChooser(SHEET, TUNER.riskModel(), TUNER.calibration(session));
    return new SignedChange(SHEET, chooser.scorer(), findings);
  }

  private static Sign sign(ThrottleOpening throttle, Sign.Kind kind) {
    Observation seen =
        new Observation(
            throttle,
            SHEET.setup().engine().loadLine().at(throttle),
            new Evidence.Colour(PlugColour.PALE));
    return new Sign(SHEET.setup(), seen, kind);
  }
}
