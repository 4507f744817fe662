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

  private static final int WIDTH = 80;
  private static final int LONGEST_NAME = 20;
  private static final int SHORTEST_NAME = 4;

  /** Represents a blank at which no line may end. */
  private static final char WITHIN_A_PART = '\u00a0';

  /** Where the lines below a row begin. */
  private static final String NOTE = "      ";

  private FoundText() {}

  /**
   * Settings with what speaks against them.
   *
   * @param carburettor what is to be said of it and of the ranking; empty, or lines with their ends
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
            + " settings; "
            + found.impossible()
            + " cannot be put together"
            + (found.complete() ? "" : "\nStopped before all were looked at")
            + "\n\n");
    List<JudgedSetting> settings = shown.settings();
    if (settings.isEmpty()) {
      return text + none + "\n";
    }
    text.append(table(settings).text());
    if (!shown.more().isEmpty()) {
      text.append("  and " + shown.more().size() + " more\n");
    }
    if (!shown.passedOver().isEmpty()) {
      text.append(KitText.wrapped(passedOver(shown), "  ", "    "));
    }
    return text
        + "\nrisk: greatest lean risk on any day; off: how far today's mixture is from what\n"
        + "the engine needs; new: parts to buy. Ride it in from the rich side.\n"
        + (settings.stream().anyMatch(each -> each.parts().anyByFlow())
            ? "f: the number on the jet is its flow, cm³/min.\n"
            : "");
  }

  private static String passedOver(Shown shown) {
    boolean front = shown.among().equals("front");
    return shown.passedOver().size()
        + " of the "
        + shown.among()
        + " are passed over"
        + (front ? ", and with them what they alone beat" : "")
        + "; against them: "
        + shown.passedOver().stream().map(JudgedSetting::against).distinct().collect(joining("; "));
  }

  /** The table, narrower where it must be, and with as much of the names as there is room for. */
  private static Table table(List<JudgedSetting> settings) {
    int name = LONGEST_NAME;
    Table table = table(settings, name);
    while (table.width() > WIDTH && name >= SHORTEST_NAME) {
      table = table(settings, name--);
      table.narrow();
    }
    return table;
  }

  private static Table table(List<JudgedSetting> settings, int name) {
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
      row(table, judged, name);
      List<SettingParts.ToBuy> toBuy = judged.parts().toBuy();
      if (!toBuy.isEmpty()) {
        String parts = toBuy.stream().map(FoundText::priced).collect(joining(", "));
        String lines = KitText.wrapped("buy " + parts, NOTE, NOTE + "    ");
        table.note(lines.replace(WITHIN_A_PART, ' '));
      }
      if (!judged.against().isEmpty()) {
        table.note(KitText.wrapped("against it: " + judged.against(), NOTE, NOTE + "  "));
      }
    }
    return table;
  }

  private static String priced(SettingParts.ToBuy part) {
    String price = part.price().map(each -> " at " + rounded(each, 2)).orElse("");
    return (part.id() + price)
        .replaceAll("[\\p{Cntrl}\\p{Cf}\\p{Cs}\\p{Zl}\\p{Zp} ]+", String.valueOf(WITHIN_A_PART));
  }

  private static void row(Table table, JudgedSetting judged, int name) {
    FoundSetting found = judged.found();
    Setting setting = found.setting();
    table.row(
        judged
            .parts()
            .mainJetFlow()
            .map(flow -> byFlow(TradeStyle.main(flow)))
            .orElse(bare(TradeStyle.main(setting.mainJet()))),
        judged
            .parts()
            .pilotJetFlow()
            .map(flow -> byFlow(TradeStyle.pilot(flow)))
            .orElse(bare(TradeStyle.pilot(setting.pilotJet()))),
        TradeStyle.turns(setting.screw().turns()).replaceAll(" turns?", ""),
        bare(TradeStyle.cutaway(setting.cutaway())),
        Table.fitted(setting.needle().id().replaceFirst("^needle ", ""), name)
            + "/"
            + TradeStyle.diameter(setting.needleJet().bore()).replace(" mm", ""),
        setting.clip().grooveFromTop() + "/" + setting.clip().grooves(),
        judged.standing(),
        TradeStyle.probability(found.leanRisk()).replace("under 1 %", "<1 %"),
        percent(found.distance()),
        found.newParts().size(),
        found.price().map(price -> rounded(price, 2)).orElse(""));
  }

  private static String byFlow(String trade) {
    return bare(trade).replace(" cm³/min", "f");
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
