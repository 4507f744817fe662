package dev.jetting.rules;

import com.google.common.collect.ImmutableMap;
import com.google.common.collect.ImmutableSet;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.rules.risk.MixtureLimits;
import dev.jetting.rules.risk.ModelUncertainty;
import dev.jetting.rules.risk.RiddenSpeeds;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.units.Lambda;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What of a sheet is allowed, and yet so unusual that a verdict resting on it must say so. */
final class Premises {

  /** Above a tenth a setting is a gamble (assumed). */
  private static final Probability BOLD = Probability.of(0.1);

  /** Richer or leaner is wanted by few engines (assumed). */
  private static final Lambda RICH = Lambda.of(0.7);

  private static final Lambda LEAN = Lambda.of(1.05);

  private static final Set<String> LAX_IF_GREATER =
      ImmutableSet.of("lean limit by λ wanted", "overrun limit by λ wanted at closed throttle");

  /** Of these a smaller number, of the limits a greater one, makes a lean mixture pass. */
  private static final ImmutableMap<String, Coefficient> OURS = ours();

  private Premises() {}

  private static ImmutableMap<String, Coefficient> ours() {
    Map<String, Coefficient> ours = new LinkedHashMap<>();
    ours.putAll(MixtureLimits.assumed().basis());
    ours.putAll(ModelUncertainty.assumed().basis());
    ours.putAll(RiddenSpeeds.assumed().basis());
    ours.keySet().removeAll(List.of("rich limit by λ wanted", "throttle length of the residual"));
    return ImmutableMap.copyOf(ours);
  }

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

  /** Numbers that let more pass than this library's do, and limits of another kind. */
  static List<Message> of(Map<String, Coefficient> assumptions) {
    List<Argument> lax = new ArrayList<>();
    boolean others = false;
    for (Map.Entry<String, Coefficient> ours : OURS.entrySet()) {
      Coefficient now = assumptions.get(ours.getKey());
      if (now == null) {
        others |= LAX_IF_GREATER.contains(ours.getKey());
      } else if (isLaxer(ours.getKey(), now.value(), ours.getValue().value())) {
        lax.add(changed(ours.getKey(), now, ours.getValue()));
      }
    }
    List<Message> notices = new ArrayList<>();
    if (others) {
      notices.add(Message.of("notice.own-limits"));
    }
    if (!lax.isEmpty()) {
      notices.add(Message.of("notice.lax").with("numbers", Argument.items(lax)));
    }
    return List.copyOf(notices);
  }

  private static boolean isLaxer(String name, double now, double ours) {
    return LAX_IF_GREATER.contains(name) ? now > ours : now < ours;
  }

  private static Argument changed(String name, Coefficient now, Coefficient ours) {
    return Argument.words(
        Message.of("notice.lax.number")
            .with("name", Argument.words(Message.named("assumption", name)))
            .with("now", Argument.exact(now.value(), now.unit()))
            .with("ours", Argument.exact(ours.value(), ours.unit())));
  }

  private static Message need(Lambda lambda, ThrottleOpening throttle) {
    return Message.of("notice.need")
        .with("lambda", Argument.lambdaShort(lambda))
        .with("throttle", Argument.throttle(throttle))
        .with("least", Argument.exact(RICH.value(), "1"))
        .with("most", Argument.exact(LEAN.value(), "1"));
  }
}
