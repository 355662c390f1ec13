package leadlight.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;
import leadlight.model.UserError;
import leadlight.model.Verdict;
import leadlight.record.engine.RecordPlace;
import leadlight.record.said.BenchResult;
import leadlight.record.said.BenchTest;
import leadlight.record.said.Overrule;
import leadlight.record.said.RecordedJoint;
import leadlight.record.said.TakenBack;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The last word goes, what was said before it stands again, and the chain knows of it. */
class TakeBackTest {

  private static final JobRecord.Withdrawal WHY =
      new JobRecord.Withdrawal("slipped", "Bo", ScoredBoard.NOON.plusHours(2));

  @TempDir private Path folder;

  private JobRecord record;

  @BeforeEach
  void aBoard() {
    record = JobRecord.open(at(folder));
    record.add(new ScoredBoard(folder).scoring("0412", "A1"));
  }

  @AfterEach
  void theRecordIsSound() {
    assertThat(record.troubles()).isEmpty();
    record.close();
  }

  /** Where a record of that name lies; on a server in SharedRecordTests. */
  RecordPlace at(Path path) {
    return new RecordPlace.Folder(path);
  }

  private static Overrule says(Verdict verdict) {
    return new Overrule(verdict, Optional.empty(), "seen at 40x", "Ada", ScoredBoard.NOON);
  }

  private static BenchResult result(BenchTest test, String result, int other) {
    OptionalInt to = other == 0 ? OptionalInt.empty() : OptionalInt.of(other);
    return new BenchResult(test, result, to, "Ada", ScoredBoard.NOON);
  }

  private RecordedJoint joint(int pin) {
    return record.row(1).joints().get(pin - 1);
  }

  @Test
  void ofTwoOpinionsTheFirstStandsAgain() {
    record.overrule(1, 1, says(Verdict.DEFECT));
    record.overrule(1, 1, says(Verdict.PROCESS_INDICATOR));
    record.takeBackOverrule(1, 1, WHY);

    assertThat(joint(1).overrules()).containsExactly(says(Verdict.DEFECT));
    assertThat(joint(1).takenBack())
        .extracting(TakenBack::opinion)
        .containsExactly(Optional.of(says(Verdict.PROCESS_INDICATOR)));
    assertThat(joint(1).verdict()).isEqualTo(Verdict.DEFECT);
  }

  @Test
  void aMeterBetweenTwoPinsIsTakenBackFromEither() {
    for (int pin = 1; pin <= 2; pin++) {
      record.bench(1, 1, result(BenchTest.METER, "short", 2));
      record.takeBackBench(1, pin, BenchTest.METER, WHY);
      assertThat(joint(1).bench()).as("from pin %d", pin).isEmpty();
      assertThat(joint(2).bench()).as("from pin %d", pin).isEmpty();
      assertThat(joint(1).takenBack()).hasSize(pin);
      assertThat(joint(2).takenBack()).hasSize(pin);
    }
    assertThat(joint(3).takenBack()).isEmpty();
  }

  @Test
  void aTestTakesItsOwnResultBackAndNoOther() {
    record.bench(1, 1, result(BenchTest.METER, "ok", 0));
    record.bench(1, 1, result(BenchTest.PROD, "moves", 0));
    record.takeBackBench(1, 1, BenchTest.METER, WHY);

    assertThat(joint(1).bench()).containsExactly(result(BenchTest.PROD, "moves", 0));
    assertThatThrownBy(() -> record.takeBackBench(1, 1, BenchTest.METER, WHY))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("nothing stands");
    record.takeBackBench(1, 1, WHY);
    assertThat(joint(1).bench()).as("of any test").isEmpty();
  }
}
