package leadlight.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import leadlight.app.output.Reports;
import leadlight.batch.list.Defaults;
import leadlight.batch.list.JobPhoto;
import leadlight.connector.RowRequest;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.Opinions;
import leadlight.reader.SecondReader;
import leadlight.record.JobRecord;
import leadlight.record.scoring.RunPhoto;
import leadlight.record.scoring.Scoring;
import leadlight.record.scoring.Search;
import leadlight.report.words.ReportContext;
import leadlight.text.Messages;
import leadlight.vision.Frame;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FolderWatchTest {

  private static final Path SAMPLE = Path.of("sample-images", "base-station-video-good.jpg");
  private static final Instant NOON = Instant.parse("2026-03-29T12:00:00Z");
  private static final AcceptanceSet LIMITS = AcceptanceSet.load(AcceptanceSet.DEFAULT_ID);

  @TempDir private Path folder;
  private Path inbox;
  private JobRecord record;
  private BatchRun run;
  private FolderWatch watch;
  private Thread watching;
  private final BlockingQueue<Outcome> took = new LinkedBlockingQueue<>();
  private final BlockingQueue<String> said = new LinkedBlockingQueue<>();

  @BeforeEach
  void start() throws IOException {
    inbox = Files.createDirectory(folder.resolve("inbox"));
    record = JobRecord.open(folder.resolve("record"));
    run = open("inbox", NOON);
    watch =
        new FolderWatch(
            inbox, new Defaults(RowRequest.of("video-a-19-slots"), Optional.empty(), 2), run);
    watching = new Thread(() -> watch.watch(took::add, said::add));
    watching.start();
  }

  private BatchRun open(String source, Instant now) {
    RunSetup setup =
        new RunSetup(
            LIMITS,
            Opinions.BOTH,
            Optional.empty(),
            new ReportContext(
                "test", SecondReader.version(), Reports.stated(LIMITS), Messages.of("en")),
            (scored, picture) -> new byte[0],
            "Ada",
            false,
            1,
            Clock.fixed(now, ZoneId.of("Europe/London")),
            fault -> fault.toString());
    return BatchRun.open(source, folder.resolve("out"), record, setup);
  }

  @AfterEach
  void stop() throws InterruptedException {
    watch.stop();
    watching.join();
    run.close();
    record.close();
    assertThat(Frame.live()).isZero();
  }

  private static <A> A next(BlockingQueue<A> queue) throws InterruptedException {
    A heard = queue.poll(30, TimeUnit.SECONDS);
    assertThat(heard).as("heard of within half a minute").isNotNull();
    return heard;
  }

  @Test
  void aPhotoThatArrivesInPiecesIsScoredOnceWhenItIsWhole() throws Exception {
    byte[] whole = Files.readAllBytes(SAMPLE);
    Path photo = inbox.resolve("row.jpg");
    for (int from = 0; from < whole.length; from += 7000) {
      byte[] piece = Arrays.copyOfRange(whole, from, Math.min(from + 7000, whole.length));
      Files.write(photo, piece, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
      Thread.sleep(200);
    }

    assertThat(next(took).kind()).isEqualTo(RunPhoto.Outcome.SCORED);
    assertThat(took.poll(500, TimeUnit.MILLISECONDS)).as("only once").isNull();
    assertThat(said).isEmpty();
  }

  @Test
  void aFolderThatVanishesIsSaidOnceAndWaitedFor() throws Exception {
    Files.delete(inbox);
    assertThat(next(said)).contains("inbox is gone or cannot be read; waiting for it");

    Files.createDirectory(inbox);
    Files.copy(SAMPLE, inbox.resolve("row.jpg"));
    assertThat(next(took).kind()).isEqualTo(RunPhoto.Outcome.SCORED);
    assertThat(next(said)).isEqualTo("all is well again");
    assertThat(said).isEmpty();
  }

  @Test
  void photosThatVanishWhileTheyWaitAreScoredOnceTheyAreBack() throws Exception {
    for (String name : List.of("a.jpg", "b.jpg", "c.jpg", "d.jpg")) {
      Files.copy(SAMPLE, folder.resolve(name));
      Files.createSymbolicLink(inbox.resolve(name), folder.resolve(name));
    }
    next(took);
    Path away = Files.move(inbox, folder.resolve("away"));
    assertThat(next(said)).contains("inbox is gone");
    Files.move(away, inbox);
    while (record.scorings(Search.all()).size() < 4) {
      assertThat(next(took).message()).isEmpty();
    }

    assertThat(next(said)).isEqualTo("all is well again");
  }

  @Test
  void aPhotoThatIsNoneIsNamedAndTheNextIsScored() throws Exception {
    Files.write(inbox.resolve("a.jpg"), Arrays.copyOf(Files.readAllBytes(SAMPLE), 9000));
    assertThat(next(took).message().orElseThrow()).contains("a.jpg is cut short");

    Files.copy(SAMPLE, inbox.resolve("b.jpg"));
    assertThat(next(took).kind()).isEqualTo(RunPhoto.Outcome.SCORED);
  }

  @Test
  void aClockThatWasSetBackNeitherOverwritesNorReorders() throws Exception {
    Files.copy(SAMPLE, inbox.resolve("row.jpg"));
    next(took);
    watch.stop();
    watching.join();

    Path photo = folder.resolve("row.jpg");
    Files.copy(Path.of("sample-images", "base-station-video-mixed.jpg"), photo);
    JobPhoto later =
        new JobPhoto(
            photo,
            record.scorings(Search.all()).get(0).subject(),
            RowRequest.of("video-a-19-slots").spec(),
            Optional.empty(),
            2);
    for (Duration back : List.of(Duration.ofHours(1), Duration.ZERO, Duration.ofDays(9000))) {
      try (BatchRun earlier = open("later " + back, NOON.minus(back))) {
        assertThat(earlier.folder()).isNotEqualTo(run.folder());
        earlier.score(later);
      }
    }

    List<Scoring> all = record.scorings(Search.all());
    assertThat(all).extracting(s -> s.photo().file()).containsExactly("row.jpg", "row.jpg");
    assertThat(all.get(1).scoredAt()).isBefore(all.get(0).scoredAt());
    assertThat(record.scorings(Search.all().latestOnly())).last().isEqualTo(all.get(1));
    assertThat(record.troubles()).isEmpty();
  }
}
