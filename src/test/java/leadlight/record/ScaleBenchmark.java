package leadlight.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.function.IntSupplier;
import leadlight.app.quality.RecordJoints;
import leadlight.data.JsonText;
import leadlight.model.FindingKind;
import leadlight.quality.chart.ChartData;
import leadlight.quality.chart.ChartKind;
import leadlight.quality.chart.ControlChart;
import leadlight.quality.grades.Reading;
import leadlight.record.engine.RecordPlace;
import leadlight.record.file.Database;
import leadlight.record.scoring.Search;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/**
 * Searches and charts in a record of many joints, in a file and on a server, as the program makes
 * them: {@code mvn test -Dtest=ScaleBenchmark -Dscale.joints=10000000}. Rows are made by SQL, 40
 * joints a scoring, 200 scorings a day, without measures and opinions. First is the first time that
 * the program does it, before its code is compiled; warm is the same question asked again; cold is
 * the first to a record just opened (to a server just started) whose pages the system was told to
 * forget, which only root may. With {@code -Dscale.patience=SECONDS} it waits that long for a
 * machine at rest. Figures are kept in docs/record.md.
 */
@EnabledIfSystemProperty(named = "scale.joints", matches = "\\d+")
class ScaleBenchmark {

  private static final int JOINTS = 40;
  private static final int A_DAY = 200;
  private static final int AT_ONCE = 5_000;
  private static final int TRIES = 5;
  private static final int UNTIL_COMPILED = 50;
  private static final double AT_REST = 0.5;
  private static final LocalDate FIRST = LocalDate.of(2020, 1, 1);
  private static final Path FORGET = Path.of("/proc/sys/vm/drop_caches");
  private static final Reading WORDS =
      new Reading(
          Set.of("defect"), Set.of("acceptable", "process-indicator"), Set.of("unjudged"), false);

  private static final String NUMBERS =
      "WITH RECURSIVE n (i) AS (SELECT %d UNION ALL SELECT i + 1 FROM n WHERE i < %d) ";

  @TempDir Path folder;

  @Test
  void searchesAndChartsInAFile() throws Exception {
    RecordPlace place = new RecordPlace.Folder(folder);
    measure(place, "EXPLAIN QUERY PLAN ", () -> {});
    System.out.println("file: " + Files.size(folder.resolve(Database.FILE)) / 1_000_000 + " MB");
  }

  @Test
  void searchesAndChartsOnAServer() throws Exception {
    try (OwnServer server = OwnServer.start("-c", "shared_buffers=512MB").orElseThrow()) {
      RecordPlace.Server place = server.empty();
      measure(
          place,
          "EXPLAIN (COSTS OFF) ",
          () -> {
            server.execute(place.database(), "CHECKPOINT");
            server.kill();
            server.go();
          });
      try (Database open = Database.open(place)) {
        System.out.println(
            "database: "
                + open.<Long>read(
                    handle ->
                        handle
                            .select("SELECT pg_database_size(current_database()) / 1000000")
                            .mapTo(Long.class)
                            .one())
                + " MB");
      }
    }
  }

  private interface Deed {
    void done() throws Exception;
  }

  private interface Asked {
    int of(JobRecord record);
  }

  private static void measure(RecordPlace place, String explain, Deed restart) throws Exception {
    long scorings = Long.getLong("scale.joints") / JOINTS;
    String engine = place.getClass().getSimpleName();
    long began = System.nanoTime();
    make(place, scorings);
    System.out.println("%s: %d joints made in %d s".formatted(engine, scorings * JOINTS, s(began)));
    began = System.nanoTime();
    JobRecord.open(place).close();
    System.out.println("%s: counted in %d s".formatted(engine, s(began)));
    ask(place, scorings, explain, restart);
  }

  private static void ask(RecordPlace place, long scorings, String explain, Deed restart)
      throws Exception {
    rest();
    LocalDate day = FIRST.plusDays(scorings / A_DAY / 2);
    Map<String, Asked> all = questions(scorings, day);
    try (JobRecord record = JobRecord.open(place)) {
      all.forEach((name, asked) -> measure("first", 1, name, () -> asked.of(record)));
      for (int i = 0; i < UNTIL_COMPILED; i++) {
        all.values().forEach(asked -> asked.of(record));
      }
      all.forEach((name, asked) -> measure("warm", TRIES, name, () -> asked.of(record)));
    }
    for (Map.Entry<String, Asked> one : all.entrySet()) {
      cold(one.getKey(), one.getValue(), place, restart);
    }
    plans(place, explain, day);
  }

