package leadlight.together;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import java.util.function.UnaryOperator;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.FindingKind;
import leadlight.model.Opinions;
import leadlight.model.UserError;
import leadlight.model.Verdict;
import leadlight.model.joint.GradedJoint;
import leadlight.model.remark.Doubt;
import leadlight.model.remark.Note;
import leadlight.model.remark.NoteOfPhoto;
import leadlight.model.remark.NoteOfRow;
import leadlight.model.result.Besides;
import leadlight.model.result.PhotoInfo;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.result.Settings;
import leadlight.model.row.RowSpec;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.pipeline.PhotoScorer;
import org.junit.jupiter.api.Test;

class JoinedRowTest {

  private static final AcceptanceSet LIMITS = AcceptanceSet.load(AcceptanceSet.DEFAULT_ID);

  private static ScoredPhoto otherFile(ScoredPhoto photo, List<Note> notes) {
    PhotoInfo was = photo.photo();
    return new ScoredPhoto(
        new PhotoInfo(
            "other.jpg",
            "0f",
            was.widthPx(),
            was.heightPx(),
            was.format(),
            was.bitsPerChannel(),
            was.exifOrientation(),
            was.takenAt()),
        photo.settings(),
        photo.row(),
        photo.view(),
        photo.joints(),
        photo.verdict(),
        notes,
        photo.fitness(),
        photo.notVisible(),
        photo.cautions());
  }

  @Test
  void aPhotoOfAMakeThatWasNeverShownToBeReadRightTakesNoPart() {
    RowSpec row = RowSpec.plain(12, 0.5, OptionalDouble.empty(), OptionalDouble.empty());
    Settings settings = new Settings(row, 2, LIMITS.id(), Optional.empty(), Opinions.BOTH);
    try (Photo photo =
        new PhotoReader().read(Path.of("src/test/resources/nudge/nudge-007-a.jpg"))) {
      ScoredPhoto scored = new PhotoScorer(settings, LIMITS).score(photo);
      JoinedRow.View first = new JoinedRow.View(photo.frame(), scored);
      JoinedRow.View other = view(photo, scored, List.of(new NoteOfRow.Unfamiliar()));
      JoinedRow.View again = view(photo, scored, scored.rowNotes());

      Besides besides = new JoinedRow(LIMITS).of(List.of(first, other)).besides();
      assertThat(besides.photos().get(0).refused()).contains(new NoteOfRow.Unfamiliar());
      Besides same = new JoinedRow(LIMITS).of(List.of(first, again)).besides();
      assertThat(same.photos().get(0).refused()).isEmpty();
    }
  }

  /** What two photos of one row come to where a sound joint of the first is changed in either. */
  private static void join(
      UnaryOperator<GradedJoint> inFirst,
      UnaryOperator<GradedJoint> inOther,
      BiConsumer<GradedJoint, GradedJoint> soundAndJoined) {
    RowSpec row = RowSpec.plain(12, 0.5, OptionalDouble.empty(), OptionalDouble.empty());
    Settings settings = new Settings(row, 2, LIMITS.id(), Optional.empty(), Opinions.BOTH);
    try (Photo photo =
        new PhotoReader().read(Path.of("src/test/resources/nudge/nudge-007-a.jpg"))) {
      ScoredPhoto scored = new PhotoScorer(settings, LIMITS).score(photo);
      GradedJoint sound =
          scored.joints().stream()
              .filter(joint -> joint.verdict() == Verdict.ACCEPTABLE)
              .findFirst()
              .orElseThrow();
      int at = sound.pin() - 1;
      ScoredPhoto first = with(scored, at, inFirst.apply(sound));
      ScoredPhoto other = otherFile(with(scored, at, inOther.apply(sound)), scored.rowNotes());
      List<GradedJoint> joined =
          new JoinedRow(LIMITS)
              .of(
                  List.of(
                      new JoinedRow.View(photo.frame(), first),
                      new JoinedRow.View(photo.frame(), other)))
              .scored()
              .joints();
      soundAndJoined.accept(sound, joined.get(at));
      assertThat(joined)
          .filteredOn(joint -> joint.pin() != sound.pin())
          .extracting(GradedJoint::verdict)
          .containsExactlyElementsOf(
              scored.joints().stream()
                  .filter(joint -> joint.pin() != sound.pin())
                  .map(GradedJoint::verdict)
                  .toList());
    }
  }

  private static ScoredPhoto with(ScoredPhoto photo, int at, GradedJoint joint) {
    List<GradedJoint> joints = new ArrayList<>(photo.joints());
    joints.set(at, joint);
    return new ScoredPhoto(
        photo.photo(),
        photo.settings(),
        photo.row(),
        photo.view(),
        joints,
        photo.verdict(),
        photo.rowNotes(),
        photo.fitness(),
        photo.notVisible(),
        photo.cautions());
  }

