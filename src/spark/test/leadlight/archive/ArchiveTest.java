package leadlight.archive;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.apache.spark.sql.functions.expr;
import static org.apache.spark.sql.functions.lit;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import leadlight.cli.Main;
import leadlight.model.UserError;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Encoders;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Three samples and two that cannot be used, read by two cores of this machine. */
class ArchiveTest {

  private static final Path SAMPLES = Path.of("sample-images").toAbsolutePath();
  private static final String TABLE =
      """
      photo,connector,leads,pitch_mm,site,lamp
      %1$s/base-station-video-good.jpg,video-a-19-slots,,,north,ring
      %1$s/logger-sensor-opens.jpg,,%2$s,north,ring
      file://%1$s/base-station-port-good.jpg,,19,0.5,south,dome
      %1$s/nothing.jpg,,19,0.5,south,dome
      %1$s/base-station-port-good.jpg,,2,0.5,south,dome
      """;

  @TempDir static Path temp;
  private static SparkSession spark;
  private static Path table;
  private static String archive;

  @BeforeAll
  static void readOnce() throws IOException {
    spark =
        SparkSession.builder()
            .master("local[2]")
            .config("spark.ui.enabled", "false")
            .config("spark.sql.shuffle.partitions", "2")
            .getOrCreate();
    table = Files.writeString(temp.resolve("photos.csv"), TABLE.formatted(SAMPLES, "20,0.5"));
    archive = temp.resolve("archive").toString();
    assertThat(run(archive)).isEqualTo(new ReadRun.Counts(0, 3, 2));
  }

  @AfterAll
  static void stop() {
    spark.stop();
  }

  private static ReadRun.Counts run(String folder) {
    return new ReadRun(spark, folder, 2).read(PhotoTable.read(spark, table), line -> {});
  }

  private static Dataset<Row> photos() {
    return new Results(spark, archive).ofVersion(PhotoScoring.version()).orElseThrow();
  }

  @Test
  void itsJointsAreThoseOfScoreToTheByte() throws IOException {
    Path out = temp.resolve("score");
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    Main.run(
        System.in,
        new PrintStream(said, true, StandardCharsets.UTF_8),
        new PrintStream(said, true, StandardCharsets.UTF_8),
        "score",
        SAMPLES.resolve("base-station-video-good.jpg").toString(),
        "--connector",
        "video-a-19-slots",
        "--out",
        out.toString());
    byte[] report = Files.readAllBytes(out.resolve("base-station-video-good.json"));
    List<String> expected = new ArrayList<>();
    for (JsonNode joint : JointRows.read(report)) {
      expected.add(joint.toString());
    }
    List<String> got =
        photos()
            .filter("photo like '%video-good%'")
            .selectExpr("inline(joints)")
            .select("json")
            .as(Encoders.STRING())
            .collectAsList();
    assertThat(got).hasSize(19).isEqualTo(expected);
    assertThat(new String(report, StandardCharsets.UTF_8).replaceAll("\\s", ""))
        .contains(got.get(0).replaceAll("\\s", ""));
  }

  @Test
  void aPhotoThatCannotBeUsedIsARowThatSaysWhy() {
    List<Row> bad = photos().filter("outcome <> 'scored'").orderBy("photo").collectAsList();
    assertThat(bad).extracting(row -> row.<String>getAs("outcome")).containsOnly("refused");
    assertThat(bad.get(0).<String>getAs("message")).contains("--leads must be 3 to 500");
    assertThat(bad.get(1).<String>getAs("message")).contains("nothing.jpg");
  }

  @Test
  void whatWasReadIsNotReadAgainAndALostWaveIs() throws IOException {
    Path copy = temp.resolve("half");
    Path from = Path.of(archive);
    List<Path> files;
    try (var walk = Files.walk(from)) {
      files = walk.filter(file -> file.toString().endsWith(".parquet")).sorted().toList();
    }
    // What a run leaves that was stopped within a wave: one that was committed, and finished tasks.
    keep(from, files.get(0), copy);
    for (Path file : files.subList(1, files.size())) {
      keep(from, file, copy.resolve("_temporary/0/task_1_0001_m_000000"));
    }

    ReadRun.Counts again = run(copy.toString());

    assertThat(again.before()).isLessThan(3);
    assertThat(again.before() + again.scored()).isEqualTo(3);
    Dataset<Row> whole =
        new Results(spark, copy.toString()).scored(PhotoScoring.version()).orElseThrow();
    assertThat(whole.select("asked").distinct().count()).isEqualTo(whole.count()).isEqualTo(3);
    assertThat(run(copy.toString())).isEqualTo(new ReadRun.Counts(3, 0, 2));
  }

  private static void keep(Path from, Path file, Path copy) throws IOException {
    Path to = copy.resolve(from.relativize(file));
    Files.createDirectories(to.getParent());
    Files.copy(file, to);
  }

