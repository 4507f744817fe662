package dev.jetting.examples.kitdesk;

import dev.jetting.rules.RankedFinding;
import dev.jetting.rules.kit.CornerRisk;
import dev.jetting.rules.kit.KitCoverage;
import dev.jetting.rules.kit.KitValidation;
import dev.jetting.rules.kit.MachineResult;
import dev.jetting.units.TradeStyle;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** What is said of one kit, as a page at most 80 columns wide. */
final class KitText {

  private static final int WIDTH = 80;
  private static final Pattern BLANKS =
      Pattern.compile("[\\p{Cntrl}\\p{Cf}\\p{Cs}\\p{Zl}\\p{Zp} ]+");

  private KitText() {}

  static String of(KitValidation validation) {
    StringBuilder text = new StringBuilder();
    text.append(validation.passes() ? "PASSES" : "FAILS")
        .append("  ")
        .append(Table.fitted(validation.kit(), 40))
        .append(" (depth ")
        .append(Words.word(validation.depth()))
        .append(", rulebook ")
        .append(validation.rulebook())
        .append(")\n");
    if (!validation.machines().isEmpty()) {
      text.append('\n').append(machines(validation.machines()));
    }
    findings(text, "The kit", validation.findings());
    for (MachineResult machine : validation.machines()) {
      findings(text, machine.machine() + ", fuel " + machine.fuel(), machine.findings());
      if (!machine.unanswered().isEmpty()) {
        text.append(
            wrapped("Not answered: " + String.join(", ", machine.unanswered()), "  ", "    "));
      }
    }
    return text.toString();
  }

  private static String machines(List<MachineResult> machines) {
    boolean covered = machines.stream().anyMatch(machine -> machine.coverage().isPresent());
    Table table =
        covered
            ? new Table("machine", ">fuel", "today", "coldest", "hottest", "ride", ">serves")
            : new Table("machine", ">fuel", "today", "coldest", "hottest", "ride");
    for (MachineResult machine : machines) {
      String name = Table.fitted(machine.machine(), 18);
      String ride = machine.passes() ? "yes" : "NO";
      if (covered) {
        table.row(
            name,
            machine.fuel(),
            risk(machine.today()),
            risk(machine.coldest()),
            risk(machine.hottest()),
            ride,
            machine.coverage().map(KitText::served).orElse(""));
      } else {
        table.row(
            name,
            machine.fuel(),
            risk(machine.today()),
            risk(machine.coldest()),
            risk(machine.hottest()),
            ride);
      }
    }
    return "Greatest lean risk, and at which throttle\n" + table.text();
  }

  private static String served(KitCoverage coverage) {
    return TradeStyle.probability(coverage.share(), KitCoverage.LEAST);
  }

  private static String risk(CornerRisk corner) {
    String at = TradeStyle.throttle(corner.throttle()).replace(" throttle", "");
    return TradeStyle.probability(corner.leanRisk()) + " " + at;
  }

  private static void findings(StringBuilder text, String of, List<RankedFinding> findings) {
    if (findings.isEmpty()) {
      return;
    }
    text.append('\n').append(Table.fitted(of, WIDTH)).append('\n');
    for (RankedFinding found : findings) {
      String severity = found.severity().name().toUpperCase(Locale.ROOT);
      text.append(
          wrapped(severity + " " + found.ruleId() + ": " + found.finding().text(), "  ", "    "));
      text.append(wrapped(found.finding().remedy().text(), "    → ", "      "));
    }
  }

  /** Words on lines of at most the width; a word that is longer has a line to itself. */
  static String wrapped(String text, String first, String next) {
    StringBuilder lines = new StringBuilder();
    StringBuilder line = new StringBuilder(first);
    boolean empty = true;
    for (String word : BLANKS.splitAsStream(text).toList()) {
      if (!empty && line.length() + 1 + word.length() > WIDTH) {
        lines.append(line).append('\n');
        line = new StringBuilder(next);
        empty = true;
      }
      line.append(empty ? "" : " ").append(word);
      empty = false;
    }
    return lines.append(line).append('\n').toString();
  }
}
