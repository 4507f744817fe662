package dev.jetting.examples.shopcounter;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.TestInstance;

/** What the browser tests share: a counter, a browser, and no complaint at the end of a test. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class BrowserTests {

  Browser browser;
  Running counter;

  @BeforeAll
  void start() {
    browser = Browser.open();
    counter = Running.start();
  }

  @AfterAll
  void stop() {
    if (browser != null) {
      browser.close();
    }
    if (counter != null) {
      counter.close();
    }
  }

  @BeforeEach
  void asOnACounterByDay() {
    browser.media("", "light");
    browser.view(1280, 900);
    browser.dropComplaints();
  }

  @AfterEach
  void nothingWasComplainedAbout() {
    browser.expectNoComplaint();
  }

  /** Opens the picture of a machine of the scenario and returns its address. */
  String open(String demo) {
    browser.go(counter.address("/"));
    browser.follow("form[action$='" + demo + "'] button");
    browser.await("#plot-lambda canvas");
    return browser.address();
  }

  void expectToFitAPhone() {
    browser.view(360, 740);
    browser.until("the page fits a phone", () -> browser.overhang() <= 0);
  }
}
