package dev.jetting.examples.shopcounter;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The kit check, the cards, the log, two machines side by side. */
class PagesBrowserTest {

  private static final Pattern PAGE_OF_A_PDF = Pattern.compile("/Type\\s*/Page\\b(?!s)");

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
  }

  @AfterEach
  void nothingWasComplainedAbout() {
    assertThat(browser.complaints()).isEmpty();
  }

  @Test
  void kits_areCheckedWithProgress_andSayWhatFails() {
    browser.go(counter.address("/kits"));
    browser.expectNothingToObjectTo();
    browser.press("input[value=fit]");
    browser.press("form button");
    browser.waitForText("#check .verdict", "12 of 12");
    assertThat(browser.text("#check .verdict")).contains("2 are no kits");
    assertThat(browser.text(".kit.no_kit")).contains("Line 5");
    assertThat(browser.text("#check")).contains("of series \"mains long\"");
    browser.expectNothingToObjectTo();
    browser.keep("kits");
    narrow();
  }

  @Test
  void noKit_isRefusedInPlainWords() {
    browser.go(counter.address("/kits"));
    browser.js("document.getElementById('kits').value = ' '");
    browser.press("form button");
    assertThat(browser.text(".big")).isEqualTo("No kit. Paste one, or choose a file.");
    assertThat(browser.complaints()).allMatch(line -> line.contains("422"));
  }

  @Test
  void cards_fitOnOnePrintedPage() {
    String machine = open("mild-all-round");
    browser.go(machine + "/cards");
    browser.expectNothingToObjectTo();
    assertThat(browser.text(".sheet")).contains("Main jet", "2.02 middle", "cover the clutch");
    browser.keep("cards");
    String pdf = new String(browser.pdf(), StandardCharsets.ISO_8859_1);
    assertThat(PAGE_OF_A_PDF.matcher(pdf).results().count()).isEqualTo(1);
    narrow();
  }

  /** Colder or lower air is denser, so no cell is leaner than its neighbour on the warmer side. */
  @Test
  void weatherCard_neverHasASmallerMainJetInDenserAir() {
    String machine = open("mild-all-round");
    browser.go(machine + "/cards");
    Object mains =
        browser.js(
            "return [...document.querySelectorAll('.grid tbody tr')].map(row =>"
                + " [...row.querySelectorAll('td')].map(cell =>"
                + " Number(cell.textContent.match(/main (\\d+)/)[1])).join(' ')).join('\\n')");
    double[][] table =
        mains
            .toString()
            .lines()
            .map(line -> Pattern.compile(" ").splitAsStream(line).mapToDouble(Double::parseDouble))
            .map(java.util.stream.DoubleStream::toArray)
            .toArray(double[][]::new);
    assertThat(table).hasDimensions(6, 4);
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 4; j++) {
        assertThat(table[i][j]).isGreaterThanOrEqualTo(j < 3 ? table[i][j + 1] : 0);
        assertThat(table[i][j]).isGreaterThanOrEqualTo(i < 5 ? table[i + 1][j] : 0);
      }
    }
  }

  /** Follows the plan to its end: what was dangerous to ride no longer is. */
  @Test
  void plan_followedStepByStep_endsTheDanger() {
    String machine = open("lean-in-the-middle");
    browser.go(machine + "/plan");
    assertThat(browser.text(".verdict")).contains("Do not ride");
    browser.expectNothingToObjectTo();
    browser.keep("plan");
    int steps = browser.all(".steps li").size();
    assertThat(steps).isPositive();
    for (int i = 0; i < steps; i++) {
      int before = browser.all(".log, .steps li").size();
      browser.press(".steps form button");
      browser.until("a step less", () -> browser.all(".steps li").size() < before);
    }
    assertThat(browser.text(".verdict")).doesNotContain("Do not ride");
    browser.go(machine + "/log");
    assertThat(browser.all(".log li")).hasSize(steps + 1);
  }

  @Test
  void log_keepsWhatIsWritten() {
    String machine = open("mild-all-round");
    browser.go(machine + "/log");
    browser.type("#note", "New plug, <b>brown</b> at full throttle");
    browser.press("form[action$='/log'] button");
    browser.waitForText(".log", "New plug, <b>brown</b> at full throttle");
    browser.expectNothingToObjectTo();
    narrow();
  }

  @Test
  void twoMachines_standSideBySide() {
    String one = open("mild-all-round");
    String other = open("tuned-on-mild-main");
    browser.go(counter.address("/compare?a=" + id(one) + "&b=" + id(other)));
    browser.find("#plot-beside canvas");
    assertThat(browser.text(".differs")).contains("Needle");
    browser.expectNothingToObjectTo();
    browser.keep("side-by-side");
    narrow();
  }

  @Test
  void pageForPrograms_leadsToTheDescription() {
    browser.go(counter.address("/api"));
    browser.expectNothingToObjectTo();
    narrow();
    browser.press("a[href='/api/openapi.json']");
    browser.waitForText("body", "openapi");
  }

  private static String open(String demo) {
    browser.go(counter.address("/"));
    browser.press("form[action$='" + demo + "'] button");
    browser.find("#plot-lambda canvas");
    return browser.address();
  }

  private static String id(String machine) {
    return machine.substring(machine.lastIndexOf('/') + 1);
  }

  private static void narrow() {
    browser.view(360, 740);
    browser.until("the page fits a phone", () -> browser.overhang() <= 0);
  }
}
