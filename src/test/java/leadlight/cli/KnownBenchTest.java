package leadlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import leadlight.enrol.CheckBook;
import leadlight.vision.Frame;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Wherever a photo is scored, the bench that it comes from may be named, or is the default. */
class KnownBenchTest {

  private static final String AS_ENROLLED = "\"as-enrolled\"";

  @TempDir private Path folder;

  private Path benches;

  @BeforeEach
  void enrolled() {
    benches = folder.resolve("benches");
    EnrolledRing.in(benches);
  }

  @AfterEach
  void noPictureStaysInNativeMemory() {
    assertThat(Frame.live()).isZero();
  }

  private Run run(Object... args) {
    List<Object> all = new ArrayList<>(Arrays.asList(args));
    all.addAll(List.of("--benches", benches));
    return Run.of(all.toArray());
  }

  private Run score(Object... more) {
    return scoredInto("out", more);
  }

  private Run scoredInto(String out, Object... more) {
    List<Object> args = new ArrayList<>(List.of("score", EnrolledRing.picture("mixed-0")));
    args.addAll(List.of("--out", folder.resolve(out), "--leads", 19, "--pitch", 0.5));
    args.addAll(Arrays.asList(more));
    return run(args.toArray());
  }

  private String report() throws IOException {
    return Files.readString(folder.resolve("out/mixed-0.json"));
  }

  @Test
  void theDefaultCountsWhereNoneIsNamedAndCanBeLeftOut() throws IOException {
    assertThat(run("enrol", "ring", "--default").out()).contains("from now on");
    score();
    assertThat(report()).contains(AS_ENROLLED).contains("\"version\" : 1");
    score("--no-bench");
    assertThat(report()).doesNotContain("enrolled");
    assertThat(score("--no-reader").err()).contains("it is the default: --no-bench");
    assertThat(run("enrol", "ring", "--no-default").out()).contains("no bench is the default");
    assertThat(score("--bench", "ring", "--no-bench").err()).contains("not both");
  }

  @Test
  void onlyAnEnrolledBenchCanBeTheDefault() {
    assertThat(run("enrol", "torch", "--default").err()).contains("no bench \"torch\"");
    assertThat(benches.resolve("default.json")).doesNotExist();
  }

  @Test
  void aPhotoOfAJobIsJudgedAsOfTheBenchAndTheRecordKeepsWhichVersion() throws IOException {
    Path record = folder.resolve("record");
    List<Object> job = List.of("--job", "0412", "--record", record);
    score(Stream.concat(job.stream(), Stream.of("--bench", "ring")).toArray());
    assertThat(report()).contains(AS_ENROLLED);
    scoredInto("other", Stream.concat(job.stream(), Stream.of("--no-bench")).toArray());
    assertThat(Files.readString(folder.resolve("other/mixed-0.json")))
        .as("another way of scoring is scored anew")
        .doesNotContain(AS_ENROLLED);
    assertThat(Run.of("record", "show", 1, "--record", record).out())
        .contains("bench    ring, version 1, ");
    assertThat(Run.of("record", "show", 2, "--record", record).out()).doesNotContain("bench    ");
    assertThat(Run.of("record", "verify", "--record", record).status()).isZero();
  }

  @Test
  void aDaysPhotosAreJudgedAsOfTheBench() throws IOException {
    Path day = folder.resolve("day");
    Files.createDirectories(day.resolve("0412"));
    Files.copy(EnrolledRing.picture("mixed-0"), day.resolve("0412/mixed-0.jpg"));
    Run batch =
        run(
            "batch",
            day,
            "--leads",
            19,
            "--pitch",
            0.5,
            "--bench",
            "ring",
            "--out",
            folder.resolve("out"),
            "--record",
            folder.resolve("record"));
    assertThat(batch.err()).doesNotContain("leadlight:");
    try (Stream<Path> files = Files.walk(folder.resolve("out"))) {
      Path report = files.filter(it -> it.endsWith("mixed-0.json")).findFirst().orElseThrow();
      assertThat(Files.readString(report)).contains(AS_ENROLLED);
    }
  }