  @Test
  void ratesCountJudgedJointsByWhatTheyShare() {
    List<String> lines = Rates.of(new Results(spark, archive), "site", null);
    long joints = photos().selectExpr("inline(joints)").filter("verdict <> 'unjudged'").count();
    long defects = photos().selectExpr("inline(joints)").filter("verdict = 'defect'").count();
    assertThat(defects).isPositive();
    assertThat(lines).hasSize(3);
    assertThat(sum(lines, 4)).isEqualTo(joints);
    assertThat(sum(lines, 5)).isEqualTo(defects);
    assertThatThrownBy(() -> Rates.of(new Results(spark, archive), "colour", null))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("--by must be one of");
  }

  private static long sum(List<String> lines, int column) {
    return lines.stream().skip(1).mapToLong(it -> Long.parseLong(it.split(",")[column])).sum();
  }

  @Test
  void changesNameTheJointsThatTwoVersionsDisagreeAbout() throws IOException {
    String both = temp.resolve("both").toString();
    photos().write().partitionBy("version").parquet(both);
    photos()
        .withColumn("version", lit("other"))
        .withColumn(
            "joints",
            expr(
                "transform(joints, j -> if(j.pin = 3, named_struct('pin', j.pin, 'name', j.name,"
                    + " 'verdict', 'unjudged', 'findings', j.findings, 'doubts', j.doubts,"
                    + " 'by_measures', j.by_measures, 'by_reader', j.by_reader, 'json', j.json),"
                    + " j))"))
        .write()
        .mode("append")
        .partitionBy("version")
        .parquet(both);
    Results results = new Results(spark, both);
    Changes changes = new Changes(results, PhotoScoring.version(), "other");
    Path out = temp.resolve("look");
    changes.write(out.toString());
    String written;
    try (var files = Files.list(out)) {
      written =
          Files.readString(
              files.filter(it -> it.toString().endsWith(".csv")).findFirst().orElseThrow());
    }
    long third =
        photos().selectExpr("inline(joints)").filter("pin = 3 and verdict <> 'unjudged'").count();
    assertThat(third).isPositive();
    assertThat(written.lines().skip(1)).hasSize((int) third).allMatch(it -> it.contains(",3,"));
    assertThatThrownBy(() -> new Changes(results, "older", "other"))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("holds nothing of version older; it holds");
  }

  @Test
  void anotherDataFileIsAnotherVersion() throws IOException {
    Path limits = Path.of("models/acceptance/ipc-a-610.json");
    Path other = temp.resolve("overlay").resolve(limits);
    Files.createDirectories(other.getParent());
    ClassLoader program = getClass().getClassLoader();
    URL[] first = {temp.resolve("overlay").toUri().toURL()};
    assertThat(PhotoScoring.version()).endsWith("-" + ModelsHash.of(program));
    try (URLClassLoader overlaid = new OwnFirst(first, program)) {
      Files.copy(limits, other);
      assertThat(ModelsHash.of(overlaid)).isEqualTo(ModelsHash.of(program));
      Files.writeString(other, Files.readString(limits) + "\n");
      assertThat(ModelsHash.of(overlaid)).isNotEqualTo(ModelsHash.of(program));
    }
  }

  /** As a folder that stands first on the class path. */
  private static final class OwnFirst extends URLClassLoader {
    OwnFirst(URL[] urls, ClassLoader parent) {
      super(urls, parent);
    }

    @Override
    public URL getResource(String name) {
      URL own = findResource(name);
      return own == null ? super.getResource(name) : own;
    }
  }

  @Test
  void photosOfOneNameInTwoFoldersAreTwo() throws IOException {
    Path other = Files.createDirectories(temp.resolve("south"));
    String line = "photo,leads,pitch_mm\na.jpg,19,0.5\n";
    Path first = Files.writeString(temp.resolve("north.csv"), line);
    Path second = Files.writeString(other.resolve("south.csv"), line);
    assertThat(PhotoTable.read(spark, first).first().<String>getAs("asked"))
        .isNotEqualTo(PhotoTable.read(spark, second).first().<String>getAs("asked"));
  }

  @Test
  void aPhotoOfTwoSitesIsRefused() throws IOException {
    Path twice =
        Files.writeString(
            temp.resolve("twice.csv"),
            "photo,leads,pitch_mm,site\na.jpg,19,0.5,north\na.jpg,19,0.5,south\n");
    assertThatThrownBy(() -> PhotoTable.read(spark, twice))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("a.jpg stands there twice");
  }

  @Test
  void nothingIsWrittenOver() {
    assertThatThrownBy(() -> new Results(spark, archive).refuseExisting(temp.toString()))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("is there already");
  }

  @Test
  void ratesAreOfTheVersionThatIsAskedFor() {
    Results results = new Results(spark, archive);
    assertThat(Rates.of(results, "site", PhotoScoring.version()))
        .isEqualTo(Rates.of(results, "site", null));
    assertThatThrownBy(() -> Rates.of(results, "site", "older"))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("holds nothing of version older");
  }

  @Test
  void nothingOfTheProgramItselfNeedsSpark() {
    noClasses()
        .that()
        .resideOutsideOfPackage("leadlight.archive..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("leadlight.archive..", "org.apache.spark..", "scala..")
        .check(new ClassFileImporter().importPackages("leadlight"));
  }
}
