package leadlight.summary.day;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import leadlight.model.Verdict;
import leadlight.record.said.LegsSeen;
import leadlight.record.said.LifeEvent;
import org.junit.jupiter.api.Test;

class LegCountTest {

  private static LifeEvent legs(String side, String stage, Verdict... verdicts) {
    List<LegsSeen.Leg> legs =
        IntStream.range(0, verdicts.length)
            .mapToObj(i -> new LegsSeen.Leg(OptionalInt.of(i + 1), verdicts[i]))
            .toList();
    LegsSeen seen =
        new LegsSeen(
            "legs.jpg",
            "a".repeat(64),
            side,
            legs,
            Optional.empty(),
            Optional.empty(),
            Optional.of(new LegsSeen.Work(stage, 1, "as usual")));
    return LifeEvent.said(
        LifeEvent.Kind.LEGS, seen.words(), "Ada", ZonedDateTime.parse("2026-11-02T08:00:00+01:00"));
  }

  @Test
  void aLegThatIsNotJudgedIsNoOpportunity() {
    LifeEvent seen = legs("solder", "final", Verdict.ACCEPTABLE, Verdict.DEFECT, Verdict.UNJUDGED);

    assertThat(LegCount.of(List.of(seen), Optional.empty())).isEqualTo(new LegCount(1, 2));
  }

  @Test
  void bothSidesOfALegAreOneOpportunity() {
    List<LifeEvent> events =
        List.of(
            legs("component", "final", Verdict.UNJUDGED, Verdict.UNJUDGED),
            legs("solder", "final", Verdict.ACCEPTABLE, Verdict.ACCEPTABLE));

    assertThat(LegCount.of(events, Optional.empty())).isEqualTo(new LegCount(0, 2));
  }

  @Test
  void beforeAndAfterReworkAreCountedApartAndTheLastStands() {
    List<LifeEvent> events =
        List.of(
            legs("solder", "as-received", Verdict.DEFECT, Verdict.DEFECT),
            legs("solder", "after-rework", Verdict.ACCEPTABLE, Verdict.DEFECT));

    assertThat(LegCount.of(events, Optional.of("as-received"))).isEqualTo(new LegCount(2, 2));
    assertThat(LegCount.of(events, Optional.of("after-rework"))).isEqualTo(new LegCount(1, 2));
    assertThat(LegCount.of(events, Optional.empty())).isEqualTo(new LegCount(1, 2));
  }
}
