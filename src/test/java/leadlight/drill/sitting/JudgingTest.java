package leadlight.drill.sitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import leadlight.drill.set.MadeSet;
import leadlight.drill.set.OpenSet;
import leadlight.drill.set.PracticeSet;
import leadlight.model.FindingKind;
import leadlight.model.UserError;
import leadlight.model.Verdict;
import leadlight.record.DrillAnswer;
import leadlight.record.DrillRecord;
import leadlight.text.Messages;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JudgingTest {

  private static final MadeSet MADE = PracticeSets.make(PracticeSets.request(4, false, 2));

  @TempDir private Path folder;
  private Path made;
  private OpenSet set;

  @BeforeEach
  void write() throws IOException {
    made = Files.createDirectories(folder.resolve("set"));
    MADE.write(made);
    set = OpenSet.read(made);
  }

  private DrillRecord record() {
    return DrillRecord.open(folder.resolve("record"));
  }

  private Judging judging(DrillRecord record, boolean tellAtEnd) {
    return new Judging(set, record, "Ada", tellAtEnd, () -> PracticeSets.NOON, Messages.of("en"));
  }

  private int pin(int specimen) {
    return set.specimen(specimen).spots().get(0).pin();
  }

  @Test
  void anAnswerOutlivesAProgramThatNeverClosedTheRecord() throws Refused {
    // Not closed on purpose: this is what a crash leaves.
    judging(record(), false).answer(1, pin(1), Verdict.UNJUDGED, Optional.empty(), 700);

    try (DrillRecord record = record()) {
      Judging again = judging(record, false);
      assertThat(again.next()).contains(1);
      assertThat(again.answers()).extracting(DrillAnswer::said).containsExactly(Verdict.UNJUDGED);
    }
  }

  @Test
  void anAnswerCanBeChangedUntilItIsToldAndNeverAfterwards() throws Refused {
    try (DrillRecord record = record()) {
      Judging judging = judging(record, false);
      judging.answer(1, pin(1), Verdict.UNJUDGED, Optional.empty(), 700);
      judging.answer(1, pin(1), Verdict.DEFECT, Optional.of(FindingKind.OPEN), 900);
      assertThat(judging.isTold(1)).isFalse();
      judging.close(1);

      assertThat(judging.answers()).extracting(DrillAnswer::said).containsExactly(Verdict.DEFECT);
      assertThat(judging.isTold(1)).isTrue();
      assertThatThrownBy(() -> judging.answer(1, pin(1), Verdict.ACCEPTABLE, Optional.empty(), 1))
          .isInstanceOf(Refused.class);
      assertThat(judging.next()).contains(2);
    }
  }

  @Test
  void aSpecimenWithoutAnswerIsNotClosedAndAJointOfAnotherSpecimenNotTaken() {
    try (DrillRecord record = record()) {
      Judging judging = judging(record, false);
      assertThatThrownBy(() -> judging.close(1)).isInstanceOf(Refused.class);
      assertThatThrownBy(() -> judging.close(9)).isInstanceOf(Refused.class);
      assertThatThrownBy(() -> judging.answer(1, 99, Verdict.ACCEPTABLE, Optional.empty(), 1))
          .isInstanceOf(Refused.class);
      assertThat(judging.answers()).isEmpty();
    }
  }

  @Test
  void toldAtTheEndMeansNothingIsToldBefore() throws Refused {
    try (DrillRecord record = record()) {
      Judging judging = judging(record, true);
      for (int specimen = 1; specimen <= 4; specimen++) {
        assertThat(judging.isTold(1)).isFalse();
        judging.answer(specimen, pin(specimen), Verdict.ACCEPTABLE, Optional.empty(), 1);
        judging.close(specimen);
      }
      assertThat(judging.isTold(1)).isTrue();
    }
  }

  @Test
  void aFinishedSetIsBegunAnewAndAnotherPersonSitsApart() throws Refused {
    try (DrillRecord record = record()) {
      Judging first = judging(record, false);
      for (int specimen = 1; specimen <= 4; specimen++) {
        first.answer(specimen, pin(specimen), Verdict.ACCEPTABLE, Optional.empty(), 1);
        first.close(specimen);
      }
      assertThat(first.next()).isEmpty();
      assertThat(judging(record, false).next()).contains(1);
      assertThat(record.sittings("Ada")).hasSize(2);
      assertThat(
              new Judging(set, record, "Grace", false, () -> PracticeSets.NOON, Messages.of("en"))
                  .answers())
          .isEmpty();

      assertThat(record.erase("Ada")).isEqualTo(2);
      assertThat(record.people()).containsExactly("Grace");
      assertThat(record.sittings("Ada")).isEmpty();
    }
  }

  @Test
  void anErasedNameIsNoLongerInTheFile() throws Exception {
    try (DrillRecord record = record()) {
      new Judging(set, record, "Zebediah Quill", false, () -> PracticeSets.NOON, Messages.of("en"))
          .answer(1, pin(1), Verdict.ACCEPTABLE, Optional.empty(), 1);
      assertThat(content()).contains("Zebediah Quill");
      record.erase("Zebediah Quill");
    }
    assertThat(content()).doesNotContain("Zebediah Quill");
  }

  private String content() throws IOException {
    return Files.readString(folder.resolve("record/leadlight.sqlite"), StandardCharsets.ISO_8859_1);
  }

  /** As versions before wrote it: another file name, format, key and names of pictures. */
  @Test
  void aSetThatAnEarlierVersionMadeIsReadAsItIs() throws IOException {
    Path file = made.resolve("practice-set.json");
    String earlier =
        Files.readString(file)
            .replace(PracticeSet.FORMAT, "leadlight/deck/1")
            .replace("\"specimens\"", "\"cards\"")
            .replace("picture-00", "card-00");
    Files.delete(file);
    Files.writeString(made.resolve("deck.json"), earlier);
    for (int i = 1; i <= 4; i++) {
      Files.move(made.resolve(MadeSet.pictureName(i)), made.resolve("card-00" + i + ".jpg"));
    }

    OpenSet read = OpenSet.read(made);

    assertThat(read.set().joints()).isEqualTo(set.set().joints());
    assertThat(read.picture(3)).isEqualTo(set.picture(3));
    assertThatThrownBy(() -> MadeSet.refuseIfThere(made)).isInstanceOf(UserError.class);
  }

  @Test
  void aChangedPictureOrSetIsRefused() throws IOException {
    Files.writeString(made.resolve("picture-002.jpg"), "other");
    assertThatThrownBy(() -> OpenSet.read(made))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("picture-002.jpg was changed");
    String text = Files.readString(made.resolve("practice-set.json"));
    Files.writeString(
        made.resolve("practice-set.json"), text.replace("picture-001.jpg", "../../secret.jpg"));
    assertThatThrownBy(() -> OpenSet.read(made))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("picture-NNN.jpg");
    assertThatThrownBy(() -> OpenSet.read(folder))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("is no practice set");
  }
}
