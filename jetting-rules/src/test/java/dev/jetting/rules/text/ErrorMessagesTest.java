package dev.jetting.rules.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import dev.jetting.rules.json.SheetJson;
import dev.jetting.units.Diameter;
import dev.jetting.units.Refusal;
import dev.jetting.units.RiderInput;
import dev.jetting.units.Sentence;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.Locale;
import java.util.Map;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

/** Errors of readers in each language. */
class ErrorMessagesTest {

  private static final Wording GERMAN = Wording.of(Locale.GERMAN);
  private static final Wording ITALIAN = Wording.of(Locale.ITALIAN);

  private static IllegalArgumentException error(ThrowingCallable code) {
    return catchThrowableOfType(IllegalArgumentException.class, code);
  }

  @Test
  void whatARiderTyped_isRefusedInHisLanguage() {
    IllegalArgumentException jet = error(() -> RiderInput.mainJet("1200"));
    assertThat(jet)
        .hasMessage(
            "main jet \"1200\" is ambiguous: did you mean 1.2 mm? Write it so, with its unit.");
    assertThat(GERMAN.text(jet))
        .isEqualTo(
            "Hauptdüse \"1200\" ist mehrdeutig: Ist 1.2 mm gemeint? Bitte so schreiben, mit der"
                + " Einheit.");

    IllegalArgumentException comma = error(() -> RiderInput.temperature("20,5,1 C"));
    assertThat(GERMAN.text(comma))
        .isEqualTo(
            "Temperatur \"20,5,1 C\" ist nicht lesbar (Punkt statt Komma schreiben);"
                + " zum Beispiel: 20 °C, 20 C oder 68F");
    assertThat(Wording.english().text(comma)).isEqualTo(comma.getMessage());
  }

  @Test
  void document_isRefusedWithItsPlaceInEachLanguage() {
    IllegalArgumentException missing =
        error(() -> SheetJson.read("{\"format\": \"jetting setup sheet\"}"));
    assertThat(missing).hasMessage("$.schemaVersion: missing: allowed 1");
    assertThat(GERMAN.text(missing)).isEqualTo("$.schemaVersion: fehlt; erlaubt: 1");
    assertThat(ITALIAN.text(missing)).isEqualTo("$.schemaVersion: manca; ammesso: 1");
  }

  @Test
  void message_hasKeyAndValues() {
    IllegalArgumentException error = error(() -> Diameter.ofMillimetres(-3));
    Message message = Message.of(error);

    assertThat(message.key()).isEqualTo("error.allowed");
    assertThat(message.arguments().get("allowed"))
        .isEqualTo(
            Argument.words(
                Message.of("error.above-up-to")
                    .with("low", Argument.name("0"))
                    .with("high", Argument.name("1000 mm"))));
    assertThat(Refusal.of(error).part("problem").orElseThrow().arguments())
        .containsEntry("what", Sentence.of("error.name.diameter"))
        .containsEntry("value", new Sentence.Amount(-3, "mm"));
  }

  @Test
  void errorOfOthers_staysAsItIs() {
    IllegalArgumentException other = new IllegalArgumentException("No such thing as {limit}");
    assertThat(GERMAN.text(other)).isEqualTo("No such thing as {limit}");
    assertThat(GERMAN.text(new IllegalArgumentException())).isEqualTo("null");
  }

  /** A line that reads like one of this library's is not taken for one. */
  @Test
  void lineOfOthers_isNotRead() {
    String line = "$.title: missing: allowed a text";
    assertThat(GERMAN.text(new IllegalArgumentException(line))).isEqualTo(line);
  }

  @Test
  void wordsOfAShop_areUsedForErrorsToo() {
    Wording shop = GERMAN.with(Map.of("error.missing", "nicht angegeben"));
    assertThat(shop.text(error(() -> SheetJson.read("{\"format\": \"jetting setup sheet\"}"))))
        .isEqualTo("$.schemaVersion: nicht angegeben; erlaubt: 1");
  }

  @Test
  void quotedText_neverFillsASlot() {
    IllegalArgumentException error = error(() -> RiderInput.mainJet("{sample} {what}"));
    assertThat(error).hasMessageStartingWith("main jet \"{sample} {what}\" cannot be read");
    assertThat(GERMAN.text(error)).startsWith("Hauptdüse \"{sample} {what}\" ist nicht lesbar");
  }

  @Test
  void writtenError_keepsItsLine() throws Exception {
    IllegalArgumentException error = error(() -> SheetJson.read("{}"));
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(error);
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      IllegalArgumentException read = (IllegalArgumentException) in.readObject();
      assertThat(read).hasMessage(error.getMessage());
      assertThat(GERMAN.text(read)).isEqualTo(error.getMessage());
    }
  }
}
