package dev.jetting.examples.shopcounter.bench;

import dev.jetting.core.parts.Setting;
import dev.jetting.examples.shopcounter.words.Refusal;
import dev.jetting.examples.shopcounter.words.Words;
import dev.jetting.rules.PartsAtHand;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
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
                .orElseThrow(() -> new Refusal(refusal(dial, sheet.parts(), before, text)));
      }
    }
    return new Proposal(sheet, setting);
  }

  private static Message refusal(Dial dial, PartsAtHand parts, Setting now, String text) {
    return Words.message(
        "dial.none",
        "part",
        dial.label(),
        "size",
        text,
        "sizes",
        Argument.items(dial.sizes(parts, now).stream().map(dial::size).toList()));
  }

  /** {@return whether anything differs from what is on the machine} */
  public boolean changesSomething() {
    return !setting.equals(sheet.setup().setting());
  }

  /** {@return the sheet with the setting looked at} */
  public SetupSheet changed() {
    return sheet.withSetup(sheet.setup().withSetting(setting));
  }

  /** {@return what is changed, for the log} */
  public Message changes() {
    Setting fitted = sheet.setup().setting();
    List<Argument> changes = new ArrayList<>();
    for (Dial dial : Dial.all()) {
      if (!dial.text(fitted).equals(dial.text(setting))) {
        changes.add(
            Argument.words(
                Words.message(
                    "dial.change",
                    "part",
                    dial.label(),
                    "from",
                    dial.size(fitted),
                    "to",
                    dial.size(setting))));
      }
    }
    return Message.plain("{changes}").with("changes", Argument.items(changes));
  }

  /**
   * Returns the controls of the bench.
   *
   * @param words the language
   * @return a control for each part
   */
  public List<Control> controls(Words words) {
    return Dial.all().stream().map(dial -> control(dial, words)).toList();
  }

  /** {@return the sizes that differ, as part of an address} */
  public String query() {
    return query(setting);
  }

  /** {@return the sizes that differ, by the key of their dial} */
  public Map<String, String> differences() {
    return differences(setting);
  }

  private Control control(Dial dial, Words words) {
    return new Control(
        dial.key(),
        words.say(dial.label()),
        words.say(dial.size(setting)),
        words.say(dial.size(sheet.setup().setting())),
        step(dial, -1, words),
        step(dial, 1, words));
  }

  private Optional<Control.Step> step(Dial dial, int towards, Words words) {
    return dial.next(sheet.parts(), setting, towards)
        .map(next -> new Control.Step(words.say(dial.size(next)), query(next)));
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
