package leadlight.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leadlight.model.Reason;
import leadlight.model.UserError;
import org.junit.jupiter.api.Test;

class MessagesTest {

  private final Messages english = Messages.of("en");
  private final Messages german = Messages.of("de");

  private static Set<String> own(Messages words) {
    return words.keys().stream()
        .filter(key -> !key.startsWith("data."))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static List<String> places(String message) {
    Matcher place = Pattern.compile("\\{\\d}").matcher(message);
    return place.results().map(result -> result.group()).sorted().toList();
  }

  @Test
  void bothLanguagesHaveTheSameMessagesWithTheSamePlaces() {
    assertThat(own(german)).isEqualTo(own(english));
    own(english)
        .forEach(
            key -> assertThat(places(german.get(key))).as(key).isEqualTo(places(english.get(key))));
  }

  @Test
  void everySignalOfTheJudgementHasPlainWords() throws IOException {
    JsonNode judgement =
        new ObjectMapper().readTree(Path.of("models/joint/judgement.json").toFile());
    Set<String> signals = new TreeSet<>();
    judgement.forEach(card -> card.path("signals").forEach(name -> signals.add(name.asText())));
    assertThat(signals).hasSizeGreaterThan(20);
    for (String signal : signals) {
      String name = signal.replaceFirst("^(row|typical)_", "");
      assertThat(english.has("signal." + name + ".less")).as(name).isTrue();
      assertThat(english.has("signal." + name + ".more")).as(name).isTrue();
    }
  }

  @Test
  void everySentenceOfTheModelsThatAPageShowsIsTranslated() throws IOException {
    Set<String> missing = new TreeSet<>();
    for (String sentence : sentences()) {
      boolean code = sentence.matches("[A-Z0-9+-]+|\\+5 V");
      if (!code && !german.has(Messages.dataKey(sentence))) {
        missing.add(sentence);
      }
    }
    assertThat(missing).isEmpty();
  }

  @Test
  void aSentenceWithNumbersIsTranslatedWithItsNumbers() {
    assertThat(german.data("glare burns out 42.5 % of the joint; dim or turn the lamp"))
        .isEqualTo("Blendung überstrahlt 42,5 % der Lötstelle; Lampe dimmen oder drehen");
    assertThat(english.data("glare burns out 42.5 % of the joint; dim or turn the lamp"))
        .isEqualTo("glare burns out 42.5 % of the joint; dim or turn the lamp");
  }

  private static Set<String> sentences() throws IOException {
    ObjectMapper json = new ObjectMapper();
    Set<String> sentences = new TreeSet<>();
    JsonNode advice = json.readTree(Path.of("models/advice.json").toFile());
    advice.forEach(list -> list.forEach(s -> sentences.add(filled(s.get("text").asText()))));
    JsonNode symptoms = json.readTree(Path.of("models/symptoms.json").toFile());
    symptoms.get("symptoms").forEach(s -> sentences.add(s.get("text").asText()));
    try (Stream<Path> files = Files.list(Path.of("models/acceptance"))) {
      for (Path file : files.toList()) {
        json.readTree(file.toFile())
            .findValuesAsText("settle_by")
            .forEach(text -> sentences.addAll(List.of(text.split("; "))));
      }
    }
    try (Stream<Path> files = Files.list(Path.of("models/connectors"))) {
      for (Path file : files.filter(f -> !f.endsWith("catalogue.json")).toList()) {
        connector(json.readTree(file.toFile()), sentences);
      }
    }
    return sentences;
  }

  private static void connector(JsonNode connector, Set<String> sentences) {
    sentences.add(connector.get("name").asText());
    for (JsonNode group : connector.path("signals")) {
      sentences.add(group.get("name").asText());
      group.get("pins").forEach(signal -> sentences.add(signal.asText()));
      sentences.addAll(List.of(group.get("open").asText().split("; ")));
      sentences.addAll(List.of(group.get("shorted").asText().split("; ")));
    }
    for (JsonNode pair : connector.path("bridges")) {
      sentences.addAll(List.of(pair.get("harm").asText().split("; ")));
    }
  }

  private static String filled(String text) {
    return text.replace("{pairs}", "1-2, 2-3 and so on to 18-19");
  }

  @Test
  void aSignalAgainstItsRowSaysSoAndOnlySpeakingSignalsAreNamed() {
    Reason loud = new Reason("row_toe_step", 3, 0, 2);
    Reason same = new Reason("toe_step", 0.4, 0.1, 1);
    Reason quiet = new Reason("toe_edge", 0.4, 0.1, -1);
    assertThat(english.plain(List.of(loud, same, quiet)))
        .containsExactly(
            "lead and land differ in brightness more than usual, unlike the rest of the row");
  }

  @Test
  void numbersTakeTheLanguagesDecimalSign() {
    assertThat(english.number(-0.25, 1)).isEqualTo("\u22120.3");
    assertThat(german.lengthIn(0.5, LengthUnit.MM)).isEqualTo("0,500 mm");
    assertThat(english.percent(0.999)).isEqualTo("99 %");
  }

  @Test
  void anUnknownLanguageIsRefusedInOneLine() {
    assertThatThrownBy(() -> Messages.of("xx"))
        .isInstanceOf(UserError.class)
        .hasMessage("no language \"xx\"; choose one of en, de");
  }
}
