package leadlight.summary.board;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import leadlight.model.Verdict;
import leadlight.record.said.LegsSeen;
import leadlight.record.said.LifeEvent;
import org.junit.jupiter.api.Test;

class LegsStandingTest {

  private static final Verdict GOOD = Verdict.ACCEPTABLE;
  private static final Verdict BAD = Verdict.DEFECT;
  private static final Verdict OPEN = Verdict.UNJUDGED;

  /** A photo of the solder side, its legs numbered from 1. */
  private static LegsSeen photo(String hash, String stage, String how, Verdict... verdicts) {
    List<LegsSeen.Leg> legs =
        IntStream.range(0, verdicts.length)
            .mapToObj(i -> new LegsSeen.Leg(OptionalInt.of(i + 1), verdicts[i]))
            .toList();
    return unknownWork(hash, legs).of(new LegsSeen.Work(stage, 1, how));
  }

  private static LegsSeen unknownWork(String hash, List<LegsSeen.Leg> legs) {
    return new LegsSeen(
        "legs.jpg",
        hash.repeat(64),
        "solder",
        legs,
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private static List<LegsSeen.Leg> standing(LegsSeen... photos) {
    ZonedDateTime at = ZonedDateTime.parse("2026-11-02T08:00:00+01:00");
    List<LifeEvent> events =
        Stream.of(photos)
            .map(seen -> LifeEvent.said(LifeEvent.Kind.LEGS, seen.words(), "Ada", at))
            .toList();
    return LegsStanding.of(events).get(0).legs();
  }

  @Test
  void aPhotoThatIsJudgedAnewStandsAsItWasJudgedLast() {
    LegsSeen first = photo("a", "final", "class 2", BAD, BAD, OPEN);
    LegsSeen anew = photo("a", "final", "class 1", GOOD, BAD);

    assertThat(standing(first, anew)).isEqualTo(anew.legs());
    assertThat(standing(anew, first)).isEqualTo(first.legs());
  }

  @Test
  void judgedAnewItDoesNotOverruleWhatWasDoneAfterIt() {
    LegsSeen before = photo("a", "as-received", "class 2", BAD, GOOD);
    LegsSeen after = photo("b", "after-rework", "class 2", GOOD, GOOD);
    LegsSeen anew = photo("a", "as-received", "class 3", BAD, BAD);

    assertThat(standing(before, after, anew)).isEqualTo(after.legs());
  }

  @Test
  void theFaultThatAnotherPhotoOfTheSameWorkShowsStays() {
    LegsSeen first = photo("a", "final", "class 2", BAD, GOOD);
    LegsSeen other = photo("b", "final", "class 2", GOOD, BAD);
    LegsSeen anew = photo("a", "final", "class 1", GOOD, GOOD);

    assertThat(standing(first, other, anew)).isEqualTo(other.legs());
  }

  @Test
  void aPhotoIsItsOwnWorkWhereNobodySaidOfWhichItIs() {
    LegsSeen first = unknownWork("a", List.of(unnumbered(BAD), unnumbered(BAD), unnumbered(GOOD)));
    LegsSeen anew = unknownWork("a", List.of(unnumbered(GOOD)));

    assertThat(standing(first, anew)).isEqualTo(anew.legs());
  }

  @Test
  void onePhotoHandedInForTwoWorksIsTwoWords() {
    LegsSeen received = photo("a", "as-received", "class 2", GOOD, GOOD);
    LegsSeen last = photo("a", "final", "class 2", BAD);

    assertThat(received.isJudgedAnewBy(last)).isFalse();
    assertThat(standing(received, last)).isEqualTo(photo("a", "final", "", BAD, GOOD).legs());
  }

  private static LegsSeen.Leg unnumbered(Verdict verdict) {
    return new LegsSeen.Leg(OptionalInt.empty(), verdict);
  }
}
