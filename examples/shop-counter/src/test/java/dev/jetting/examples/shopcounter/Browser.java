package dev.jetting.examples.shopcounter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.openqa.selenium.By;
import org.openqa.selenium.JavascriptException;
import org.openqa.selenium.Keys;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebDriver;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.remote.http.ClientConfig;
import org.openqa.selenium.support.ui.FluentWait;
import org.openqa.selenium.support.ui.WebDriverWait;

/** One visitor's browser: the system's Chromium without a window. */
final class Browser implements AutoCloseable {

  private static final String AXE = script();

  /** Long enough for a machine that is busy with other things. */
  private static final Duration PATIENCE = Duration.ofMinutes(5);

  private static final int MOST_STEPS = 60;

  private final ChromeDriver driver;

  private Browser(ChromeDriver driver) {
    this.driver = driver;
  }

  static Browser open() {
    assumeFalse(Boolean.getBoolean("browser.skip"), "-Dbrowser.skip=true");
    Path chromium = installed("chromium", "/usr/bin/chromium", "/usr/bin/chromium-browser");
    Path chromedriver =
        installed(
            "chromium-driver", "/usr/bin/chromedriver", "/usr/lib/chromium-browser/chromedriver");
    ChromeOptions options = new ChromeOptions();
    options.setBinary(chromium.toFile());
    options.addArguments(
        "--headless=new",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-dev-shm-usage",
        "--window-size=1280,900",
        "--accept-lang=en-GB");
    LoggingPreferences logs = new LoggingPreferences();
    logs.enable(LogType.BROWSER, java.util.logging.Level.ALL);
    options.setCapability("goog:loggingPrefs", logs);
    ChromeDriverService service =
        new ChromeDriverService.Builder()
            .usingDriverExecutable(chromedriver.toFile())
            .usingAnyFreePort()
            .withTimeout(PATIENCE)
            .build();
    // An answer of the driver takes as long as the page load or script that it waits for.
    ClientConfig client = ClientConfig.defaultConfig().readTimeout(PATIENCE.multipliedBy(2));
    ChromeDriver driver = new ChromeDriver(service, options, client);
    driver.manage().timeouts().scriptTimeout(PATIENCE).pageLoadTimeout(PATIENCE);
    return new Browser(driver);
  }

  private static Path installed(String what, String... places) {
    Optional<Path> found = Stream.of(places).map(Path::of).filter(Files::isExecutable).findFirst();
    return found.orElseThrow(
        () ->
            new AssertionError(
                "The browser tests need the Debian packages chromium and chromium-driver; "
                    + what
                    + " is missing. Install them (apt-get install chromium chromium-driver) or"
                    + " leave the browser tests out with -Dbrowser.skip=true."));
  }

  void go(String address) {
    driver.get(address);
  }

  /** Waits for an element that the page, or a script of it, is about to show. */
  void await(String css) {
    until("there is " + css, () -> count(css) > 0);
  }

  long count(String css) {
    return ((Number) js("return document.querySelectorAll(arguments[0]).length", css)).longValue();
  }

  /** Read in one call, so that no script of the page replaces the element in between. */
  String text(String css) {
    return read(css, "innerText.trim()");
  }

  String value(String css) {
    return read(css, "value");
  }

  private String read(String css, String property) {
    String script =
        "const found = document.querySelector(arguments[0]);"
            + "return found === null ? null : String(found."
            + property
            + ")";
    return waiting(css).until(d -> (String) js(script, css));
  }

  /** A press that the page answers without leaving it. */
  void press(String css) {
    withElement(
        css,
        target -> {
          js("arguments[0].scrollIntoView({block: 'center'})", target);
          target.click();
        });
  }

  /** Writes a colour of the plug at full throttle into a machine's session, some times. */
  void read(String machine, String colour, int times) {
    for (int i = 0; i < times; i++) {
      driver.executeAsyncScript(
          "const [path, seen, done] = arguments;"
              + "fetch(path, {method: 'POST', redirect: 'manual',"
              + " body: new URLSearchParams({at: 'full', seen})}).then(() => done())",
          machine + "/session/reading",
          colour);
    }
  }

  /** A press that leads to another page; returns when that page is there. */
  void follow(String css) {
    leave(() -> press(css));
  }

  /** Types into a field and enters its form; returns when the page that answers is there. */
  void enter(String css, String text) {
    leave(() -> type(css, text, Keys.ENTER));
  }

  void type(String css, CharSequence... keys) {
    withElement(css, target -> target.sendKeys(keys));
  }

  void hover(String css) {
    withElement(css, target -> new Actions(driver).moveToElement(target).perform());
  }

  /** Steps on with the tab key until an attribute of what has the focus has a value. */
  void tabTo(String attribute, String value) {
    for (int i = 0; i < MOST_STEPS && !focused(attribute).equals(value); i++) {
      keys(Keys.TAB);
    }
    assertThat(focused(attribute)).isEqualTo(value);
  }

  /** Presses what has the focus; returns when the page to which that leads is there. */
  void enter() {
    leave(() -> keys(Keys.ENTER));
  }

  /** Sends keys to whatever has the focus. */
  void keys(CharSequence... keys) {
    driver.switchTo().activeElement().sendKeys(keys);
  }

  /** An attribute of what has the focus, or an empty text. */
  String focused(String attribute) {
    return String.valueOf(
        js("return document.activeElement.getAttribute(arguments[0]) || ''", attribute));
  }

