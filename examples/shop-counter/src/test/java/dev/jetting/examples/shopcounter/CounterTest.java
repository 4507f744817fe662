package dev.jetting.examples.shopcounter;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.jetting.examples.shopcounter.web.Limits;
import java.net.URLEncoder;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CounterTest {

  /** A line of the weather card: main jet, clip, screw, temperature and height. */
  private static final Pattern RANGE =
      Pattern.compile(
          "<b>main (\\d+), clip (\\d), screw ([^<]+)</b></td><td>[^<]+</td>"
              + "<td>(-?\\d+) °C at (\\d+) m<");

  private static Running counter;

  @BeforeAll
  static void start() {
    counter = Running.start();
  }

  @AfterAll
  static void stop() {
    counter.close();
  }

  @Test
  void policy_allowsNoInlineScriptAndNothingFromOutside() {
    String policy =
        counter.get("a", "/").headers().firstValue("Content-Security-Policy").orElseThrow();
    assertThat(policy)
        .contains("default-src 'none'", "script-src 'self';", "style-src 'self';")
        .doesNotContain("unsafe", "http:", "https:", "*", "data:");
  }

  @Test
  void pages_nameNothingFromOutside() {
    String machine = counter.demo("a", "lean-in-the-middle");
    assertThat(counter.get("a", machine).body()).doesNotContain("http://", "https://", "style=");
  }

  @Test
  void machine_ofAnotherVisitor_isNotFound() {
    String machine = counter.demo("a", "mild-all-round");
    assertThat(counter.get("a", machine).statusCode()).isEqualTo(200);
    assertThat(counter.get("b", machine).statusCode()).isEqualTo(404);
    assertThat(counter.get("b", machine + "/log").statusCode()).isEqualTo(404);
    assertThat(counter.postForm("b", machine + "/remove", Map.of()).statusCode()).isEqualTo(404);
    assertThat(counter.get("a", machine).statusCode()).isEqualTo(200);
    assertThat(counter.get("b", "/").body()).doesNotContain(machine);
  }

  @Test
  void session_isToldInWordsAsPlainText() {
    String machine = counter.demo("a", "mild-all-round");
    HttpResponse<String> words = counter.get("a", machine + "/session/words");
    assertThat(words.headers().firstValue("Content-Type").orElseThrow()).startsWith("text/plain");
    assertThat(words.body()).contains("Milk cart").doesNotContain("<p");
  }

  /** In the densest air that the card names for a setting, the picture accepts it too. */
  @ParameterizedTest
  @ValueSource(strings = {"mild-all-round", "tuned-on-mild-main"})
  void weatherCard_namesAirInWhichThePictureAcceptsTheSetting(String demo) {
    String machine = counter.demo("w", demo);
    List<MatchResult> ranges =
        RANGE.matcher(counter.get("w", machine + "/cards").body()).results().toList();
    assertThat(ranges).isNotEmpty();
    for (MatchResult range : ranges) {
      Map<String, String> day =
          Map.of("temperature", range.group(4) + " C", "height", range.group(5) + " m");
      assertThat(counter.postForm("w", machine + "/session/day", day).statusCode()).isEqualTo(303);
      String query =
          "?main="
              + range.group(1)
              + "&clip="
              + range.group(2)
              + "%20of%205%20from%20top"
              + "&screw="
              + URLEncoder.encode(range.group(3), UTF_8)
              + (range.group(3).equals("1") ? "%20turn" : "%20turns");
      assertThat(counter.get("w", machine + query).body())
          .as(range.group())
          .contains("<label class=\"\"><input type=\"radio\" name=\"day\" value=\"today\"");
    }
  }

  @Test
  void note_withMarkup_isShownAsTyped() {
    String machine = counter.demo("a", "mild-all-round");
    counter.postForm("a", machine + "/log", Map.of("note", "<script>alert(1)</script> & \"so\""));
    assertThat(counter.get("a", machine + "/log").body())
        .contains("&lt;script&gt;alert(1)&lt;/script&gt; &amp;")
        .doesNotContain("<script>alert");
  }

  @Test
  void change_fromAnotherSite_isRefused() {
    HttpRequest.Builder request =
        counter
            .request("a", "/machines/demo/mild-all-round")
            .header("Origin", "http://elsewhere.example")
            .POST(HttpRequest.BodyPublishers.noBody());
    assertThat(counter.send(request).statusCode()).isEqualTo(403);
  }

  @Test
  void part_thatDoesNotExist_isNamedWithThoseThatDo() throws Exception {
    String machine = counter.demo("a", "lean-in-the-middle");
    HttpResponse<String> answer = counter.get("a", machine + "?main=97");
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.headers().firstValue("Content-Type")).hasValue("application/problem+json");
    JsonNode problem = new ObjectMapper().readTree(answer.body());
    assertThat(problem.path("status").asInt()).isEqualTo(422);
    assertThat(problem.path("instance").asText()).isEqualTo(machine);
    assertThat(problem.path("detail").asText())
        .isEqualTo(
            "Main jet \"97\": there is none. Allowed: 92, 96, 100, 104, 108, 110, 114, 118.");
  }

  @Test
  void sheet_thatCannotBeRead_isRefusedWithItsPlace() {
    HttpResponse<String> answer =
        counter.postForm("a", "/machines/sheet", Map.of("sheet", "{\"format\": 1}"));
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains("\"allowed\"", "\"line\"").doesNotContain("Exception");
  }

  @Test
  void person_getsAPageWhereSomethingIsWrong() {
    HttpRequest.Builder request = counter.request("a", "/nothing").header("Accept", "text/html");
    HttpResponse<String> answer = counter.send(request.GET());
    assertThat(answer.statusCode()).isEqualTo(404);
    assertThat(answer.body()).contains("<h1>Not found</h1>");
  }

  @Test
  void body_thatIsTooLong_isRefused() {
    String sheet = "x".repeat(Running.WIDE.kitBytes() + 1);
    assertThat(counter.postForm("a", "/machines/sheet", Map.of("sheet", sheet)).statusCode())
        .isEqualTo(413);
  }

  @Test
  void requests_beyondTheRate_areRefusedUntilLater() {
    try (Running narrow = Running.start(new Limits(3, 0.01, 1000, 1000, 1, 1))) {
      for (int i = 0; i < 3; i++) {
        assertThat(narrow.get("a", "/").statusCode()).isEqualTo(200);
      }
      HttpResponse<String> answer = narrow.get("a", "/");
      assertThat(answer.statusCode()).isEqualTo(429);
      assertThat(Integer.parseInt(answer.headers().firstValue("Retry-After").orElseThrow()))
          .isPositive();
    }
  }
}
