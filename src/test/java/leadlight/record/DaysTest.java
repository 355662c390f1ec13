package leadlight.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import leadlight.record.engine.RecordPlace;
import leadlight.record.scoring.Scoring;
import leadlight.record.scoring.Search;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was the last word on a day stays so, whatever a later day says. */
class DaysTest {

  private static final LocalDate MONDAY = LocalDate.parse("2026-03-02");

  @TempDir private Path folder;
  private JobRecord record;

  /** Where a record of that name lies; on a server in SharedDaysTest. */
  RecordPlace at(Path path) {
    return new RecordPlace.Folder(path);
  }

  @BeforeEach
  void open() {
    record = JobRecord.open(at(folder.resolve("record")));
  }

  @AfterEach
  void close() {
    record.close();
  }

  /** The same photo of the same board, each time by another version of the reader. */
  private long scored(LocalDate day, int hour, String reader) {
    ZonedDateTime at = ScoredBoard.NOON.with(day).withHour(hour);
    return record.add(
        new ScoredBoard(folder)
            .scoring(
                "0412", "1", at, ScoredBoard.method(Optional.of(reader)), ScoredBoard.found()));
  }

  private List<Long> of(LocalDate day) {
    return record.scorings(Search.ofDay(day)).stream().map(Scoring::id).toList();
  }

  @Test
  void theLastScoringOfADayIsNotReplacedByThatOfALaterDay() {
    scored(MONDAY, 8, "a");
    long noon = scored(MONDAY, 12, "b");
    long tuesday = scored(MONDAY.plusDays(1), 8, "c");

    assertThat(of(MONDAY)).containsExactly(noon);
    assertThat(of(MONDAY.plusDays(1))).containsExactly(tuesday);
    assertThat(of(MONDAY.plusDays(2))).isEmpty();
    assertThat(record.scorings(Search.all().latestOnly()))
        .extracting(Scoring::id)
        .containsExactly(tuesday);
  }

  @Test
  void theLastDayIsThatOfTheLastScoring() {
    assertThat(record.lastDay()).isEmpty();

    scored(MONDAY, 8, "a");
    scored(MONDAY.minusDays(3), 8, "b");
    assertThat(record.lastDay()).contains(MONDAY);
  }
}
