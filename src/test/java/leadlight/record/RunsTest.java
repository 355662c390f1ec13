package leadlight.record;

import static leadlight.record.ScoredBoard.NOON;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import leadlight.model.FindingKind;
import leadlight.model.UserError;
import leadlight.model.Verdict;
import leadlight.model.remark.NoteOfRow;
import leadlight.model.row.RowOutcome;
import leadlight.record.engine.RecordPlace;
import leadlight.record.file.Database;
import leadlight.record.said.BenchResult;
import leadlight.record.said.BenchTest;
import leadlight.record.said.Overrule;
import leadlight.record.said.RecordedJoint;
import leadlight.record.scoring.Method;
import leadlight.record.scoring.NewScoring;
import leadlight.record.scoring.OpenRun;
import leadlight.record.scoring.RunPhoto;
import leadlight.record.scoring.RunStart;
import leadlight.record.scoring.Search;
import leadlight.record.scoring.Stage;
import leadlight.record.scoring.Subject;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Runs, what became of their photos, searches, and what verifying finds. */
class RunsTest {

  @TempDir private Path folder;
  private ScoredBoard boards;
  private JobRecord record;

  @BeforeEach
  void open() {
    boards = new ScoredBoard(folder);
    record = JobRecord.open(at(folder.resolve("record")));
  }

  @AfterEach
  void close() {
    record.close();
  }

  /** Where a record of that name lies; on a server in SharedRecordTests. */
  RecordPlace at(Path path) {
    return new RecordPlace.Folder(path);
  }

  private long run(String name, String source) {
    return record.startRun(new RunStart(folder.resolve(name), source, "Ada", NOON, "0.1.0"));
  }

  private List<RunPhoto> photos(long run) {
    List<RunPhoto> photos = new ArrayList<>();
    record.eachPhoto(run, photos::add);
    return photos;
  }

  private void behindItsBack(String line) throws SQLException {
    record.close();
    alter(at(folder.resolve("record")), line);
    record = JobRecord.open(at(folder.resolve("record")));
  }

