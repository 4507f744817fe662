package dev.jetting.rules;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Words that make a sentence personify, invert or elide stand nowhere in the project: not in
 * sources, tests, resources or documents. Sentences of documents are short.
 */
class PlainWordsTest {

  private static final Pattern READ =
      Pattern.compile(".*\\.(java|json|jsonl|csv|md|txt|xml|properties|html|js|css|sql|yml)");
  private static final Pattern DOCUMENT = Pattern.compile(".*\\.md");

  /** What may stand between two words of a sentence: blanks, a line of a comment or of a text. */
  private static final String GAP = "(?:\\n\\s*(?:\\*|//)|\\s|\"\\s*\\+\\s*\")+";

  private static final Pattern NOT_PLAIN =
      Pattern.compile(
          ("\\b(?:told|tell|tells|telling|foretold|foretells?|reckon|reckons|reckoned|reckoning"
                  + "|whoever|nobody's business|of which|what came of|but for|goes by|go by"
                  + "|so many|stands for|stand for)\\b")
              .replace(" ", GAP),
          Pattern.CASE_INSENSITIVE);

  private static final int MOST_WORDS = 30;
  private static final int MOST_WORDS_OF_JAVADOC = 32;

  private static final Pattern SOURCE = Pattern.compile(".*/src/main/java/.*\\.java");
  private static final Pattern JAVADOC = Pattern.compile("/\\*\\*(.*?)\\*/", Pattern.DOTALL);
  private static final Pattern LINE = Pattern.compile("\\n\\s*\\* ?");
  private static final Pattern PREFORMATTED = Pattern.compile("<pre>.*?</pre>", Pattern.DOTALL);
  private static final Pattern INLINE_TAG = Pattern.compile("\\{@(?!return)\\w+\\s[^{}]*}");
  private static final Pattern BLOCK =
      Pattern.compile(
          "</?(?:p|li|ul|ol|tr|td|th|table|h\\d)\\b[^>]*>|(?<=\\n"
              + ")@(?:param \\S+|throws \\S+|return)|\\{@return");
  private static final Pattern MARKUP = Pattern.compile("</?\\w+[^>]*>");
  private static final Pattern PARAGRAPH = Pattern.compile("\\n\\s*\\n");
  private static final Pattern CLAUSE_END = Pattern.compile("(?<=[.!?;]) ");

  private static final Pattern WORD = Pattern.compile("[\\p{L}][\\p{L}\\p{N}'’/-]*");
  private static final Pattern NO_PROSE = Pattern.compile("(?:\\||#|<!--|!\\[|---).*");
  private static final Pattern ITEM = Pattern.compile("(?:[-*]|\\d+\\.)\\s+(.*)");
  private static final Pattern CODE = Pattern.compile("`[^`]*`");
  private static final Pattern LINK_TARGET = Pattern.compile("\\]\\([^)]*\\)");
  private static final Pattern SENTENCE_END =
      Pattern.compile("(?<=[.!?])[\"”)*]*\\s+(?=[\"“(*\\[`]*(?:[\\p{Lu}\\p{N}λ`]|jetting\\b))");

  @Test
  void everyFile_hasPlainWordsOnly() throws IOException {
    List<Path> files = RepositoryFiles.matching(READ);
    assertThat(files)
        .hasSizeGreaterThan(900)
        .anyMatch(file -> file.endsWith("MODEL.md"))
        .anyMatch(file -> file.endsWith("report.schema.json"))
        .anyMatch(file -> file.endsWith("StandardRulesTest.java"));

    List<String> found = new ArrayList<>();
    for (Path file : files) {
      if (!file.endsWith("PlainWordsTest.java")) {
        found.addAll(notPlain(file.toString(), Files.readString(file, UTF_8)));
      }
    }
    assertThat(found).isEmpty();
  }

  @Test
  void everyDocument_hasShortSentences() throws IOException {
    List<Path> files = RepositoryFiles.matchingOutsideTests(DOCUMENT);
    assertThat(files).hasSizeGreaterThan(60).anyMatch(file -> file.endsWith("DECISIONS.md"));

    List<String> found = new ArrayList<>();
    for (Path file : files) {
      found.addAll(tooLong(file.toString(), Files.readString(file, UTF_8).lines().toList()));
    }
    assertThat(found).isEmpty();
  }

  @Test
  void everyJavadoc_hasShortSentences() throws IOException {
    List<Path> files = RepositoryFiles.matchingOutsideTests(SOURCE);
    assertThat(files).hasSizeGreaterThan(400).anyMatch(file -> file.endsWith("Report.java"));

    List<String> found = new ArrayList<>();
    for (Path file : files) {
      found.addAll(tooLongInJavadoc(file.toString(), Files.readString(file, UTF_8)));
    }
    assertThat(found).isEmpty();
  }

