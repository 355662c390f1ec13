package leadlight.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import leadlight.Browser;
import leadlight.app.quality.RecordJoints;
import leadlight.drill.skill.Figures;
import leadlight.life.PhotoShelf;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;
import leadlight.quality.chart.ChartKind;
import leadlight.record.JobRecord;
import leadlight.record.said.BenchResult;
import leadlight.record.said.LifeEvent;
import leadlight.record.said.RecordedJoint;
import leadlight.record.said.Standing;
import leadlight.record.scoring.Subject;
import leadlight.summary.board.BoardStanding;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A day at the bench, played by keyboard in a browser, with pictures of the samples as camera. */
class BenchDayTest {

  private static final Path SHOTS = Path.of("target/bench");

  @TempDir private static Path folder;

  private static BenchDay day;
  private static JsonNode seen;
  private static JsonNode german;
  private static JobRecord record;
  private static DayPages pages;

  @BeforeAll
  static void playIt() throws IOException, InterruptedException {
    day = new BenchDay(folder);
    seen = day.play(SHOTS);
    german = day.look(SHOTS, "de");
    pages = new DayPages(day.record(), Files.createDirectories(SHOTS.resolve("pages")));
    record = JobRecord.open(day.record());
  }

  @AfterAll
  static void close() {
    if (record != null) {
      record.close();
    }
  }

  private static BoardStanding board(int job) {
    return BoardStanding.of(record, BenchDay.JOBS.get(job), Subject.ONLY_BOARD, 3);
  }

  private static RecordedJoint joint(BoardStanding.Shot shot, int pin) {
    return shot.row().joints().get(pin - 1);
  }

  @Test
  void theTouchedUpBoardIsHandedBackWithItsHeatsCounted() {
    BoardStanding board = board(0);
    assertThat(board.shots()).hasSize(2);
    assertThat(board.heats()).isEqualTo(Map.of(3, 1, 14, 1));
    assertThat(board.verdict()).isEqualTo(Verdict.ACCEPTABLE);
    LifeEvent decision = board.lastOf(LifeEvent.Kind.HAND_BACK).orElseThrow();
    assertThat(decision.good()).contains(true);
    assertThat(decision.person()).isEqualTo("Ada");
    assertThat(board.open()).isEmpty();
  }

  @Test
  void theNudgedLeadIsOpenAndTheBoardStays() {
    BoardStanding board = board(1);
    RecordedJoint pushed = joint(board.last().get(0), 4);
    assertThat(pushed.verdict()).isEqualTo(Verdict.DEFECT);
    assertThat(pushed.standing().source()).isEqualTo(Standing.Source.BENCH);
    assertThat(pushed.standing().joint().findings().get(0).kind()).isEqualTo(FindingKind.OPEN);
    assertThat(seen.at("/pushed/0").asText()).contains("Pin 4 moves");
    assertThat(board.mayBeHandedBack()).isFalse();
  }

  @Test
  void aMeteredShortIsOfBothPinsAndForbidsTheHandBack() {
    BoardStanding board = board(2);
    assertThat(List.of(11, 12))
        .allSatisfy(
            pin -> assertThat(joint(board.last().get(0), pin).verdict()).isEqualTo(Verdict.DEFECT));
    assertThat(seen.get("refused")).hasSize(2);
    assertThat(seen.at("/refused/0").asText()).contains("contradicts", "11");
    assertThat(board.lastOf(LifeEvent.Kind.HAND_BACK).orElseThrow().good()).contains(false);
  }

  @Test
  void refusalsAndWhatAPushedLeadDidAreInSight() {
    assertThat(seen.get("inSight")).hasSize(3).allMatch(JsonNode::asBoolean);
    assertThat(seen.at("/refused/0").asText()).as("a fault is said once").doesNotContain("earlier");
  }

