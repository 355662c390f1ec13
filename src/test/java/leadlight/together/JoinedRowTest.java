package leadlight.together;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.Opinions;
import leadlight.model.remark.NoteOfPhoto;
import leadlight.model.remark.NoteOfRow;
import leadlight.model.result.Besides;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.result.Settings;
import leadlight.model.row.RowSpec;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.pipeline.PhotoScorer;
import org.junit.jupiter.api.Test;

class JoinedRowTest {

  private static final AcceptanceSet LIMITS = AcceptanceSet.load(AcceptanceSet.DEFAULT_ID);

  private static ScoredPhoto unfamiliar(ScoredPhoto photo) {
    return new ScoredPhoto(
        photo.photo(),
        photo.settings(),
        photo.row(),
        photo.view(),
        photo.joints(),
        photo.verdict(),
        List.of(new NoteOfRow.Unfamiliar()),
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
      JoinedRow.View other = new JoinedRow.View(photo.frame(), unfamiliar(scored));

      Besides besides = new JoinedRow(LIMITS).of(List.of(first, other)).besides();
      assertThat(besides.photos().get(0).refused()).contains(new NoteOfRow.Unfamiliar());
      Besides same = new JoinedRow(LIMITS).of(List.of(first, first)).besides();
      assertThat(same.photos().get(0).refused()).isEmpty();
    }
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
