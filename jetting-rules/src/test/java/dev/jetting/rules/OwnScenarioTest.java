package dev.jetting.rules;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Sizes that common practice states are check values of tests and stand nowhere else: main code,
 * resources and documents have machines of their own.
 *
 * <p>One such size alone means nothing, since a series of jets runs through all of them. Two on
 * neighbouring lines or three in one file are the practice. Its needle jets, and in prose its main
 * jet, are found alone.
 */
class OwnScenarioTest {

  private static final Pattern READ =
      Pattern.compile(".*\\.(java|json|jsonl|csv|md|txt|xml|properties)");
  private static final Pattern PROSE = Pattern.compile(".*\\.(java|md)");
  private static final Pattern MAIN_IN_PROSE =
      Pattern.compile("\\bmain (jet )?126\\b|\\b126 hundredths|(?<![\\d.])1\\.26 ?mm\\b(?!²)");

  private enum Size {
    DISPLACEMENT(
        "\\b(200|210) ?(cm³(?!/)|cc\\b)|ofCubicCentimetres\\((200|210)\\)"
            + "|\\b(an?|invented|standard|tuned|plain|V)[ -](200|210)\\b"),
    BORE(
        "(?<![\\d.])(27|30|34|39)(\\.0)? ?mm\\b(?!²)|ofMillimetres\\((27|30|34|39)\\)"
            + "|\\bD 30\\b|slide-30\\b"),
    NEEDLE_JET(
        "(?<![\\d.])2\\.6[468]0? ?mm\\b|ofMillimetres\\(2\\.6[468]\\)|\"value\": 2\\.6[468]\\b"
            + "|needle jet (of )?2\\.6[468]\\b"),
    MAIN_JET(
        "(?<![\\d.])1\\.(2[5-8]|3[5-9]|4[0-5])0? ?mm\\b(?!²)"
            + "|ofMillimetres\\(1\\.(2[5-8]|3[5-9]|4[0-5])\\)"
            + "|\\bmain (jet )?(of )?(1\\.)?(12[5-8]|13[5-9]|14[0-5])\\b"
            + "|\\bmain (jet )?1\\.2[5-8]\\b"
            + "|ofHundredths\\(12[5-8]|(?<![\\d.])12[5-8] (hundredths|1/100)"),
    PILOT_JET(
        "(?<![\\d.])0\\.550? ?mm\\b(?!²)|ofMillimetres\\(0\\.55\\)"
            + "|\\bpilot (jet )?(of )?(0\\.)?55\\b|(?<![\\d.])55 hundredths"),
    CUTAWAY(
        "\"cutaway\": \"4(\\.0)? ?mm\"|\\bcutaway (of )?40\\b|Cutaway\\.ofMillimetres\\(4(\\.0)?\\)"
            + "|(?<![\\d.])40 (tenths|1/10)|\\bc 4\\.0\\b");

    private final Pattern written;

    Size(String written) {
      this.written = Pattern.compile(written);
    }

    static Set<Size> in(String text) {
      Set<Size> found = EnumSet.noneOf(Size.class);
      for (Size size : values()) {
        if (size.written.matcher(text).find()) {
          found.add(size);
        }
      }
      return found;
    }
  }

  @Test
  void codeResourcesAndDocuments_haveNoSettingOfCommonPractice() throws IOException {
    List<Path> files = RepositoryFiles.matchingOutsideTests(READ);
    assertThat(files).hasSizeGreaterThan(300);
    assertThat(files).anyMatch(file -> file.endsWith("MODEL.md"));
    assertThat(files).anyMatch(file -> file.endsWith("tuned-123.json"));

    List<String> found = new ArrayList<>();
    for (Path file : files) {
      found.addAll(found(file.toString(), Files.readString(file, UTF_8).lines().toList()));
    }
    assertThat(found).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "a needle jet of 2.66 mm",
        "NeedleJet.of(Diameter.ofMillimetres(2.68))",
        "prints main 126",
        "an engine of 200 cm³\nwith a bore of 30 mm",
        "pilot 55, cutaway 40",
        "main 1.27 mm\n\n\nfor a standard 200\n\n\n\"pilotJet\": \"0.55 mm\""
      })
  void settingOfCommonPractice_isFound(String text) {
    assertThat(found("A.md", text.lines().toList())).isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "lean at the end 2.66 % (1.26 % to 4.4 %)",
        "0.55 mm²/s",
        "names of 200, texts of 10 000",
        "mains of 1.24 mm\n1.27 mm\n1.3 mm\n\n\ntip 30 mm",
        "air of 30 kPa at 27 °C"
      })
  void otherNumbers_areNot(String text) {
    assertThat(found("A.md", text.lines().toList())).isEmpty();
  }

  private static List<String> found(String file, List<String> lines) {
    List<String> found = new ArrayList<>();
    boolean prose = PROSE.matcher(file).matches();
    Set<Size> inFile = EnumSet.noneOf(Size.class);
    Set<Size> before = Set.of();
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      Set<Size> sizes = Size.in(line);
      Set<Size> together = EnumSet.copyOf(sizes);
      together.addAll(before);
      boolean here = !sizes.isEmpty() && together.size() > 1;
      boolean main = prose && MAIN_IN_PROSE.matcher(line).find();
      if (here || main || sizes.contains(Size.NEEDLE_JET)) {
        found.add(file + ":" + (i + 1) + " " + together + " " + line.strip());
      }
      inFile.addAll(sizes);
      before = sizes;
    }
    if (inFile.size() > 2) {
      found.add(file + " " + inFile);
    }
    return found;
  }
}
