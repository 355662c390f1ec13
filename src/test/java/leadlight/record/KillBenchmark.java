package leadlight.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.OptionalInt;
import java.util.Random;
import leadlight.record.file.Database;
import leadlight.record.said.BenchResult;
import leadlight.record.said.BenchTest;
import leadlight.record.scoring.RunStart;
import leadlight.record.scoring.Search;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/**
 * Kills a process (SIGKILL) while it commits scorings and bench results, and looks whether all that
 * it had acknowledged is there and the record sound: {@code mvn test -Dtest=KillBenchmark
 * -Dkills=200}. A kill was inside a commit where the rollback journal of an open transaction stayed
 * behind. Figures are kept in docs/trust.md.
 */
@EnabledIfSystemProperty(named = "kills", matches = "\\d+")
class KillBenchmark {

  private static final String BEGINS = "begins";

  @TempDir Path folder;

  /** What is killed: says when a write begins and when it has returned. */
  static final class Writer {

    private Writer() {}

    public static void main(String[] args) {
      Path folder = Path.of(args[0]);
      ScoredBoard boards = new ScoredBoard(folder);
      ZonedDateTime at = ScoredBoard.NOON;
      try (JobRecord record = JobRecord.open(folder)) {
        long run =
            record.startRun(
                new RunStart(folder.resolve("run-" + args[1]), "photos", "Ada", at, "0.1.0"));
        for (int i = 0; ; i++) {
          say(BEGINS);
          long id = record.add(run, boards.scoring("job", "board " + args[1] + "-" + i));
          say("" + id);
          say(BEGINS);
          record.bench(
              id, 1, new BenchResult(BenchTest.PROD, "firm", OptionalInt.empty(), "Ada", at));
          say("bench " + id);
        }
      }
    }

    private static void say(String line) {
      System.out.println(line);
      System.out.flush();
    }
  }

  @Test
  void whatWasAcknowledgedIsThere() throws IOException, InterruptedException {
    int kills = Integer.getInteger("kills");
    Random random = new Random(5);
    int inside = 0;
    long scorings = 0;
    long benches = 0;
    for (int i = 0; i < kills; i++) {
      Process process =
          new ProcessBuilder(
                  System.getProperty("java.home") + "/bin/java",
                  "-XX:TieredStopAtLevel=1",
                  "-cp",
                  System.getProperty("java.class.path"),
                  Writer.class.getName(),
                  folder.toString(),
                  "" + i)
              .redirectError(ProcessBuilder.Redirect.DISCARD)
              .start();
      int writes = 1 + random.nextInt(6);
      try (BufferedReader said =
          new BufferedReader(
              new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
        for (String line = said.readLine(); line != null; line = said.readLine()) {
          if (line.equals(BEGINS)) {
            if (--writes == 0) {
              Thread.sleep(0, random.nextInt(999_999));
              Thread.sleep(random.nextInt(12));
              // Not by the process itself, which would close what it still has to say.
              process.toHandle().destroyForcibly();
            }
          } else if (line.startsWith("bench ")) {
            benches++;
          } else {
            scorings++;
          }
        }
      }
      process.waitFor();
      inside += Files.exists(folder.resolve(Database.FILE + "-journal")) ? 1 : 0;
      try (JobRecord record = JobRecord.open(folder)) {
        long there = record.scorings(Search.all()).size();
        // One more than acknowledged where the kill fell between commit and word; so it stays.
        assertThat(there).isBetween(scorings, scorings + 1);
        scorings = there;
        assertThat(record.troubles()).isEmpty();
        long tests =
            record.scorings(Search.all()).stream()
                .flatMap(scoring -> record.row(scoring.id()).joints().stream())
                .mapToLong(joint -> joint.bench().size())
                .sum();
        assertThat(tests).isBetween(benches, benches + 1);
        benches = tests;
      }
    }
    System.out.println(
        kills
            + " kills, "
            + inside
            + " inside a commit; "
            + scorings
            + " scorings and "
            + benches
            + " bench results, none lost");
  }
}
