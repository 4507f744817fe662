package dev.example.ruleauthor;

import dev.jetting.rules.Rule;
import dev.jetting.rules.RulePack;
import java.util.List;

/** The pack of the rule that is written in Java. */
public final class WinterPack implements RulePack {

  /** For the service loader. */
  public WinterPack() {}

  @Override
  public String id() {
    return "winter";
  }

  @Override
  public String version() {
    return "1";
  }

  @Override
  public List<Rule> rules() {
    return List.of(WinterReserve.RULE);
  }
}
