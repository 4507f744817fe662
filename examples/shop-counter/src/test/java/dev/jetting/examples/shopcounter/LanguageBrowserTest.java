package dev.jetting.examples.shopcounter;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.Keys;

/** The pages in German and Italian, as a visitor walks through them. */
class LanguageBrowserTest extends BrowserTests {

  private static final List<String> TABS =
      List.of("", "/plan", "/session?with=both", "/known", "/cards", "/log");

  @BeforeEach
  void withoutAChoice() {
    browser.go(counter.address("/"));
    browser.forget("language");
    browser.asksFor("en-GB");
  }

  /** From a machine described in German to a reading on it. */
  @Test
  void germanWalk() {
    browser.asksFor("de-AT,de;q=0.9,en;q=0.5");
    browser.go(counter.address("/"));
    assertThat(browser.text("h1")).isEqualTo("Welche Maschine steht auf der Bühne?");
    browser.follow("a[href='/machines/new']");
    assertThat(browser.value("#clip")).isEqualTo("3 von oben");
    browser.type("#name", "Feldkarren");
    browser.type("#displacement", "123 cm³");
    browser.type("#bore", "24,0 mm");
    browser.type("#main", "96");
    browser.type("#pilot", "42");
    browser.type("#cutaway", "30");
    browser.type("#needlejet", "2,15");
    browser.follow("form.stack > button");
    browser.await("#plot-lambda canvas");
    assertThat(browser.text("#bench > .verdict")).contains("Magerrisiko: ");
    assertThat(browser.text(".rail").replaceAll("\\s+", " "))
        .contains("Hauptdüse 96", "Nadelposition 3 von 5 von oben");
    browser.type("#throttle", Keys.HOME, Keys.ARROW_RIGHT, Keys.ARROW_RIGHT);
    browser.expectText("#where", "bei 1/64 Gas, ");
    assertThat(browser.text("#numbers"))
        .contains("Magergrenze", "zugemessen durch", "Leerlauf")
        .containsPattern("λ\\s+\\d,\\d\\d \\(\\d,\\d\\d bis \\d,\\d\\d\\)");
    browser.follow(".tabs a[href$='/known']");
    browser.type(
        ".guesses li input[name=number]", browser.text(".guesses li b").replaceAll(" .*", ""));
    browser.follow(".guesses li button");
    browser.follow(".tabs a[href$='/session']");
    browser.js("document.querySelectorAll('input[name=check]').forEach(box => box.click())");
    browser.follow("form[action$='/checks'] button");
    assertThat(browser.text(".next h2")).containsPattern("^(Eine Sache ändern: |Testen bei |Den )");
    browser.type("#at", "voll");
    browser.press("input[name=seen][value=black]");
    browser.follow("form[action$='/reading'] button");
    assertThat(browser.text(".log")).contains("eine schwarze Kerze bei Vollgas");
    browser.follow(".tabs a[href$='/log']");
    assertThat(browser.text(".log")).contains("abgelesen eine schwarze Kerze bei Vollgas");
  }

  @Test
  void choice_holdsOnEveryPageUntilAnotherIsMade() {
    String machine = open("lean-in-the-middle");
    assertThat(browser.text(".verdict")).contains("Do not ride");
    browser.follow(".languages a[lang=it]");
    assertThat(browser.address()).isEqualTo(machine);
    assertThat(browser.text(".verdict")).contains("Non guidare");
    assertThat(browser.js("return document.documentElement.lang")).isEqualTo("it");
    browser.press("[data-key=needle_jet-rich]");
    browser.expectText(".dial.changed", "montato: 2,13 mm");
    browser.follow(".tabs a[href$='/plan']");
    assertThat(browser.text(".next")).containsIgnoringCase("Passo 1");
    browser.follow(".languages a[lang=en]");
    assertThat(browser.text(".next")).containsIgnoringCase("Step 1");
  }

  @ParameterizedTest
  @ValueSource(strings = {"de", "it"})
  void pages_areWholeOnAPhone_andHaveNothingToObjectTo(String tag) {
    browser.asksFor(tag);
    String machine = open("lean-in-the-middle");
    for (String tab : TABS) {
      browser.go(machine + tab);
      expectToBeWhole(tag);
    }
    for (String page : List.of("/", "/machines/new", "/kits", "/compare", "/api")) {
      browser.go(counter.address(page));
      expectToBeWhole(tag);
    }
  }

  /** The longer language is checked for accessibility, which takes long. */
  private void expectToBeWhole(String tag) {
    if (tag.equals("de")) {
      browser.expectNothingToObjectTo();
    }
    expectToFitAPhone();
    assertThat(browser.js(CUT_OFF)).as(browser.address()).isEqualTo("");
    browser.view(1280, 900);
    assertThat(browser.js(CUT_OFF)).as(browser.address()).isEqualTo("");
  }

  /** What reaches over the side of its own box or of the view, outside of what can be scrolled. */
  private static final String CUT_OFF =
      "return [...document.querySelectorAll('main *, .mast *')]"
          + ".filter(e => e.offsetParent && !e.closest('.scroll, .plot, textarea, pre, select'))"
          + ".filter(e => e.getBoundingClientRect().right > document.documentElement.clientWidth + 1"
          + "  || e.matches('a, button, p, h1, h2, h3, b, span, legend, label')"
          + "    && getComputedStyle(e).display !== 'inline' && e.scrollWidth > e.clientWidth + 1)"
          + ".map(e => e.outerHTML.slice(0, 200)).join('\\n')";
}