  @Test
  void whatIsTakenBackCountsNoMoreAndIsKept() {
    BoardStanding.Shot shot = board(3).last().get(0);
    for (int pin : new int[] {5, 7, 9}) {
      assertThat(joint(shot, pin).takenBack()).as("pin " + pin).hasSize(1);
      assertThat(joint(shot, pin).verdict()).as("pin " + pin).isNotEqualTo(Verdict.DEFECT);
    }
    assertThat(seen.at("/refused/1").asText()).contains("pin 7");
    assertThat(board(3).lastOf(LifeEvent.Kind.HAND_BACK).orElseThrow().good()).contains(true);
    RecordedJoint overruled = joint(board(5).last().get(0), 7);
    assertThat(overruled.takenBack()).hasSize(1);
    assertThat(overruled.verdict()).isEqualTo(overruled.tool().verdict());
  }

  @Test
  void aKeyThatIsPressedTwiceAndInTwoTabsCountsOnce() {
    assertThat(joint(board(3).last().get(0), 7).bench())
        .extracting(BenchResult::result)
        .containsExactly("firm");
  }

  @Test
  void twoTabsShowTheSame() {
    assertThat(seen.get("tabs")).hasSize(2);
    seen.get("tabs").forEach(both -> assertThat(both.get(1)).isEqualTo(both.get(0)));
  }

  @Test
  void aLostCameraIsSaidAndThePageGoesOnWhenItIsBack() {
    assertThat(seen.at("/camera/0").asText()).contains("No camera picture");
    assertThat(seen.at("/camera/1").asBoolean()).as("a button to look for it").isTrue();
    assertThat(seen.at("/camera/2").asBoolean()).as("the button afterwards").isFalse();
  }

  @Test
  void anUnfitPhotoGivesNoGoodNews() {
    assertThat(board(4).last().get(0).row().joints())
        .noneMatch(joint -> joint.verdict() == Verdict.ACCEPTABLE);
    assertThat(board(4).lastOf(LifeEvent.Kind.HAND_BACK).orElseThrow().good()).contains(false);
  }

  @Test
  void recordPageTableReportAndPictureAgreeOnEveryPin() throws IOException {
    PhotoShelf shelf = new PhotoShelf(day.record());
    int pins = 0;
    for (int job = 0; job < BenchDay.JOBS.size(); job++) {
      BoardStanding.Shot last = board(job).last().get(0);
      Map<Integer, String> counts = DayReadings.record(last);
      pins += counts.size();
      assertThat(DayReadings.files(last))
          .allSatisfy((what, said) -> assertThat(said).as(what).isEqualTo(counts));
      assertThat(DayReadings.picture(last))
          .as("picture of job " + job)
          .isEqualTo(DayReadings.pictureOf(last, shelf, BenchDay.context("en")));
    }
    assertThat(pins).isGreaterThan(60);
  }

  @Test
  void aSheetNamesEveryPinThatTheRecordDoesNotCallSound() throws IOException {
    for (int job : new int[] {0, 1, 2, 3, 5}) {
      BoardStanding.Shot last = board(job).last().get(0);
      Path sheet = pages.sheet(job, "en").orElseThrow();
      assertThat(DayReadings.remaining(sheet))
          .as("job " + job)
          .isEqualTo(DayReadings.notSound(last));
    }
  }

  @Test
  void theSummaryCountsEveryPinAsTheRecordDoes() throws IOException {
    Map<Integer, int[][]> counted = new TreeMap<>();
    for (int job = 0; job < BenchDay.JOBS.size(); job++) {
      for (BoardStanding.Shot shot : board(job).shots()) {
        int leads = shot.scoring().method().settings().row().leads();
        int[][] counts = counted.computeIfAbsent(leads, n -> new int[2][n]);
        DayReadings.record(shot)
            .forEach(
                (pin, verdict) -> {
                  counts[0][pin - 1] += verdict.equals("defect") ? 1 : 0;
                  counts[1][pin - 1] += verdict.equals("unjudged") ? 1 : 0;
                });
      }
    }
    Map<Integer, Map<String, String>> strips = DayReadings.strips(pages.day());
    assertThat(strips).hasSameSizeAs(counted);
    counted.forEach(
        (leads, counts) -> {
          assertThat(strips.get(leads))
              .containsEntry("Defects", line(counts[0]))
              .containsEntry("Not judged", line(counts[1]));
        });
  }

