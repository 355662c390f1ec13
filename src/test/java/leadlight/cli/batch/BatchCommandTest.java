package leadlight.cli.batch;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import leadlight.cli.Run;
import leadlight.record.JobRecord;
import leadlight.record.said.LegsSeen;
import leadlight.record.scoring.Scoring;
import leadlight.record.scoring.Search;
import leadlight.record.scoring.Stage;
import leadlight.vision.Frame;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BatchCommandTest {

  private static final Path SAMPLES = Path.of("sample-images");

  @TempDir private Path folder;
  private Path day;

  @BeforeEach
  void day() throws IOException {
    day = folder.resolve("day");
    put("base-station-video-mixed.jpg", "=cmd <b> \u6c34\n/port/as received/row.jpg");
    put("base-station-video-good.jpg", "=cmd <b> \u6c34\n/port/after rework/row.jpg");
  }

  private void put(String sample, String place) throws IOException {
    Path file = day.resolve(place);
    Files.createDirectories(file.getParent());
    Files.copy(SAMPLES.resolve(sample), file);
  }

  @AfterEach
  void noPictureStaysInNativeMemory() {
    assertThat(Frame.live()).isZero();
  }

  private Run batch(Object... more) {
    Object[] args =
        Stream.concat(
                Stream.of(
                    "batch",
                    day,
                    "--leads",
                    19,
                    "--pitch",
                    0.5,
                    "--out",
                    folder.resolve("out"),
                    "--record",
                    folder.resolve("record")),
                Stream.of(more))
            .toArray();
    return Run.of(args);
  }

  private List<Scoring> recorded() {
    try (JobRecord record = JobRecord.open(folder.resolve("record"))) {
      assertThat(record.troubles()).isEmpty();
      return record.scorings(Search.all());
    }
  }

  private List<Path> runs() throws IOException {
    try (Stream<Path> list = Files.list(folder.resolve("out"))) {
      return list.sorted().toList();
    }
  }

  @Test
  void aDayGivesResultsRecordAndSummary() throws IOException {
    Run run = batch();

    assertThat(run.status()).isEqualTo(3);
    assertThat(run.err()).isEmpty();
    assertThat(run.out()).startsWith("2 photos: 2 scored, 0 unchanged, 0 cannot be used\nwrote ");
    assertThat(recorded())
        .extracting(scoring -> scoring.subject().stageWords())
        .containsExactlyInAnyOrder("as received", "after rework");
    Path own = runs().get(0);
    assertThat(own.resolve("before-after-001.png")).exists();
    assertThat(Files.readString(own.resolve("photos.csv"))).contains("'=cmd <b>");
    assertThat(Files.readString(own.resolve("summary.html")))
        .contains("=cmd &lt;b&gt; \u6c34\u27e8000A\u27e9", "open joint \u2192 sound");
    assertThat(own.resolve(".unfinished")).doesNotExist();
  }

  @Test
  void whatHasNotChangedIsNotScoredAgainUnlessAskedFor() throws IOException {
    batch();

    assertThat(batch().out()).startsWith("2 photos: 0 scored, 2 unchanged");
    assertThat(recorded()).hasSize(2);
    assertThat(batch("--class", 3).out()).startsWith("2 photos: 2 scored");
    assertThat(batch("--again").out()).startsWith("2 photos: 2 scored");
    assertThat(recorded()).hasSize(6);
    assertThat(runs()).as("nothing is overwritten").hasSize(4);
  }

  @Test
  void bothOpinionsAreRecordedShownAndExportedUnlessMeasuresAloneAreAskedFor() throws IOException {
    batch();
    batch("--no-reader");
    List<Scoring> bad =
        recorded().stream().filter(s -> s.subject().stage() == Stage.AS_RECEIVED).toList();

    assertThat(bad)
        .extracting(scoring -> scoring.method().reader().isPresent())
        .containsExactly(true, false);
    assertThat(record("show", bad.get(0).id()).out())
        .containsPattern(
            "defect open\n +measures / second reader: .*no fillet at the toe \\d+ % / \\d+ %");
    assertThat(record("show", bad.get(1).id()).out())
        .contains("defect open")
        .doesNotContain("second reader");
    Path csv = folder.resolve("all.csv");
    record("export", csv);
    try (CsvReader<NamedCsvRecord> lines = CsvReader.builder().ofNamedCsvRecord(csv)) {
      assertThat(lines)
          .hasSize(4 * 19)
          .allSatisfy(
              line ->
                  assertThat(line.getField("reader_unwetted").isEmpty())
                      .isEqualTo(line.getField("reader").isEmpty()))
          .allSatisfy(line -> assertThat(line.getField("measures_unwetted")).isNotEmpty());
    }
  }

  private Run record(Object... what) {
    Stream<Object> all = Stream.of("record");
    return Run.of(
        Stream.of(all, Stream.of(what), Stream.of("--record", folder.resolve("record")))
            .flatMap(part -> part)
            .toArray());
  }

  @Test
  void aBadPhotoIsNamedCountedAndSkipped() throws IOException {
    byte[] whole = Files.readAllBytes(SAMPLES.resolve("logger-sensor-open.jpg"));
    Files.write(day.resolve("half.jpg"), java.util.Arrays.copyOf(whole, 5000));

    Run run = batch();

    assertThat(run.status()).isEqualTo(2);
    assertThat(run.errLines()).hasSize(1).first().asString().contains("half.jpg is cut short");
    assertThat(run.out()).startsWith("3 photos: 2 scored, 0 unchanged, 1 cannot be used");
    assertThat(Files.readString(runs().get(0).resolve("summary.html"))).contains("is cut short");
  }

  @Test
  void resultsThatWereDeletedAreMadeAgain() throws IOException {
    batch();
    Files.delete(recorded().get(0).results());

    assertThat(batch().out()).startsWith("2 photos: 1 scored, 1 unchanged");
  }

  @Test
  void photosOfAnchorLegsAreNotedInTheBoardsLifeAndCounted() throws IOException {
    Path legs = Path.of("src/test/resources/leadlight/leg/legs-010.jpg").toAbsolutePath();
    Path row = SAMPLES.resolve("base-station-video-good.jpg").toAbsolutePath();
    day = folder.resolve("day.csv");
    Files.writeString(
        day,
        "photo,job,stage,connector,legs\n%s,0412,final,,\n%s,0412,final,video-a-19-holes,solder\n"
            .formatted(row, legs));

    assertThat(batch().out()).startsWith("2 photos: 2 scored, 0 unchanged");
    assertThat(batch().out()).startsWith("2 photos: 0 scored, 2 unchanged");

    try (JobRecord record = JobRecord.open(folder.resolve("record"))) {
      assertThat(record.life("0412", "1"))
          .singleElement()
          .satisfies(
              event ->
                  assertThat(LegsSeen.of(event).work().map(LegsSeen.Work::stage)).contains("final"))
          .satisfies(event -> assertThat(LegsSeen.of(event).legs()).hasSize(4));
    }
    Path own = runs().get(0);
    try (Stream<Path> files = Files.walk(own.resolve("0412/1/final"))) {
      assertThat(files).anyMatch(file -> file.endsWith("legs-010.legs.png"));
    }
    assertThat(Files.readString(own.resolve("summary.html"))).contains(" of them legs");
  }

  @Test
  void twoAtOnceRecordEachPhotoOnce() {
    CompletableFuture<Run> other = CompletableFuture.supplyAsync(this::batch);
    Run one = batch();

    assertThat(List.of(one.status(), other.join().status())).containsExactly(3, 3);
    assertThat(recorded()).hasSize(2);
  }

  @Test
  void anOutputThatIsAFileIsOneLine() throws IOException {
    Files.writeString(folder.resolve("out"), "");

    Run run = batch();

    assertThat(run.status()).isEqualTo(2);
    assertThat(run.errLines()).hasSize(1);
  }

  @Test
  void theRecordIsShownExportedAndVerified() throws IOException {
    batch();
    Path record = folder.resolve("record");
    Path csv = folder.resolve("all.csv");
    Path json = folder.resolve("all.json");

    assertThat(Run.of("record", "--record", record, "--finding", "open").out())
        .endsWith("1 scoring\n");
    assertThat(Run.of("record", "show", 1, "--record", record).out()).contains("sha256", "pin 19");
    assertThat(
            Run.of(
                    "record",
                    "overrule",
                    1,
                    3,
                    "acceptable",
                    "--reason",
                    "seen",
                    "--by",
                    "Ada",
                    "--record",
                    record)
                .status())
        .isZero();
    assertThat(Run.of("record", "export", csv, "--record", record).status()).isZero();
    assertThat(Run.of("record", "export", json, "--record", record).status()).isZero();
    assertThat(Files.readAllLines(csv).stream().filter(line -> line.contains(",seen,"))).hasSize(1);
    assertThat(Files.readString(json)).contains("\"reason\":\"seen\"");
    assertThat(Run.of("record", "verify", "--record", record).out())
        .isEqualTo("the record is sound\n");
    assertThat(Run.of("record", "--record", folder.resolve("none")).errLines()).hasSize(1);
  }
}
