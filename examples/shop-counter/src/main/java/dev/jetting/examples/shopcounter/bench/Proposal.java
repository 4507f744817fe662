package dev.jetting.examples.shopcounter.bench;

import dev.jetting.core.parts.Setting;
import dev.jetting.rules.PartsAtHand;
import dev.jetting.rules.SetupSheet;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A setting that is looked at before anything is taken apart.
 *
 * @param sheet the sheet of the machine with what is on it now
 * @param setting the setting looked at
 */
public record Proposal(SetupSheet sheet, Setting setting) {

  /**
   * Reads a proposal from an address.
   *
   * @param sheet the sheet of the machine
   * @param asked the size of each dial by its key; null where the address names none
   * @return the proposal
   * @throws IllegalArgumentException if a part does not exist; the message names it
   */
  public static Proposal of(SetupSheet sheet, Function<String, @Nullable String> asked) {
    Setting setting = sheet.setup().setting();
    for (Dial dial : Dial.all()) {
      String text = asked.apply(dial.key());
      if (text != null) {
        Setting before = setting;
        setting =
            dial.with(sheet.parts(), before, text)
                .orElseThrow(
                    () -> new IllegalArgumentException(refusal(dial, sheet.parts(), before, text)));
      }
    }
    return new Proposal(sheet, setting);
  }

  private static String refusal(Dial dial, PartsAtHand parts, Setting now, String text) {
    String sizes =
        dial.sizes(parts, now).stream().map(dial::text).collect(Collectors.joining(", "));
    return dial.label() + " \"" + text + "\": there is none. Allowed: " + sizes + ".";
  }

  /** {@return whether anything differs from what is on the machine} */
  public boolean changesSomething() {
    return !setting.equals(sheet.setup().setting());
  }

  /** {@return the sheet with the setting looked at} */
  public SetupSheet changed() {
    return sheet.withSetup(sheet.setup().withSetting(setting));
  }

  /** {@return what is changed, as sentences for the log} */
  public List<String> changes() {
    Setting fitted = sheet.setup().setting();
    List<String> changes = new ArrayList<>();
    for (Dial dial : Dial.all()) {
      if (!dial.text(fitted).equals(dial.text(setting))) {
        changes.add(dial.label() + " " + dial.text(fitted) + " → " + dial.text(setting));
      }
    }
    return changes;
  }

  /** {@return the controls of the bench} */
  public List<Control> controls() {
    return Dial.all().stream().map(this::control).toList();
  }

  /** {@return the sizes that differ, as part of an address} */
  public String query() {
    return query(setting);
  }

  /** {@return the sizes that differ, by the key of their dial} */
  public Map<String, String> differences() {
    return differences(setting);
  }

  private Control control(Dial dial) {
    return new Control(
        dial.key(),
        dial.label(),
        dial.text(setting),
        dial.text(sheet.setup().setting()),
        step(dial, -1),
        step(dial, 1));
  }

  private Optional<Control.Step> step(Dial dial, int towards) {
    return dial.next(sheet.parts(), setting, towards)
        .map(next -> new Control.Step(dial.text(next), query(next)));
  }

  private String query(Setting other) {
    return differences(other).entrySet().stream()
        .map(e -> e.getKey() + "=" + URLEncoder.encode(e.getValue(), StandardCharsets.UTF_8))
        .collect(Collectors.joining("&"));
  }

  private Map<String, String> differences(Setting other) {
    Map<String, String> differences = new LinkedHashMap<>();
    for (Dial dial : Dial.all()) {
      String text = dial.text(other);
      if (!text.equals(dial.text(sheet.setup().setting()))) {
        differences.put(dial.key(), text);
      }
    }
    return differences;
  }
}
