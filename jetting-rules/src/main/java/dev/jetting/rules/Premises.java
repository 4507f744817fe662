package dev.jetting.rules;

import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.units.Lambda;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import java.util.ArrayList;
import java.util.List;

/** What of a sheet is allowed, and yet so unusual that a verdict resting on it must say so. */
final class Premises {

  /** Above a tenth a setting is a gamble (assumed). */
  private static final Probability BOLD = Probability.of(0.1);

  /** Richer or leaner is wanted by few engines (assumed). */
  private static final Lambda RICH = Lambda.of(0.7);

  private static final Lambda LEAN = Lambda.of(1.05);

  private Premises() {}

  static List<Message> of(SetupSheet sheet) {
    List<Message> notices = new ArrayList<>();
    Probability accepted = sheet.riding().acceptedRisk();
    if (accepted.isMoreThan(BOLD)) {
      notices.add(
          Message.of("notice.bold")
              .with("risk", Argument.risk(accepted))
              .with("usual", Argument.risk(BOLD)));
    }
    sheet.setup().engine().need().points().stream()
        .filter(p -> p.lambda().isMoreThan(LEAN) || p.lambda().isLessThan(RICH))
        .findFirst()
        .ifPresent(p -> notices.add(need(p.lambda(), p.throttle())));
    if (sheet.days().size() == 1) {
      notices.add(Message.of("notice.one-day"));
    }
    int typical = Caution.typical(sheet).size();
    if (typical > 0) {
      notices.add(Message.of("notice.typical").with(Message.COUNT, Argument.count(typical)));
    }
    return List.copyOf(notices);
  }

  private static Message need(Lambda lambda, ThrottleOpening throttle) {
    return Message.of("notice.need")
        .with("lambda", Argument.lambdaShort(lambda))
        .with("throttle", Argument.throttle(throttle))
        .with("least", Argument.exact(RICH.value(), "1"))
        .with("most", Argument.exact(LEAN.value(), "1"));
  }
}
