package dev.jetting.examples.shopcounter;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The language of a page: the visitor's choice, else what the browser asks for, else English. */
class LanguageTest {

  private static final Locale MACHINE = Locale.getDefault();

  private static Running counter;

  /** On a machine of a language that no page has, whose small and capital letters differ too. */
  @BeforeAll
  static void start() {
    Locale.setDefault(Locale.forLanguageTag("tr-TR"));
    counter = Running.start();
  }

  @AfterAll
  static void stop() {
    counter.close();
    Locale.setDefault(MACHINE);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "de | de",
        "de-AT, de;q=0.9, en;q=0.5 | de",
        "fr-CH, it;q=0.8, en;q=0.5 | it",
        "en-GB | en",
        "de;q=0, it;q=0.1 | it",
        "tr | en",
        "* | en",
        "; q | en"
      })
  void browser_decidesWhereNothingWasChosen(String asked, String tag) {
    HttpResponse<String> answer = get("/", "Accept-Language", asked);
    assertThat(answer.body()).contains("<html lang=\"" + tag + "\">");
    assertThat(answer.headers().firstValue("Content-Language")).hasValue(tag);
  }

  @Test
  void page_isEnglishWhereNothingIsAsked_whateverTheMachineSpeaks() {
    assertThat(counter.get("a", "/").body())
        .contains("<html lang=\"en\">", "Which machine is on the bench?");
  }

  @Test
  void choice_holds_whateverTheBrowserAsks() {
    HttpResponse<String> chosen = counter.get("a", "/language/it?to=%2Fkits");
    assertThat(chosen.statusCode()).isEqualTo(303);
    assertThat(chosen.headers().firstValue("Location").orElseThrow()).endsWith("/kits");
    String cookie = chosen.headers().firstValue("Set-Cookie").orElseThrow();
    assertThat(cookie).startsWith("language=it;").contains("Max-Age=31536000", "HttpOnly");
    HttpResponse<String> answer =
        get("/kits", "Cookie", cookie.replaceAll(";.*", ""), "Accept-Language", "de");
    assertThat(answer.body()).contains("<html lang=\"it\">", "Questo kit si può vendere?");
  }

  @Test
  void choice_isNotOfALanguageThatThereIsNot() {
    assertThat(counter.get("a", "/language/tr").statusCode()).isEqualTo(404);
    assertThat(get("/", "Cookie", "language=tr", "Accept-Language", "de").body())
        .contains("<html lang=\"de\">");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "https%3A%2F%2Felsewhere.example%2F",
        "%2F%2Felsewhere.example%2F",
        "%2F%5Celsewhere.example",
        "%2Fa%0D%0ASet-Cookie%3A%20x",
        "elsewhere.example"
      })
  void choice_leadsToNoOtherSite(String to) {
    HttpResponse<String> answer = counter.get("a", "/language/de?to=" + to);
    String location = answer.headers().firstValue("Location").orElseThrow();
    assertThat(location.replace(counter.address(""), "")).isEqualTo("/");
  }

  /** The way to a language leads back to what is looked at, with what was changed there. */
  @Test
  void way_leadsBackToThePage() {
    String machine = counter.demo("a", "lean-in-the-middle");
    assertThat(counter.get("a", machine + "?main=100").body())
        .contains("/language/de?to=" + machine.replace("/", "%2F") + "%3Fmain%3D100\"");
  }

  /** Where a form was refused, the way leads to the page on which it stands. */
  @Test
  void way_leadsBackToTheForm_whereItWasRefused() {
    HttpRequest.Builder form =
        counter
            .request("a", "/machines")
            .header("Accept", "text/html")
            .header("Referer", counter.address("/machines/new"))
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(BodyPublishers.ofString("bore=24"));
    assertThat(counter.send(form).body()).contains("/language/it?to=%2Fmachines%2Fnew\"");
  }

  @Test
  void everythingOnAMachine_isInTheLanguage() {
    String machine = counter.demo("g", "lean-in-the-middle");
    assertThat(german(machine))
        .contains("Nicht fahren", "Hauptdüse", "Nadelposition", "Magerrisiko", "Leerlaufdüse")
        .doesNotContain("lean risk", "Main jet");
    assertThat(german(machine + "/plan")).contains("Schritt 1", "einbauen statt");
    assertThat(german(machine + "/session"))
        .contains("Vor der ersten Fahrt nachsehen", "rehbraun", "Falschluft");
    assertThat(german(machine + "/session/words")).contains("Magerrisiko am schlimmsten Tag");
    assertThat(german(machine + "/known")).contains("ist angegeben");
    assertThat(german(machine + "/cards")).contains("Wetterkarte", "die Hand an der Kupplung");
    assertThat(german(machine + "/nothing")).contains("<h1>Nicht gefunden</h1>");
    assertThat(german(machine + "?main=97"))
        .contains("Hauptdüse „97“: gibt es nicht. Erlaubt: 92, 96");
  }

  /** What the program wrote into the log is read in the language of the reader, a note as typed. */
  @Test
  void log_isInTheLanguageOfTheReader() {
    String machine = counter.demo("g", "lean-in-the-middle");
    counter.postForm("g", machine + "/setting", Map.of("main", "100"));
    counter.postForm("g", machine + "/session/reading", Map.of("at", "full", "seen", "brown"));
    counter.postForm("g", machine + "/log", Map.of("note", "New plug"));
    assertThat(counter.get("g", machine + "/log").body())
        .contains("Main jet 96 → 100", "a brown plug at full throttle", "New plug");
    assertThat(german(machine + "/log"))
        .contains("Hauptdüse 96 → 100", "eine rehbraune Kerze bei Vollgas", "New plug");
  }

  /** Whatever the language in which the check was begun. */
  @Test
  @Timeout(300)
  void kits_areInTheLanguageOfTheReader() throws InterruptedException {
    HttpResponse<String> begun =
        counter.postForm("g", "/kits", Map.of("depth", "fit", "kits", "{\"x\": 1}"));
    String check = begun.headers().firstValue("Location").orElseThrow();
    String path = URI.create(check).getPath();
    while (!german(path).contains("Fertig")) {
      Thread.sleep(50);
    }
    assertThat(german(path))
        .contains("class=\"kit no_kit\"", "Zeile 1", "kein Satz", "0 bestehen nicht, 1 sind keine");
    assertThat(counter.get("g", path).body()).contains("Line 1", "no kit");
  }

  @Test
  void errorsOfTheLibrary_areInTheLanguage() {
    HttpRequest.Builder form =
        counter
            .request("g", "/machines")
            .header("Accept", "text/html")
            .header("Accept-Language", "de")
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(BodyPublishers.ofString("bore=24&clip=Dritte&main=abc&height=1.500+m"));
    assertThat(counter.send(form).body())
        .contains("Noch nicht", "Das fehlt noch.", "„1.500 m“ ist zweideutig")
        .contains("Nadelposition \"Dritte\" ist nicht lesbar<", "z. B. 3 von oben")
        .doesNotContain("allowed", "from top");
  }

  /** A program without the header reads English; the numbers are the same in each language. */
  @Test
  void program_asksForALanguageByTheHeader() throws IOException {
    String sheet = counter.get("p", sheet()).body();
    JsonNode english = report(sheet, "en");
    JsonNode german = report(sheet, "de");
    assertThat(report(sheet, "tr")).isEqualTo(english);
    assertThat(german.path("days")).isEqualTo(english.path("days"));
    assertThat(german.path("verdict")).isEqualTo(english.path("verdict"));
    assertThat(english.path("sentence").asText()).startsWith("The lean risk is");
    assertThat(german.path("sentence").asText()).startsWith("Höchstes Magerrisiko: ");
  }

  private static String sheet() {
    return "/api" + counter.demo("p", "lean-in-the-middle");
  }

  private static JsonNode report(String sheet, String language) throws IOException {
    HttpRequest.Builder request =
        counter
            .request("p", "/api/report")
            .header("Accept-Language", language)
            .POST(BodyPublishers.ofString(sheet));
    return new ObjectMapper().readTree(counter.send(request).body());
  }

  private static String german(String path) {
    return get(path, "Accept-Language", "de-AT", "Accept", "text/html")
        .body()
        .replace("&#34;", "\"")
        .replace("&#39;", "'");
  }

  private static HttpResponse<String> get(String path, String... headers) {
    return counter.send(counter.request("g", path).headers(headers).GET());
  }
}
