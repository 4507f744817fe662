package shop.consumer;

import dev.jetting.rules.Outcome;
import dev.jetting.rules.Rule;
import dev.jetting.rules.RulePack;
import dev.jetting.rules.Severity;
import java.util.List;

/** A rule pack of somebody else's. */
public final class ShopRules implements RulePack {

  /** For the service loader. */
  public ShopRules() {}

  @Override
  public String id() {
    return "shop";
  }

  @Override
  public String version() {
    return "1";
  }

  @Override
  public List<Rule> rules() {
    return List.of(
        Rule.named("shop-has-the-jet")
            .title("The shop has this main jet")
            .rationale("A jet that nobody sells is no recommendation.")
            .severity(Severity.NOTE)
            .judging(setting -> Outcome.passed()));
  }
}
