package dev.jetting.examples.shopcounter;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;

class PictureBrowserTest {

  private static Running counter;
  private static Browser browser;

  @BeforeAll
  static void start() {
    browser = Browser.open();
    counter = Running.start();
  }

  @AfterAll
  static void stop() {
    if (browser != null) {
      browser.close();
    }
    if (counter != null) {
      counter.close();
    }
  }

  @BeforeEach
  void openAMachineThatIsLean() {
    browser.media("", "light");
    browser.view(1280, 900);
    browser.go(counter.address("/"));
    browser.press("form[action$='lean-in-the-middle'] button");
    browser.find("#plot-lambda canvas");
  }

  @AfterEach
  void nothingWasComplainedAbout() {
    assertThat(browser.complaints()).isEmpty();
  }

  @Test
  void richerPart_isAnsweredAtOnceAndFittedOnRequest() {
    String before = browser.text("#bench > .verdict");
    assertThat(before).contains("Do not ride");
    browser.press("[data-key=needle_jet-rich]");
    browser.waitForText(".dial.changed", "2.15 mm");
    assertThat(browser.text(".dial.changed")).contains("fitted: 2.13 mm");
    assertThat(browser.text("#bench > .verdict")).isNotEqualTo(before);
    browser.keep("picture");
    browser.press(".keep button");
    browser.until("the change is fitted", () -> browser.all(".dial.changed").isEmpty());
    browser.press(".tabs a[href$='/log']");
    assertThat(browser.text(".log")).contains("Needle jet 2.13 mm → 2.15 mm");
  }

  @Test
  void slider_readsTheNumbersByKeyboard() {
    browser.type("#throttle", Keys.HOME, Keys.ARROW_RIGHT, Keys.ARROW_RIGHT);
    assertThat(browser.text("#where")).startsWith("1/64 throttle");
    assertThat(browser.text("#numbers")).contains("lean limit", "lean risk", "needle");
    String today = browser.text("#numbers");
    browser.press("input[name=day][value=coldest]");
    browser.until("the coldest day's numbers", () -> !browser.text("#numbers").equals(today));
  }

  @Test
  void finding_pointsAtItsPlace() {
    browser.press(".found .point");
    browser.waitForText("#where", "7/64");
  }

  @Test
  void keyboardAlone_changesAPart() {
    browser.js("document.getElementById('content').focus()");
    for (int i = 0; i < 12; i++) {
      browser.keys(Keys.TAB);
      if ("main-rich".equals(browser.focused().getDomAttribute("data-key"))) {
        break;
      }
    }
    browser.keys(Keys.ENTER);
    browser.waitForText(".dial.changed", "100");
    browser.until(
        "the focus stays", () -> "main-rich".equals(browser.focused().getDomAttribute("data-key")));
  }

  @Test
  void phone_isNotWiderThanItsScreen() {
    browser.view(360, 740);
    browser.until("the charts fit", () -> browser.overhang() <= 0);
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
    browser.press("form[action='/machines/sheet'] button");
    assertThat(browser.text("h1")).isEqualTo("Input that cannot be used");
    assertThat(browser.complaints()).allMatch(line -> line.contains("422"));
  }

  @Test
  void twoVisitors_seeTheirOwnMachinesOnly() {
    String machine = browser.address();
    try (Browser other = Browser.open()) {
      other.go(machine);
      assertThat(other.text("h1")).isEqualTo("Not found");
      other.go(counter.address("/"));
      assertThat(other.all(".ticket")).isEmpty();
    }
    browser.go(machine);
    assertThat(browser.text("h1")).contains("Milk cart");
  }
}
