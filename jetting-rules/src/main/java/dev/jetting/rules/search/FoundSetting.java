package dev.jetting.rules.search;

import dev.jetting.core.parts.Setting;
import dev.jetting.units.Probability;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A setting that a search has found.
 *
 * @param setting the setting
 * @param pick which of the choices that were searched it is made of
 * @param standing how it stands against the limits
 * @param leanRisk the highest lean risk at any assessed throttle opening on any day, as in {@link
 *     dev.jetting.rules.AssessedSetting}
 * @param distance how far the mixture of the day is from what the engine needs, as in {@link
 *     dev.jetting.rules.risk.RiskProfile#distance}: if the standing is right, nearly all of it is
 *     enrichment
 * @param newParts the parts that are not owned
 */
public record FoundSetting(
    Setting setting,
    ChoiceIndices pick,
    Standing standing,
    Probability leanRisk,
    double distance,
    List<NewPart> newParts) {

  /**
   * Copies the list.
   *
   * @param setting the setting
   * @param pick which of the choices that were searched it is made of
   * @param standing how it stands against the limits
   * @param leanRisk the highest lean risk at any assessed throttle opening on any day
   * @param distance how far the mixture of the day is from what the engine needs
   * @param newParts the parts that are not owned
   */
  public FoundSetting {
    Objects.requireNonNull(setting, "setting");
    Objects.requireNonNull(pick, "pick");
    Objects.requireNonNull(standing, "standing");
    Objects.requireNonNull(leanRisk, "leanRisk");
    newParts = List.copyOf(newParts);
  }

  /** {@return what the new parts cost; empty if the price of one is unknown} */
  public Optional<BigDecimal> price() {
    BigDecimal sum = BigDecimal.ZERO;
    for (NewPart part : newParts) {
      if (part.price().isEmpty()) {
        return Optional.empty();
      }
      sum = sum.add(part.price().get());
    }
    return Optional.of(sum);
  }
}
