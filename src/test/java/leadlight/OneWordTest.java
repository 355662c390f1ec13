package leadlight;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import leadlight.text.Messages;
import org.junit.jupiter.api.Test;

/** One word for one state, as docs/glossary.md has it, in message files and in commands' help. */
class OneWordTest {

  /** Names that the state "not judged" has had, or could get. */
  private static final Map<String, Pattern> OTHER_NAMES =
      Map.of(
          "en",
          words("unjudged|not inspected|not assessed|undecided|undetermined|doubtful|cannot tell"),
          "de",
          words(
              "unbeurteilt|nicht gepr\u00fcft|nicht bewertet|unentschieden|zweifelhaft|ungewiss"));

  /** What flash cards are called; a practice set has joints, which are due again. */
  private static final Pattern CARDS = words("decks?|cards?|flash ?cards?|Leitner's box(es)?");

  /** What files said that were written before: read, never written. */
  private static final List<String> EARLIER =
      List.of("deck.json", "leadlight/deck/1", "cards", "(picture|card)-\\\\d{3}\\\\.jpg");

  /** Where the customer is spoken to "not inspected" is the word: docs/glossary.md. */
  private static final List<String> CUSTOMER = List.of("sheet.");

  private static Pattern words(String any) {
    return Pattern.compile("(?iu)\\b(" + any + ")\\b");
  }

  private static Map<String, String> messages(String language) {
    Messages messages = Messages.of(language);
    Map<String, String> all = new TreeMap<>();
    messages.keys().forEach(key -> all.put(key, messages.get(key).replaceAll("\\{[^}]*}", "")));
    return all;
  }

  @Test
  void notJudgedHasOneNameInEachLanguageAndAnotherForCustomers() {
    OTHER_NAMES.forEach(
        (language, others) ->
            assertThat(messages(language))
                .hasSizeGreaterThan(500)
                .allSatisfy(
                    (key, text) -> {
                      if (CUSTOMER.stream().noneMatch(key::startsWith)) {
                        assertThat(others.matcher(text).find()).as(key + "=" + text).isFalse();
                      }
                    }));
    assertThat(messages("en")).containsEntry("verdict.unjudged", "not judged");
    assertThat(messages("en").get("sheet.not-inspected")).contains("not inspected");
  }

  @Test
  void theOtherThreeVerdictsHaveOneNameToo() {
    for (String verdict : List.of("acceptable", "process-indicator", "unjudged", "defect")) {
      for (String language : List.of("en", "de")) {
        Map<String, String> all = messages(language);
        String word = all.get("verdict." + verdict);
        assertThat(all.get("desk.pin." + verdict)).isEqualTo(word);
        if (!verdict.equals("unjudged")) {
          assertThat(all.get("day.verdict." + verdict)).isEqualTo(word);
        }
      }
    }
  }

  @Test
  void commandsSpeakOfPracticeSetsAndOfWhatIsNotJudged() throws IOException {
    List<Path> commands = new ArrayList<>();
    try (var files = Files.walk(Path.of("src/main/java/leadlight"))) {
      files
          .filter(file -> file.toString().matches(".*/(cli|drill)/.+\\.java"))
          .forEach(commands::add);
    }
    assertThat(commands).hasSizeGreaterThan(100);
    for (Path file : commands) {
      for (String text : literals(Files.readString(file))) {
        if (!EARLIER.contains(text)) {
          assertThat(CARDS.matcher(text).find()).as(file + ": " + text).isFalse();
        }
        if (text.contains(" ") && !file.endsWith("SheetCommand.java")) {
          assertThat(OTHER_NAMES.get("en").matcher(text).find()).as(file + ": " + text).isFalse();
        }
      }
    }
  }

  private static List<String> literals(String source) {
    return Pattern.compile("\"((?:[^\"\\\\\n]|\\\\.)*)\"")
        .matcher(source)
        .results()
        .map(found -> found.group(1))
        .toList();
  }

  @Test
  void theGlossaryHasEachWord() throws IOException {
    String glossary = Files.readString(Path.of("docs/glossary.md"));
    assertThat(glossary)
        .contains("| sound |", "| watch |", "| not judged |", "| not inspected |", "| defect |")
        .contains("| practice set |", "| due again |");
  }
}
