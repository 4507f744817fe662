package dev.jetting.examples.kitdesk;

import static java.util.stream.Collectors.joining;

import dev.jetting.core.parts.Setting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.kit.Family;
import dev.jetting.rules.search.Found;
import dev.jetting.rules.search.FoundSetting;
import dev.jetting.units.TradeStyle;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** What a search has found, as a table at most 80 columns wide. */
final class FoundText {

  private FoundText() {}

  /**
   * Settings with what speaks against them.
   *
   * @param carburettor what is to be said of it; empty, or a line with its end
   * @param none why there may be none
   */
  static String of(
      SetupSheet sheet, Family family, String carburettor, Found found, Shown shown, String none) {
    StringBuilder text = new StringBuilder();
    text.append(Table.fitted(sheet.title(), 80)).append('\n').append(carburettor);
    text.append(
        "Family "
            + Table.fitted(family.id(), 40)
            + ": "
            + found.combinations()
            + " settings, of which "
            + found.impossible()
            + " cannot be put together"
            + (found.complete() ? "" : "\nStopped before all were looked at")
            + "\n\n");
    List<JudgedSetting> settings = shown.settings();
    if (settings.isEmpty()) {
      return text + none + "\n";
    }
    text.append(table(settings).text());
    if (shown.more() > 0) {
      text.append("  and " + shown.more() + " more, " + shown.moreRight() + " of them right\n");
    }
    if (!shown.passedOver().isEmpty()) {
      text.append(KitText.wrapped(passedOver(shown.passedOver()), "  ", "    "));
    }
    return text
        + "\nrisk: greatest lean risk on any day; off: how far today's mixture is from what\n"
        + "the engine needs; new: parts to buy. Ride it in from the rich side.\n";
  }

  private static String passedOver(List<JudgedSetting> settings) {
    return settings.size()
        + " of the best are passed over; against them: "
        + settings.stream().map(JudgedSetting::against).distinct().collect(joining("; "));
  }

  private static Table table(List<JudgedSetting> settings) {
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
    for (JudgedSetting judged : settings) {
      row(table, judged);
      if (!judged.against().isEmpty()) {
        table.note(KitText.wrapped("against it: " + judged.against(), "      ", "        "));
      }
    }
    return table;
  }

  private static void row(Table table, JudgedSetting judged) {
    FoundSetting found = judged.found();
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
        judged.standing(),
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
