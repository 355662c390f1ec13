package leadlight.cli.drill;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import leadlight.cli.Main;
import leadlight.cli.Run;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Drills by their commands, in the terminal. */
class DrillCommandsTest {

  private static final Path SAMPLES = Path.of("sample-images");

  @TempDir private Path folder;
  private Path set;
  private Path record;

  @BeforeEach
  void places() {
    set = folder.resolve("set");
    record = folder.resolve("record");
  }

  private Run drill(Object... args) {
    return Run.of(Stream.concat(Stream.of("drill"), Stream.of(args)).toArray());
  }

  private Run make(Object... more) {
    Object[] all =
        Stream.concat(
                Stream.of("new", "--scenes", SAMPLES, "--count", 4, "--out", set), Stream.of(more))
            .toArray();
    return drill(all);
  }

  /** Takes the set with these lines typed. */
  private String take(String person, String typed, String... more) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    String[] args =
        Stream.concat(
                Stream.of(
                    "drill",
                    "judge",
                    set.toString(),
                    "--terminal",
                    "--by",
                    person,
                    "--record",
                    record.toString()),
                Stream.of(more))
            .toArray(String[]::new);
    int status =
        Main.run(
            new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8)),
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(out, true, StandardCharsets.UTF_8),
            args);
    assertThat(status).as(out.toString(StandardCharsets.UTF_8)).isZero();
    return out.toString(StandardCharsets.UTF_8);
  }

  @Test
  void aSetIsMadeOnceAndTakenInTwoGoes() {
    assertThat(make().out()).contains("4 pictures, 4 joints");
    assertThat(make().errLines())
        .singleElement()
        .asString()
        .contains("holds a practice set already");

    String first = take("Ada", "s\nwhat\n2\nq\n");
    assertThat(first)
        .contains(
            "joint 1 of 4", "picture-001.jpg", "In truth", "no such key", "left at joint 3 of 4");
    String second = take("Ada", "s\ns\n");
    assertThat(second).doesNotContain("joint 2 of 4").contains("joint 4 of 4", "of 4 right");
  }

  @Test
  void historyIsShownExportedComparedAndErased() throws IOException {
    make();
    take("Ada", "s\ns\ns\ns\n");
    take("Grace", "2\n2\nu\n2\n", "--tell-at-end");

    Run history = drill("history", "Ada", "--record", record, "--out", folder.resolve("out"));
    assertThat(history.out()).contains("2 of 2, 100 %", "It certifies nothing");
    assertThat(folder.resolve("out/history-Ada.html")).isRegularFile();
    assertThat(folder.resolve("out/shown-Ada.html")).content().contains("certifies nothing");

    Run classTable = drill("class", "--record", record, "--out", folder.resolve("out"));
    assertThat(classTable.out()).contains("Ada", "Grace", "weakest");

    Run agreement =
        drill("class", "--set", set, "--record", record, "--out", folder.resolve("out"));
    assertThat(agreement.out()).contains("Ada and Grace", "reference: truth");

    Path csv = folder.resolve("class.csv");
    assertThat(drill("class", "--export", csv, "--record", record).status()).isZero();
    assertThat(Files.readAllLines(csv)).hasSize(9);
    Run agree = Run.of("agree", csv, "--out", folder.resolve("agree"));
    assertThat(agree.out()).contains("4 items, 2 graders: Ada, Grace");

    assertThat(drill("history", "Ada", "--erase", "--record", record).out())
        .contains("Ada is erased, with 1 sittings");
    Run gone = drill("history", "Ada", "--record", record);
    assertThat(gone.status()).isEqualTo(2);
    assertThat(gone.errLines()).singleElement().asString().contains("there are: Grace");
  }

  @Test
  void nextSetsAreDrawnByTheHistory() {
    make();
    take("Ada", "s\ns\ns\ns\n");
    set = folder.resolve("next");
    assertThat(make("--for", "Ada", "--record", record).status()).isZero();
    set = folder.resolve("nobody");
    assertThat(make("--for", "Nobody", "--record", record).errLines())
        .singleElement()
        .asString()
        .contains("nobody called \"Nobody\"");
  }

  @Test
  void theBenchSettlesJointsOfTheRecordForASet() throws IOException {
    Path day = folder.resolve("day/logger/port");
    Files.createDirectories(day);
    Files.copy(SAMPLES.resolve("logger-sensor-opens.jpg"), day.resolve("row.jpg"));
    Run.of(
        "batch",
        folder.resolve("day"),
        "--leads",
        20,
        "--pitch",
        0.5,
        "--record",
        record,
        "--out",
        folder.resolve("runs"));
    for (Object[] said :
        List.of(
            new Object[] {1, "prod", "moves"},
            new Object[] {5, "prod", "firm"},
            new Object[] {6, "meter", "ok"})) {
      Run bench = Run.of("record", said[1], 1, said[0], said[2], "--by", "Ada", "--record", record);
      assertThat(bench.status()).as(bench.err()).isZero();
    }
    Run made =
        drill("new", "--settled", "--record", record, "--count", 2, "--out", set, "--seed", 3);
    assertThat(made.out()).as(made.err()).contains("2 pictures, 2 joints");
    assertThat(take("Grace", "2\n2\n"))
        .contains("open joint (at the bench, prodded, it moves)", "sound (at the bench, ");
  }

  @Test
  void anOwnRowIsGradedBeforeTheScoreIsTold() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Main.run(
        new ByteArrayInputStream("s\n".repeat(20).getBytes(StandardCharsets.UTF_8)),
        new PrintStream(out, true, StandardCharsets.UTF_8),
        new PrintStream(out, true, StandardCharsets.UTF_8),
        "drill",
        "own",
        SAMPLES.resolve("logger-sensor-opens.jpg").toString(),
        "--leads",
        "20",
        "--pitch",
        "0.5",
        "--terminal",
        "--by",
        "Ada",
        "--record",
        record.toString(),
        "--out",
        folder.resolve("own").toString());
    String said = out.toString(StandardCharsets.UTF_8);
    assertThat(said)
        .contains("Leadlight sees a defect here", "Perhaps missed", "Leadlight is not the truth");
    assertThat(said.indexOf("Leadlight sees")).isGreaterThan(said.indexOf("pin 20 >"));
    assertThat(folder.resolve("own/logger-sensor-opens.jpg/picture-001.jpg")).isRegularFile();
  }

  @Test
  void mistakesAreOneLine() {
    assertThat(drill().errLines()).singleElement().asString().contains("say which");
    assertThat(drill("new", "--out", set).errLines()).hasSize(1);
    assertThat(drill("judge", set, "--record", record).errLines())
        .singleElement()
        .asString()
        .contains("is no practice set");
    assertThat(drill("history", "Ada", "--record", record).errLines())
        .singleElement()
        .asString()
        .contains("no record in");
  }
}
