package dev.jetting.examples.shopcounter;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;

/** From a machine that a rider describes to a session on it. */
class MachineBrowserTest extends BrowserTests {

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

  @Test
  void form_saysWhatIsMissing_andKeepsWhatWasSaid() {
    browser.go(counter.address("/machines/new"));
    browser.expectNothingToObjectTo();
    browser.type("#displacement", "a lot");
    browser.type("#bore", "24");
    browser.follow("form.stack > button");
    browser.expectRefusal(422);
    assertThat(browser.text("#displacement-about")).contains("a lot");
    assertThat(browser.text("#main-about")).contains("Say this, too");
    assertThat(browser.value("#bore")).isEqualTo("24");
    browser.expectNothingToObjectTo();
    expectToFitAPhone();
  }

  @Test
  void statedValue_narrowsTheBand() {
    String machine = enter();
    assertThat(browser.text("#bench > .verdict")).isNotEmpty();
    double before = width();
    browser.go(machine + "/known");
    browser.expectNothingToObjectTo();
    browser.keep("known");
    long open = browser.count(".guesses li");
    String taken = browser.text(".guesses li b").replaceAll("[^0-9.].*", "");
    browser.type(".guesses li input[name=number]", taken);
    browser.follow(".guesses li button");
    assertThat(browser.count(".guesses li")).isEqualTo(open - 1);
    browser.go(machine);
    assertThat(width()).isLessThan(before);
  }

  @Test
  void session_beginsWithChecks_takesAReading_narrows_andTakesItBack() {
    String machine = enter();
    browser.go(machine + "/session");
    browser.expectNothingToObjectTo();
    tickAllOff();
    browser.type("#at", "full");
    browser.press("input[name=seen][value=black]");
    browser.follow("form[action$='/reading'] button");
    assertThat(browser.text(".log")).contains("a black plug");
    assertThat(browser.text(".beside tbody tr:last-child td:nth-of-type(3)")).isNotEqualTo("0 %");
    browser.expectNothingToObjectTo();
    browser.keepWhole("session");
    expectToFitAPhone();
    browser.keep("session-phone");
    browser.follow("form[action$='/undo'] button");
    assertThat(browser.text(".log")).contains("nothing read yet");
  }

  @Test
  void anotherDay_goesOnInItsAir_andCanBeTakenBack() {
    String machine = enter();
    browser.go(machine + "/session");
    browser.type("#temperature", "-5 C");
    browser.type("#height", "100 m");
    browser.follow("form[action$='/day'] button");
    assertThat(browser.count(".log li")).isEqualTo(2);
    assertThat(browser.text(".log li:last-child")).contains("-5 °C, 1001 hPa", "nothing read yet");
    browser.go(machine + "/log");
    assertThat(browser.text(".log")).contains("another day: -5 C at 100 m");
    browser.go(machine);
    assertThat(browser.text(".days label")).contains("-5 °C");
    browser.go(machine + "/session");
    browser.follow("form[action$='/undo'] button");
    assertThat(browser.count(".log li")).isEqualTo(1);
    assertThat(browser.text(".log")).contains("20 °C, 910 hPa");
  }

  @Test
  void anotherDay_thatIsNoAir_isRefused() {
    String machine = enter();
    browser.go(machine + "/session");
    browser.type("#temperature", "cold");
    browser.type("#height", "100 m");
    browser.follow("form[action$='/day'] button");
    assertThat(browser.text(".big")).contains("cold");
    browser.expectRefusal(422);
  }

  @Test
  void pinging_stopsTheRider_untilItIsMadeRicher() {
    String machine = enter();
    browser.go(machine + "/session");
    tickAllOff();
    browser.type("#at", "full");
    browser.press("input[name=seen][value=pings]");
    browser.follow("form[action$='/reading'] button");
    assertThat(browser.text(".next.stop h2")).contains("Stop");
    browser.expectNothingToObjectTo();
    browser.keep("stop");
  }

  private void tickAllOff() {
    browser.js("document.querySelectorAll('input[name=check]').forEach(box => box.click())");
    browser.follow("form[action$='/checks'] button");
    assertThat(browser.count("form[action$='/checks']")).isZero();
  }

  @Test
  void thermometer_readingCounts() {
    String machine = enter();
    browser.go(machine + "/session?with=thermometer");
    tickAllOff();
    browser.type("#at", "full");
    browser.press("input[name=seen][value=exhaust]");
    browser.type("input[name=hotter]", "-20");
    browser.expectNothingToObjectTo();
    browser.follow("form[action$='/reading'] button");
    assertThat(browser.text(".log")).contains("20 K cooler than on the good run");
    assertThat(browser.text(".tabs a[aria-current=true]")).isEqualTo("and an exhaust thermometer");
  }

  @Test
  void keyboardAlone_entersAMachine() {
    browser.go(counter.address("/machines/new"));
    for (String field : List.of("name", "displacement", "bore", "main", "pilot", "cutaway")) {
      browser.tabTo("id", field);
      browser.keys(FIELD_CART.get(field));
    }
    browser.tabTo("id", "needlejet");
    browser.keys(FIELD_CART.get("needlejet"), Keys.TAB);
    browser.enter();
    browser.await("#plot-lambda canvas");
    assertThat(browser.text("h1")).isEqualTo("Field cart");
  }

  @Test
  void sensor_readingThatIsNoNumber_isRefused() {
    String machine = enter();
    browser.go(machine + "/session?with=sensor");
    browser.type("#at", "full");
    browser.press("input[name=seen][value=lambda]");
    browser.enter("input[name=lambda]", "rich");
    assertThat(browser.text(".big")).contains("rich");
    browser.expectRefusal(422);
  }

  /** How wide the band is at full throttle. */
  private double width() {
    return ((Number)
            browser.js(
                "const d = JSON.parse(document.getElementById('bench').dataset.charts).days.today;"
                    + "return d.lean[d.lean.length - 1] - d.rich[d.rich.length - 1]"))
        .doubleValue();
  }

  private String enter() {
    browser.go(counter.address("/machines/new"));
    FIELD_CART.forEach(
        (field, value) ->
            browser.js("document.getElementById(arguments[0]).value = arguments[1]", field, value));
    browser.press("input[name=tune][value=utility]");
    browser.follow("form.stack > button");
    browser.await("#plot-lambda canvas");
    return browser.address();
  }
}
