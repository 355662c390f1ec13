package leadlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Random;
import leadlight.cli.terminal.ExitStatus;
import leadlight.record.JobRecord;
import leadlight.record.scoring.RunStart;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Text files altered in a byte or four, from a fixed seed: whatever comes of it, it is no fault of
 * ours, and a line for each photo at most. Pictures: {@code leadlight.photo.DamageTest}.
 */
class MutatedInputTest {

  private static final int TRIES = 60;
  private static final String TELLING = "\"{}[](),.:;-0e\n\u0000\u00ff";

  @TempDir private Path folder;

  /** What is run on the altered file. */
  private interface Command {
    Run on(Path file, int number);
  }

  private void mutated(String name, byte[] whole, Command command) throws IOException {
    Random random = new Random(name.hashCode());
    int refused = 0;
    for (int i = 0; i < TRIES; i++) {
      byte[] bytes = whole.clone();
      for (int n = random.nextInt(4); n >= 0; n--) {
        int what = random.nextInt(256);
        bytes[random.nextInt(bytes.length)] =
            (byte) (random.nextBoolean() ? what : TELLING.charAt(what % TELLING.length()));
      }
      Run run = command.on(Files.write(folder.resolve(name), bytes), i);
      assertThat(run.status())
          .as(run.err() + new String(bytes, StandardCharsets.ISO_8859_1))
          .isNotEqualTo(ExitStatus.FAULT.code());
      assertThat(run.errLines())
          .hasSizeLessThanOrEqualTo(3)
          .allMatch(it -> it.startsWith("leadlight: "));
      refused += run.status() == ExitStatus.UNUSABLE.code() ? 1 : 0;
    }
    assertThat(refused).as("some alterations must be noticed").isPositive();
  }

  @Test
  void footprints() throws IOException {
    Path own = Path.of("src/test/resources/footprints");
    try (var files = Files.list(own)) {
      Path one = files.filter(it -> it.toString().endsWith("_mod")).sorted().findFirst().get();
      mutated(
          "own.kicad_mod",
          Files.readAllBytes(one),
          (file, i) ->
              Run.of(
                  "connector",
                  "import",
                  file,
                  "--id",
                  "own",
                  "--out",
                  folder.resolve("own-" + i + ".json")));
    }
  }

  @Test
  void connectors() throws IOException {
    mutated(
        "own.json",
        Files.readAllBytes(Path.of("models/connectors/video-a-19-slots.json")),
        (file, i) -> Run.of("connector", "show", file));
  }

  @Test
  void manifests() throws IOException {
    String lines =
        "photo,job,board,stage,attempt,leads,pitch_mm,class\n"
            + "none.jpg,0412,A1,final,1,19,0.5,2\nnone2.jpg,0412,A2,final,1,19,0.5,2\n";
    mutated(
        "day.csv",
        lines.getBytes(StandardCharsets.UTF_8),
        (file, i) ->
            Run.of(
                "batch",
                file,
                "--threads",
                1,
                "--out",
                folder.resolve("out"),
                "--record",
                folder.resolve("record")));
  }

  @Test
  void exportedRecords() throws IOException {
    Path record = folder.resolve("exported");
    ZonedDateTime noon = ZonedDateTime.of(2026, 3, 1, 12, 0, 0, 0, ZoneId.of("UTC"));
    try (JobRecord open = JobRecord.open(record)) {
      open.endRun(
          open.startRun(new RunStart(folder.resolve("run"), "photos", "Ada", noon, "0.1.0")), noon);
    }
    Path all = folder.resolve("all.jsonl");
    assertThat(Run.of("record", "export", all, "--record", record).status()).isZero();
    byte[] whole = Files.readAllBytes(all);
    mutated(
        "altered.jsonl",
        whole,
        (file, i) -> Run.of("record", "import", file, "--record", folder.resolve("made-" + i)));
  }
}
