package dev.jetting.examples.shopcounter;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;

/** From a machine that a rider describes to a session on it. */
class MachineBrowserTest {

  private static final Map<String, String> FIELD_CART =
      Map.of(
          "name", "Field cart",
          "displacement", "123 cc",
          "bore", "24",
          "main", "#96",
          "pilot", "42",
          "cutaway", "30",
          "needlejet", "2.15",
          "height", "900 m");

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
  void begin() {
    browser.media("", "light");
    browser.view(1280, 900);
    browser.complaints();
  }

  @Test
  void form_saysWhatIsMissing_andKeepsWhatWasSaid() {
    browser.go(counter.address("/machines/new"));
    browser.expectNothingToObjectTo();
    browser.type("#displacement", "a lot");
    browser.type("#bore", "24");
    browser.press("form.stack > button");
    assertThat(browser.text("#displacement-about")).contains("a lot");
    assertThat(browser.text("#main-about")).contains("Say this, too");
    assertThat(browser.find("#bore").getDomProperty("value")).isEqualTo("24");
    browser.expectNothingToObjectTo();
    browser.view(360, 740);
    browser.until("the form fits a phone", () -> browser.overhang() <= 0);
  }

  @Test
  void statedValue_narrowsTheBand() {
    String machine = enter();
    assertThat(browser.text("#bench > .verdict")).isNotEmpty();
    double before = width();
    browser.go(machine + "/known");
    browser.expectNothingToObjectTo();
    browser.keep("known");
    int open = browser.all(".guesses li").size();
    String taken = browser.text(".guesses li b").replaceAll("[^0-9.].*", "");
    browser.type(".guesses li input[name=number]", taken);
    browser.press(".guesses li button");
    browser.until("one less", () -> browser.all(".guesses li").size() == open - 1);
    browser.go(machine);
    assertThat(width()).isLessThan(before);
  }

  @Test
  void session_beginsWithChecks_takesAReading_narrows_andTakesItBack() {
    String machine = enter();
    browser.go(machine + "/session");
    browser.expectNothingToObjectTo();
    tickAllOff();
    browser.keep("session");
    browser.press("input[name=seen][value=black]");
    browser.press("form[action$='/reading'] button");
    browser.waitForText(".log", "a black plug");
    assertThat(browser.all(".beside tbody tr:last-child td").get(2).getText()).isNotEqualTo("0 %");
    browser.expectNothingToObjectTo();
    browser.view(360, 740);
    browser.until("the session fits a phone", () -> browser.overhang() <= 0);
    browser.press("form[action$='/undo'] button");
    browser.waitForText(".log", "nothing read yet");
  }

  @Test
  void pinging_stopsTheRider_untilItIsMadeRicher() {
    String machine = enter();
    browser.go(machine + "/session");
    tickAllOff();
    browser.press("input[name=seen][value=pings]");
    browser.press("form[action$='/reading'] button");
    browser.waitForText(".next.stop h2", "Stop");
    browser.expectNothingToObjectTo();
    browser.keep("stop");
  }

  private static void tickAllOff() {
    browser.js("document.querySelectorAll('input[name=check]').forEach(box => box.click())");
    browser.press("form[action$='/checks'] button");
    browser.until("the checks are done", () -> browser.all("form[action$='/checks']").isEmpty());
  }

  @Test
  void sensor_readingThatIsNoNumber_isRefused() {
    String machine = enter();
    browser.go(machine + "/session?with=sensor");
    browser.press("input[name=seen][value=lambda]");
    browser.type("input[name=lambda]", "rich", Keys.ENTER);
    browser.waitForText(".big", "rich");
  }

  /** How wide the band is at full throttle. */
  private static double width() {
    return ((Number)
            browser.js(
                "const d = JSON.parse(document.getElementById('bench').dataset.charts).days.today;"
                    + "return d.lean[d.lean.length - 1] - d.rich[d.rich.length - 1]"))
        .doubleValue();
  }

  private static String enter() {
    browser.go(counter.address("/machines/new"));
    FIELD_CART.forEach(
        (field, value) ->
            browser.js("document.getElementById(arguments[0]).value = arguments[1]", field, value));
    browser.press("input[name=tune][value=utility]");
    browser.press("form.stack > button");
    browser.find("#plot-lambda canvas");
    return browser.address();
  }
}