  void alter(RecordPlace place, String line) throws SQLException {
    Path file = folder.resolve("record").resolve(Database.FILE);
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
        Statement statement = connection.createStatement()) {
      statement.execute(line);
    }
  }

  @Test
  void aFolderHoldsARecordOnceOneWasMade() {
    assertThat(JobRecord.isIn(at(folder))).isFalse();
    assertThat(JobRecord.isIn(at(folder.resolve("record")))).isTrue();
  }

  @Test
  void runsThatDidNotEndAreFoundLatestFirst() {
    long first = run("one", "photos");
    long second = run("two", "photos");
    long ended = run("three", "photos");
    run("four", "other photos");
    record.endRun(ended, NOON.plusHours(1));

    assertThat(record.unfinishedRuns("photos"))
        .containsExactly(
            new OpenRun(second, folder.resolve("two")), new OpenRun(first, folder.resolve("one")));
    assertThat(record.unfinishedRuns("no photos")).isEmpty();
  }

  @Test
  void aPhotoIsScoredOnceAndUnchangedInTheNextRun() {
    long one = run("one", "photos");
    long two = run("two", "photos");
    NewScoring scoring = boards.scoring("job", "b");
    long id = record.add(one, scoring);

    assertThat(record.add(two, scoring)).isEqualTo(id);

    assertThat(photos(one)).extracting(RunPhoto::outcome).containsExactly(RunPhoto.Outcome.SCORED);
    assertThat(photos(two))
        .containsExactly(
            new RunPhoto(
                scoring.photo(),
                scoring.subject(),
                scoring.method().key(),
                RunPhoto.Outcome.UNCHANGED,
                OptionalLong.of(id),
                Optional.empty()));
  }

  @Test
  void aPhotoThatCouldNotBeUsedKeepsItsReasonUntilItIsTriedAgain() {
    long run = run("one", "photos");
    NewScoring scoring = boards.scoring("job", "b");
    RunPhoto refused =
        new RunPhoto(
            scoring.photo(),
            scoring.subject(),
            scoring.method().key(),
            RunPhoto.Outcome.REFUSED,
            OptionalLong.empty(),
            Optional.of("too small"));
    record.put(run, refused);
    assertThat(photos(run)).containsExactly(refused);

    record.add(run, scoring);
    assertThat(photos(run)).extracting(RunPhoto::outcome).containsExactly(RunPhoto.Outcome.SCORED);
  }

  @Test
  void aScoringSaysWhereItsResultsLie() {
    NewScoring scoring = boards.scoring("job", "b");
    long id = record.add(run("one", "photos"), scoring);

    assertThat(record.results(id)).isEqualTo(scoring.results());
    assertThat(record.scoring(id).results()).isEqualTo(scoring.results());
    assertThat(record.scoring(id).person()).isEqualTo("Ada");
    assertThat(record.scoring(id).rowReason()).isEmpty();
    assertThatThrownBy(() -> record.scoring(id + 1))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("no scoring " + (id + 1));
  }

  @Test
  void aRowThatWasNotFoundIsKeptWithItsReasonAndWithoutJoints() {
    NewScoring scoring =
        boards.scoring(
            "job",
            "b",
            NOON,
            ScoredBoard.method(Optional.empty()),
            new RowOutcome.NotFound(new NoteOfRow.NoRow(19), List.of()));
    long id = record.add(run("one", "photos"), scoring);

    assertThat(record.row(id).outcome())
        .isEqualTo(new RowOutcome.NotFound(new NoteOfRow.NoRow(19), List.of()));
    assertThat(record.row(id).joints()).isEmpty();
    assertThat(record.scoring(id).rowReason()).contains(new NoteOfRow.NoRow(19));
    assertThat(record.troubles()).as("a row not found has no joints to miss").isEmpty();
  }

  @Test
  void theRowComesOutAsItWentIn() {
    long id = record.add(run("one", "photos"), boards.scoring("job", "b"));
    RowOutcome.Found row = (RowOutcome.Found) record.row(id).outcome();

    assertThat(row.leads()).isEqualTo(ScoredBoard.found().leads());
    assertThat(row.pitchPx()).isEqualTo(20);
    assertThat(row.angleRad()).isEqualTo(0.01);
    assertThat(row.scalePxPerMm()).isEqualTo(40);
    assertThat(row.confidence()).isEqualTo(0.8);
    assertThat(row.bodySide()).isEqualTo(ScoredBoard.found().bodySide());
    assertThat(record.row(id).joints()).extracting(RecordedJoint::pin).containsExactly(1, 2, 3);
  }

  private static final Search ALL = Search.all();

  private List<String> found(Search search) {
    return record.scorings(search).stream().map(scoring -> scoring.subject().board()).toList();
  }

  private Search of(
      String job, String board, LocalDate from, LocalDate to, String connector, Long run) {
    return new Search(
        Optional.ofNullable(job),
        Optional.ofNullable(board),
        Optional.ofNullable(from),
        Optional.ofNullable(to),
        Optional.ofNullable(connector),
        Optional.empty(),
        Optional.ofNullable(run),
        false);
  }

  @Test
  void eachFieldOfASearchNarrowsItByItself() {
    long one = run("one", "photos");
    long two = run("two", "photos");
    Method method = ScoredBoard.method(Optional.empty());
    record.add(one, boards.scoring("j1", "a", NOON, method, ScoredBoard.found()));
    record.add(one, boards.scoring("j1", "b", NOON.plusDays(1), method, ScoredBoard.found()));
    record.add(two, boards.scoring("j2", "c", NOON.plusDays(2), method, ScoredBoard.found()));
    LocalDate day = NOON.toLocalDate();

    assertThat(found(ALL)).containsExactly("a", "b", "c");
    assertThat(found(of("j1", null, null, null, null, null))).containsExactly("a", "b");
    assertThat(found(of(null, "b", null, null, null, null))).containsExactly("b");
    assertThat(found(of(null, null, day.plusDays(1), null, null, null))).containsExactly("b", "c");
    assertThat(found(of(null, null, null, day.plusDays(1), null, null))).containsExactly("a", "b");
    assertThat(found(of(null, null, null, null, "plain", null))).hasSize(3);
    assertThat(found(of(null, null, null, null, "usb-c-16", null))).isEmpty();
    assertThat(found(of(null, null, null, null, null, two))).containsExactly("c");
    assertThat(found(Search.ofRun(one))).containsExactly("a", "b");
    assertThat(Search.ofRun(one).latestOnly().latest()).isTrue();
  }

  @Test
  void overrulesAndBenchResultsComeOutInTheirOrder() {
    long id = record.add(run("one", "photos"), boards.scoring("job", "b"));
    Overrule first =
        new Overrule(Verdict.DEFECT, Optional.of(FindingKind.OPEN), "it moves", "Grace", NOON);
    Overrule second =
        new Overrule(
            Verdict.ACCEPTABLE, Optional.empty(), "reflowed", "Grace", NOON.plusMinutes(5));
    BenchResult bench =
        new BenchResult(BenchTest.METER, "ok", OptionalInt.empty(), "Grace", NOON.plusMinutes(9));
    record.overrule(id, 2, first);
    record.overrule(id, 2, second);
    record.bench(id, 2, bench);

    RecordedJoint joint = record.row(id).joints().get(1);
    assertThat(joint.overrules()).containsExactly(first, second);
    assertThat(joint.bench()).containsExactly(bench);
    assertThat(joint.verdict()).isEqualTo(Verdict.ACCEPTABLE);
    assertThat(record.row(id).joints().get(0).overrules()).isEmpty();
  }

  @Test
  void verifyMissesNoJoint() throws SQLException {
    long id = record.add(run("one", "photos"), boards.scoring("job", "b"));
    assertThat(record.troubles()).isEmpty();

    behindItsBack("DELETE FROM joint WHERE pin = 2");

    assertThat(record.troubles())
        .anyMatch(line -> line.contains("scoring " + id) && line.contains("2 joints of 3"))
        .anyMatch(line -> line.contains("was changed after that"))
        .hasSize(2);
  }

  @Test
  void verifyNamesWhatRefersToNothing() throws SQLException {
    record.add(run("one", "photos"), boards.scoring("job", "b"));

    behindItsBack("UPDATE board SET job_id = 77");

    assertThat(record.troubles()).anyMatch(line -> line.contains("not there: " + rowOf("board")));
  }

  String rowOf(String table) {
    return table + " row 1";
  }

  @Test
  void whereTheReaderWasAskedItsOpinionMustBeThere() {
    long id =
        record.add(
            run("one", "photos"),
            boards.scoring(
                "job",
                "b",
                NOON,
                ScoredBoard.method(Optional.of("0123456789ab")),
                ScoredBoard.found()));

    assertThat(record.troubles())
        .singleElement()
        .asString()
        .contains("scoring " + id)
        .contains("3 joints");
  }

  @ParameterizedTest
  @CsvSource({
    "after rework,AFTER_REWORK",
    "After-Rework,AFTER_REWORK",
    " after_rework ,AFTER_REWORK",
    "AS RECEIVED,AS_RECEIVED",
    "final,FINAL"
  })
  void aStageIsKnownByItsName(String name, Stage stage) {
    assertThat(Stage.of(name)).contains(stage);
  }

  @Test
  void stagesAreWordedForPeople() {
    assertThat(Stage.of("afterwards")).isEmpty();
    assertThat(Stage.AFTER_REWORK.words()).isEqualTo("after rework");
    assertThat(new Subject("j", "b", Stage.AFTER_REWORK, 1).stageWords()).isEqualTo("after rework");
    assertThat(new Subject("j", "b", Stage.AFTER_REWORK, 2).stageWords())
        .isEqualTo("after rework 2");
  }

  @ParameterizedTest
  @CsvSource({"' ',b,1", "j,' ',1", "j,b,0"})
  void aSubjectNeedsNamesAndAnAttempt(String job, String board, int attempt) {
    assertThatThrownBy(() -> new Subject(job, board, Stage.FINAL, attempt))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