  @Test
  void theCheckBoardIsChartedAndFewPhotosSetNoLimits() {
    List<Object> check = List.of("enrol", "ring", "--leads", 19, "--pitch", 0.5, "--check");
    Run first =
        run(Stream.concat(check.stream(), Stream.of(EnrolledRing.picture("sound-0"))).toArray());
    assertThat(first.err()).isEmpty();
    assertThat(first.status()).isZero();
    assertThat(first.out()).contains("1 check photos of 8 that set the limits");
    assertThat(benches.resolve("ring/checks.html")).exists();
    assertThat(
            run(Stream.concat(check.stream(), Stream.of(EnrolledRing.picture("sound-0"))).toArray())
                .err())
        .contains("in the chart already");
    assertThat(run("enrol", "ring", "--show").out()).as("no version").contains("version 1");
  }

  @Test
  void afterALampWasChangedOnPurposeANewSeriesBeginsAndTheLastIsKept() {
    checked(EnrolledRing.picture("sound-0"));
    Run anew =
        run(
            "enrol",
            "ring",
            "--leads",
            19,
            "--pitch",
            0.5,
            "--anew",
            "--check",
            EnrolledRing.picture("sound-0"));
    assertThat(anew.out()).contains("a new series begins", "checks-1.json", "1 check photos of 8");
    assertThat(benches.resolve("ring/checks-1.json")).exists();
    assertThat(CheckBook.in(benches, "ring").checks()).hasSize(1);
    assertThat(run("enrol", "ring", "--show").out()).as("no version").contains("version 1");
  }

  private Run checked(Path... photos) {
    List<Object> check =
        new ArrayList<>(List.of("enrol", "ring", "--leads", 19, "--pitch", 0.5, "--check"));
    check.addAll(List.of(photos));
    return run(check.toArray());
  }

  /** The same picture as another file: a comment behind the start of the JPEG. */
  private Path again(String name) throws IOException {
    byte[] photo = Files.readAllBytes(EnrolledRing.picture(name));
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    bytes.write(photo, 0, 2);
    bytes.writeBytes(new byte[] {(byte) 0xff, (byte) 0xfe, 0, 4, 'd', 'y'});
    bytes.write(photo, 2, photo.length - 2);
    return Files.write(folder.resolve("again.jpg"), bytes.toByteArray());
  }

  @Test
  void ofSeveralCheckPhotosEachCountsNotTheLastAlone() throws IOException {
    checked(EnrolledRing.picture("sound-0"));
    CheckBook.Check first = CheckBook.in(benches, "ring").checks().get(0);
    List<CheckBook.Check> days = new ArrayList<>();
    for (int i = 0; i < CheckBook.baseline(); i++) {
      days.add(
          new CheckBook.Check(
              "day-" + i, "%064x".formatted(i), first.joints(), first.setting(), first.row()));
    }
    new CheckBook(CheckBook.SCHEMA, days).write(benches, "ring");

    Run bad = checked(EnrolledRing.picture("unsoldered-0"), again("sound-0"));
    assertThat(bad.status()).isEqualTo(4);
    assertThat(bad.out())
        .contains("the bench is not as it was (shade: a point beyond three sigma at unsoldered-0");
    assertThat(bad.out()).doesNotContain("at again.jpg");
  }

  @Test
  void aTrialGoesByABenchOnlyIfItIsNamed() throws IOException {
    Path photos = folder.resolve("photos");
    Files.createDirectories(photos);
    Files.copy(EnrolledRing.picture("mixed-0"), photos.resolve("mixed-0.jpg"));
    Files.copy(
        Path.of("src/test/resources/enrol/mixed-0.truth.json"),
        photos.resolve("mixed-0.truth.json"));
    run("enrol", "ring", "--default");
    Path out = folder.resolve("trial");
    assertThat(run("trial", photos, "--out", out).out()).doesNotContain("bench");
    Run named = run("trial", photos, "--out", out, "--bench", "ring");
    assertThat(named.out()).contains("judged as of bench ring, version 1");
    assertThat(
            new ObjectMapper().readTree(out.resolve("trial.json").toFile()).get("bench").asText())
        .startsWith("ring, version 1, ");
    assertThat(run("trial", photos, "--sets", "same-row", "--bench", "ring").err())
        .contains("leave out --sets");
  }
}
