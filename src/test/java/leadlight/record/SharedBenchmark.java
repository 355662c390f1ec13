package leadlight.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.TimeUnit;
import leadlight.model.Verdict;
import leadlight.record.engine.RecordPlace;
import leadlight.record.said.BenchResult;
import leadlight.record.said.BenchTest;
import leadlight.record.said.LifeEvent;
import leadlight.record.said.Overrule;
import leadlight.record.scoring.RunStart;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/**
 * Several processes write to one record on a server, which is killed (SIGKILL) and started again as
 * they do: {@code mvn test -Dtest=SharedBenchmark -Dshared.seconds=600 -Dshared.kills=0}. All that
 * was acknowledged must be there once and the record sound. Figures are kept in docs/record.md.
 */
@EnabledIfSystemProperty(named = "shared.seconds", matches = "\\d+")
class SharedBenchmark {

  private static final int WRITERS = 4;
  private static final int PAUSE_MS = 50;
  private static final int DOWN_MS = 1500;

  @TempDir Path folder;

  /** A bench: a board after the other, each with an opinion, a prod and an event of its life. */
  static final class Writer {

    private Writer() {}

    public static void main(String[] args) throws InterruptedException {
      Path folder = Path.of(args[1]);
      String name = args[2];
      long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(Long.parseLong(args[3]));
      ScoredBoard boards = new ScoredBoard(folder);
      var at = ScoredBoard.NOON;
      int done = 0;
      long slowestMs = 0;
      try (JobRecord record = JobRecord.open(RecordPlace.parse(args[0]))) {
        long run =
            record.startRun(new RunStart(folder.resolve("run-" + name), name, "Ada", at, "0.1.0"));
        for (; System.nanoTime() < end; done++) {
          long began = System.nanoTime();
          String board = name + "-" + done;
          long id = record.add(run, boards.scoring("job", board));
          record.overrule(id, 1, new Overrule(Verdict.DEFECT, Optional.empty(), board, "Ada", at));
          record.bench(
              id, 1, new BenchResult(BenchTest.PROD, "firm", OptionalInt.empty(), "Ada", at));
          record.add(
              "job",
              board,
              new LifeEvent(LifeEvent.Kind.PART, board, List.of(), Optional.empty(), "Ada", at));
          assertThat(record.row(id).joints().get(0).overrules()).hasSize(1);
          slowestMs = Math.max(slowestMs, TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - began));
          Thread.sleep(PAUSE_MS);
        }
        record.endRun(run, at);
      }
      System.out.println(done + " " + slowestMs);
    }
  }

  private Process writer(OwnServer server, RecordPlace there, int number, long seconds)
      throws IOException {
    ProcessBuilder java =
        new ProcessBuilder(
                System.getProperty("java.home") + "/bin/java",
                "-XX:TieredStopAtLevel=1",
                "-Xmx256m",
                "-cp",
                System.getProperty("java.class.path"),
                Writer.class.getName(),
                there.toString(),
                folder.toString(),
                "bench" + number,
                "" + seconds)
            .redirectError(ProcessBuilder.Redirect.INHERIT);
    java.environment().put("PGPASSFILE", server.passwordFile().toString());
    return java.start();
  }

  @Test
  void whatWasAcknowledgedIsThereOnceAndSound() throws Exception {
    long seconds = Long.getLong("shared.seconds");
    int kills = Integer.getInteger("shared.kills", 0);
    try (OwnServer server = OwnServer.start().orElseThrow()) {
      RecordPlace.Server there = server.empty();
      JobRecord.open(there).close();
      List<Process> writers = new ArrayList<>();
      for (int i = 0; i < WRITERS; i++) {
        writers.add(writer(server, there, i, seconds));
      }
      for (int i = 0; i < kills; i++) {
        Thread.sleep(TimeUnit.SECONDS.toMillis(seconds) / (kills + 1) - DOWN_MS);
        server.kill();
        Thread.sleep(DOWN_MS);
        server.go();
      }
      long boards = 0;
      List<String> said = new ArrayList<>();
      for (Process writer : writers) {
        try (BufferedReader out =
            new BufferedReader(
                new InputStreamReader(writer.getInputStream(), StandardCharsets.UTF_8))) {
          String line = out.readLine();
          assertThat(line).as("what a writer said; its trouble stands above").isNotNull();
          said.add(line);
          boards += Long.parseLong(line.split(" ")[0]);
        }
        assertThat(writer.waitFor()).isZero();
      }
      System.out.println(
          "%d processes, %d s, %d kills: %d boards; each said boards and slowest board in ms: %s"
              .formatted(WRITERS, seconds, kills, boards, said));
      for (String table :
          List.of("board", "scoring", "overrule", "bench_result", "life_event", "run_photo")) {
        assertThat(count(server, there, table)).as(table).isEqualTo(boards);
      }
      try (JobRecord record = JobRecord.open(there)) {
        assertThat(record.seal().entries()).isEqualTo(1 + 4 * boards + WRITERS);
        long began = System.nanoTime();
        assertThat(record.troubles()).isEmpty();
        System.out.println(
            "sound, %d entries, verified in %d s"
                .formatted(
                    record.seal().entries(),
                    TimeUnit.NANOSECONDS.toSeconds(System.nanoTime() - began)));
      }
    }
  }

  private static long count(OwnServer server, RecordPlace.Server there, String table)
      throws Exception {
    try (Connection connection = server.connect(there.database());
        Statement statement = connection.createStatement();
        ResultSet row = statement.executeQuery("SELECT count(*) FROM " + table)) {
      row.next();
      return row.getLong(1);
    }
  }
}
