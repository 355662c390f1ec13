package leadlight.drill.sitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import leadlight.Browser;
import leadlight.drill.set.OpenSet;
import leadlight.drill.set.PracticeSet;
import leadlight.drill.skill.BesideTool;
import leadlight.drill.skill.History;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.UserError;
import leadlight.model.Verdict;
import leadlight.model.result.Settings;
import leadlight.model.row.RowSpec;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.pipeline.PhotoScorer;
import leadlight.record.DrillRecord;
import leadlight.text.Messages;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Three rows graded by the person who "soldered" them, pin by pin, before the tool's score is told.
 * The person grades as the tool does but for the first defect, which is passed, and the first sound
 * joint, which is called open.
 */
class OwnWorkTest {

  private static final Path SHOTS = Path.of("target/drill-own");

  /** Rows by name, with their number of leads and pitch. */
  private static final Map<String, RowSpec> ROWS = rows();

  private static final AcceptanceSet LIMITS = AcceptanceSet.load(AcceptanceSet.DEFAULT_ID);

  @TempDir private Path folder;

  private static Map<String, RowSpec> rows() {
    Map<String, RowSpec> rows = new LinkedHashMap<>();
    rows.put("logger-sensor-opens", plain(20, 0.5));
    rows.put("logger-display-one-bridge", plain(16, 0.5));
    rows.put("logger-card-shifted", plain(16, 0.5));
    return rows;
  }

  private static RowSpec plain(int leads, double pitchMm) {
    return RowSpec.plain(leads, pitchMm, OptionalDouble.empty(), OptionalDouble.empty());
  }

  private static OpenSet open(String name, RowSpec row) {
    Settings settings = new Settings(row, 2, LIMITS.id(), Optional.empty());
    try (Photo photo = new PhotoReader().read(PracticeSets.SAMPLES.resolve(name + ".jpg"))) {
      return OwnWork.of(
          new PhotoScorer(settings, LIMITS).score(photo),
          photo,
          LIMITS.fileId(),
          Messages.of("en"));
    }
  }

  /** A row with what the person says of it. */
  private record Graded(OpenSet set, String keys, int passed, int called) {

    static Graded of(OpenSet set) {
      StringBuilder keys = new StringBuilder();
      int passed = 0;
      int called = 0;
      for (PracticeSet.Spot spot : set.specimen(1).spots()) {
        Verdict tool = spot.tool().orElseThrow().verdict();
        String key = tool == Verdict.DEFECT ? "2" : tool == Verdict.UNJUDGED ? "u" : "s";
        if (tool == Verdict.DEFECT && passed == 0) {
          passed = spot.pin();
          key = "s";
        } else if (tool == Verdict.ACCEPTABLE && called == 0) {
          called = spot.pin();
          key = "2";
        }
        keys.append(key);
      }
      return new Graded(set, keys.toString(), passed, called);
    }
  }

  @Test
  void whatDiffersFromTheToolIsShownPinByPin() throws IOException, InterruptedException {
    Browser.chromium();
    Files.createDirectories(SHOTS);
    Map<String, Graded> rows = new LinkedHashMap<>();
    List<DrillServer> servers = new ArrayList<>();
    List<String> arguments = new ArrayList<>();
    try (DrillRecord record = DrillRecord.open(folder)) {
      for (Map.Entry<String, RowSpec> row : ROWS.entrySet()) {
        Graded graded = Graded.of(open(row.getKey(), row.getValue()));
        rows.put(row.getKey(), graded);
        DrillServer server =
            DrillServer.start(
                new Judging(
                    graded.set(),
                    record,
                    "Ada",
                    false,
                    () -> PracticeSets.NOON,
                    Messages.of("en")));
        servers.add(server);
        arguments.addAll(List.of(server.address(), row.getKey(), graded.keys()));
      }
      JsonNode seen = Browser.run("own.mjs", SHOTS, arguments);
      servers.forEach(DrillServer::close);

      rows.forEach((name, graded) -> assertShown(name, graded, seen.get(name)));
      History history = History.of(record, "Ada");
      assertThat(history.own()).hasSize(3);
      assertThat(history.drills()).as("own work has no truth and is in no rate").isEmpty();
      assertThat(history.besideTool())
          .containsEntry(BesideTool.MISSED, 3)
          .containsEntry(BesideTool.OVER_CALLED, 3);
    }
  }

  private static void assertShown(String name, Graded graded, JsonNode shown) {
    int pins = graded.keys().length();
    assertThat(shown.get("console")).as(name).isEmpty();
    assertThat(shown.get("signsBefore").asInt()).as("only the person's own").isEqualTo(pins);
    assertThat(shown.get("signsAfter").asInt()).as("theirs and the tool's").isEqualTo(2 * pins);
    List<String> again = new ArrayList<>();
    shown.get("lookAgain").forEach(pin -> again.add(pin.asText()));
    assertThat(again)
        .as(name)
        .contains("" + graded.passed(), "" + graded.called())
        .hasSize(2 + (int) graded.keys().chars().filter(key -> key == 'u').count());
    List<String> figures = new ArrayList<>();
    shown.get("figures").forEach(line -> figures.add(line.asText()));
    assertThat(figures)
        .containsSubsequence("Perhaps missed", "1", "pin " + graded.passed())
        .containsSubsequence("Perhaps over-called", "1", "pin " + graded.called());
  }

  @Test
  void aPhotoWithoutTheRowIsRefusedWithTheReason() {
    assertThatThrownBy(() -> open("logger-sensor-opens", plain(60, 0.5)))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("no row was found");
  }
}
