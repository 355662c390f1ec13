package leadlight.drill.sitting;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import leadlight.Browser;
import leadlight.data.DataFile;
import leadlight.drill.set.OpenSet;
import leadlight.drill.set.PracticeSet;
import leadlight.drill.skill.Figures;
import leadlight.drill.skill.History;
import leadlight.drill.skill.Outcome;
import leadlight.record.DrillAnswer;
import leadlight.record.DrillRecord;
import leadlight.statistics.Rate;
import leadlight.text.Messages;
import leadlight.trial.truth.TrueClass;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A drill of twenty specimens taken in a real browser by keyboard ({@code
 * src/test/browser/drill.mjs}): a right answer to all specimens but the 3rd, 6th, 9th ..., which
 * are called the other way. In the middle the tab is closed. Screenshots stay in {@code
 * target/drill}.
 */
class DrillBrowserTest {

  private static final Path SHOTS = Path.of("target/drill");
  private static final String HOSTILE = "\"><img src=x onerror=\"window.hacked=1\">";

  @TempDir private static Path folder;

  private static JsonNode seen;
  private static PracticeSet set;
  private static List<DrillAnswer> answers;
  private static History history;

  @BeforeAll
  static void takeIt() throws IOException, InterruptedException {
    Browser.chromium();
    Files.createDirectories(SHOTS);
    Path made = Files.createDirectories(folder.resolve("set"));
    PracticeSets.make(PracticeSets.request(20, false, 7)).write(made);
    OpenSet open = OpenSet.read(made);
    set = DataFile.at(made.resolve("practice-set.json")).read(PracticeSet.class);
    try (DrillRecord record = DrillRecord.open(folder.resolve("record"))) {
      Judging judging =
          new Judging(open, record, HOSTILE, false, () -> PracticeSets.NOON, Messages.of("en"));
      try (DrillServer server = DrillServer.start(judging)) {
        seen = Browser.run("drill.mjs", SHOTS, List.of(server.address(), String.join("", keys())));
        assertThat(left(server)).as("the page's button ends the serving").isTrue();
      }
      answers = judging.answers();
      history = History.of(record, HOSTILE);
    }
  }

  private static boolean left(DrillServer server) throws InterruptedException {
    Thread waiting =
        new Thread(
            () -> {
              try {
                server.awaitLeave();
              } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
              }
            });
    waiting.start();
    waiting.join(TimeUnit.SECONDS.toMillis(10));
    return !waiting.isAlive();
  }

  private static List<String> keys() {
    List<String> keys = new ArrayList<>();
    for (int specimen = 1; specimen <= set.specimens().size(); specimen++) {
      PracticeSet.Spot spot = set.specimens().get(specimen - 1).spots().get(0);
      keys.add(specimen % 3 == 0 ? wrongKey(spot) : PracticeSets.rightKey(spot));
    }
    return keys;
  }

  private static String wrongKey(PracticeSet.Spot spot) {
    return spot.known().orElseThrow().verdict() == TrueClass.DEFECT ? "s" : "2";
  }

  @Test
  void everyAnswerIsInTheRecordOnce() {
    assertThat(answers).hasSize(20);
    assertThat(answers).extracting(DrillAnswer::specimen).doesNotHaveDuplicates();
    assertThat(answers)
        .allSatisfy(
            answer ->
                assertThat(Outcome.of(answer).isRight())
                    .as("specimen " + answer.specimen())
                    .isEqualTo(answer.specimen() % 3 != 0));
  }

  @Test
  void aClosedTabLosesNothing() {
    assertThat(seen.get("resumedAt").asText()).isEqualTo("Joint 9 of 20");
    assertThat(seen.get("keptKey").asText()).isEqualTo(keys().get(8));
  }

  @Test
  void nothingOfTheTruthIsSentBeforeTheAnswer() {
    assertThat(seen.get("early")).hasSize(20);
    seen.get("early").forEach(early -> assertThat(early.asBoolean()).isFalse());
  }

  @Test
  void eachSpecimenIsToldAfterItsAnswer() {
    assertThat(seen.get("told")).hasSize(20);
    for (int i = 0; i < 20; i++) {
      String headline = seen.get("told").get(i).asText();
      assertThat(headline.startsWith("Right")).as(headline).isEqualTo((i + 1) % 3 != 0);
    }
  }

  @Test
  void onlyThePageItselfIsServed() {
    JsonNode refused = seen.get("refused");
    assertThat(refused.get("right").asInt()).isEqualTo(200);
    for (String stranger :
        List.of(
            "wrongToken",
            "noToken",
            "foreignHost",
            "foreignOrigin",
            "foreignPage",
            "postWithoutOrigin",
            "postFromElsewhere",
            "climbing",
            "unknownFile",
            "resultTooEarly")) {
      assertThat(refused.get(stranger).asInt()).as(stranger).isEqualTo(404);
    }
    assertThat(refused.get("postBadWords").asInt()).isEqualTo(400);
    assertThat(seen.get("policy").asText()).startsWith("default-src 'none'");
  }

  @Test
  void anAnswerThatWasToldStays() {
    assertThat(seen.get("changed").asInt()).isEqualTo(409);
  }

  @Test
  void theResultAndTheHistorySayTheSame() {
    long missed = answers.stream().filter(a -> Outcome.of(a) == Outcome.MISSED).count();
    long alarms = answers.stream().filter(a -> Outcome.of(a) == Outcome.FALSE_ALARM).count();
    assertThat(missed + alarms).isEqualTo(6);
    assertThat(seen.get("result").asText()).isEqualTo("14 of 20 right");
    assertThat(seen.get("figures").asText()).contains(missed + " of 10", alarms + " of 10");
    Figures figures = history.figures().orElseThrow();
    assertThat(figures.missed().plain()).isEqualTo(new Rate((int) missed, 10));
    assertThat(figures.falseAlarm().plain()).isEqualTo(new Rate((int) alarms, 10));
  }

  @Test
  void thePageIsSoundAndTalksToNobodyElse() {
    assertThat(seen.get("requests")).isEmpty();
    assertThat(seen.get("axe")).isEmpty();
    assertThat(seen.get("zoomed").asBoolean()).isTrue();
    assertThat(seen.get("small")).as("targets under 48 pixels").isEmpty();
    seen.get("overflow").forEach(by -> assertThat(by.asInt()).isLessThan(1));
    // The browser itself logs the refusals that the test provokes from within the page.
    seen.get("console").forEach(line -> assertThat(line.asText()).contains("409"));
  }
}
