package leadlight.drill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import leadlight.model.FindingKind;
import leadlight.model.UserError;
import leadlight.model.Verdict;
import leadlight.record.DrillAnswer;
import leadlight.record.DrillRecord;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TakingTest {

  private static final MadeDeck MADE = Decks.make(Decks.request(4, false, 2));

  @TempDir private Path folder;
  private Path made;
  private OpenDeck deck;

  @BeforeEach
  void write() throws IOException {
    made = Files.createDirectories(folder.resolve("deck"));
    MADE.write(made);
    deck = OpenDeck.read(made);
  }

  private DrillRecord record() {
    return DrillRecord.open(folder.resolve("record"));
  }

  private Taking taking(DrillRecord record, boolean tellAtEnd) {
    return new Taking(deck, record, "Ada", tellAtEnd, () -> Decks.NOON);
  }

  private int pin(int card) {
    return deck.card(card).spots().get(0).pin();
  }

  @Test
  void anAnswerOutlivesAProgramThatNeverClosedTheRecord() throws Refused {
    // Not closed on purpose: this is what a crash leaves.
    taking(record(), false).answer(1, pin(1), Verdict.UNJUDGED, Optional.empty(), 700);

    try (DrillRecord record = record()) {
      Taking again = taking(record, false);
      assertThat(again.next()).contains(1);
      assertThat(again.answers()).extracting(DrillAnswer::said).containsExactly(Verdict.UNJUDGED);
    }
  }

  @Test
  void anAnswerCanBeChangedUntilItIsToldAndNeverAfterwards() throws Refused {
    try (DrillRecord record = record()) {
      Taking taking = taking(record, false);
      taking.answer(1, pin(1), Verdict.UNJUDGED, Optional.empty(), 700);
      taking.answer(1, pin(1), Verdict.DEFECT, Optional.of(FindingKind.OPEN), 900);
      assertThat(taking.isTold(1)).isFalse();
      taking.close(1);

      assertThat(taking.answers()).extracting(DrillAnswer::said).containsExactly(Verdict.DEFECT);
      assertThat(taking.isTold(1)).isTrue();
      assertThatThrownBy(() -> taking.answer(1, pin(1), Verdict.ACCEPTABLE, Optional.empty(), 1))
          .isInstanceOf(Refused.class);
      assertThat(taking.next()).contains(2);
    }
  }

  @Test
  void aCardWithoutAnswerIsNotClosedAndAJointOfAnotherCardNotTaken() {
    try (DrillRecord record = record()) {
      Taking taking = taking(record, false);
      assertThatThrownBy(() -> taking.close(1)).isInstanceOf(Refused.class);
      assertThatThrownBy(() -> taking.close(9)).isInstanceOf(Refused.class);
      assertThatThrownBy(() -> taking.answer(1, 99, Verdict.ACCEPTABLE, Optional.empty(), 1))
          .isInstanceOf(Refused.class);
      assertThat(taking.answers()).isEmpty();
    }
  }

  @Test
  void toldAtTheEndMeansNothingIsToldBefore() throws Refused {
    try (DrillRecord record = record()) {
      Taking taking = taking(record, true);
      for (int card = 1; card <= 4; card++) {
        assertThat(taking.isTold(1)).isFalse();
        taking.answer(card, pin(card), Verdict.ACCEPTABLE, Optional.empty(), 1);
        taking.close(card);
      }
      assertThat(taking.isTold(1)).isTrue();
    }
  }

  @Test
  void aFinishedDeckIsBegunAnewAndAnotherPersonSitsApart() throws Refused {
    try (DrillRecord record = record()) {
      Taking first = taking(record, false);
      for (int card = 1; card <= 4; card++) {
        first.answer(card, pin(card), Verdict.ACCEPTABLE, Optional.empty(), 1);
        first.close(card);
      }
      assertThat(first.next()).isEmpty();
      assertThat(taking(record, false).next()).contains(1);
      assertThat(record.sittings("Ada")).hasSize(2);
      assertThat(new Taking(deck, record, "Grace", false, () -> Decks.NOON).answers()).isEmpty();

      assertThat(record.erase("Ada")).isEqualTo(2);
      assertThat(record.people()).containsExactly("Grace");
      assertThat(record.sittings("Ada")).isEmpty();
    }
  }

  @Test
  void anErasedNameIsNoLongerInTheFile() throws Exception {
    try (DrillRecord record = record()) {
      new Taking(deck, record, "Zebediah Quill", false, () -> Decks.NOON)
          .answer(1, pin(1), Verdict.ACCEPTABLE, Optional.empty(), 1);
      assertThat(content()).contains("Zebediah Quill");
      record.erase("Zebediah Quill");
    }
    assertThat(content()).doesNotContain("Zebediah Quill");
  }

  private String content() throws IOException {
    return Files.readString(folder.resolve("record/leadlight.sqlite"), StandardCharsets.ISO_8859_1);
  }

  @Test
  void aChangedPictureOrDeckIsRefused() throws IOException {
    Files.writeString(made.resolve("card-002.jpg"), "other");
    assertThatThrownBy(() -> OpenDeck.read(made))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("card-002.jpg was changed");
    String text = Files.readString(made.resolve("deck.json"));
    Files.writeString(made.resolve("deck.json"), text.replace("card-001.jpg", "../../secret.jpg"));
    assertThatThrownBy(() -> OpenDeck.read(made))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("card-NNN.jpg");
    assertThatThrownBy(() -> OpenDeck.read(folder))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("is no deck");
  }
}
