package dev.jetting.rules.laws;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Margin;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Rule;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.units.TradeStyle;
import java.util.List;
import java.util.Optional;

/** A rule with a throttle band, on a setting that is another outside of the band. */
final class BandLaw {

  private BandLaw() {}

  static LawVerdict check(Rule rule, Experiment experiment) {
    ThrottleBand band = rule.band();
    if (band.equals(ThrottleBand.WHOLE)) {
      return LawVerdict.notTried("the rule speaks of the whole throttle range");
    }
    AssessedSetting setting = experiment.before();
    boolean speeds = !experiment.candidate().computesAtOtherSpeeds(rule);
    Outcome own = rule.evaluate(setting);
    Outcome other = rule.evaluate(new Outside(setting, band).changed(speeds));
    if (!alike(own, other)) {
      return LawVerdict.violated(
          rule.id(),
          "with nothing changed but outside of "
              + text(band)
              + " it comes out as "
              + OutcomeText.of(other)
              + " instead of "
              + OutcomeText.of(own));
    }
    return own.findings().stream()
        .map(Finding::band)
        .filter(found -> !band.contains(found.from()) || !band.contains(found.to()))
        .findFirst()
        .map(
            found ->
                LawVerdict.violated(
                    rule.id(), "a finding names " + text(found) + ", outside of " + text(band)))
        .orElseGet(LawVerdict::held);
  }

  private static String text(ThrottleBand band) {
    return TradeStyle.throttle(band.from()) + " to " + TradeStyle.throttle(band.to());
  }

  private static boolean alike(Outcome a, Outcome b) {
    if (a.status() != b.status() || a.findings().size() != b.findings().size()) {
      return false;
    }
    List<Finding> others = b.findings();
    for (int i = 0; i < others.size(); i++) {
      if (!alike(a.findings().get(i), others.get(i))) {
        return false;
      }
    }
    return alike(a.nearest(), b.nearest());
  }

  private static boolean alike(Optional<Margin> a, Optional<Margin> b) {
    return a.isPresent() == b.isPresent()
        && a.map(Margin::measured).map(Measure::value).stream()
            .allMatch(v -> Numbers.alike(v, b.orElseThrow().measured().value()))
        && a.map(Margin::limit).map(Measure::value).stream()
            .allMatch(v -> Numbers.alike(v, b.orElseThrow().limit().value()));
  }

  private static boolean alike(Finding a, Finding b) {
    return a.subject().equals(b.subject())
        && a.band().equals(b.band())
        && Numbers.alike(a.measured().value(), b.measured().value())
        && Numbers.alike(a.limit().value(), b.limit().value());
  }
}
