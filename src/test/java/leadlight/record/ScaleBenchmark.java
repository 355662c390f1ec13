package leadlight.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import leadlight.data.JsonText;
import leadlight.record.engine.RecordPlace;
import leadlight.record.file.Database;
import leadlight.record.scoring.Search;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/**
 * Searches and charts in a record of many joints, in a file and on a server: {@code mvn test
 * -Dtest=ScaleBenchmark -Dscale.joints=10000000}. Rows are made by SQL, 40 joints a scoring, 200
 * scorings a day, without measures and opinions. Figures are kept in docs/record.md.
 */
@EnabledIfSystemProperty(named = "scale.joints", matches = "\\d+")
class ScaleBenchmark {

  private static final int JOINTS = 40;
  private static final int A_DAY = 200;
  private static final int AT_ONCE = 5_000;
  private static final int TRIES = 7;
  private static final LocalDate FIRST = LocalDate.of(2020, 1, 1);

  private static final String NUMBERS =
      "WITH RECURSIVE n (i) AS (SELECT %d UNION ALL SELECT i + 1 FROM n WHERE i < %d) ";

  /** Rates by pin of one connector in a span of days. */
  private static final String BY_PIN =
      "SELECT j.pin, sum(CASE WHEN j.verdict = 'defect' THEN 1 ELSE 0 END) AS defects, count(*) AS n"
          + " FROM scoring s JOIN joint j ON j.scoring_id = s.id WHERE s.connector = 'c3'"
          + " AND substr(s.scored_at, 1, 10) BETWEEN '%s' AND '%s' GROUP BY j.pin ORDER BY j.pin";

  /** Defective photos by day over all connectors. */
  private static final String BY_DAY =
      "SELECT substr(s.scored_at, 1, 10) AS day, sum(CASE WHEN s.verdict = 'defect' THEN 1 ELSE 0"
          + " END) AS defects, count(*) AS n FROM scoring s WHERE substr(s.scored_at, 1, 10)"
          + " BETWEEN '%s' AND '%s' GROUP BY substr(s.scored_at, 1, 10) ORDER BY 1";

  @TempDir Path folder;

  @Test
  void searchesAndChartsInAFile() throws Exception {
    RecordPlace place = new RecordPlace.Folder(folder);
    measure(place, "EXPLAIN QUERY PLAN ");
    System.out.println("file: " + Files.size(folder.resolve(Database.FILE)) / 1_000_000 + " MB");
  }

  @Test
  void searchesAndChartsOnAServer() throws Exception {
    try (OwnServer server = OwnServer.start("-c", "shared_buffers=512MB").orElseThrow()) {
      RecordPlace.Server place = server.empty();
      measure(place, "EXPLAIN ");
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

  private static void measure(RecordPlace place, String explain) throws SQLException {
    long scorings = Long.getLong("scale.joints") / JOINTS;
    long began = System.nanoTime();
    try (Database open = Database.open(place)) {
      open.write(handle -> fixed(handle, scorings));
      for (long from = 1; from <= scorings; from += AT_ONCE) {
        long first = from;
        open.write(handle -> fill(handle, first, Math.min(first + AT_ONCE - 1, scorings)));
      }
      open.write(handle -> handle.execute("ANALYZE"));
      System.out.println(
          "%s: %d joints made in %d s"
              .formatted(
                  place.getClass().getSimpleName(),
                  scorings * JOINTS,
                  TimeUnit.NANOSECONDS.toSeconds(System.nanoTime() - began)));
      LocalDate day = FIRST.plusDays(scorings / A_DAY / 2);
      for (int days : new int[] {1, 30}) {
        String by = BY_PIN.formatted(day, day.plusDays(days - 1));
        chart(open, "chart by pin of one connector, " + days + " days", by, explain);
      }
      chart(
          open,
          "chart of photos by day, 30 days",
          BY_DAY.formatted(day, day.plusDays(29)),
          explain);
    }
    try (JobRecord record = JobRecord.open(place)) {
      LocalDate day = FIRST.plusDays(scorings / A_DAY / 2);
      search(record, "search by job", of(Optional.of("job 7"), Optional.empty()));
      search(record, "search by day", of(Optional.empty(), Optional.of(day)));
      time("a scoring with its row", () -> record.row(scorings / 2).joints().size());
    }
  }

  private static Search of(Optional<String> job, Optional<LocalDate> day) {
    return new Search(
        job,
        Optional.empty(),
        day,
        day,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        false);
  }

  private static void search(JobRecord record, String name, Search search) {
    time(name, () -> record.scorings(search).size());
  }

  private static void chart(Database open, String name, String sql, String explain) {
    time(name, () -> open.read(handle -> handle.select(sql).mapToMap().list()).size());
    List<String> plan =
        open.read(
            handle -> handle.select(explain + sql).mapToMap().map(row -> "" + row.values()).list());
    plan.forEach(line -> System.out.println("    " + line));
  }

  private interface Asked {
    int run();
  }

  private static void time(String name, Asked asked) {
    double[] ms = new double[TRIES];
    int answers = 0;
    for (int i = 0; i < TRIES; i++) {
      long began = System.nanoTime();
      answers = asked.run();
      ms[i] = (System.nanoTime() - began) / 1e6;
    }
    Arrays.sort(ms);
    assertThat(answers).as(name).isPositive();
    System.out.println(
        "  %s: %d answers, median %.1f ms, slowest %.1f ms"
            .formatted(name, answers, ms[TRIES / 2], ms[TRIES - 1]));
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
    return handle.execute(
        "INSERT INTO joint (scoring_id, pin, name, verdict, toe_x_px, toe_y_px, heel_x_px,"
            + " heel_y_px, land_toe_x_px, land_toe_y_px, land_heel_x_px, land_heel_y_px, match,"
            + " u_across_px, u_along_px, doubts, grounds) "
            + numbers
            + ", p (pin) AS (SELECT 1 UNION ALL SELECT pin + 1 FROM p WHERE pin < "
            + JOINTS
            + ") SELECT i, pin, '' || pin, CASE WHEN (i * 40 + pin) % 97 = 0 THEN 'defect' ELSE"
            + " 'acceptable' END, 20.5 * pin, 100.25, 20.5 * pin, 70.5, 20.5 * pin, 110.5,"
            + " 20.5 * pin, 60.5, 0.9, 0.1, 0.2, '[]', '[]' FROM n CROSS JOIN p");
  }
}