  private static GradedJoint faulty(GradedJoint joint) {
    Note because = new NoteOfRow.UnsolderedByBench("ring");
    return OpenByJoin.of(joint, 0.99, because, LIMITS.rule(FindingKind.OPEN, 2));
  }

  private static GradedJoint judged(GradedJoint joint, Verdict verdict, Doubt... doubts) {
    return new GradedJoint(
        joint.joint(), verdict, List.of(), joint.checks(), List.of(doubts), List.of());
  }

  private static GradedJoint indicated(GradedJoint joint) {
    return judged(joint, Verdict.PROCESS_INDICATOR);
  }

  private static GradedJoint doubtful(GradedJoint joint) {
    return judged(joint, Verdict.UNJUDGED, new Doubt.Glare(0.4));
  }

  @Test
  void whatOnePhotoShowsSoundAndAnotherFaultyIsLeftToTheBench() {
    join(
        UnaryOperator.identity(),
        JoinedRowTest::faulty,
        (sound, joined) ->
            assertThat(joined.doubts())
                .containsExactly(
                    new Doubt.PhotosDiffer("nudge-007-a.jpg", FindingKind.OPEN, "other.jpg")));
  }

  @Test
  void whatOnePhotoShowsSolderedButUntidyAndAnotherFaultyIsLeftToTheBenchToo() {
    join(
        JoinedRowTest::faulty,
        JoinedRowTest::indicated,
        (sound, joined) ->
            assertThat(joined.doubts())
                .containsExactly(
                    new Doubt.PhotosDiffer("other.jpg", FindingKind.OPEN, "nudge-007-a.jpg")));
  }

  @Test
  void untidyInOnePhotoAndSoundInAnotherIsNoContradiction() {
    join(
        JoinedRowTest::indicated,
        UnaryOperator.identity(),
        (sound, joined) -> assertThat(joined.verdict()).isEqualTo(sound.verdict()));
  }

  @Test
  void whatOnePhotoCallsFaultyNoDoubtfulOneMakesGood() {
    join(
        JoinedRowTest::doubtful,
        JoinedRowTest::faulty,
        (sound, joined) ->
            assertThat(joined.doubts()).containsExactly(new Doubt.ToSettle(FindingKind.OPEN)));
  }

  @Test
  void doubtfulInOnePhotoAndSoundInAnotherIsJudgedByBoth() {
    join(
        JoinedRowTest::doubtful,
        UnaryOperator.identity(),
        (sound, joined) -> assertThat(joined.verdict()).isEqualTo(sound.verdict()));
  }

  @Test
  void aPhotoGivenTwiceIsNoSecondOpinion() {
    try (Photo photo = lamp("a")) {
      RowSpec row = RowSpec.plain(20, 0.8, OptionalDouble.empty(), OptionalDouble.empty());
      ScoredPhoto scored =
          new PhotoScorer(new Settings(row, 2, LIMITS.id(), Optional.empty()), LIMITS).score(photo);
      JoinedRow.View view = new JoinedRow.View(photo.frame(), scored);
      assertThatThrownBy(() -> new JoinedRow(LIMITS).of(List.of(view, view)))
          .isInstanceOf(UserError.class)
          .hasMessageContaining("lamps-010-a.jpg and lamps-010-a.jpg are the same photo");
    }
  }

  private static JoinedRow.View view(Photo photo, ScoredPhoto scored, List<Note> notes) {
    return new JoinedRow.View(photo.frame(), otherFile(scored, notes));
  }

  @Test
  void aSideLampTellsThatRingAndCoaxialLampShowOneRow() {
    RowSpec row = RowSpec.plain(20, 0.8, OptionalDouble.empty(), OptionalDouble.empty());
    PhotoScorer scorer =
        new PhotoScorer(new Settings(row, 2, LIMITS.id(), Optional.empty(), Opinions.BOTH), LIMITS);
    try (Photo ring = lamp("a");
        Photo coaxial = lamp("b");
        Photo side = lamp("c")) {
      List<JoinedRow.View> views =
          List.of(ring, coaxial, side).stream()
              .map(photo -> new JoinedRow.View(photo.frame(), scorer.score(photo)))
              .toList();
      JoinedRow joiner = new JoinedRow(LIMITS);
      assertThat(joiner.of(views.subList(0, 2)).besides().photos().get(0).refused())
          .containsInstanceOf(NoteOfPhoto.OtherRow.class);
      assertThat(joiner.of(views).besides().photos())
          .allSatisfy(other -> assertThat(other.refused()).isEmpty());
    }
  }

  private static Photo lamp(String shot) {
    return new PhotoReader().read(Path.of("src/test/resources/lamps/lamps-010-" + shot + ".jpg"));
  }
}
