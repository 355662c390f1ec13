package leadlight.record;

import static leadlight.record.ScoredBoard.NOON;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;
import leadlight.record.engine.RecordPlace;
import leadlight.record.file.Database;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Trainees' sittings and answers in the record. */
class DrillRecordTest {

  private static final Sitting.SetId SET = new Sitting.SetId("d".repeat(64), "samples", 2, false);
  private static final Sitting.SetId OWN = new Sitting.SetId("d".repeat(64), "own row", 2, true);

  @TempDir private Path folder;
  private DrillRecord record;

  @BeforeEach
  void open() {
    record = DrillRecord.open(at(folder));
  }

  @AfterEach
  void close() {
    record.close();
  }

  /** Where a record of that name lies; on a server in SharedRecordTests. */
  RecordPlace at(Path path) {
    return new RecordPlace.Folder(path);
  }

  private static DrillAnswer answer(int specimen, int pin, Verdict said, FindingKind... finding) {
    return new DrillAnswer(
        specimen,
        pin,
        "board.jpg pin " + pin,
        said,
        Optional.of(finding).filter(f -> f.length > 0).map(f -> f[0]),
        Optional.of("defect"),
        List.of(FindingKind.OPEN, FindingKind.BRIDGE),
        Optional.of(Verdict.UNJUDGED),
        List.of(FindingKind.BRIDGE),
        1234,
        NOON);
  }

  @Test
  void anAnswerComesOutAsItWentIn() {
    long sitting = record.sit("Ada", SET, NOON).id();
    DrillAnswer full = answer(1, 3, Verdict.DEFECT, FindingKind.OPEN);
    DrillAnswer own =
        new DrillAnswer(
            2,
            1,
            "own pin 1",
            Verdict.ACCEPTABLE,
            Optional.empty(),
            Optional.empty(),
            List.of(),
            Optional.empty(),
            List.of(),
            9,
            NOON.plusMinutes(1));
    record.answer(sitting, own);
    record.answer(sitting, full);

    assertThat(record.answers(sitting)).as("by specimen and pin").containsExactly(full, own);
  }

  @Test
  void theLastAnswerToAPinCounts() {
    long sitting = record.sit("Ada", SET, NOON).id();
    record.answer(sitting, answer(1, 3, Verdict.DEFECT));
    record.answer(sitting, answer(1, 3, Verdict.ACCEPTABLE));
    assertThat(record.answers(sitting))
        .extracting(DrillAnswer::said)
        .containsExactly(Verdict.ACCEPTABLE);
  }

  @Test
  void anUnfinishedSittingIsGoneOnWithAndAFinishedOneIsNot() {
    Sitting first = record.sit("Ada", SET, NOON);
    assertThat(first.person()).isEqualTo("Ada");
    assertThat(first.set()).isEqualTo(SET);
    assertThat(first.startedAt()).isEqualTo(NOON);
    assertThat(first.endedAt()).isEmpty();
    assertThat(record.sit("Ada", SET, NOON.plusDays(1))).isEqualTo(first);
    assertThat(record.sit("Ada", OWN, NOON).id()).isNotEqualTo(first.id());
    assertThat(record.sit("Grace", SET, NOON).id()).isNotEqualTo(first.id());

    record.tell(first.id(), 1, NOON.plusMinutes(1));
    assertThat(record.told(first.id())).containsExactly(1);
    assertThat(record.sit("Ada", SET, NOON)).as("one specimen of two told").isEqualTo(first);
    record.tell(first.id(), 2, NOON.plusMinutes(2));

    assertThat(record.told(first.id())).containsExactly(1, 2);
    assertThat(record.sit("Ada", SET, NOON).id()).isGreaterThan(first.id());
    assertThat(record.sittings("Ada").get(0).endedAt()).contains(NOON.plusMinutes(2));
  }

  @Test
  void erasingAPersonLeavesNothingOfThemAndAllOfOthers() throws IOException {
    String name = "Bartholomew-to-be-forgotten";
    long sitting = record.sit(name, SET, NOON).id();
    record.answer(sitting, answer(1, 3, Verdict.DEFECT));
    long other = record.sit("Grace", SET, NOON).id();
    record.answer(other, answer(1, 3, Verdict.DEFECT));
    assertThat(record.people()).containsExactly(name, "Grace");

    assertThat(record.erase(name)).isEqualTo(1);

    assertThat(record.people()).containsExactly("Grace");
    assertThat(record.sittings(name)).isEmpty();
    assertThat(record.answers(sitting)).isEmpty();
    assertThat(record.answers(other)).hasSize(1);
    assertThat(record.erase("nobody")).isZero();
    assertThat(filed()).doesNotContain(name);
  }

  String filed() throws IOException {
    byte[] file = Files.readAllBytes(folder.resolve(Database.FILE));
    return new String(file, StandardCharsets.ISO_8859_1);
  }

  @Test
  void onlyADefectHasAFindingAndATraineeNamesNoProcessIndicator() {
    assertThatThrownBy(() -> answer(1, 1, Verdict.PROCESS_INDICATOR))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> answer(1, 1, Verdict.ACCEPTABLE, FindingKind.OPEN))
        .isInstanceOf(IllegalArgumentException.class);
    assertThat(answer(1, 1, Verdict.DEFECT, FindingKind.OPEN).finding()).contains(FindingKind.OPEN);
  }

  @Test
  void closedIsClosed() {
    DrillRecord another = DrillRecord.open(at(folder));
    another.close();
    assertThatThrownBy(another::people).isInstanceOf(Exception.class);
  }
}
