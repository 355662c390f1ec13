package leadlight.cli.option;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.ZonedDateTime;
import leadlight.cli.Run;
import leadlight.page.BenchPage;
import leadlight.page.words.RecordWords;
import leadlight.record.JobRecord;
import leadlight.record.said.LifeEvent;
import leadlight.record.scoring.Subject;
import leadlight.text.Messages;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

/**
 * A board that nobody named has one stored name, wherever and in whatever language its job began.
 */
class BoardNameTest {

  @TempDir private Path folder;

  @Test
  void scoreStoresIt() {
    Subject of = CommandLine.populateCommand(new JobOptions(), "--job", "0412").subject().get();
    assertThat(of.board()).isEqualTo(Subject.ONLY_BOARD);
  }

  @Test
  void aNoteStoresItAndTheTerminalSaysBoard() {
    Run note = Run.of("record", "note", "0412", "--serial", "RL-7", "--record", folder);
    assertThat(note.out()).contains("0412, board 1");
    try (JobRecord record = JobRecord.open(folder)) {
      assertThat(record.boards())
          .containsExactly(new JobRecord.BoardName("0412", Subject.ONLY_BOARD));
    }
  }

  @Test
  void aJobThatBeganUnderAnotherNameGetsNoSecondBoard() {
    JobOptions unnamed = CommandLine.populateCommand(new JobOptions(), "--job", "0412");
    try (JobRecord record = JobRecord.open(folder)) {
      record.add(
          "0412",
          "board 1",
          LifeEvent.said(
              LifeEvent.Kind.SERIAL, "RL-7", "Ada", ZonedDateTime.parse("2026-11-27T09:00Z")));
      assertThat(unnamed.in(record, unnamed.subject().get()).board()).isEqualTo("board 1");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "de"})
  void theBenchPageBeginsWithIt(String language) {
    assertThat(new String(BenchPage.html(Messages.of(language)), UTF_8))
        .contains("id=\"c-board\" required autocomplete=\"off\" value=\"" + Subject.ONLY_BOARD);
  }

  @Test
  void pagesSayItInTheirLanguage() {
    assertThat(RecordWords.board(Messages.of("de"), "1")).isEqualTo("Platine 1");
    assertThat(RecordWords.board(Messages.of("en"), "display")).isEqualTo("display");
  }
}
