package leadlight.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.fail;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import leadlight.model.UserError;
import leadlight.model.Verdict;
import leadlight.record.file.Chain;
import leadlight.record.file.Database;
import leadlight.record.file.Seal;
import leadlight.record.said.BenchResult;
import leadlight.record.said.BenchTest;
import leadlight.record.said.LifeEvent;
import leadlight.record.said.Overrule;
import leadlight.record.scoring.RunStart;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Ways to change a record or its files; each is found, and said by name. */
class TamperTest {

  private static final ZonedDateTime LATER = ScoredBoard.NOON.plusHours(1);

  @TempDir private static Path folder;

  private static final Map<Path, byte[]> WHOLE = new TreeMap<>();

  private static Seal seal;

  @BeforeAll
  static void aRecordOfTwoScoringsWithAnOpinionAndABenchResult() throws IOException {
    ScoredBoard boards = new ScoredBoard(folder);
    try (JobRecord record = JobRecord.open(folder)) {
      long run =
          record.startRun(
              new RunStart(folder.resolve("run"), "photos", "Ada", ScoredBoard.NOON, "0.1.0"));
      record.add(run, boards.scoring("0412", "A1"));
      record.add(run, boards.scoring("0412", "A2"));
      record.overrule(
          1, 1, new Overrule(Verdict.DEFECT, Optional.empty(), "seen at 40x", "Ada", LATER));
      record.bench(
          1, 2, new BenchResult(BenchTest.PROD, "moves", OptionalInt.empty(), "Ada", LATER));
      record.takeBackBench(1, 2, new JobRecord.Withdrawal("slipped", "Ada", LATER));
      record.add(
          "0412",
          "A1",
          new LifeEvent(
              LifeEvent.Kind.COMPLAINT, "drops out", List.of(), Optional.empty(), "Ada", LATER));
      record.endRun(run, LATER);
      seal = record.seal();
      assertThat(record.troubles(Optional.of(seal))).isEmpty();
    }
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        WHOLE.put(file, Files.readAllBytes(file));
      }
    }
  }

  @BeforeEach
  void asItWas() throws IOException {
    for (Map.Entry<Path, byte[]> file : WHOLE.entrySet()) {
      Files.write(file.getKey(), file.getValue());
    }
  }

  /** What is done to the folder. */
  private interface Deed {
    void to(Path folder) throws IOException, SQLException;
  }

  private record Way(String name, Deed deed, String said) {
    @Override
    public String toString() {
      return name;
    }
  }

  private static Way sql(String name, String said, String... lines) {
    return new Way(name, folder -> execute(folder, lines), said);
  }

  static List<Way> ways() {
    return List.of(
        sql("a verdict", "scoring 1, recorded", "UPDATE joint SET verdict = 'process-indicator'"),
        sql(
            "a scoring's verdict",
            "scoring 2, recorded",
            "UPDATE scoring SET verdict = 'defect' WHERE id = 2"),
        sql("a place", "was changed", "UPDATE joint SET toe_x_px = toe_x_px + 1 WHERE id = 1"),
        sql("a limits file's hash", "was changed", "UPDATE method SET limits_sha256 = key"),
        sql("a photo's name", "was changed", "UPDATE photo SET file_name = 'other.jpg'"),
        sql("a job's name", "was changed", "UPDATE job SET name = '0413'"),
        sql("a person", "was changed", "UPDATE scoring SET person = 'Bob' WHERE id = 1"),
        sql("a time", "was changed", "UPDATE scoring SET scored_at = '2026-01-01T00:00:00Z'"),
        sql("an opinion's reason", "overrule 1, recorded", "UPDATE overrule SET reason = 'none'"),
        sql(
            "a bench result",
            "bench result 1, recorded",
            "UPDATE bench_result SET result = 'firm'"),
        sql("who took back", "taken back 1, recorded", "UPDATE taken_back SET person = 'Bob'"),
        sql("what was taken back", "taken back 1, recorded", "DELETE FROM taken_back"),
        sql("a complaint", "life event 1, recorded", "UPDATE life_event SET words = 'none'"),
        sql("a complaint taken out", "was taken out", "DELETE FROM life_event"),
        sql("an opinion taken out", "was taken out", "DELETE FROM overrule"),
        sql(
            "a scoring taken out with its entry",
            "the chain lacks entry",
            "PRAGMA foreign_keys = OFF",
            "DELETE FROM joint WHERE scoring_id = 1",
            "DELETE FROM entry WHERE kind = 'scoring' AND ref = 1",
            "DELETE FROM scoring WHERE id = 1"),
        sql(
            "the end of the chain cut off",
            "the chain ends at entry",
            "DELETE FROM entry WHERE id > 4",
            "DELETE FROM bench_result"),
        sql(
            "an opinion put in",
            "was not written by Leadlight",
            "INSERT INTO overrule (joint_id, verdict, reason, person, given_at, zone)"
                + " SELECT joint_id, verdict, 'no fault', person, given_at, zone FROM overrule"),
        sql(
            "an entry's hash",
            "the chain is broken at entry 3",
            "UPDATE entry SET hash = content" + " WHERE id = 3"),
        sql("a run's photo", "run 1, recorded", "UPDATE run_photo SET job = '0413'"),
        sql("a table dropped", "lacks its table measure", "DROP TABLE measure"),
        sql("an index dropped", "lacks its index", "DROP INDEX scoring_of_run"),
        sql(
            "a trigger that changes what is written",
            "that is not Leadlight's",
            "CREATE TRIGGER kind AFTER INSERT ON joint BEGIN UPDATE joint SET match = 1; END"),
        sql(
            "all made anew, the chain with it",
            "is not the one that was sealed",
            "UPDATE joint SET match = 1",
            "DELETE FROM entry",
            "DELETE FROM sqlite_sequence"),
        new Way(
            "a result file",
            folder -> Files.writeString(folder.resolve("A1.json"), "{\"verdict\": 1}"),
            "its file A1.json was changed"),
        new Way(
            "a result file taken away",
            folder -> Files.delete(folder.resolve("A2.json")),
            "is gone"),
        new Way(
            "a photo",
            folder -> {
              for (Path photo : photos(folder)) {
                Files.write(photo, new byte[] {1, 2, 3});
              }
            },
            "the photo was changed"),
        new Way("three thousand bytes of the file", TamperTest::garble, "damaged"));
  }

  private static List<Path> photos(Path folder) throws IOException {
    try (var files = Files.list(folder)) {
      return files.filter(file -> file.toString().endsWith(".jpg")).toList();
    }
  }

  private static void garble(Path folder) throws IOException {
    Path file = folder.resolve(Database.FILE);
    byte[] bytes = Files.readAllBytes(file);
    Random random = new Random(7);
    for (int i = 0; i < 3000; i++) {
      bytes[100 + random.nextInt(bytes.length - 100)] = (byte) random.nextInt(256);
    }
    Files.write(file, bytes);
  }

  private static void execute(Path folder, String... lines) throws SQLException {
    try (Connection connection =
            DriverManager.getConnection("jdbc:sqlite:" + folder.resolve(Database.FILE));
        Statement statement = connection.createStatement()) {
      for (String line : lines) {
        statement.execute(line);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("ways")
  void isFoundAndNamed(Way way) throws IOException, SQLException {
    way.deed().to(folder);
    assertThat(found()).anySatisfy(line -> assertThat(line).contains(way.said()));
  }

  private List<String> found() {
    try (JobRecord record = JobRecord.open(folder)) {
      return record.troubles(Optional.of(seal));
    } catch (UserError e) {
      return List.of(e.getMessage());
    }
  }

  @Test
  void anAlteredRowIsNotToldAnewAndNamed() throws SQLException {
    execute(folder, "UPDATE joint SET verdict = 'process-indicator' WHERE scoring_id = 1");
    try (JobRecord record = JobRecord.open(folder)) {
      assertThat(record.rewriteResults(1, () -> fail("nothing is written")))
          .singleElement()
          .asString()
          .contains("was changed");
    }
    assertThat(found())
        .filteredOn(line -> line.startsWith("scoring 1, recorded"))
        .singleElement()
        .asString()
        .contains("was changed");
  }

  @Test
  void resultsThatSomebodyChangedAreNotWrittenOver() throws IOException {
    Files.writeString(folder.resolve("A1.json"), "{\"verdict\": 1}");
    List<String> written = new ArrayList<>();
    try (JobRecord record = JobRecord.open(folder)) {
      assertThat(record.rewriteResults(1, () -> written.add("A1")))
          .containsExactly("its file A1.json was changed after that");
      record.rewriteResults(2, () -> written.add("A2"));
    }
    assertThat(written).containsExactly("A2");
    assertThat(found()).anySatisfy(line -> assertThat(line).contains("A1.json was changed"));
  }

  @Test
  void aWritingThatWasBrokenOffIsNamedAndMayBeDoneAgain() {
    Path results = folder.resolve("A1.json");
    try (JobRecord record = JobRecord.open(folder)) {
      assertThatThrownBy(
              () ->
                  record.rewriteResults(
                      1,
                      () -> {
                        write(results, "{\"half\": 1}");
                        throw new IllegalStateException("stopped here");
                      }))
          .hasMessage("stopped here");
      assertThat(record.brokenOff()).containsExactly(1L);
    }
    assertThat(found()).singleElement().asString().contains("were being written");
    try (JobRecord record = JobRecord.open(folder)) {
      assertThat(record.rewriteResults(1, () -> write(results, "{\"whole\": 1}"))).isEmpty();
      assertThat(record.brokenOff()).isEmpty();
    }
    assertThat(found()).isEmpty();
    write(results, "{\"forged\": 1}");
    assertThat(found()).singleElement().asString().contains("A1.json was changed");
  }

  private static void write(Path file, String content) {
    try {
      Files.writeString(file, content);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void resultsThatAreGoneAreWrittenAgain() throws IOException {
    Files.delete(folder.resolve("A1.json"));
    List<String> written = new ArrayList<>();
    try (JobRecord record = JobRecord.open(folder)) {
      assertThat(record.rewriteResults(1, () -> written.add("A1"))).isEmpty();
    }
    assertThat(written).containsExactly("A1");
  }

  @Test
  void aFileOfAnotherPhotoIsNotTakenForAResult() throws IOException {
    Files.writeString(folder.resolve("A1.b.json"), "{}");
    Files.writeString(folder.resolve("A1.csv"), "1");
    assertThat(Chain.files(folder.resolve("A1.json"))).containsOnlyKeys("A1.json", "A1.csv");
    Files.delete(folder.resolve("A1.b.json"));
    Files.delete(folder.resolve("A1.csv"));
  }

  /** A folder in a file's place can be read by nobody, root among them. */
  @Test
  void aFileThatCannotBeReadHidesNoOther() throws IOException {
    Path unreadable = Files.createDirectory(folder.resolve("A1.csv"));
    Map<String, String> files = Chain.files(folder.resolve("A1.json"));
    assertThat(files).containsEntry("A1.csv", "unreadable").containsKey("A1.json");
    assertThat(files.get("A1.json")).hasSize(64);
    Files.delete(unreadable);
  }

  @Test
  void twentyWaysAreTried() {
    assertThat(ways()).hasSizeGreaterThanOrEqualTo(20);
  }

  @Test
  void whatIsAddedAfterASealKeepsIt() {
    try (JobRecord record = JobRecord.open(folder)) {
      record.bench(
          1, 2, new BenchResult(BenchTest.PROD, "firm", OptionalInt.empty(), "Ada", LATER));
      assertThat(record.seal()).isNotEqualTo(seal);
      assertThat(record.troubles(Optional.of(seal))).isEmpty();
    }
  }

  @Test
  void aCompleteExportGivesTheSameRecord() throws IOException {
    Path file = folder.resolve("all.jsonl");
    Path other = folder.resolve("other");
    try (JobRecord record = JobRecord.open(folder);
        var out = Files.newOutputStream(file)) {
      record.dump(out);
    }
    try (var lines = Files.newBufferedReader(file)) {
      assertThat(JobRecord.importInto(other, lines, "all.jsonl")).isEqualTo(seal);
    }
    try (JobRecord record = JobRecord.open(other)) {
      assertThat(record.troubles(Optional.of(seal))).isEmpty();
      assertThat(record.row(1).joints().get(0).overrules()).hasSize(1);
      assertThat(record.row(1).joints().get(1).takenBack()).hasSize(1);
      assertThat(record.life("0412", "A1")).hasSize(1);
    }
  }

  @Test
  void anExportThatLostItsEndIsNotImported() throws IOException {
    Path file = folder.resolve("all.jsonl");
    try (JobRecord record = JobRecord.open(folder);
        var out = Files.newOutputStream(file)) {
      record.dump(out);
    }
    List<String> lines = Files.readAllLines(file);
    for (int kept : new int[] {0, 1, lines.size() / 2}) {
      assertRefused(lines.subList(0, kept), "cut");
    }
  }

  private static void assertRefused(List<String> lines, String said) {
    String text = String.join("\n", lines);
    assertThatThrownBy(
            () ->
                JobRecord.importInto(
                    folder.resolve("cut"), new BufferedReader(new StringReader(text)), "cut"))
        .isInstanceOf(UserError.class)
        .hasMessageContaining(said)
        .hasMessageNotContaining("--seal");
    assertThat(JobRecord.isIn(folder.resolve("cut"))).isFalse();
  }

  private List<String> exported() throws IOException {
    Path file = folder.resolve("all.jsonl");
    try (JobRecord record = JobRecord.open(folder);
        var out = Files.newOutputStream(file)) {
      record.dump(out);
    }
    return Files.readAllLines(file);
  }

  private static List<String> altered(List<String> lines, String table, String what, String to) {
    return lines.stream()
        .map(line -> line.contains("\"table\":\"" + table + "\"") ? line.replace(what, to) : line)
        .toList();
  }

  @Test
  void anExportThatLostOrAlteredARowOfTheChainIsNotImported() throws IOException {
    List<String> lines = exported();
    List<String> without =
        lines.stream().filter(line -> !line.contains("\"table\":\"taken_back\"")).toList();
    assertThat(without).hasSize(lines.size() - 1);
    assertRefused(without, "lines of");
    long rows = lines.size() - 1L;
    List<String> recounted = new ArrayList<>(without);
    recounted.set(0, lines.get(0).replace("\"rows\":" + rows, "\"rows\":" + (rows - 1)));
    assertRefused(recounted, "taken back 1, recorded");
    assertRefused(altered(lines, "overrule", "\"defect\"", "\"acceptable\""), "overrule 1");
    assertRefused(altered(lines, "life_event", "drops out", "is fine"), "life event 1");
  }

  /** What trainees said has no entry; the first line counts it. */
  @Test
  void anExportThatLostARowOutsideOfTheChainIsNotImported() throws IOException, SQLException {
    execute(folder, "INSERT INTO trainee (id, name) VALUES (1, 'Bo')");
    List<String> lines = exported();
    List<String> without = lines.stream().filter(line -> !line.contains("\"trainee\"")).toList();
    assertThat(without).hasSize(lines.size() - 1);
    assertRefused(without, "lines of");
  }

  @Test
  void aHeadOrALineThatLacksSomethingIsNamedByItsNumber() throws IOException {
    List<String> lines = exported();
    String begin = lines.get(0).substring(0, lines.get(0).indexOf(','));
    assertThat(begin).startsWith("{\"schema\":");
    for (String rest :
        List.of("}", ",\"seal\":null,\"rows\":1}", ",\"seal\":\"7-none\",\"rows\":1}")) {
      assertRefused(List.of(begin + rest), "cut, line 1, is none");
    }
    for (String row : List.of("{\"table\":\"job\"}", "{\"table\":\"job\",\"row\":null}", "")) {
      assertRefused(List.of(lines.get(0), row, row), "cut, line 2, is none");
    }
  }

  @Test
  void aSealIsReadAsItWasPrinted() {
    assertThat(Seal.parse(seal.toString())).isEqualTo(seal);
  }

  /** Sixteen digits are typed from a printed sheet; fewer could be met by trying. */
  @Test
  void aSealIsProvenByItsFirstSixteenDigits() {
    int dash = seal.toString().indexOf('-');
    String typed = seal.toString().substring(0, dash + 17);
    try (JobRecord record = JobRecord.open(folder)) {
      assertThat(record.troubles(Optional.of(Seal.parse(typed)))).isEmpty();
      String other = typed.substring(0, dash + 16) + (typed.endsWith("0") ? "1" : "0");
      assertThat(record.troubles(Optional.of(Seal.parse(other))))
          .anySatisfy(line -> assertThat(line).contains("is not the one that was sealed"));
    }
    assertThatThrownBy(() -> Seal.parse(typed.substring(0, dash + 16)))
        .hasMessageContaining("is no seal");
  }

  @Test
  void aCutFileIsNamedAndTheCopyTakesItsPlace() throws IOException {
    Path copy = folder.resolve("copy");
    try (JobRecord record = JobRecord.open(folder)) {
      record.backup(copy);
    }
    Path file = folder.resolve(Database.FILE);
    byte[] bytes = Files.readAllBytes(file);
    Files.write(file, Arrays.copyOf(bytes, bytes.length / 2));
    assertThat(found()).anySatisfy(line -> assertThat(line).contains("damaged"));
    Files.copy(copy.resolve(Database.FILE), file, StandardCopyOption.REPLACE_EXISTING);
    assertThat(found()).isEmpty();
  }
}