  private static long s(long began) {
    return TimeUnit.NANOSECONDS.toSeconds(System.nanoTime() - began);
  }

  private static Map<String, Asked> questions(long scorings, LocalDate day) {
    Map<String, Asked> all = new LinkedHashMap<>();
    all.put("search by job", record -> record.scorings(of("job 7", null, null)).size());
    all.put("search by day", record -> record.scorings(of(null, day, null)).size());
    all.put(
        "search by day and finding",
        record -> record.scorings(of(null, day, FindingKind.OPEN)).size());
    all.put("a scoring with its row", record -> record.row(scorings / 2).joints().size());
    for (String by : List.of("day", "connector", "operator", "pin", "stage", "finding")) {
      all.put("p chart by " + by, record -> chart(record, by, ChartKind.P));
    }
    all.put("u chart by day", record -> chart(record, "day", ChartKind.U));
    return all;
  }

  private static int chart(JobRecord record, String by, ChartKind kind) {
    ChartData data = RecordJoints.read(record, by, Optional.empty(), kind, WORDS);
    return ControlChart.of(kind, data.groups(), by.equals("day")).points().size();
  }

  private static Search of(String job, LocalDate day, FindingKind finding) {
    return new Search(
        Optional.ofNullable(job),
        Optional.empty(),
        Optional.ofNullable(day),
        Optional.ofNullable(day),
        Optional.empty(),
        Optional.ofNullable(finding),
        Optional.empty(),
        false);
  }

  private static void measure(String how, int tries, String name, IntSupplier asked) {
    double[] ms = new double[tries];
    int answers = 0;
    for (int i = 0; i < tries; i++) {
      long began = System.nanoTime();
      answers = asked.getAsInt();
      ms[i] = (System.nanoTime() - began) / 1e6;
    }
    say(how, name, answers, ms);
  }

  private static void cold(String name, Asked asked, RecordPlace place, Deed restart)
      throws Exception {
    double[] ms = new double[TRIES];
    int answers = 0;
    for (int i = 0; i < TRIES; i++) {
      restart.done();
      try (JobRecord record = JobRecord.open(place)) {
        if (Files.isWritable(FORGET)) {
          Files.writeString(FORGET, "3");
        }
        long began = System.nanoTime();
        answers = asked.of(record);
        ms[i] = (System.nanoTime() - began) / 1e6;
      }
    }
    say("cold", name, answers, ms);
  }

  private static void say(String how, String name, int answers, double[] ms) {
    Arrays.sort(ms);
    assertThat(answers).as(name).isPositive();
    System.out.println(
        "  %s, %s: %d answers, median %.1f ms, slowest %.1f ms"
            .formatted(how, name, answers, ms[ms.length / 2], ms[ms.length - 1]));
  }

  /** Waits for a machine at rest. */
  private static void rest() throws InterruptedException {
    var system = ManagementFactory.getOperatingSystemMXBean();
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(Long.getLong("scale.patience", 0));
    while (System.nanoTime() < end && system.getSystemLoadAverage() > AT_REST) {
      Thread.sleep(1000);
    }
    System.out.println("  load %.1f".formatted(system.getSystemLoadAverage()));
  }

  /** How the engine goes about what the program asks. */
  private static void plans(RecordPlace place, String explain, LocalDate day) {
    String search =
        "SELECT s.id FROM scoring s JOIN board b ON b.id = s.board_id JOIN job j ON j.id = b.job_id"
            + " JOIN photo p ON p.id = s.photo_id JOIN method m ON m.id = s.method_id WHERE ";
    try (Database open = Database.open(place)) {
      for (String sql :
          List.of(
              search + "j.name = 'job 7' ORDER BY s.id",
              search
                  + "substr(s.scored_at, 1, 10) >= '%1$s' AND substr(s.scored_at, 1, 10) <= '%1$s'"
                      .formatted(day)
                  + " ORDER BY s.id",
              "SELECT * FROM joint WHERE scoring_id = 9 ORDER BY pin",
              "SELECT * FROM tally WHERE unit = 'joint' AND scope = 'last' AND axis = 'day'")) {
        System.out.println("  " + sql);
        open.read(
                handle ->
                    handle
                        .select(explain + sql)
                        .mapToMap()
                        .map(row -> "    " + row.getOrDefault("detail", row.get("query plan")))
                        .list())
            .forEach(System.out::println);
      }
    }
  }

