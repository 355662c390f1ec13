package leadlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leadlight.app.record.BoardFiles;
import leadlight.model.Verdict;
import leadlight.record.JobRecord;
import leadlight.record.said.RecordedJoint;
import leadlight.record.scoring.Subject;
import leadlight.summary.board.BoardStanding;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** After people and the bench have spoken, every way to read a job says the same of every pin. */
class PinsAgreeTest {

  private static final String JOB = "0412 logger Weir Lane";
  private static final Path PHOTO = Path.of("sample-images/base-station-video-mixed.jpg");

  @TempDir private static Path folder;

  private static Map<Integer, String> counts;
  private static Run scored;
  private static Run moves;

  @BeforeAll
  static void speak() {
    scored =
        Run.of(
            "score",
            PHOTO,
            "--leads",
            19,
            "--pitch",
            0.5,
            "--job",
            JOB,
            "--stage",
            "after-rework",
            "--keep-photo",
            "--record",
            record(),
            "--out",
            out(),
            "--by",
            "Ada");
    moves = say("prod", 5, "moves");
    say("meter", 7, "short", "--other-pin", 8);
    say("overrule", 14, "acceptable", "--reason", "plenty of solder at the side");
    say("overrule", 3, "acceptable", "--reason", "a slip");
    say("overrule", 3, "--take-back");
    say("prod", 18, "firm");
    try (JobRecord open = JobRecord.open(record())) {
      counts = new TreeMap<>();
      for (RecordedJoint joint : open.row(1).joints()) {
        counts.put(joint.pin(), joint.verdict().id());
      }
    }
  }

  private static Path record() {
    return folder.resolve("record");
  }

  private static Path out() {
    return folder.resolve("out");
  }

  private static Run say(String command, Object... words) {
    Object[] args = new Object[words.length + 7];
    args[0] = "record";
    args[1] = command;
    args[2] = 1;
    System.arraycopy(words, 0, args, 3, words.length);
    args[words.length + 3] = "--record";
    args[words.length + 4] = record();
    args[words.length + 5] = "--by";
    args[words.length + 6] = "Ada";
    return Run.of(args);
  }

  private static Map<Integer, String> csv(Path file) throws IOException {
    Map<Integer, String> pins = new TreeMap<>();
    try (CsvReader<NamedCsvRecord> reader = CsvReader.builder().ofNamedCsvRecord(file)) {
      reader.forEach(
          line -> pins.put(Integer.valueOf(line.getField("pin")), line.getField("verdict")));
    }
    return pins;
  }

  private static Map<Integer, String> found(String text, String pattern) {
    Map<Integer, String> pins = new TreeMap<>();
    Matcher matcher = Pattern.compile(pattern).matcher(text);
    while (matcher.find()) {
      pins.put(Integer.valueOf(matcher.group("pin")), matcher.group("verdict"));
    }
    return pins;
  }

  private static String page() throws IOException {
    return Files.readString(out().resolve("base-station-video-mixed.html"));
  }

  @Test
  void theVerdictsThatCountAreAsThePeopleAndTheBenchSaid() {
    assertThat(scored.status()).isEqualTo(3);
    assertThat(moves.out()).hasLineCount(1).contains("pin 5 prod: moves (Ada)", "is now defect");
    assertThat(counts)
        .hasSize(19)
        .containsEntry(3, "defect")
        .containsEntry(5, "defect")
        .containsEntry(7, "defect")
        .containsEntry(8, "defect")
        .containsEntry(14, "acceptable")
        .containsEntry(19, "defect");
    assertThat(counts.get(18)).as("firm: not open, and nobody said sound").isEqualTo("unjudged");
  }

  @Test
  void theFilesAreProvenAsTheyStand() {
    try (JobRecord open = JobRecord.open(record())) {
      assertThat(open.troubles()).isEmpty();
    }
  }

  @Test
  void tableAndJsonOfThePhotoAgree() throws IOException {
    assertThat(csv(out().resolve("base-station-video-mixed.csv"))).isEqualTo(counts);
    JsonNode json =
        new ObjectMapper().readTree(out().resolve("base-station-video-mixed.json").toFile());
    Map<Integer, String> pins = new TreeMap<>();
    json.get("joints")
        .forEach(joint -> pins.put(joint.get("pin").asInt(), joint.get("verdict").asText()));
    assertThat(pins).isEqualTo(counts);
  }

  @Test
  void rowPhotoAndPanelsOfThePageAgree() throws IOException {
    assertThat(found(page(), "class=\"tab (?<verdict>[a-z-]+)\" id=\"tab-(?<pin>\\d+)\""))
        .isEqualTo(counts);
    assertThat(found(page(), "class=\"spot (?<verdict>[a-z-]+)\" id=\"spot-(?<pin>\\d+)\""))
        .isEqualTo(counts);
    assertThat(found(page(), "class=\"pin card (?<verdict>[a-z-]+)\" id=\"pin-(?<pin>\\d+)\""))
        .isEqualTo(counts);
  }

  @Test
  void theRecordsOwnTableAndListAgree() throws IOException {
    Path table = folder.resolve("all.csv");
    Run.of("record", "export", table, "--record", record());
    assertThat(csv(table)).isEqualTo(counts);
    Run show = Run.of("record", "show", 1, "--record", record());
    assertThat(found(show.out(), "pin +(?<pin>\\d+)  (?<verdict>[a-z-]+)")).isEqualTo(counts);
    assertThat(Run.of("record", "--record", record()).out()).contains("  defect  ");
    assertThat(Run.of("record", "--finding", "bridge", "--record", record()).out())
        .contains("1 scoring");
  }

