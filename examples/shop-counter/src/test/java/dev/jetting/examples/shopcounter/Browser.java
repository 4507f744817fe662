package dev.jetting.examples.shopcounter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.support.ui.WebDriverWait;

/** One visitor's browser: the system's Chromium without a window. */
final class Browser implements AutoCloseable {

  private static final String AXE = script();

  /** Long enough for a machine that is busy with other things. */
  private static final Duration PATIENCE = Duration.ofMinutes(2);

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
        "--window-size=1280,900");
    LoggingPreferences logs = new LoggingPreferences();
    logs.enable(LogType.BROWSER, java.util.logging.Level.ALL);
    options.setCapability("goog:loggingPrefs", logs);
    ChromeDriverService service =
        new ChromeDriverService.Builder()
            .usingDriverExecutable(chromedriver.toFile())
            .usingAnyFreePort()
            .build();
    ChromeDriver driver = new ChromeDriver(service, options);
    driver.manage().timeouts().scriptTimeout(PATIENCE);
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

  WebElement find(String css) {
    return new WebDriverWait(driver, PATIENCE)
        .until(d -> d.findElements(By.cssSelector(css)).stream().findFirst().orElse(null));
  }

  List<WebElement> all(String css) {
    return driver.findElements(By.cssSelector(css));
  }

  String text(String css) {
    return find(css).getText();
  }

  void press(String css) {
    WebElement target = find(css);
    js("arguments[0].scrollIntoView({block: 'center'})", target);
    target.click();
  }

  void type(String css, CharSequence... keys) {
    find(css).sendKeys(keys);
  }

  /** Sends keys to whatever has the focus. */
  void keys(CharSequence... keys) {
    driver.switchTo().activeElement().sendKeys(keys);
  }

  WebElement focused() {
    return driver.switchTo().activeElement();
  }

  void until(String what, java.util.function.BooleanSupplier holds) {
    new WebDriverWait(driver, PATIENCE)
        .ignoring(org.openqa.selenium.StaleElementReferenceException.class)
        .withMessage(what)
        .until(d -> holds.getAsBoolean());
  }

  void waitForText(String css, String part) {
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
  }

  void media(String media, String scheme) {
    driver.executeCdpCommand(
        "Emulation.setEmulatedMedia",
        Map.of(
            "media",
            media,
            "features",
            List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
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
  List<String> complaints() {
    return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
        .map(Object::toString)
        .toList();
  }

  /** The page as it goes to the printer. */
  byte[] pdf() {
    Map<String, Object> printed =
        driver.executeCdpCommand("Page.printToPDF", Map.of("preferCSSPageSize", true));
    return Base64.getDecoder().decode(printed.get("data").toString());
  }

  /** Keeps what is seen as a picture of the README, where that was asked for. */
  void keep(String name) {
    if (!Boolean.getBoolean("screenshots.update")) {
      return;
    }
    Map<String, Object> shot =
        driver.executeCdpCommand("Page.captureScreenshot", Map.of("format", "png"));
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