  @Test
  void theSummaryBeginsWithWhatMustNotBeHandedBack() throws IOException {
    Map<String, Boolean> said = DayReadings.jobs(pages.day());
    assertThat(said).hasSize(BenchDay.JOBS.size());
    for (int job = 0; job < BenchDay.JOBS.size(); job++) {
      // A person's no counts, whatever the photos show.
      boolean no =
          board(job).open().stream()
              .anyMatch(point -> point.code() == BoardStanding.Code.NOT_HANDED_BACK);
      assertThat(said.get(BenchDay.JOBS.get(job))).isEqualTo(no || !board(job).mayBeHandedBack());
    }
    assertThat(List.copyOf(said.values()))
        .containsSequence(true, false)
        .isSortedAccordingTo(Comparator.reverseOrder());
  }

  private static String line(int[] counts) {
    return Arrays.stream(counts).mapToObj(Integer::toString).collect(Collectors.joining(" "));
  }

  @Test
  void theChartCountsEveryPinOfTheLastStageAsTheRecordDoes() {
    Map<String, List<Integer>> counted = new TreeMap<>();
    for (int job = 0; job < BenchDay.JOBS.size(); job++) {
      DayReadings.record(board(job).last().get(0))
          .forEach(
              (pin, verdict) -> {
                if (!verdict.equals("unjudged")) {
                  counted.merge(
                      "" + pin,
                      List.of(1, verdict.equals("defect") ? 1 : 0),
                      (a, b) -> List.of(a.get(0) + b.get(0), a.get(1) + b.get(1)));
                }
              });
    }
    Map<String, List<Integer>> charted = new TreeMap<>();
    RecordJoints.read(record, "pin", Optional.empty(), ChartKind.P, Figures.READING)
        .groups()
        .forEach(group -> charted.put(group.name(), List.of(group.size(), group.count())));
    assertThat(charted).isEqualTo(counted);
  }

  @Test
  void whatIsWrittenOfTheDayIsReadByEverybodyOnEveryScreen()
      throws IOException, InterruptedException {
    List<String> files = new ArrayList<>();
    for (Path page :
        List.of(
            pages.day(), pages.board(0, "en"), pages.sheet(2, "de").orElseThrow(), pages.chart())) {
      files.add(page.toAbsolutePath().toString());
    }
    JsonNode looked = Browser.run("check.mjs", SHOTS, files);
    assertThat(looked).hasSize(files.size());
    looked
        .fields()
        .forEachRemaining(
            page -> {
              assertThat(page.getValue().get("axe")).as(page.getKey()).isEmpty();
              assertThat(page.getValue().get("console")).as(page.getKey()).isEmpty();
              assertThat(page.getValue().get("requests")).as(page.getKey()).isEmpty();
              page.getValue()
                  .get("overflow")
                  .forEach(by -> assertThat(by.asInt()).as(page.getKey()).isLessThan(1));
            });
  }

  @Test
  void thePageIsSoundInBothLanguagesAndTalksToNobodyElse() {
    for (JsonNode page : List.of(seen, german)) {
      assertThat(page.get("requests")).isEmpty();
      assertThat(page.get("axe")).isEmpty();
      assertThat(page.get("small")).as("targets under 48 pixels").isEmpty();
      assertThat(page.get("cut")).as("words that run over their button").isEmpty();
      page.get("overflow").forEach(by -> assertThat(by.asInt()).isLessThan(1));
    }
    assertThat(german.get("console")).isEmpty();
    // The browser itself logs the two hand-backs that are refused.
    seen.get("console").forEach(line -> assertThat(line.asText()).contains("409"));
  }
}