  /** The click alone does not wait: without the mark the old page would be read. */
  private void leave(Runnable action) {
    js("window.oldPage = true");
    action.run();
    waiting("another page")
        .ignoring(WebDriverException.class)
        .until(
            d -> js("return window.oldPage === undefined && document.readyState === 'complete'"));
  }

  private void withElement(String css, Consumer<WebElement> action) {
    waiting(css)
        .until(
            d -> {
              Optional<WebElement> found = d.findElements(By.cssSelector(css)).stream().findFirst();
              found.ifPresent(action);
              return found.isPresent();
            });
  }

  void until(String what, BooleanSupplier holds) {
    waiting(what).until(d -> holds.getAsBoolean());
  }

  /** A script fails where the page under it is replaced, and is asked again on the new one. */
  private FluentWait<WebDriver> waiting(String what) {
    return new WebDriverWait(driver, PATIENCE)
        .ignoring(StaleElementReferenceException.class, JavascriptException.class)
        .withMessage(what);
  }

  void expectText(String css, String part) {
    until(css + " contains " + part, () -> text(css).contains(part));
  }

  String address() {
    return String.valueOf(driver.getCurrentUrl());
  }

  Object js(String script, Object... arguments) {
    return driver.executeScript(script, arguments);
  }

  /** The width and height of the view, as a phone's where it is narrow. */
  void view(int width, int height) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", width < 500));
    paint();
  }

  void media(String media, String scheme) {
    driver.executeCdpCommand(
        "Emulation.setEmulatedMedia",
        Map.of(
            "media",
            media,
            "features",
            List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
    paint();
  }

  /** The charts are drawn anew when a frame notices that the view or the scheme is another. */
  private void paint() {
    driver.executeAsyncScript(
        "const done = arguments[0];"
            + "requestAnimationFrame(() => requestAnimationFrame(() => done()))");
  }

  /** From now on, the languages that the browser asks for. */
  void asksFor(String languages) {
    driver.executeCdpCommand("Network.enable", Map.of());
    driver.executeCdpCommand(
        "Network.setExtraHTTPHeaders", Map.of("headers", Map.of("Accept-Language", languages)));
  }

  void forget(String cookie) {
    driver.manage().deleteCookieNamed(cookie);
  }

  /** From now on, how many bytes a second the browser sends at most; -1 for as many as it can. */
  void sendAt(int bytes) {
    driver.executeCdpCommand("Network.enable", Map.of());
    driver.executeCdpCommand(
        "Network.emulateNetworkConditions",
        Map.of(
            "offline", false, "latency", 0, "downloadThroughput", -1, "uploadThroughput", bytes));
  }

  /** By how much the page is wider than the view. */
  long overhang() {
    return ((Number)
            js(
                "return document.documentElement.scrollWidth - document.documentElement.clientWidth"))
        .longValue();
  }

  /** What the accessibility engine objects to, a line each. */
  @SuppressWarnings("unchecked")
  List<String> objections() {
    js(AXE);
    Object found =
        driver.executeAsyncScript(
            "const done = arguments[arguments.length - 1];"
                + "axe.run(document).then(r => done(r.violations.map("
                + "v => v.id + ': ' + v.nodes.map(n => n.html).join(' | '))))"
                + ".catch(e => done(['' + e]))");
    return (List<String>) found;
  }

  /** Everything that the browser complained about since the last time. */
  private List<String> complaints() {
    return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
        .map(Object::toString)
        .toList();
  }

  /** Forgets what was complained about until now. */
  void dropComplaints() {
    complaints();
  }

  void expectNoComplaint() {
    assertThat(complaints()).isEmpty();
  }

  /** Expects complaints about a refused request, and no others. */
  void expectRefusal(int status) {
    List<String> found = new ArrayList<>();
    until("complaint about " + status, () -> found.addAll(complaints()));
    assertThat(found).allMatch(line -> line.contains(String.valueOf(status)));
  }

  /** The page as it goes to the printer. */
  byte[] pdf() {
    Map<String, Object> printed =
        driver.executeCdpCommand("Page.printToPDF", Map.of("preferCSSPageSize", true));
    return Base64.getDecoder().decode(printed.get("data").toString());
  }

  /** Keeps what is seen as a picture of the README, where that was asked for. */
  void keep(String name) {
    keep(name, Map.of("format", "png"));
  }

  /** Keeps the whole page as a picture of the README, where that was asked for. */
  void keepWhole(String name) {
    js("window.scrollTo(0, 0)");
    Object height = js("return document.documentElement.scrollHeight");
    Object width = js("return window.innerWidth"); // the picture has no scroll bar
    Map<String, Object> page = Map.of("x", 0, "y", 0, "width", width, "height", height, "scale", 1);
    keep(name, Map.of("format", "png", "captureBeyondViewport", true, "clip", page));
  }

  private void keep(String name, Map<String, Object> how) {
    if (!Boolean.getBoolean("screenshots.update")) {
      return;
    }
    Map<String, Object> shot = driver.executeCdpCommand("Page.captureScreenshot", how);
    try {
      Path folder = Path.of(System.getProperty("basedir", ""), "screenshots");
      Files.createDirectories(folder);
      Files.write(
          folder.resolve(name + ".png"), Base64.getDecoder().decode(shot.get("data").toString()));
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  void expectNothingToObjectTo() {
    assertThat(objections()).isEmpty();
  }

  private static String script() {
    String resource = "/axe.min.js";
    try (InputStream in = Browser.class.getResourceAsStream(resource)) {
      return new String(
          Objects.requireNonNull(in, resource).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  @Override
  public void close() {
    driver.quit();
  }
}
