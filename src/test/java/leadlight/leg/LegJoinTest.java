package leadlight.leg;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import leadlight.model.BoardSide;
import leadlight.model.FindingKind;
import leadlight.model.PointPx;
import leadlight.model.Quantity;
import leadlight.model.Unit;
import leadlight.model.Verdict;
import leadlight.model.remark.Doubt;
import leadlight.model.remark.DoubtOfLeg;
import leadlight.model.result.GradedLeg;
import leadlight.model.result.LegSet;
import leadlight.model.result.PhotoInfo;
import org.junit.jupiter.api.Test;

class LegJoinTest {

  private static GradedLeg leg(int number, Verdict verdict) {
    return leg(number, verdict, new DoubtOfLeg.LegCropped());
  }

  private static GradedLeg leg(int number, Verdict verdict, Doubt doubt) {
    Quantity any = new Quantity(1, 1, Unit.SHARE);
    return new GradedLeg(
        number == 0 ? OptionalInt.empty() : OptionalInt.of(number),
        new PointPx(1, 1),
        List.of(),
        1,
        verdict,
        verdict == Verdict.DEFECT ? List.of(FindingKind.OPEN) : List.of(),
        any,
        any,
        any,
        verdict == Verdict.UNJUDGED ? List.of(doubt) : List.of(),
        List.of());
  }

  private static LegSet.Shown shown(BoardSide side, GradedLeg... legs) {
    PhotoInfo photo =
        new PhotoInfo(side.id() + ".jpg", "0".repeat(64), 9, 9, "jpeg", 8, 1, Optional.empty());
    return new LegSet.Shown(photo, side, List.of(legs));
  }

  private static List<Verdict> verdicts(int legs, LegSet.Shown... photos) {
    return LegJoin.of(List.of(photos), legs).legs().stream().map(LegSet.Joined::verdict).toList();
  }

  @Test
  void aFaultSeenFromEitherSideStands() {
    assertThat(
            verdicts(
                2,
                shown(BoardSide.SOLDER, leg(1, Verdict.ACCEPTABLE), leg(2, Verdict.DEFECT)),
                shown(BoardSide.COMPONENT, leg(1, Verdict.DEFECT), leg(2, Verdict.ACCEPTABLE))))
        .containsExactly(Verdict.DEFECT, Verdict.DEFECT);
  }

  @Test
  void theComponentSideAloneVouchesForNothing() {
    LegSet set = LegJoin.of(List.of(shown(BoardSide.COMPONENT, leg(1, Verdict.ACCEPTABLE))), 1);
    assertThat(set.verdict()).isEqualTo(Verdict.UNJUDGED);
    assertThat(set.legs().get(0).doubts()).containsExactly(new DoubtOfLeg.LegNotShown());
  }

  @Test
  void aLegThatNoPhotoShowsIsNotJudged() {
    assertThat(verdicts(2, shown(BoardSide.SOLDER, leg(2, Verdict.ACCEPTABLE))))
        .containsExactly(Verdict.UNJUDGED, Verdict.ACCEPTABLE);
    assertThat(verdicts(2, shown(BoardSide.SOLDER))).containsOnly(Verdict.UNJUDGED).hasSize(2);
  }

  @Test
  void aDoubtOfTheSolderSideStaysUnlessAnotherPhotoOfItSettlesIt() {
    LegSet.Shown doubtful = shown(BoardSide.SOLDER, leg(1, Verdict.UNJUDGED));
    assertThat(verdicts(1, doubtful)).containsExactly(Verdict.UNJUDGED);
    assertThat(verdicts(1, doubtful, shown(BoardSide.SOLDER, leg(1, Verdict.ACCEPTABLE))))
        .containsExactly(Verdict.ACCEPTABLE);
  }

  @Test
  void whatOnePhotoOfTheSolderSideSawIsNotOutvotedByAnother() {
    GradedLeg shell = leg(1, Verdict.UNJUDGED, new DoubtOfLeg.ShellInView(0.9));
    assertThat(
            verdicts(
                1,
                shown(BoardSide.SOLDER, shell),
                shown(BoardSide.SOLDER, leg(1, Verdict.ACCEPTABLE))))
        .containsExactly(Verdict.UNJUDGED);
  }

  @Test
  void legsWithoutNumbersAreNotMistakenForEachOther() {
    LegSet set =
        LegJoin.of(
            List.of(
                shown(BoardSide.SOLDER, leg(0, Verdict.ACCEPTABLE), leg(0, Verdict.UNJUDGED)),
                shown(BoardSide.COMPONENT, leg(0, Verdict.DEFECT), leg(0, Verdict.UNJUDGED))),
            2);
    assertThat(set.verdict()).isEqualTo(Verdict.DEFECT);
    assertThat(set.count(Verdict.ACCEPTABLE)).isEqualTo(1);
    assertThat(set.legs()).hasSize(3).allMatch(it -> it.seen().size() == 1);
  }

  @Test
  void twoPhotosOfTheSameTwoLegsDoNotVouchForFour() {
    LegSet.Shown two =
        shown(BoardSide.SOLDER, leg(0, Verdict.ACCEPTABLE), leg(0, Verdict.ACCEPTABLE));
    LegSet set = LegJoin.of(List.of(two, two), 4);
    assertThat(set.verdict()).isEqualTo(Verdict.UNJUDGED);
    assertThat(set.count(Verdict.UNJUDGED)).isEqualTo(2);
  }
}
