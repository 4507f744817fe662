package dev.jetting.rules.json;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.rules.laws.LawKit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The rule file that RULE-FILES.md shows. */
class DocumentedRuleFileTest {

  @Test
  void fileOfTheDocument_isRead_andItsExamplesHold() throws IOException {
    String document = Files.readString(Path.of("RULE-FILES.md"));
    int start = document.indexOf("```json\n") + 8;
    RuleFile file = RuleFile.read(document.substring(start, document.indexOf("```\n", start)));

    assertThat(file.review()).isEmpty();
    assertThat(file.check(Map.of("plain", LawKit.plainSheet())))
        .allSatisfy(
            remark -> {
              assertThat(remark.kind()).isEqualTo(RuleRemark.Kind.NO_EXAMPLE);
              assertThat(remark.ruleId()).isEqualTo("kit-needle-signal");
            });
  }
}
