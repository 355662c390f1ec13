package leadlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import leadlight.record.JobRecord;
import leadlight.record.scoring.Scoring;
import leadlight.record.scoring.Search;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Names that a file system or a customer may come up with, from folder to summary. */
class OddNamesTest {

  private static final Path SAMPLE = Path.of("sample-images", "base-station-video-good.jpg");

  /** What a spreadsheet would take for a formula. */
  private static final String FORMULA = "(?m)(^|,)\"?[=+@-](?![0-9.]+(,|$))";

  @TempDir private Path folder;
  private Path out;

  @BeforeEach
  void out() {
    out = folder.resolve("out");
  }

  private Run batch(Path source) {
    return Run.of(
        "batch",
        source,
        "--leads",
        19,
        "--pitch",
        0.5,
        "--out",
        out,
        "--record",
        folder.resolve("record"));
  }

  private List<Scoring> recorded() {
    try (JobRecord record = JobRecord.open(folder.resolve("record"))) {
      assertThat(record.troubles()).isEmpty();
      return record.scorings(Search.all());
    }
  }

  private String table(String name) throws IOException {
    try (Stream<Path> files = Files.walk(out)) {
      Path file = files.filter(f -> f.endsWith(name)).findFirst().orElseThrow();
      return Files.readString(file);
    }
  }

  @Test
  void namesOfAnyKindKeepTheirPhotosApart() throws IOException {
    List<String> names =
        List.of(
            "a'b\"c.jpg",
            "two\nlines.jpg",
            "\u6c34\u4f4d\u8a08 \u0645\u0633\u062a\u0648\u0649 e\u0301.jpg",
            "=1+2.jpg",
            "-x.jpg",
            "'; DROP TABLE scoring; --.jpg",
            "x".repeat(246) + ".jpg",
            "x".repeat(245) + "y.jpg",
            " .jpg",
            "%s%n\\.jpg");
    Path place = folder.resolve("day/=HYPERLINK(1)/" + "b".repeat(250));
    Files.createDirectories(place);
    for (String name : names) {
      Files.copy(SAMPLE, place.resolve(name));
    }

    Run run = batch(folder.resolve("day"));

    assertThat(run.err()).isEmpty();
    assertThat(run.out()).startsWith("10 photos: 10 scored, 0 unchanged, 0 cannot be used");
    assertThat(recorded())
        .extracting(scoring -> scoring.photo().file())
        .containsExactlyInAnyOrderElementsOf(names);
    assertThat(recorded()).extracting(Scoring::results).doesNotHaveDuplicates();
    assertThat(table("photos.csv")).contains("'=1+2.jpg", "'-x.jpg").doesNotContainPattern(FORMULA);
  }

  @Test
  void noJobOfAManifestLeadsOutOfTheRunsFolder() throws IOException {
    Files.copy(SAMPLE, folder.resolve("row.jpg"));
    Path manifest = folder.resolve("day.csv");
    Files.writeString(
        manifest,
        """
        photo,job,board
        row.jpg,../../escaped,1
        row.jpg,/tmp/escaped,1
        row.jpg,j,../../../escaped
        row.jpg,..,..
        row.jpg,C:\\escaped,"con
        2"
        """,
        StandardCharsets.UTF_8);

    assertThat(batch(manifest).out()).startsWith("5 photos: 5 scored");

    assertThat(recorded()).hasSize(5);
    assertThat(recorded())
        .allSatisfy(scoring -> assertThat(scoring.results().toRealPath()).startsWith(out));
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files.map(f -> f.getFileName().toString()))
          .containsExactlyInAnyOrder("day.csv", "out", "record", "row.jpg");
    }
  }
}
