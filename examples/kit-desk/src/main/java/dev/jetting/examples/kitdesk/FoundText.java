package dev.jetting.examples.kitdesk;

import dev.jetting.core.parts.Setting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.kit.Family;
import dev.jetting.rules.search.Found;
import dev.jetting.rules.search.FoundSetting;
import dev.jetting.rules.search.Standing;
import dev.jetting.units.TradeStyle;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** What a search has found, as a table at most 80 columns wide. */
final class FoundText {

  private FoundText() {}

  static String of(SetupSheet sheet, Family family, Found found, int most) {
    StringBuilder text = new StringBuilder();
    text.append(Table.fitted(sheet.title(), 80)).append('\n');
    text.append(
        "Family "
            + Table.fitted(family.id(), 40)
            + ": "
            + found.combinations()
            + " settings, of which "
            + found.impossible()
            + " cannot be put together"
            + (found.complete() ? "" : "; stopped before all were looked at")
            + "\n\n");
    Table table =
        new Table(
            ">main",
            ">pilot",
            ">screw",
            ">cut",
            "needle/jet",
            ">clip",
            "stands",
            ">risk",
            ">off",
            ">new",
            ">price");
    List<FoundSetting> right =
        found.settings().stream().filter(each -> each.standing() == Standing.RIGHT).toList();
    List<FoundSetting> shown = right.isEmpty() ? found.settings() : right;
    shown.stream().limit(most).forEach(setting -> row(table, setting));
    text.append(table.text());
    int more = found.settings().size() - Math.min(most, shown.size());
    if (more > 0) {
      text.append("  and " + more + " more, " + (right.size() - Math.min(most, right.size())));
      text.append(" of them right\n");
    }
    return text
        + "\nrisk: greatest lean risk on any day; off: how far today's mixture is from what\n"
        + "the engine needs; new: parts to buy. Ride it in from the rich side.\n";
  }

  private static void row(Table table, FoundSetting found) {
    Setting setting = found.setting();
    table.row(
        bare(TradeStyle.main(setting.mainJet())),
        bare(TradeStyle.pilot(setting.pilotJet())),
        TradeStyle.turns(setting.screw().turns()).replaceAll(" turns?", ""),
        bare(TradeStyle.cutaway(setting.cutaway())),
        Table.fitted(setting.needle().id().replaceFirst("^needle ", ""), 11)
            + "/"
            + TradeStyle.diameter(setting.needleJet().bore()).replace(" mm", ""),
        setting.clip().grooveFromTop() + "/" + setting.clip().grooves(),
        Words.word(found.standing()).replace("too-", ""),
        TradeStyle.probability(found.leanRisk()).replace("under 1 %", "<1 %"),
        percent(found.distance()),
        found.newParts().size(),
        found.price().map(price -> rounded(price, 2)).orElse(""));
  }

  private static String bare(String trade) {
    return trade.substring(trade.indexOf(' ') + 1);
  }

  private static String percent(double share) {
    return rounded(new BigDecimal(share * 100), 1) + " %";
  }

  private static String rounded(BigDecimal number, int decimals) {
    return number.setScale(decimals, RoundingMode.HALF_EVEN).toPlainString();
  }
}
