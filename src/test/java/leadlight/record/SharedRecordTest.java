package leadlight.record;

import static java.nio.charset.StandardCharsets.UTF_8;
import static leadlight.record.ScoredBoard.NOON;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import leadlight.model.UserError;
import leadlight.model.Verdict;
import leadlight.record.engine.RecordPlace;
import leadlight.record.engine.SharedMigrations;
import leadlight.record.file.Seal;
import leadlight.record.said.BenchResult;
import leadlight.record.said.BenchTest;
import leadlight.record.said.LifeEvent;
import leadlight.record.said.Overrule;
import leadlight.record.scoring.RunStart;
import leadlight.record.scoring.Search;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What only a record on a server has: several writers, lost connections, rights, moves. */
class SharedRecordTest {

  @TempDir private Path folder;

  private final OwnServer server = OwnServer.ofAllTests();

  private static Overrule opinion(String reason) {
    return new Overrule(Verdict.DEFECT, Optional.empty(), reason, "Grace", NOON);
  }

  /** Of each kind of row one. */
  private void fill(JobRecord record) {
    ScoredBoard boards = new ScoredBoard(folder);
    long run = record.startRun(new RunStart(folder.resolve("run"), "photos", "Ada", NOON, "0.1.0"));
    long id = record.add(run, boards.scoring("0412 Wehr \u00fc", "b_1"));
    record.add(run, boards.scoring("0412 Wehr \u00fc", "b1"));
    record.endRun(run, NOON.plusHours(1));
    record.overrule(id, 1, opinion("it moves"));
    record.bench(id, 2, new BenchResult(BenchTest.METER, "ok", OptionalInt.of(3), "Grace", NOON));
    record.takeBackOverrule(id, 1, new JobRecord.Withdrawal("slipped", "Grace", NOON));
    record.add("0412 Wehr \u00fc", "b_1", handBack());
  }

  private static LifeEvent handBack() {
    return new LifeEvent(LifeEvent.Kind.HAND_BACK, "", List.of(), Optional.of(true), "Grace", NOON);
  }

