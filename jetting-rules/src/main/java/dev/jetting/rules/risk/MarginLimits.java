package dev.jetting.rules.risk;

import com.google.common.collect.ImmutableMap;
import dev.jetting.core.checks.Checks;
import dev.jetting.core.engine.MixtureNeed;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.units.Lambda;
import dev.jetting.units.Sentence;
import dev.jetting.units.ThrottleOpening;
import java.util.Map;

/** Limits at fixed margins from the mixture that the engine should get. */
record MarginLimits(Coefficient leanMargin, Coefficient richMargin, Coefficient overrunMargin)
    implements MixtureLimits {

  static final MarginLimits ASSUMED =
      new MarginLimits(
          Coefficient.assumed(
              1.16,
              "1",
              "a sixth leaner than wanted: no published limit of a two-stroke was found"),
          Coefficient.assumed(
              0.80, "1", "a fifth richer than wanted, where engines are felt to four-stroke"),
          Coefficient.assumed(
              1.08,
              "1",
              "set between a pilot jet that serves and the next smaller, which is known to be too"
                  + " lean (common practice, no source)"));

  MarginLimits {
    Margins.check("lean margin", leanMargin, 1, 3);
    Margins.check("rich margin", richMargin, 0, 1);
    Margins.check("overrun margin", overrunMargin, 0, 3);
    double rich = richMargin.value();
    Checks.that(
        overrunMargin.value() > rich,
        () -> Sentence.of("error.name.overrun-margin"),
        overrunMargin,
        () -> Sentence.of("error.more-than-rich-margin").with("rich", rich));
  }

  @Override
  public Lambda lean(ThrottleOpening throttle, MixtureNeed need) {
    return Lambda.of(need.at(throttle).value() * leanMargin.value());
  }

  @Override
  public Lambda rich(ThrottleOpening throttle, MixtureNeed need) {
    return Lambda.of(need.at(throttle).value() * richMargin.value());
  }

  @Override
  public Lambda overrun(MixtureNeed need) {
    return Lambda.of(need.at(ThrottleOpening.CLOSED).value() * overrunMargin.value());
  }

  @Override
  public Map<String, Coefficient> basis() {
    return ImmutableMap.of(
        "lean limit by λ wanted", leanMargin,
        "rich limit by λ wanted", richMargin,
        "overrun limit by λ wanted at closed throttle", overrunMargin);
  }
}
