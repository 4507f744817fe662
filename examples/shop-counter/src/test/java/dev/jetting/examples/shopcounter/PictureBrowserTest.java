package dev.jetting.examples.shopcounter;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.json.SheetJson;
import dev.jetting.units.TradeStyle;
import java.io.IOException;
import java.util.Comparator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;

class PictureBrowserTest extends BrowserTests {

  @BeforeEach
  void openAMachineThatIsLean() {
    open("lean-in-the-middle");
  }

  @Test
  void richerPart_isAnsweredAtOnceAndFittedOnRequest() {
    String before = browser.text("#bench > .verdict");
    assertThat(before).contains("Do not ride");
    browser.press("[data-key=needle_jet-rich]");
    browser.expectText(".dial.changed", "2.15 mm");
    assertThat(browser.text(".dial.changed")).contains("fitted: 2.13 mm");
    assertThat(browser.text("#bench > .verdict")).isNotEqualTo(before);
    browser.keepWhole("picture");
    browser.follow(".keep button");
    assertThat(browser.count(".dial.changed")).isZero();
    browser.follow(".tabs a[href$='/log']");
    assertThat(browser.text(".log")).contains("Needle jet 2.13 mm → 2.15 mm");
  }

  @Test
  void slider_readsTheNumbersByKeyboard() {
    browser.type("#throttle", Keys.HOME, Keys.ARROW_RIGHT, Keys.ARROW_RIGHT);
    browser.expectText("#where", "1/64 throttle");
    assertThat(browser.text("#numbers")).contains("lean limit", "lean risk", "on a climb");
    assertThat(browser.text("#numbers")).contains("metered by", "needle");
    String today = browser.text("#numbers");
    browser.press("input[name=day][value=coldest]");
    browser.until("the coldest day's numbers", () -> !browser.text("#numbers").equals(today));
  }

  @Test
  void map_readsItsNumbers_byMouseAndByKeyboard() {
    browser.hover(".map tbody tr:nth-of-type(2) td:nth-of-type(3)");
    browser.expectText("#map-numbers", "1/4 throttle at ");
    browser.js(
        "document.querySelector('[aria-label=\"Lean risk by throttle and speed\"]').focus()");
    browser.keys(Keys.TAB);
    browser.expectText("#map-numbers", "closed throttle at ");
    browser.keys(Keys.ARROW_RIGHT, Keys.ARROW_DOWN, Keys.ARROW_UP);
    browser.expectText("#map-numbers", "1/8 throttle at ");
    assertThat(browser.text("#map-numbers")).contains("λ", "lean limit", "lean risk");
    browser.keep("map");
  }

  @Test
  void finding_pointsAtItsPlace() throws IOException {
    browser.press(".found .point");
    browser.expectText("#where", worstOfTheFirstFinding());
  }

  /** The opening with the highest risk of today, climbs included, in the finding's own range. */
  private String worstOfTheFirstFinding() throws IOException {
    double from = percent("from");
    double to = percent("to");
    return TradeStyle.throttle(
        AssessedSetting.of(SheetJson.read(ApiTest.resource("lean-in-the-middle.json")))
            .profile()
            .points()
            .stream()
            .filter(
                point ->
                    point.mixture().throttle().percent() >= from
                        && point.mixture().throttle().percent() <= to)
            .max(Comparator.comparingDouble(point -> point.riddenRisk().value()))
            .orElseThrow()
            .mixture()
            .throttle());
  }

  private double percent(String end) {
    return Double.parseDouble(
        (String) browser.js("return document.querySelector('.found').dataset." + end));
  }

  @Test
  void keyboardAlone_changesAPart() {
    browser.js("document.getElementById('content').focus()");
    browser.tabTo("data-key", "main-rich");
    browser.keys(Keys.ENTER);
    browser.expectText(".dial.changed", "100");
    browser.until("the focus stays", () -> browser.focused("data-key").equals("main-rich"));
  }

  @Test
  void phone_isNotWiderThanItsScreen() {
    expectToFitAPhone();
    browser.expectNothingToObjectTo();
    browser.keep("phone");
  }

  @Test
  void accessibility_hasNoViolation_lightAndDark() {
    browser.expectNothingToObjectTo();
    browser.media("", "dark");
    browser.expectNothingToObjectTo();
    browser.keep("dark");
  }

  /** For eyes that see no colours, neighbours in the stack must differ in lightness. */
  @Test
  void circuits_differInLightness_lightAndDark() {
    assertThat(weakestContrast()).isGreaterThan(1.6);
    browser.media("", "dark");
    assertThat(weakestContrast()).isGreaterThan(1.6);
  }

  /** The smallest contrast ratio of two neighbours, by the formula of WCAG 2.1. */
  private double weakestContrast() {
    return ((Number)
            browser.js(
                "const part = (hex, i) => parseInt(hex.slice(i, i + 2), 16) / 255;"
                    + "const linear = c => c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;"
                    + "const light = ['pilot', 'cutaway', 'needle', 'main'].map(name => {"
                    + "  const hex = getComputedStyle(document.documentElement)"
                    + "    .getPropertyValue('--c-' + name).trim();"
                    + "  return 0.05 + 0.2126 * linear(part(hex, 1)) + 0.7152 * linear(part(hex, 3))"
                    + "    + 0.0722 * linear(part(hex, 5)); });"
                    + "return Math.min(...light.slice(1).map((dark, i) => light[i] / dark))"))
        .doubleValue();
  }

  @Test
  void targets_areBigEnoughForDirtyHands() {
    Object small =
        browser.js(
            "return [...document.querySelectorAll('a.step, button, .tabs a, .mast a')]"
                + ".filter(e => e.offsetParent && e.getBoundingClientRect().height < 44)"
                + ".map(e => e.outerHTML).join('\\n')");
    assertThat(small).isEqualTo("");
  }

  @Test
  void badInput_isExplainedInPlainWords() {
    browser.go(counter.address("/"));
    browser.type("#sheet", "{\"format\": \"jetting setup sheet\"");
    browser.follow("form[action='/machines/sheet'] button");
    assertThat(browser.text("h1")).isEqualTo("Input that cannot be used");
    browser.expectRefusal(422);
  }

  @Test
  void twoVisitors_seeTheirOwnMachinesOnly() {
    String machine = browser.address();
    try (Browser other = Browser.open()) {
      other.go(machine);
      assertThat(other.text("h1")).isEqualTo("Not found");
      other.go(counter.address("/"));
      assertThat(other.count(".ticket")).isZero();
    }
    browser.go(machine);
    assertThat(browser.text("h1")).contains("Milk cart");
  }
}
