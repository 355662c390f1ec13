package leadlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import leadlight.record.JobRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A photo that is scored into the record a second time brings what stands, not the first word. */
class ScoreAgainTest {

  private static final Path PHOTO = Path.of("sample-images/base-station-video-mixed.jpg");

  @TempDir private Path folder;

  private Run score(Path out, Object... more) {
    List<Object> words =
        new ArrayList<>(
            List.of(
                "score", PHOTO, "--leads", 19, "--pitch", 0.5, "--job", "0412 logger Weir Lane"));
    words.addAll(List.of("--record", folder, "--out", out, "--by", "Ada"));
    words.addAll(List.of(more));
    return Run.of(words.toArray());
  }

  private Run plainly(Path out, Object... more) {
    List<Object> words =
        new ArrayList<>(List.of("score", PHOTO, "--leads", 19, "--pitch", 0.5, "--out", out));
    words.addAll(List.of("--record", folder));
    words.addAll(List.of(more));
    return Run.of(words.toArray());
  }

  private void proddedLeadOneMoves() {
    Run.of("record", "prod", 1, 1, "moves", "--record", folder, "--by", "Ada");
  }

  private Path csv(Path out) {
    return out.resolve("base-station-video-mixed.csv");
  }

  private Iterable<String> troubles() {
    try (JobRecord record = JobRecord.open(folder)) {
      return record.troubles();
    }
  }

  @Test
  void aFreshScoringIsProven() {
    assertThat(score(folder.resolve("out")).out()).contains("recorded as scoring 1");
    assertThat(troubles()).isEmpty();
  }

  @Test
  void whatTheBenchSaidStaysAndIsProven() throws IOException {
    Path out = folder.resolve("out");
    score(out);
    proddedLeadOneMoves();
    assertThat(score(out).out()).contains("recorded as scoring 1");
    assertThat(Files.readString(csv(out))).contains("mixed.jpg,1,1,defect,open,");
    assertThat(troubles()).isEmpty();
  }

  @Test
  void aSecondWayOfScoringLeavesTheResultsOfTheFirst() throws IOException {
    Path out = folder.resolve("out");
    score(out);
    byte[] first = Files.readAllBytes(csv(out));
    assertThat(plainly(out, "--job", "0412", "--by", "Ada").out())
        .as("the beginning of a name is no second job")
        .contains("recorded as scoring 1: 0412 logger Weir Lane,");
    assertThat(score(out, "--class", 3).out()).contains("recorded as scoring 2");
    assertThat(score(out, "--class", 1).out()).contains("recorded as scoring 3");
    assertThat(score(out, "--class", 3).out()).contains("recorded as scoring 2");
    assertThat(csv(out)).hasBinaryContent(first);
    assertThat(csv(out.resolve("2"))).exists();
    assertThat(csv(out.resolve("3"))).exists();
    assertThat(troubles()).isEmpty();
  }

  @Test
  void scoringForNoJobLeavesWhatIsInTheRecord() throws IOException {
    Path out = folder.resolve("out");
    score(out);
    byte[] first = Files.readAllBytes(csv(out));
    assertThat(plainly(out, "--job", "0412", "--by", "Ada").out())
        .as("the beginning of a name is no second job")
        .contains("recorded as scoring 1: 0412 logger Weir Lane,");
    Run plain = plainly(out, "--class", 3);
    assertThat(plain.out()).contains("its results in " + out + " are in the record and stay");
    assertThat(csv(out)).hasBinaryContent(first);
    assertThat(csv(out.resolve("2"))).exists();
    assertThat(troubles()).isEmpty();
    plainly(out);
    assertThat(out.resolve("3")).doesNotExist();
  }

  @Test
  void aJobIsNoOtherForBeginningOrCountingAlike() {
    Path out = folder.resolve("out");
    plainly(out, "--job", "4", "--by", "Ada");
    score(out);
    assertThat(plainly(out, "--job", "04", "--by", "Ada").out())
        .contains("recorded as scoring 3: 04,");
    assertThat(plainly(out, "--job", "4", "--by", "Ada").out())
        .contains("recorded as scoring 1: 4,");
    assertThat(plainly(out, "--job", "0412", "--by", "Ada").out())
        .contains("recorded as scoring 2: 0412 logger Weir Lane,");
    assertThat(troubles()).isEmpty();
  }

  @Test
  void theRecordIsMindedWhereWhatLiesBesideItIsElsewhere() throws IOException {
    Path out = folder.resolve("out");
    score(out);
    plainly(out, "--class", 3, "--record-files", folder.resolve("beside"));
    assertThat(csv(out.resolve("2"))).exists();
    assertThat(troubles()).isEmpty();
  }

  @Test
  void comparingWithThePhotoBeforeLeavesWhatIsInTheRecord() throws IOException {
    Path out = folder.resolve("out");
    score(out);
    Run placed = plainly(out, "--placed", PHOTO);
    assertThat(placed.out()).contains("its results in " + out + " are in the record and stay");
    assertThat(csv(out.resolve("2"))).exists();
    assertThat(troubles()).isEmpty();
  }

  @Test
  void scoringTwiceForNoJobReplacesItsOwn() {
    Path out = folder.resolve("out");
    plainly(out);
    assertThat(plainly(out).out()).doesNotContain("are in the record");
    assertThat(out.resolve("2")).doesNotExist();
    assertThat(folder.resolve("leadlight.sqlite")).doesNotExist();
  }

  @Test
  void aReportThatIsGoneComesBackUnderItsName() throws IOException {
    Path out = folder.resolve("out");
    score(out);
    Path report = out.resolve("base-station-video-mixed.json");
    Files.delete(report);
    score(out);
    assertThat(report).exists();
    assertThat(out.resolve("base-station-video-mixed-2.json")).doesNotExist();
    assertThat(troubles()).isEmpty();
  }

  @Test
  void resultsThatSomebodyChangedAreKeptAndTheNewOnesMayLieElsewhere() throws IOException {
    Path out = folder.resolve("out");
    score(out);
    Files.writeString(csv(out), "pin,verdict");
    Run refused = score(out);
    assertThat(refused.status()).isNotZero();
    assertThat(refused.err())
        .hasLineCount(1)
        .contains("base-station-video-mixed.csv was changed", "record verify", "another folder");
    assertThat(csv(out)).hasContent("pin,verdict");
    Path elsewhere = folder.resolve("elsewhere");
    assertThat(score(elsewhere).out()).contains("recorded as scoring 1");
    assertThat(csv(elsewhere)).exists();
  }
}
