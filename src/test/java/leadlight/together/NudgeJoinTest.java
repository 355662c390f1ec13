package leadlight.together;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import leadlight.grade.Grader;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.FindingKind;
import leadlight.model.Opinions;
import leadlight.model.Question;
import leadlight.model.Verdict;
import leadlight.model.joint.Chances;
import leadlight.model.joint.Familiarity;
import leadlight.model.joint.GradedJoint;
import leadlight.model.joint.Joint;
import leadlight.model.remark.Doubt;
import leadlight.model.remark.Note;
import leadlight.model.remark.NoteOfPhoto;
import leadlight.model.remark.NoteOfRow;
import leadlight.model.result.Nudge;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.result.Settings;
import leadlight.model.row.RowSpec;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.pipeline.PhotoScorer;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A sample row, one joint of which has the chances that each claim needs. */
class NudgeJoinTest {

  private static final AcceptanceSet LIMITS = AcceptanceSet.load(AcceptanceSet.DEFAULT_ID);
  private static final int PIN = 5;

  private static ScoredPhoto plain;

  @BeforeAll
  static void aRowWithAGoodJoint() {
    RowSpec row = RowSpec.plain(19, 0.5, OptionalDouble.empty(), OptionalDouble.empty());
    Settings settings = new Settings(row, 2, LIMITS.id(), Optional.empty(), Opinions.MEASURES);
    try (Photo photo =
        new PhotoReader().read(Path.of("sample-images/base-station-port-good.jpg"))) {
      plain = new PhotoScorer(settings, LIMITS).score(photo);
    }
    assertThat(plain.joints().get(PIN - 1).verdict()).isEqualTo(Verdict.ACCEPTABLE);
  }

  private static ScoredPhoto with(double unwetted, double open, double unfamiliar) {
    List<Joint> joints = new ArrayList<>(plain.joints().stream().map(GradedJoint::joint).toList());
    Joint joint = joints.get(PIN - 1);
    Chances chances =
        joint
            .byMeasures()
            .orElseThrow()
            .with(Question.UNWETTED, unwetted)
            .with(Question.OPEN, open);
    joints.set(
        PIN - 1,
        new Joint(
            joint.lead(),
            joint.measures(),
            joint.evidence(),
            joint.unfitBecause(),
            Optional.of(chances),
            Optional.empty()));
    Grader.GradedRow graded =
        new Grader(LIMITS, 2, Opinions.MEASURES)
            .grade(plain.settings().row(), joints, new Familiarity(unfamiliar, false));
    return new ScoredPhoto(
        plain.photo(),
        plain.settings(),
        plain.row(),
        plain.view(),
        graded.joints(),
        Verdict.UNJUDGED,
        graded.notes(),
        plain.fitness(),
        plain.notVisible(),
        plain.cautions());
  }

  private static ScoredPhoto joined(ScoredPhoto photo, Nudge.Motion motion, double um) {
    List<Nudge.Moved> leads = new ArrayList<>();
    for (int pin = 1; pin <= 19; pin++) {
      leads.add(
          pin == PIN
              ? new Nudge.Moved(
                  pin,
                  motion,
                  OptionalDouble.of(um),
                  OptionalDouble.of(2),
                  OptionalDouble.of(6),
                  Optional.of("b.jpg"),
                  Optional.empty())
              : Nudge.Moved.notTouched(pin));
    }
    return NudgeJoin.of(photo, new Nudge(List.of(), leads), LIMITS);
  }

  private static GradedJoint joint(ScoredPhoto photo) {
    return photo.joints().get(PIN - 1);
  }

  @Test
  void aLeadThatMovesIsOpenThoughItLookedSound() {
    GradedJoint moved = joint(joined(with(0.001, 0.9, 0), Nudge.Motion.MOVES, 60));
    assertThat(moved.verdict()).isEqualTo(Verdict.DEFECT);
    assertThat(moved.findings().get(0).kind()).isEqualTo(FindingKind.OPEN);
  }

  @Test
  void aLeadThatHoldsSettlesADoubtOfAnOpen() {
    ScoredPhoto doubtful = with(0.4, 0.99, 0);
    assertThat(joint(doubtful).verdict()).isEqualTo(Verdict.UNJUDGED);
    GradedJoint firm = joint(joined(doubtful, Nudge.Motion.FIRM, 1));
    assertThat(firm.verdict()).isEqualTo(Verdict.ACCEPTABLE);
    assertThat(firm.grounds()).contains(new NoteOfPhoto.Firm(4));
  }

  @Test
  void aLeadThatHoldsMayStillBeStarved() {
    GradedJoint firm = joint(joined(with(0.4, 0.55, 0), Nudge.Motion.FIRM, 1));
    assertThat(firm.verdict()).isEqualTo(Verdict.UNJUDGED);
    assertThat(firm.doubts())
        .anySatisfy(
            doubt ->
                assertThat(doubt)
                    .isInstanceOfSatisfying(
                        Doubt.Possible.class,
                        it -> assertThat(it.kind()).isEqualTo(FindingKind.INSUFFICIENT)));
  }

  @Test
  void onAnUnfamiliarMakeAFirmLeadIsNotMerelySetDownAndNoMoreIsSaid() {
    GradedJoint firm = joint(joined(with(0.001, 0.9, 1), Nudge.Motion.FIRM, 1));
    assertThat(firm.verdict()).isEqualTo(Verdict.UNJUDGED);
    assertThat(firm.doubts()).containsExactly(new Doubt.FirmAmountUnknown(4));
  }

  @Test
  void whatIsSettledIsNoLongerToBeProdded() {
    ScoredPhoto unfamiliar = with(0.001, 0.9, 1);
    assertThat(order(unfamiliar)).contains(", ").containsPattern("\\b5\\b");
    assertThat(order(joined(unfamiliar, Nudge.Motion.MOVES, 60))).doesNotContainPattern("\\b5\\b");
  }

  @Test
  void aPhotoThatTellsOfNoLeadLeavesTheRowUnjudgedAtBest() {
    ScoredPhoto good = whole(Verdict.ACCEPTABLE);
    assertThat(NudgeJoin.verdict(good, pushed(Optional.empty()))).isEqualTo(Verdict.ACCEPTABLE);
    assertThat(NudgeJoin.verdict(good, pushed(Optional.of(new NoteOfPhoto.NoPick()))))
        .isEqualTo(Verdict.UNJUDGED);
  }

  @Test
  void leadsThatHoldDoNotMakeADefectOfTheRowGood() {
    assertThat(NudgeJoin.verdict(whole(Verdict.DEFECT), pushed(Optional.empty())))
        .isEqualTo(Verdict.DEFECT);
  }

  private static Nudge pushed(Optional<Note> reason) {
    return new Nudge(
        List.of(new Nudge.Pushed("b.jpg", "", OptionalInt.empty(), Optional.empty(), reason)),
        List.of());
  }

  private static ScoredPhoto whole(Verdict verdict) {
    return new ScoredPhoto(
        plain.photo(),
        plain.settings(),
        plain.row(),
        plain.view(),
        plain.joints(),
        verdict,
        plain.rowNotes(),
        plain.fitness(),
        plain.notVisible(),
        plain.cautions());
  }

  private static String order(ScoredPhoto photo) {
    return photo.rowNotes().stream()
        .filter(NoteOfRow.ProdOrder.class::isInstance)
        .map(note -> ((NoteOfRow.ProdOrder) note).pins())
        .findFirst()
        .orElse("");
  }
}
