package leadlight.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import leadlight.app.output.Reports;
import leadlight.connector.RowRequest;
import leadlight.enrol.Bench;
import leadlight.enrol.learn.Enrolment;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.life.Presets;
import leadlight.model.remark.NoteOfRow;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.record.JobRecord;
import leadlight.report.ReportWriter;
import leadlight.report.words.ReportContext;
import leadlight.text.Messages;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The bench page judges photos as of the bench that was enrolled. */
class EnrolledPageTest {

  private static final Path SAMPLE = Path.of("sample-images/base-station-video-good.jpg");

  @TempDir private Path folder;

  @Test
  void aGlanceSaysWhichEnrolmentJudges() {
    try (JobRecord record = JobRecord.open(folder);
        Photo photo = new PhotoReader().read(SAMPLE)) {
      BenchSetup setup = setup(record, folder, Optional.of(new Bench(nothingShown())));
      assertThat(new leadlight.desk.Bench(setup).scorer().glance(photo).rowNotes())
          .contains(new NoteOfRow.NotYetEnrolled("ring", 3));
    }
  }

  static BenchSetup setup(JobRecord record, Path folder, Optional<Bench> enrolled) {
    AcceptanceSet limits = AcceptanceSet.load(AcceptanceSet.DEFAULT_ID);
    ReportContext context =
        new ReportContext("test", "test", Reports.stated(limits), Messages.of("en"));
    return new BenchSetup(
        record,
        folder,
        folder,
        Optional.empty(),
        row(),
        2,
        new Presets(List.of()),
        limits,
        new ReportWriter(context, (scored, picture) -> new byte[0]),
        Messages.of("en"),
        "Ada",
        Clock.systemDefaultZone(),
        enrolled);
  }

  private static RowRequest row() {
    return new RowRequest(
        Optional.empty(),
        OptionalInt.empty(),
        OptionalInt.of(19),
        OptionalDouble.of(0.5),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        false,
        false);
  }

  private static Enrolment nothingShown() {
    return new Enrolment(
        Enrolment.SCHEMA,
        "ring",
        3,
        "test",
        "both",
        List.of(),
        List.of(),
        List.of(),
        Optional.empty(),
        new Enrolment.Cloud(new double[] {1, 1, 1}, 0, 0));
  }
}
