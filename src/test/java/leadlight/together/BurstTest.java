package leadlight.together;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.Opinions;
import leadlight.model.UserError;
import leadlight.model.remark.NoteOfPhoto;
import leadlight.model.result.PhotoInfo;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.result.Settings;
import leadlight.model.row.RowOutcome;
import leadlight.model.row.RowSpec;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.pipeline.PhotoScorer;
import leadlight.vision.Frame;
import org.junit.jupiter.api.Test;

class BurstTest {

  private static final AcceptanceSet LIMITS = AcceptanceSet.load(AcceptanceSet.DEFAULT_ID);
  private static final Path PICTURES = Path.of("src/test/resources/nudge");

  private final PhotoScorer scorer =
      new PhotoScorer(
          new Settings(
              RowSpec.plain(12, 0.5, OptionalDouble.empty(), OptionalDouble.empty()),
              2,
              LIMITS.id(),
              Optional.empty(),
              Opinions.BOTH),
          LIMITS);

  private ScoredPhoto score(PhotoInfo info, Frame frame) {
    return scorer.score(new Photo(info, frame, List.of()));
  }

  private static Burst.Shot shot(Photo photo) {
    return new Burst.Shot(photo.info(), photo.frame());
  }

  @Test
  void aFrameOfAnotherViewIsLeftOutAndTheOthersAreStacked() {
    try (Photo first = new PhotoReader().read(PICTURES.resolve("nudge-007-a.jpg"));
        Photo again = new PhotoReader().read(PICTURES.resolve("nudge-007-c.jpg"));
        Photo other = new PhotoReader().read(PICTURES.resolve("nudge-003-b.jpg"));
        Burst.Result result =
            new Burst().of(List.of(shot(first), shot(again), shot(other)), this::score)) {
      assertThat(result.scored().row()).isInstanceOf(RowOutcome.Found.class);
      assertThat(result.besides().photos())
          .filteredOn(o -> o.file().equals("nudge-003-b.jpg"))
          .allMatch(o -> o.refused().orElseThrow() instanceof NoteOfPhoto.OtherView)
          .hasSize(1);
      assertThat(result.besides().seenIn().get(0)).hasSize(2);
    }
  }

  @Test
  void aFrameGivenTwiceIsNoSecondFrame() {
    try (Photo first = new PhotoReader().read(PICTURES.resolve("nudge-007-a.jpg"))) {
      List<Burst.Shot> shots = List.of(shot(first), shot(first));
      assertThatThrownBy(() -> new Burst().of(shots, this::score))
          .isInstanceOf(UserError.class)
          .hasMessageContaining("the same photo");
    }
  }

  @Test
  void framesOfWhichNoneShowsTheOthersViewAreRefused() {
    try (Photo first = new PhotoReader().read(PICTURES.resolve("nudge-007-a.jpg"));
        Photo other = new PhotoReader().read(PICTURES.resolve("nudge-003-b.jpg"))) {
      List<Burst.Shot> shots = List.of(shot(first), shot(other));
      assertThatThrownBy(() -> new Burst().of(shots, this::score)).isInstanceOf(UserError.class);
    }
  }
}
