package leadlight;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Sentences are made of codes in {@code leadlight.text} and never read back: what a program needs
 * to know it takes from the code and its arguments.
 */
class CodesNotProseTest {

  private static final Path SOURCES = Path.of("src/main/java/leadlight");

  /** Ways to take a text apart. */
  private static final Pattern TAKES_APART =
      Pattern.compile(
          "java\\.util\\.regex|\\.split\\(|\\.replaceAll\\(|\\.replaceFirst\\(|\\.matches\\("
              + "|\\.indexOf\\(\"|\\.substring\\(");

  /** Ways to get hold of a sentence, or of what it is made of. */
  private static final Pattern HOLDS_SENTENCES =
      Pattern.compile(
          "\\b(Sentences|Doubt|Remark|GradedJoint|unjudged_because|row_reason)\\b"
              + "|model\\.Note\\b|\\.doubts\\(\\)|\\.grounds\\(\\)|\\.fitness\\(\\)");

  /** A text compared with words that are no single name. */
  private static final Pattern COMPARES_WORDS =
      Pattern.compile(
          "\\.(startsWith|endsWith|contains|equals|equalsIgnoreCase|indexOf)\\("
              + "\"[A-Za-z]+[ :;,]+[A-Za-z ]+");

  /** Each with what it takes apart instead. */
  private static final Set<String> NO_SENTENCE =
      Set.of(
          "model/remark/Remark.java", // the names of its arguments
          "page/DayPage.java", // the ending of a file's name
          "photo/FileName.java", // the same
          "app/record/RecordLines.java", // characters that would move a terminal's cursor
          "page/SheetMaker.java", // the day of a time
          "record/book/BoardTally.java", // the same
          "record/book/ScoringReader.java", // a question to the database
          "page/SheetPdf.java"); // lines that are too long for the page

  private static List<Path> sources() throws IOException {
    try (Stream<Path> files = Files.walk(SOURCES)) {
      return files.filter(file -> file.toString().endsWith(".java")).sorted().toList();
    }
  }

  private static String name(Path file) {
    return SOURCES.relativize(file).toString().replace('\\', '/');
  }

  private static boolean inText(Path file) {
    return name(file).startsWith("text/");
  }

  private static boolean takesSentencesApart(String source) {
    return TAKES_APART.matcher(source).find() && HOLDS_SENTENCES.matcher(source).find();
  }

  @Test
  void nobodyWhoHoldsASentenceTakesTextApart() throws IOException {
    List<String> found = new ArrayList<>();
    for (Path file : sources()) {
      if (!inText(file)
          && !NO_SENTENCE.contains(name(file))
          && takesSentencesApart(Files.readString(file))) {
        found.add(name(file));
      }
    }
    assertThat(found).isEmpty();
  }

  @Test
  void nobodyComparesTextWithASentence() throws IOException {
    List<String> found = new ArrayList<>();
    for (Path file : sources()) {
      for (String line : Files.readAllLines(file)) {
        if (COMPARES_WORDS.matcher(line).find()) {
          found.add(name(file) + ": " + line.strip());
        }
      }
    }
    assertThat(found).isEmpty();
  }

  @Test
  void theSearchFindsWhatWasOnceDone() {
    assertThat(
            takesSentencesApart(
                "joint.tool().doubts(); return reason.replaceAll(\"\\\\([^)]*\\\\)\", \"\");"))
        .isTrue();
    assertThat(COMPARES_WORDS.matcher("if (why.startsWith(\"possibly open\"))").find()).isTrue();
    assertThat(COMPARES_WORDS.matcher("name.endsWith(\".jpg\")").find()).isFalse();
  }

  @Test
  void theExceptionsAreStillThere() throws IOException {
    Set<String> all = sources().stream().map(CodesNotProseTest::name).collect(Collectors.toSet());
    assertThat(all).containsAll(NO_SENTENCE);
  }
}
