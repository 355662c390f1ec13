package leadlight.app.enrol;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import leadlight.model.FindingKind;
import leadlight.model.PointPx;
import leadlight.model.Verdict;
import leadlight.model.joint.GradedJoint;
import leadlight.model.joint.Joint;
import leadlight.model.row.Lead;
import leadlight.record.said.BenchResult;
import leadlight.record.said.BenchTest;
import leadlight.record.said.Overrule;
import leadlight.record.said.RecordedJoint;
import org.junit.jupiter.api.Test;

/** What the record's words teach a bench, and what they do not. */
class JointWordTest {

  private static final ZonedDateTime NOW =
      ZonedDateTime.of(2026, 11, 28, 12, 0, 0, 0, ZoneOffset.UTC);
  private static final BenchResult FIRM = said(BenchTest.PROD, "firm", 0);
  private static final BenchResult MOVES = said(BenchTest.PROD, "moves", 0);
  private static final BenchResult OPEN = said(BenchTest.METER, "open", 0);
  private static final BenchResult OK = said(BenchTest.METER, "ok", 0);
  private static final BenchResult SHORT = said(BenchTest.METER, "short", 3);
  private static final BenchResult NO_SHORT = said(BenchTest.METER, "ok", 3);
  private static final Overrule SEEN_SOUND = seen(Verdict.ACCEPTABLE, null);
  private static final Overrule SEEN_OPEN = seen(Verdict.DEFECT, FindingKind.OPEN);
  private static final Overrule SEEN_STARVED = seen(Verdict.DEFECT, FindingKind.INSUFFICIENT);

  private static BenchResult said(BenchTest test, String result, int other) {
    return new BenchResult(
        test, result, other == 0 ? OptionalInt.empty() : OptionalInt.of(other), "Ada", NOW);
  }

  private static Overrule seen(Verdict verdict, FindingKind finding) {
    return new Overrule(verdict, Optional.ofNullable(finding), "40x", "Ada", NOW);
  }

  private static RecordedJoint joint(List<Overrule> eye, BenchResult... bench) {
    PointPx at = new PointPx(1, 1);
    Joint joint =
        new Joint(new Lead(2, at, at, at, at, 1, 1, 1), Map.of(), List.of(), Optional.empty());
    GradedJoint tool =
        new GradedJoint(joint, Verdict.ACCEPTABLE, List.of(), List.of(), List.of(), List.of());
    return new RecordedJoint(tool, eye, List.of(bench));
  }

  private static JointWord word(List<Overrule> eye, BenchResult... bench) {
    return JointWord.of(List.of(joint(eye, bench)));
  }

  private static JointWord word(BenchResult... bench) {
    return word(List.of(), bench);
  }

  @Test
  void whatMovesOrMetersOpenIsUnsolderedAndWhatHoldsIsSound() {
    assertThat(word(MOVES)).isEqualTo(JointWord.UNSOLDERED);
    assertThat(word(OPEN)).isEqualTo(JointWord.UNSOLDERED);
    assertThat(word(FIRM)).isEqualTo(JointWord.SOUND);
  }

  @Test
  void whatMovedAndHoldsNowMayHaveBeenSolderedSinceThePhotoAndTeachesNothing() {
    assertThat(word(MOVES, FIRM)).isEqualTo(JointWord.CONTRADICTORY);
    assertThat(word(FIRM, MOVES)).isEqualTo(JointWord.CONTRADICTORY);
    assertThat(word(OPEN, OK)).isEqualTo(JointWord.CONTRADICTORY);
    assertThat(word(OK, OPEN)).as("it rested").isEqualTo(JointWord.UNSOLDERED);
  }

  @Test
  void ofAPhotoThatWasScoredTwiceTheBenchCountsOverALaterEye() {
    RecordedJoint first = joint(List.of(), MOVES);
    RecordedJoint then = joint(List.of(SEEN_SOUND));
    assertThat(JointWord.of(List.of(first, then))).isEqualTo(JointWord.UNSOLDERED);
    assertThat(JointWord.of(List.of(first, joint(List.of(), FIRM))))
        .isEqualTo(JointWord.CONTRADICTORY);
  }

  @Test
  void whatConductsIsNoProofForALeadThatRestsDoesToo() {
    assertThat(word(OK)).isEqualTo(JointWord.CONDUCTS);
    assertThat(word(OK).soldered()).isEmpty();
    assertThat(word(NO_SHORT)).isEqualTo(JointWord.NONE);
  }

  @Test
  void aShortOrAStarvedJointTeachesNothingOfWhatHolds() {
    assertThat(word(SHORT)).isEqualTo(JointWord.OTHER_FAULT);
    assertThat(word(FIRM, SHORT)).isEqualTo(JointWord.OTHER_FAULT);
    assertThat(word(FIRM, SHORT, NO_SHORT)).isEqualTo(JointWord.SOUND);
    assertThat(word(List.of(SEEN_STARVED), FIRM)).isEqualTo(JointWord.OTHER_FAULT);
    assertThat(word(List.of(SEEN_STARVED)).soldered()).isEmpty();
  }

  @Test
  void theBenchCountsOverTheEyeAndNothingOverAContradiction() {
    assertThat(word(List.of(SEEN_SOUND))).isEqualTo(JointWord.SOUND_BY_EYE);
    assertThat(word(List.of(SEEN_SOUND, SEEN_OPEN))).isEqualTo(JointWord.UNSOLDERED_BY_EYE);
    assertThat(word(List.of(SEEN_SOUND), MOVES)).isEqualTo(JointWord.UNSOLDERED);
    assertThat(word(FIRM, OPEN)).isEqualTo(JointWord.CONTRADICTORY);
    assertThat(word(FIRM, OPEN).soldered()).isEmpty();
  }

  @Test
  void whatNobodyTriedIsNoProof() {
    assertThat(word()).isEqualTo(JointWord.NONE);
    assertThat(word().soldered()).isEmpty();
  }
}
