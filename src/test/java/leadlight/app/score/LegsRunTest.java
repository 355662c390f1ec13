package leadlight.app.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import leadlight.app.output.Reports;
import leadlight.batch.Outcome;
import leadlight.batch.RunSetup;
import leadlight.batch.list.JobPhoto;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.life.PhotoShelf;
import leadlight.model.BoardSide;
import leadlight.model.Opinions;
import leadlight.model.row.RowSpec;
import leadlight.record.JobRecord;
import leadlight.record.said.LegsSeen;
import leadlight.record.scoring.RunPhoto;
import leadlight.record.scoring.Stage;
import leadlight.record.scoring.Subject;
import leadlight.report.words.ReportContext;
import leadlight.summary.board.LegsStanding;
import leadlight.text.Messages;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code legs-010.jpg} shows the four legs of a video connector from the solder side. */
class LegsRunTest {

  private static final Path PHOTO = Path.of("src/test/resources/leadlight/leg/legs-010.jpg");

  private static final RowSpec LEADS =
      RowSpec.plain(19, 0.5, OptionalDouble.empty(), OptionalDouble.empty());

  @TempDir private Path folder;
  private JobRecord record;

  @BeforeEach
  void open() {
    record = JobRecord.open(folder.resolve("record"));
  }

  @AfterEach
  void close() {
    record.close();
  }

  private LegsRun run(boolean again) {
    AcceptanceSet limits = AcceptanceSet.load(AcceptanceSet.DEFAULT_ID);
    RunSetup setup =
        new RunSetup(
            limits,
            Opinions.BOTH,
            Optional.empty(),
            new ReportContext("test", "none", Reports.stated(limits), Messages.of("en")),
            (scored, picture) -> new byte[0],
            "Ada",
            again,
            1,
            Clock.fixed(Instant.parse("2026-11-28T12:00:00Z"), ZoneOffset.UTC),
            fault -> "kept aside");
    return new LegsRun(
        record, new PhotoShelf(folder.resolve("record")), setup, folder.resolve("run"));
  }

  private static JobPhoto photo(Path file, Stage stage, int attempt, int productClass) {
    return new JobPhoto(
        file,
        new Subject("0412", "1", stage, attempt, Optional.empty()),
        new RowSpec("video-a-19-holes", LEADS.lands(), 0.5, OptionalDouble.empty(), false),
        Optional.empty(),
        productClass,
        Optional.of(BoardSide.SOLDER));
  }

  private List<LegsSeen> noted() {
    return record.life("0412", "1").stream().map(LegsSeen::of).toList();
  }

  @Test
  void aPhotoIsJudgedIntoItsOwnFolderAndNotedOnce() {
    JobPhoto photo = photo(PHOTO, Stage.FINAL, 1, 2);
    Outcome first = run(false).take(photo);

    assertThat(first.kind()).isEqualTo(RunPhoto.Outcome.SCORED);
    assertThat(first.results().orElseThrow())
        .isRegularFile()
        .startsWith(folder.resolve("run/0412/1/final"));
    assertThat(run(false).take(photo).kind()).isEqualTo(RunPhoto.Outcome.UNCHANGED);
    assertThat(noted())
        .singleElement()
        .satisfies(seen -> assertThat(seen.legs()).hasSize(4))
        .satisfies(seen -> assertThat(seen.picture()).isPresent());
  }

  @Test
  void judgedByAnotherClassTheLastJudgementAloneStands() {
    run(false).take(photo(PHOTO, Stage.FINAL, 1, 2));
    JobPhoto stricter = photo(PHOTO, Stage.FINAL, 1, 3);

    assertThat(run(false).take(stricter).kind()).isEqualTo(RunPhoto.Outcome.SCORED);
    assertThat(run(false).take(stricter).kind()).isEqualTo(RunPhoto.Outcome.UNCHANGED);
    assertThat(LegsStanding.of(record.life("0412", "1")))
        .singleElement()
        .satisfies(seen -> assertThat(seen.work().orElseThrow().how()).contains("class 3"));
    assertThat(run(false).take(photo(PHOTO, Stage.FINAL, 1, 2)).kind())
        .as("class 2 stands no more")
        .isEqualTo(RunPhoto.Outcome.SCORED);
  }

  @Test
  void askedToJudgeAgainItDoes() {
    JobPhoto photo = photo(PHOTO, Stage.FINAL, 1, 2);
    run(false).take(photo);

    assertThat(run(true).take(photo).kind()).isEqualTo(RunPhoto.Outcome.SCORED);
    assertThat(noted()).hasSize(2);
  }

  @Test
  void whatIsNoPhotoIsRefusedByNameAndNothingIsNoted() throws IOException {
    Path text = Files.writeString(folder.resolve("notes.jpg"), "no photo");

    Outcome outcome = run(false).take(photo(text, Stage.FINAL, 1, 2));

    assertThat(outcome.kind()).isEqualTo(RunPhoto.Outcome.REFUSED);
    assertThat(outcome.message().orElseThrow()).contains("notes.jpg");
    assertThat(record.life("0412", "1")).isEmpty();
  }

  @Test
  void theLastWorkIsNotedLastAndPhotosOfRowsAreNone() {
    JobPhoto last = photo(PHOTO, Stage.FINAL, 2, 2);
    JobPhoto before = photo(PHOTO, Stage.FINAL, 1, 2);
    JobPhoto received = photo(PHOTO, Stage.AS_RECEIVED, 1, 2);
    JobPhoto row = new JobPhoto(PHOTO, last.subject(), last.row(), last.body(), 2);

    assertThat(LegsRun.inOrder(List.of(last, row, before, received)))
        .containsExactly(received, before, last);
  }
}
