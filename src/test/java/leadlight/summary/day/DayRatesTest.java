package leadlight.summary.day;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import leadlight.model.Verdict;
import leadlight.record.JobRecord;
import leadlight.record.said.LegsSeen;
import leadlight.record.said.LifeEvent;
import leadlight.record.scoring.Search;
import leadlight.record.scoring.Stage;
import leadlight.record.scoring.Subject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DayRatesTest {

  private static final ZonedDateTime MORNING = ZonedDateTime.parse("2026-11-02T08:00:00+01:00");

  private static LifeEvent legs(String side, String stage, Verdict... verdicts) {
    return legs(MORNING, side, stage, verdicts);
  }

  private static LifeEvent legs(ZonedDateTime at, String side, String stage, Verdict... verdicts) {
    List<LegsSeen.Leg> legs =
        IntStream.range(0, verdicts.length)
            .mapToObj(i -> new LegsSeen.Leg(OptionalInt.of(i + 1), verdicts[i]))
            .toList();
    LegsSeen seen =
        new LegsSeen(
            "legs.jpg",
            "%064x".formatted((at + stage + side).hashCode()),
            side,
            legs,
            Optional.empty(),
            Optional.empty(),
            Optional.of(new LegsSeen.Work(stage, 1, "as usual")));
    return LifeEvent.said(LifeEvent.Kind.LEGS, seen.words(), "Ada", at);
  }

  @Test
  void aLegThatIsNotJudgedIsNoOpportunity() {
    LifeEvent seen = legs("solder", "final", Verdict.ACCEPTABLE, Verdict.DEFECT, Verdict.UNJUDGED);

    assertThat(DayRates.LegCount.of(List.of(seen), Optional.empty()))
        .isEqualTo(new DayRates.LegCount(1, 2));
  }

  @Test
  void bothSidesOfALegAreOneOpportunity() {
    List<LifeEvent> events =
        List.of(
            legs("component", "final", Verdict.UNJUDGED, Verdict.UNJUDGED),
            legs("solder", "final", Verdict.ACCEPTABLE, Verdict.ACCEPTABLE));

    assertThat(DayRates.LegCount.of(events, Optional.empty()))
        .isEqualTo(new DayRates.LegCount(0, 2));
  }

  @Test
  void beforeAndAfterReworkAreCountedApartAndTheLastStands() {
    List<LifeEvent> events =
        List.of(
            legs("solder", "as-received", Verdict.DEFECT, Verdict.DEFECT),
            legs("solder", "after-rework", Verdict.ACCEPTABLE, Verdict.DEFECT));

    assertThat(DayRates.LegCount.of(events, Optional.of("as-received")))
        .isEqualTo(new DayRates.LegCount(2, 2));
    assertThat(DayRates.LegCount.of(events, Optional.of("after-rework")))
        .isEqualTo(new DayRates.LegCount(1, 2));
    assertThat(DayRates.LegCount.of(events, Optional.empty()))
        .isEqualTo(new DayRates.LegCount(1, 2));
  }

  @Test
  void aDayCountsTheLegsThatWereNotedOnItAndARunAllThatStand(@TempDir Path folder) {
    List<PhotoLine> photos =
        List.of(
            new PhotoLine(
                1,
                new Subject("0412", "1", Stage.FINAL, 1),
                "row.jpg",
                "plain, 3 leads",
                Verdict.ACCEPTABLE,
                new Tally(),
                folder.resolve("row.json"),
                Optional.empty(),
                List.of()));
    try (JobRecord record = JobRecord.open(folder)) {
      record.add("0412", "1", legs("solder", "final", Verdict.DEFECT, Verdict.ACCEPTABLE));
      ZonedDateTime next = MORNING.plusDays(1);
      record.add("0412", "1", legs(next, "solder", "final", Verdict.ACCEPTABLE));

      assertThat(legs(record, Search.ofDay(MORNING.toLocalDate()), photos)).isEqualTo(2);
      assertThat(legs(record, Search.ofDay(next.toLocalDate()), photos)).isEqualTo(1);
      assertThat(legs(record, Search.ofDay(next.toLocalDate().plusDays(1)), photos)).isZero();
      assertThat(legs(record, Search.ofRun(1), photos)).isEqualTo(2);
    }
  }

  private static int legs(JobRecord record, Search search, List<PhotoLine> photos) {
    List<Dpmo> rates = new DayRates(record, search).of(photos);
    return rates.get(rates.size() - 1).legs();
  }
}
