package dev.jetting.examples.shopcounter;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;

/** The kit check, the cards, the log, two machines side by side. */
class PagesBrowserTest extends BrowserTests {

  private static final Pattern SENT = Pattern.compile("(\\d+) kB of (\\d+) kB sent");
  private static final Pattern PAGE_OF_A_PDF = Pattern.compile("/Type\\s*/Page\\b(?!s)");

  @Test
  void kits_areCheckedWithProgress_andSayWhatFails() {
    browser.go(counter.address("/kits"));
    browser.expectNothingToObjectTo();
    browser.press("input[value=fit]");
    browser.follow("form button");
    browser.expectText("#check .verdict", "12 of 12");
    assertThat(browser.text("#check .verdict")).contains("2 are no kits");
    assertThat(browser.text(".kit.no_kit")).contains("Line 5");
    assertThat(browser.text("#check")).contains("of series \"mains long\"");
    browser.expectNothingToObjectTo();
    browser.keep("kits");
    expectToFitAPhone();
  }

  @Test
  void noKit_isRefusedInPlainWords() {
    browser.go(counter.address("/kits"));
    browser.js("document.getElementById('kits').value = ' '");
    browser.follow("form button");
    assertThat(browser.text(".big")).isEqualTo("No kit. Paste one, or choose a file.");
    browser.expectRefusal(422);
  }

  @Test
  void fileOfKits_isSentAndChecked(@TempDir Path folder) throws IOException {
    browser.go(counter.address("/kits"));
    String kits = browser.value("#kits");
    browser.js("document.getElementById('kits').value = ''");
    browser.press("input[value=fit]");
    Path file = Files.writeString(folder.resolve("kits.jsonl"), kits);
    browser.type("#file", file.toString());
    browser.follow("form button");
    browser.expectText("#check .verdict", "12 of 12");
  }

  /** On a slow line, so that the sending takes longer than a look. */
  @Test
  void sending_showsHowMuchHasGone(@TempDir Path folder) throws IOException {
    browser.go(counter.address("/kits"));
    browser.press("input[value=fit]");
    String kit = browser.value("#kits").lines().findFirst().orElseThrow() + "\n";
    String kits = kit + "\n".repeat(400_000);
    browser.type("#file", Files.writeString(folder.resolve("kits.jsonl"), kits).toString());
    browser.sendAt(100_000);
    browser.press("form button");
    browser.until(
        "part of the file has gone",
        () -> {
          Matcher sent = SENT.matcher(browser.text(".sent"));
          return sent.find()
              && Integer.parseInt(sent.group(1)) > 0
              && Integer.parseInt(sent.group(1)) < Integer.parseInt(sent.group(2));
        });
    assertThat(Double.parseDouble(browser.value(".sent progress"))).isBetween(0.01, 0.99);
    browser.sendAt(-1);
    browser.expectText("#check .verdict", "1 of 1");
  }

  @Test
  void fileThatIsTooLarge_isRefusedBeforeItIsSent(@TempDir Path folder) throws IOException {
    browser.go(counter.address("/kits"));
    Path file = Files.write(folder.resolve("kits.jsonl"), new byte[2_100_000]);
    browser.type("#file", file.toString());
    browser.press("form button");
    browser.expectText(".sent", "The file has 2100 kB: allowed at most 2000 kB.");
  }

  @Test
  void fileThatIsRefused_leavesTheForm_andSaysWhy(@TempDir Path folder) throws IOException {
    browser.go(counter.address("/kits"));
    Path file = Files.writeString(folder.resolve("kits.jsonl"), "{\"x\": 1}\n".repeat(1001));
    browser.type("#file", file.toString());
    browser.press("form button");
    browser.expectText(".sent", "1001 kits in one check: allowed at most 1000.");
    browser.expectRefusal(422);
    browser.until("the button works again", () -> browser.count("form button:enabled") == 1);
  }

  @Test
  void cards_fitOnOnePrintedPage() {
    String machine = open("mild-all-round");
    browser.read(machine, "dark", 6);
    browser.go(machine + "/cards");
    browser.expectNothingToObjectTo();
    assertThat(browser.count(".sheet li")).isGreaterThan(6);
    assertThat(browser.text(".sheet")).contains("Main jet", "2.02 middle", "cover the clutch");
    browser.keep("cards");
    browser.media("print", "light");
    browser.view(703, 1032);
    browser.keep("print");
    browser.media("", "light");
    String pdf = new String(browser.pdf(), StandardCharsets.ISO_8859_1);
    assertThat(PAGE_OF_A_PDF.matcher(pdf).results().count()).isEqualTo(1);
    expectToFitAPhone();
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
    long steps = browser.count(".steps li");
    assertThat(steps).isPositive();
    for (long left = steps; left > 0; left--) {
      assertThat(browser.count(".steps li")).isEqualTo(left);
      browser.follow(".steps form button");
    }
    assertThat(browser.text(".verdict")).doesNotContain("Do not ride");
    browser.go(machine + "/log");
    assertThat(browser.count(".log li")).isEqualTo(steps + 1);
  }

  @Test
  void log_keepsWhatIsWritten() {
    String machine = open("mild-all-round");
    browser.go(machine + "/log");
    browser.type("#note", "New plug, <b>brown</b> at full throttle");
    browser.follow("form[action$='/log'] button");
    browser.expectText(".log", "New plug, <b>brown</b> at full throttle");
    browser.expectNothingToObjectTo();
    browser.keep("log");
    expectToFitAPhone();
  }

  @Test
  void firstPageAndNewMachine_haveNothingToObjectTo() {
    open("mild-all-round");
    browser.go(counter.address("/"));
    browser.expectNothingToObjectTo();
    browser.keep("machines");
    browser.go(counter.address("/machines/new"));
    browser.expectNothingToObjectTo();
    browser.keep("new-machine");
  }

  @Test
  void twoMachines_standSideBySide() {
    String one = open("mild-all-round");
    String other = open("tuned-on-mild-main");
    browser.go(counter.address("/compare"));
    assertThat(browser.value("#a")).isNotEqualTo(browser.value("#b"));
    browser.go(counter.address("/compare?a=" + id(one) + "&b=" + id(other)));
    browser.await("#plot-beside canvas");
    assertThat(browser.text(".differs")).contains("Needle");
    browser.type("#throttle", Keys.HOME, Keys.ARROW_RIGHT, Keys.ARROW_RIGHT);
    browser.expectText("#where", "1/64 throttle");
    assertThat(browser.text("#numbers")).contains("Milk cart", "Hill-climb cart", "lean risk");
    browser.expectNothingToObjectTo();
    browser.keep("side-by-side");
    expectToFitAPhone();
  }

  @Test
  void pageForPrograms_leadsToTheDescription() {
    browser.go(counter.address("/api"));
    browser.expectNothingToObjectTo();
    browser.keep("programs");
    expectToFitAPhone();
    browser.follow("a[href='/api/openapi.json']");
    browser.expectText("body", "openapi");
  }

  private static String id(String machine) {
    return machine.substring(machine.lastIndexOf('/') + 1);
  }
}