  private static void make(RecordPlace place, long scorings) {
    try (Database open = Database.open(place)) {
      open.write(handle -> fixed(handle, scorings));
      for (long from = 1; from <= scorings; from += AT_ONCE) {
        long first = from;
        open.write(handle -> fill(handle, first, Math.min(first + AT_ONCE - 1, scorings)));
      }
      open.write(handle -> handle.execute("ANALYZE"));
    }
  }

  /** One method, and the days by number. */
  private static int fixed(Handle handle, long scorings) {
    handle.execute(
        "INSERT INTO method (id, key, settings, limits_sha256, tool_version) VALUES (1, ?, ?, ?,"
            + " '0.1.0')",
        "m".repeat(64),
        JsonText.of(ScoredBoard.method(Optional.empty()).settings()),
        "a".repeat(64));
    handle.execute("CREATE TEMPORARY TABLE days (number INTEGER PRIMARY KEY, day TEXT NOT NULL)");
    PreparedBatch days = handle.prepareBatch("INSERT INTO days VALUES (?, ?)");
    for (int i = 0; i <= scorings / A_DAY; i++) {
      days.add(i, FIRST.plusDays(i).toString());
    }
    days.execute();
    return 1;
  }

  private static int fill(Handle handle, long from, long to) {
    String numbers = NUMBERS.formatted(from, to);
    handle.execute(
        "INSERT INTO job (id, name) "
            + numbers
            + "SELECT i / 100, 'job ' || (i / 100) FROM n WHERE i % 100 = 0 OR i = 1");
    handle.execute(
        "INSERT INTO board (id, job_id, name) "
            + numbers
            + "SELECT i, i / 100, 'board ' || i FROM n");
    handle.execute(
        "INSERT INTO photo (id, sha256, file_name, width_px, height_px, format, bits_per_channel,"
            + " exif_orientation) "
            + numbers
            + "SELECT i, substr('"
            + "0".repeat(64)
            + "' || i, length('' || i) + 1, 64), 'p.jpg', 4000, 3000, 'jpeg', 8, 1 FROM n");
    return joints(handle, numbers);
  }

  private static int joints(Handle handle, String numbers) {
    handle.execute(
        "INSERT INTO scoring (id, board_id, photo_id, method_id, stage, attempt, repeat, photo_path,"
            + " results, connector, leads, pitch_mm, product_class, person, scored_at, zone,"
            + " verdict, pitch_px, angle_rad, scale_px_per_mm, body_side, confidence, tilt_rad,"
            + " mm_to_px, fitness) "
            + numbers
            + "SELECT i, i, i, 1, 'final', 1, 1, '/photos/p.jpg', '/reports/p.json', 'c' || (i % 10),"
            + " 40, 0.5, 2, 'Ada', day || 'T12:00:00Z', 'UTC', CASE WHEN i % 9 = 0 THEN 'defect'"
            + " ELSE 'acceptable' END, 20, 0.01, 40, 'above', 0.8, 0,"
            + " '[40,0,5,0,40,6,0,0,1]', '[]' FROM n JOIN days ON days.number = i / "
            + A_DAY);
    handle.execute(
        "INSERT INTO joint (scoring_id, pin, name, verdict, toe_x_px, toe_y_px, heel_x_px,"
            + " heel_y_px, land_toe_x_px, land_toe_y_px, land_heel_x_px, land_heel_y_px, match,"
            + " u_across_px, u_along_px, doubts, grounds) "
            + numbers
            + ", p (pin) AS (SELECT 1 UNION ALL SELECT pin + 1 FROM p WHERE pin < "
            + JOINTS
            + ") SELECT i, pin, '' || pin, CASE WHEN (i * 40 + pin) % 97 = 0 THEN 'defect' ELSE"
            + " 'acceptable' END, 20.5 * pin, 100.25, 20.5 * pin, 70.5, 20.5 * pin, 110.5,"
            + " 20.5 * pin, 60.5, 0.9, 0.1, 0.2, '[]', '[]' FROM n CROSS JOIN p");
    return handle.execute(
        "INSERT INTO finding (joint_id, kind, pins, verdict, probability, evidence, clause,"
            + " settle_by, reasons) "
            + numbers
            + "SELECT j.id, CASE WHEN j.pin % 3 = 0 THEN 'bridge' ELSE 'open' END,"
            + " '[' || j.pin || ']', 'defect', 0.9, 'seen', 'c', 'meter it', '[]'"
            + " FROM n CROSS JOIN joint j WHERE j.scoring_id = n.i AND j.verdict = 'defect'");
  }
}
