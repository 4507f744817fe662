package dev.example.ruleauthor;

import dev.jetting.rules.Rule;
import dev.jetting.rules.RulePack;
import dev.jetting.rules.json.RuleFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Objects;

/** The pack of the rule that stands in a rule file: nobody needs Java to change it. */
public final class KitPack implements RulePack {

  private static final RuleFile FILE = read();

  /** For the service loader. */
  public KitPack() {}

  private static RuleFile read() {
    try (InputStream file = KitPack.class.getResourceAsStream("kit-rules.json")) {
      return RuleFile.read(Objects.requireNonNull(file, "kit-rules.json"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public String id() {
    return "kit";
  }

  @Override
  public String version() {
    return FILE.version();
  }

  @Override
  public List<Rule> rules() {
    return FILE.rules();
  }
}