  @Test
  void sentenceOfMoreWordsInJavadoc_isFound() {
    String longest = "Then " + "word ".repeat(MOST_WORDS_OF_JAVADOC - 2) + "end.";
    String comment = "/**\n * Short. And %s\n *\n * @param x %s\n * @return {@code a b} %s\n */";
    assertThat(tooLongInJavadoc("A.java", comment.formatted(longest, longest, longest)))
        .hasSize(2)
        .allMatch(found -> found.startsWith("A.java: 33 words: "));
    assertThat(tooLongInJavadoc("A.java", "// " + longest + " " + longest)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "A setting with the floats set as nobody told",
        "/** Tells whether it is so. */",
        "   * settings, of\n   * which one is right",
        "    // a part, but\n    // for its size",
        "\"in plain words, so\"\n        + \" many\"",
        "int told = 1;",
        ".with(\"told\", kind)",
        "It stands\nfor another."
      })
  void wordThatIsNotPlain_isFound(String text) {
    assertThat(notPlain("A.java", text)).hasSize(1);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "A setting with an unknown float level",
        "the needle of a kit, which fits",
        "a teller, a storyteller, ofWhich, isTold"
      })
  void otherWords_areNot(String text) {
    assertThat(notPlain("A.java", text)).isEmpty();
  }

  @Test
  void foundWord_isNamedWithFileAndLine() {
    assertThat(notPlain("A.md", "One.\nTwo.\nAs he\nwas told.\n"))
        .containsExactly("A.md:4: \"told\"");
  }

  @Test
  void sentenceOfMoreWords_isFoundWithItsFirstLine() {
    String longest = "Then " + "word ".repeat(MOST_WORDS - 2) + "end.";
    List<String> text = List.of("# Heading", "", "Short. " + longest, "And " + longest, "Short.");
    assertThat(tooLong("A.md", text))
        .singleElement()
        .asString()
        .startsWith("A.md:3: 31 words: And Then word");
    assertThat(tooLong("A.md", List.of("- " + longest, "- " + longest, "", longest))).isEmpty();
  }

  @Test
  void tableCodeAndNames_areNoSentence() {
    String many = "word ".repeat(50);
    assertThat(
            tooLong(
                "A.md",
                List.of(
                    "| " + many + " |",
                    "",
                    "```",
                    many,
                    "```",
                    "It names " + "`name`, ".repeat(50) + "and no more.")))
        .isEmpty();
  }

  private static List<String> notPlain(String file, String text) {
    return NOT_PLAIN
        .matcher(text)
        .results()
        .map(
            found ->
                file
                    + ":"
                    + line(text, found.start())
                    + ": \""
                    + found.group().replaceAll(GAP, " ")
                    + '"')
        .toList();
  }

  private static long line(String text, int index) {
    return 1 + text.chars().limit(index).filter(character -> character == '\n').count();
  }

  private static List<String> tooLong(String file, List<String> lines) {
    List<String> found = new ArrayList<>();
    StringBuilder paragraph = new StringBuilder();
    int first = 0;
    boolean code = false;
    for (int i = 0; i <= lines.size(); i++) {
      String line = i == lines.size() ? "" : lines.get(i).strip();
      boolean fence = line.startsWith("```");
      code ^= fence;
      var item = ITEM.matcher(line);
      boolean begins = item.matches();
      if (code || fence || line.isEmpty() || begins || NO_PROSE.matcher(line).matches()) {
        found.addAll(tooLong(file + ":" + (first + 1), paragraph.toString()));
        paragraph.setLength(0);
        line = begins && !code ? item.group(1) : "";
      }
      if (paragraph.isEmpty()) {
        first = i;
      }
      paragraph.append(line).append(line.isEmpty() ? "" : " ");
    }
    return found;
  }

  private static List<String> tooLong(String place, String paragraph) {
    return SENTENCE_END
        .splitAsStream(LINK_TARGET.matcher(paragraph).replaceAll("]"))
        .map(sentence -> new Sentence(sentence.strip(), words(sentence)))
        .filter(sentence -> sentence.words() > MOST_WORDS)
        .map(sentence -> place + ": " + sentence.words() + " words: " + sentence.text())
        .toList();
  }

  /**
   * A tag's text begins a sentence; an inline tag counts as one word; a semicolon ends a clause.
   */
  private static List<String> tooLongInJavadoc(String file, String code) {
    return JAVADOC
        .matcher(code)
        .results()
        .map(comment -> LINE.matcher(comment.group(1)).replaceAll("\n"))
        .map(
            text ->
                INLINE_TAG.matcher(PREFORMATTED.matcher(text).replaceAll("\n\n")).replaceAll("X"))
        .map(text -> MARKUP.matcher(BLOCK.matcher(text).replaceAll("\n\n")).replaceAll(""))
        .flatMap(PARAGRAPH::splitAsStream)
        .map(paragraph -> paragraph.replaceAll("\\s+", " ").strip())
        .flatMap(CLAUSE_END::splitAsStream)
        .filter(sentence -> words(sentence) > MOST_WORDS_OF_JAVADOC)
        .map(sentence -> file + ": " + words(sentence) + " words: " + sentence)
        .toList();
  }

  private record Sentence(String text, long words) {}

  private static long words(String sentence) {
    return WORD.matcher(CODE.matcher(sentence).replaceAll(" ")).results().count();
  }
}