  @Test
  void whatStandsOpenAndTheSheetAgree() throws IOException {
    try (JobRecord open = JobRecord.open(record())) {
      BoardStanding board = BoardStanding.of(open, JOB, Subject.ONLY_BOARD, 3);
      for (BoardStanding.Point point : board.open()) {
        point.pins().forEach(pin -> assertThat(counts.get(pin)).isIn("defect", "unjudged"));
      }
      assertThat(board.open()).anyMatch(p -> p.pins().containsAll(java.util.List.of(5, 7, 8)));
      assertThat(board.verdict()).isEqualTo(Verdict.DEFECT);
    }
    Run sheet = Run.of("sheet", "0412", "--record", record(), "--out", out());
    assertThat(sheet.status()).as("the record contradicts a hand-back").isEqualTo(3);
    assertThat(sheet.err()).hasLineCount(1).contains("5, 7\u20138");
    assertThat(out().resolve("sheet-0412-logger-Weir-Lane--1.html")).doesNotExist();
  }

  @Test
  void theDecisionMayFollowTheJobOfOneBoard() {
    Run yes = Run.of("record", "hand-back", "0412", "yes", "--record", record(), "--by", "Ada");
    assertThat(yes.err()).as("yes is no board").contains("contradicts").doesNotContain("no board");
    Run none = Run.of("record", "hand-back", "0412", "--record", record(), "--by", "Ada");
    assertThat(none.err()).hasLineCount(1).contains("say yes or no behind the job");
  }

  /** On a board of its own: what this class compares stays as it is. */
  @Test
  void legsAreTakenIntoTheLifeFromTheirOwnReport() throws IOException {
    Path file = folder.resolve("legs.legs.json");
    Files.writeString(
        file,
        """
        {"schema": "leadlight-legs-1", "photo": {"file": "legs.jpg", "sha256": "00"},
         "side": "solder", "class": 2, "legs": [{"leg": 1, "match": 0.9, "verdict": "defect"},
         {"leg": null, "verdict": "unjudged"}], "verdict": "defect"}
        """);
    Files.copy(Path.of("docs/pictures/drill-told.jpg"), folder.resolve("legs.legs.png"));
    Path legs = folder.resolve("legs-record");
    Run note =
        Run.of("record", "note", "0500", "--legs-report", file, "--record", legs, "--by", "Ada");
    assertThat(note.status()).as(note.err()).isZero();
    Run board = Run.of("record", "board", "0500", "--record", legs, "--out", out());
    assertThat(board.out()).contains("Defect at anchor legs: 1", "Anchor legs not judged: ?");
    assertThat(Files.readString(out().resolve("board-0500--1.html")))
        .contains("solder side, legs.jpg", "defect: 1", "not judged: ?", "data:image/jpeg");
    Files.writeString(file, "{\"schema\": \"x\"}");
    assertThat(
            Run.of("record", "note", "0500", "--legs-report", file, "--record", legs, "--by", "Ada")
                .err())
        .hasLineCount(1);
  }

  @Test
  void legsAreTakenIntoTheLifeFromAWholeConnectorsReport() throws IOException {
    Path file = folder.resolve("row.connector.json");
    Files.writeString(
        file,
        """
        {"schema": "leadlight-report-1", "legs": {"photos": [
         {"file": "below.jpg", "sha256": "00", "side": "solder", "found": 2}], "each": [
         {"leg": 1, "verdict": "defect", "seen": []}, {"leg": 2, "verdict": "acceptable"}]}}
        """);
    Path legs = folder.resolve("connector-record");
    Run note =
        Run.of("record", "note", "0501", "--legs-report", file, "--record", legs, "--by", "Ada");
    assertThat(note.status()).as(note.err()).isZero();
    Run board = Run.of("record", "board", "0501", "--record", legs, "--out", out());
    assertThat(board.out())
        .contains("Defect at anchor legs: 1")
        .doesNotContain("Anchor legs not judged");
    Files.writeString(file, "{\"schema\": \"leadlight-report-1\"}");
    assertThat(
            Run.of("record", "note", "0501", "--legs-report", file, "--record", legs, "--by", "Ada")
                .err())
        .hasLineCount(1)
        .contains("legs");
  }

  @Test
  void noTwoNamesMeetInOneFile() {
    assertThat(BoardFiles.name("A 1", "board 1")).isEqualTo("A-1--board-1");
    assertThat(
            java.util.List.of(
                BoardFiles.name("A/1", "b"),
                BoardFiles.name("A 1", "b"),
                BoardFiles.name("A-1", "b"),
                BoardFiles.name("A", "1 b"),
                BoardFiles.name("A  1", "b")))
        .doesNotHaveDuplicates()
        .allMatch(name -> name.matches("[A-Za-z0-9~-]+"));
  }

  @Test
  void chartsCountTheSameDefects() {
    long defects = counts.values().stream().filter("defect"::equals).count();
    long judged = counts.values().stream().filter(v -> !v.equals("unjudged")).count();
    Run chart =
        Run.of(
            "chart", "--record", record(), "--per", "connector", "--out", folder.resolve("chart"));
    assertThat(chart.out()).as(chart.err()).contains("" + judged).contains("" + defects);
  }
}
