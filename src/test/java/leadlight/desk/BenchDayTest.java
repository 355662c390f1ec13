package leadlight.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;
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
  private static JobRecord record;

  @BeforeAll
  static void playIt() throws IOException, InterruptedException {
    day = new BenchDay(folder);
    seen = day.play(SHOTS, "en");
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
  void thePageIsSoundAndTalksToNobodyElse() {
    assertThat(seen.get("requests")).isEmpty();
    assertThat(seen.get("axe")).isEmpty();
    assertThat(seen.get("small")).as("targets under 48 pixels").isEmpty();
    seen.get("overflow").forEach(by -> assertThat(by.asInt()).isLessThan(1));
    // The browser itself logs the two hand-backs that are refused.
    seen.get("console").forEach(line -> assertThat(line.asText()).contains("409"));
  }
}