  private static String all(JobRecord record) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    record.dump(out);
    return out.toString(UTF_8);
  }

  @Test
  void theSameIsWrittenAlikeInAFolderAndOnAServer() throws IOException {
    try (JobRecord file = JobRecord.open(folder.resolve("record"));
        JobRecord shared = JobRecord.open(server.empty())) {
      fill(file);
      fill(shared);
      assertThat(shared.seal()).isEqualTo(file.seal());
      assertThat(all(shared)).isEqualTo(all(file));
      assertThat(shared.troubles()).isEmpty();
    }
  }

  @Test
  void aRecordMovesToAServerAndBackUnderOneSeal() throws IOException {
    RecordPlace there = server.empty();
    RecordPlace back = new RecordPlace.Folder(folder.resolve("back"));
    Seal seal;
    try (JobRecord file = JobRecord.open(folder.resolve("record"))) {
      fill(file);
      seal = file.moveTo(there);
      assertThat(file.seal()).isEqualTo(seal);
    }
    try (JobRecord shared = JobRecord.open(there)) {
      assertThat(shared.troubles(Optional.of(seal))).isEmpty();
      assertThatThrownBy(() -> shared.moveTo(there))
          .isInstanceOf(UserError.class)
          .hasMessageContaining("holds a record already");
      shared.overrule(1, 3, opinion("numbers go on behind those that came"));
      seal = shared.moveTo(back);
    }
    try (JobRecord file = JobRecord.open(back)) {
      assertThat(file.troubles(Optional.of(seal))).isEmpty();
      assertThat(file.row(1).joints().get(2).overrules()).hasSize(1);
    }
  }

  @Test
  void whatIsNotWholeLeavesTheServerEmpty() throws IOException {
    String lines;
    try (JobRecord file = JobRecord.open(folder.resolve("record"))) {
      fill(file);
      lines = all(file).replace("it moves", "it holds");
    }
    RecordPlace there = server.empty();
    assertThatThrownBy(
            () -> JobRecord.importInto(there, new BufferedReader(new StringReader(lines)), "all"))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("not whole");
    try (JobRecord shared = JobRecord.open(there);
        JobRecord file = JobRecord.open(folder.resolve("record"))) {
      assertThat(shared.scorings(Search.all())).isEmpty();
      assertThat(file.moveTo(there)).as("tried again").isEqualTo(file.seal());
    }
  }

  @Test
  void writersAtOnceMakeOneChain() throws Exception {
    RecordPlace there = server.record();
    int writers = 4;
    int each = 8;
    ExecutorService benches = Executors.newFixedThreadPool(writers);
    try {
      List<Callable<Void>> work = new ArrayList<>();
      for (int writer = 0; writer < writers; writer++) {
        String name = "bench " + writer;
        work.add(
            () -> {
              ScoredBoard boards = new ScoredBoard(folder);
              try (JobRecord record = JobRecord.open(there)) {
                for (int i = 0; i < each; i++) {
                  long id = record.add(boards.scoring(name, name + "-" + i));
                  record.overrule(id, 1, opinion("seen"));
                }
              }
              return null;
            });
      }
      for (Future<Void> done : benches.invokeAll(work)) {
        done.get();
      }
    } finally {
      benches.shutdown();
    }
    try (JobRecord record = JobRecord.open(there)) {
      assertThat(record.scorings(Search.all())).hasSize(writers * each);
      assertThat(record.seal().entries()).isEqualTo(1 + 2 * writers * each);
      assertThat(record.troubles()).isEmpty();
    }
  }

  private void cut(RecordPlace.Server there) {
    server.execute(
        "postgres",
        "SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = '%s'"
            .formatted(there.database()));
  }

  @Test
  void aLostConnectionIsTakenUpAgainAndNothingIsDoubled() {
    RecordPlace.Server there = server.record();
    ScoredBoard boards = new ScoredBoard(folder);
    try (JobRecord record = JobRecord.open(there)) {
      long id = record.add(boards.scoring("job", "b"));
      cut(there);
      record.overrule(id, 1, opinion("once"));
      cut(there);
      assertThat(record.row(id).joints().get(0).overrules()).hasSize(1);
      cut(there);
      List<Long> seen = new ArrayList<>();
      record.each(Search.all(), scoring -> seen.add(scoring.id()));
      assertThat(seen).containsExactly(id);
      assertThat(record.troubles()).isEmpty();
    }
  }

  @Test
  void whatVerifyFindsInAFileItFindsOnAServer() {
    RecordPlace.Server there = server.record();
    try (JobRecord record = JobRecord.open(there)) {
      fill(record);
    }
    server.execute(there.database(), "UPDATE overrule SET reason = 'it holds'");
    server.execute(there.database(), "ALTER TABLE joint DROP CONSTRAINT joint_pin_check");
    server.execute(there.database(), "DROP TRIGGER entry_noted ON entry");
    server.execute(there.database(), "DELETE FROM entry WHERE id = (SELECT max(id) FROM entry)");
    try (JobRecord record = JobRecord.open(there)) {
      assertThat(record.troubles())
          .anyMatch(line -> line.startsWith("overrule 1, recorded 2026-03-01"))
          .anyMatch(line -> line.equals("the database lacks its constraint joint.joint_pin_check"))
          .anyMatch(line -> line.equals("the database lacks its trigger entry.entry_noted"))
          .anyMatch(line -> line.equals("the chain ends at entry 7 of 8"));
    }
  }

  /** One server, so that the roles are the same for all its databases. */
  @Test
  void scoringAddsAndQaReadsAndNeitherAlters() {
    RecordPlace.Server there = server.record();
    server.execute(there.database(), SharedMigrations.text("shared/roles.sql"));
    server.execute(
        there.database(),
        "CREATE ROLE bench1 LOGIN PASSWORD 'of-the-tests' IN ROLE leadlight_scoring;"
            + "CREATE ROLE ida LOGIN PASSWORD 'of-the-tests' IN ROLE leadlight_qa");
    try (JobRecord record = JobRecord.open(server.as("bench1", there.database()));
        DrillRecord drill = DrillRecord.open(server.as("bench1", there.database()))) {
      fill(record);
      record.rewriteResults(1, () -> {});
      drill.tell(
          drill.sit("Bo", new Sitting.SetId("d".repeat(64), "s", 1, false), NOON).id(), 1, NOON);
      assertThat(drill.erase("Bo")).isEqualTo(1);
    }
    try (JobRecord record = JobRecord.open(server.as("ida", there.database()))) {
      assertThat(record.troubles()).isEmpty();
      assertThat(record.scorings(Search.all())).hasSize(2);
      assertThatThrownBy(() -> record.overrule(1, 1, opinion("not hers to say")))
          .isInstanceOf(UserError.class)
          .hasMessageContaining("does not let you do this");
    }
    for (String line :
        List.of(
            "UPDATE overrule SET reason = 'x'",
            "UPDATE scoring SET verdict = 'acceptable'",
            "DELETE FROM entry",
            "UPDATE chain_end SET entries = 0",
            "UPDATE run SET folder = 'x'")) {
      assertThatThrownBy(() -> server.execute(there.database(), "SET ROLE bench1; " + line))
          .as(line)
          .hasStackTraceContaining("permission denied");
    }
  }

  @Test
  void whoIsNotLetInIsToldInOneLine() {
    assertThatThrownBy(() -> JobRecord.open(server.as("nobody", "postgres")))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("lets you not in");
    assertThatThrownBy(() -> JobRecord.open(server.as(OwnServer.OWNER, "nowhere")))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("no such database");
    assertThatThrownBy(() -> JobRecord.open(RecordPlace.parse("postgresql://127.0.0.1:9/record")))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("does not answer");
  }

  @Test
  void whatTheServerWantsOtherwiseIsNotCalledNoAnswer() {
    RecordPlace.Server there = server.record();
    assertThatThrownBy(() -> JobRecord.open(RecordPlace.parse(there + "?sslmode=require")))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("encryption switched on");
    server.execute(
        there.database(),
        "CREATE ROLE crowd LOGIN PASSWORD 'of-the-tests' CONNECTION LIMIT 0;"
            + " CREATE ROLE follower LOGIN PASSWORD 'of-the-tests' SUPERUSER;"
            + " ALTER ROLE follower SET default_transaction_read_only = on");
    assertThatThrownBy(() -> JobRecord.open(server.as("crowd", there.database())))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("as many connections as it may");
    try (JobRecord record = JobRecord.open(server.as("follower", there.database()))) {
      assertThatThrownBy(() -> record.add("job", "b", handBack()))
          .isInstanceOf(UserError.class)
          .hasMessageContaining("takes no writes");
    }
  }

  @Test
  void aConnectionThatTheServerEndedForIdlenessIsTakenUpAgain() throws InterruptedException {
    RecordPlace.Server there = server.record();
    server.execute(
        there.database(),
        "ALTER DATABASE %s SET idle_session_timeout = '700ms'".formatted(there.database()));
    try (JobRecord record = JobRecord.open(there)) {
      Thread.sleep(1500);
      record.add("job", "b", handBack());
      Thread.sleep(1500);
      assertThat(record.life("job", "b")).hasSize(1);
    }
  }

  /** Not as a part of an address, where it would be a parameter. */
  @Test
  void aDatabaseMayHaveAnyName() {
    RecordPlace.Server there = server.record();
    server.execute(
        "postgres",
        "ALTER DATABASE %s RENAME TO \"weir?sslmode=require\"".formatted(there.database()));
    JobRecord.open(server.as(OwnServer.OWNER, "weir%3Fsslmode=require")).close();
  }

  @Test
  void aCopyOfAServerIsItsOwnMeans() {
    try (JobRecord record = JobRecord.open(server.record())) {
      assertThatThrownBy(() -> record.backup(folder.resolve("copy")))
          .isInstanceOf(UserError.class)
          .hasMessageContaining("pg_dump");
    }
  }

  @Test
  void aRecordOfANewerLeadlightIsLeftAlone() {
    RecordPlace.Server there = server.record();
    server.execute(
        there.database(),
        "INSERT INTO flyway_schema_history SELECT 1000, '1000', 'later', type, 'V1000__later.sql',"
            + " checksum, installed_by, installed_on, execution_time, success"
            + " FROM flyway_schema_history WHERE installed_rank = 2");
    assertThatThrownBy(() -> JobRecord.open(there))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("newer Leadlight");
  }

  @Test
  void twoWhoOpenAnEmptyDatabaseAtOnceMakeOneRecord() throws Exception {
    RecordPlace there = server.empty();
    ExecutorService both = Executors.newFixedThreadPool(2);
    try {
      List<Callable<Seal>> open =
          IntStream.range(0, 2)
              .<Callable<Seal>>mapToObj(
                  i ->
                      () -> {
                        try (JobRecord record = JobRecord.open(there)) {
                          return record.seal();
                        }
                      })
              .toList();
      List<Future<Seal>> seals = both.invokeAll(open);
      assertThat(seals.get(0).get()).isEqualTo(seals.get(1).get());
    } finally {
      both.shutdown();
    }
  }
}
