package leadlight.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leadlight.data.Provenance;
import leadlight.model.UserError;
import leadlight.model.remark.Reason;
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
    Matcher place = Pattern.compile("\\{\\w+}").matcher(message);
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
    judgement.findValues("signals").forEach(names -> names.forEach(it -> signals.add(it.asText())));
    assertThat(signals).hasSizeGreaterThan(20);
    // The one that no card asks for: MetalAcrossRule.
    signals.add("gap_metal_across");
    for (String signal : signals) {
      String name = signal.replaceFirst("^(row|typical)_", "");
      assertThat(english.has("signal." + name + ".less")).as(name).isTrue();
      assertThat(english.has("signal." + name + ".more")).as(name).isTrue();
    }
  }

  @Test
  void wordsOfTheModelsThatAPageShowsHaveGermanOnesByTheirIds() throws IOException {
    Set<String> missing = new TreeSet<>();
    ObjectMapper json = new ObjectMapper();
    for (JsonNode symptom :
        json.readTree(Path.of("models/symptoms.json").toFile()).get("symptoms")) {
      String key = "symptom." + symptom.get("id").asText();
      need(german.data(key, ""), key, missing);
      need(german.data(key + ".source", ""), key + ".source", missing);
    }
    try (Stream<Path> files = Files.list(Path.of("models/acceptance"))) {
      for (Path file : files.toList()) {
        limits(json.readTree(file.toFile()), missing);
      }
    }
    try (Stream<Path> files = Files.list(Path.of("models/connectors"))) {
      for (Path file : files.filter(f -> !f.endsWith("catalogue.json")).toList()) {
        connector(json.readTree(file.toFile()), missing);
      }
    }
    assertThat(missing).isEmpty();
  }

  private static void need(String said, String key, Set<String> missing) {
    if (said.isEmpty()) {
      missing.add(key);
    }
  }

  private void limits(JsonNode file, Set<String> missing) {
    String id = "limits." + file.get("id").asText();
    need(german.data(id + ".name", ""), id + ".name", missing);
    for (int i = 1; i <= file.get("notes").size(); i++) {
      need(german.data(id + ".note." + i, ""), id + ".note." + i, missing);
    }
    file.get("rules")
        .forEach(
            rule -> {
              String key = id + ".rule." + rule.get("finding").asText();
              need(german.data(key, ""), key, missing);
            });
    need(german.data(id + ".limit.side_overhang_mm", ""), id + ".limit", missing);
  }

  private void connector(JsonNode file, Set<String> missing) {
    word(file, "name", file.get("name"), missing);
    for (JsonNode group : file.path("signals")) {
      String key = "signal." + group.get("id").asText();
      word(file, key + ".name", group.get("name"), missing);
      group
          .get("pins")
          .fields()
          .forEachRemaining(
              pin -> word(file, key + ".pin." + pin.getKey(), pin.getValue(), missing));
      word(file, key + ".open", group.get("open"), missing);
      word(file, key + ".shorted", group.get("shorted"), missing);
      word(file, key + ".basis.source", group.at("/basis/source"), missing);
      if (group.get("basis").has("note")) {
        word(file, key + ".basis.note", group.at("/basis/note"), missing);
      }
    }
    for (JsonNode pair : file.path("bridges")) {
      String pins = pair.at("/pins/0").asText() + "-" + pair.at("/pins/1").asText();
      word(file, "bridge." + pins, pair.get("harm"), missing);
    }
  }

  /** Signal codes, as SDA, are the same in every language. */
  private void word(JsonNode file, String key, JsonNode own, Set<String> missing) {
    String id = file.get("id").asText();
    if (!own.asText().matches("[A-Z0-9+-]+|\\+5 V")) {
      need(german.ofConnector(id, key, ""), id + " " + key, missing);
    }
  }

  @Test
  void aFamilyOfConnectorsSharesItsWords() {
    assertThat(german.ofConnector("video-a-19-slots", "signal.supply.shorted", "own"))
        .isEqualTo(german.ofConnector("video-d-19", "signal.supply.shorted", "own"))
        .startsWith("nach Masse");
    assertThat(german.ofConnector("strange-9", "signal.supply.shorted", "own")).isEqualTo("own");
    assertThat(english.ofConnector("video-d-19", "signal.supply.shorted", "own")).isEqualTo("own");
  }

  @Test
  void everyProvenanceHasWords() {
    for (Provenance provenance : Provenance.values()) {
      String name = provenance.name().toLowerCase(Locale.ROOT).replace('_', '-');
      assertThat(german.has("provenance." + name)).as(name).isTrue();
    }
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
