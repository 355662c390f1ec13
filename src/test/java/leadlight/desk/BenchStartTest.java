package leadlight.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import leadlight.record.JobRecord;
import leadlight.record.scoring.Stage;
import leadlight.record.scoring.Subject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a stop left half done is finished when the bench starts again. */
class BenchStartTest {

  private static final Path SAMPLE = Path.of("sample-images/base-station-video-good.jpg");

  @TempDir private Path folder;

  @Test
  void resultsWhoseWritingWasBrokenOffAreWrittenAgain() throws IOException, Refused {
    try (JobRecord record = JobRecord.open(folder)) {
      Bench bench = started(record);
      bench.choose(new Subject("0412", "A1", Stage.AS_RECEIVED, 1));
      long scoring = bench.take(Files.readAllBytes(SAMPLE), "row.jpg");
      Path results = record.results(scoring);
      stoppedWhileWriting(record, scoring, results);
      assertThat(record.troubles()).isNotEmpty();

      started(record);

      assertThat(record.troubles()).isEmpty();
      assertThat(results).content().contains("\"joints\"");
    }
  }

  private Bench started(JobRecord record) {
    return new Bench(EnrolledPageTest.setup(record, folder, Optional.empty()));
  }

  private static void stoppedWhileWriting(JobRecord record, long scoring, Path results)
      throws IOException {
    assertThatThrownBy(
            () ->
                record.rewriteResults(
                    scoring,
                    () -> {
                      throw new IllegalStateException("stopped here");
                    }))
        .hasMessage("stopped here");
    Files.writeString(results, "{\"half\": 1}");
  }
}
