package leadlight.rowcheck;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.Opinions;
import leadlight.model.remark.NoteOfRow;
import leadlight.model.result.Settings;
import leadlight.model.row.RowOutcome;
import leadlight.model.row.RowSpec;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.pipeline.PhotoScorer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A row is counted by its metal, whatever its joints look like; pictures are rendered samples. */
class CountCheckTest {

  private static RowOutcome told(String picture, int leads) {
    RowSpec spec = RowSpec.plain(leads, 0.5, OptionalDouble.empty(), OptionalDouble.empty());
    AcceptanceSet limits = AcceptanceSet.load(AcceptanceSet.DEFAULT_ID);
    Settings settings = new Settings(spec, 2, limits.id(), Optional.empty(), Opinions.MEASURES);
    try (Photo photo = new PhotoReader().read(Path.of(picture))) {
      return new PhotoScorer(settings, limits).score(photo).row();
    }
  }

  @Test
  void aRowOfAsManyLeadsAsWereSaidIsScored() {
    assertThat(told("sample-images/base-station-video-good.jpg", 19))
        .isInstanceOf(RowOutcome.Found.class);
  }

  @ParameterizedTest
  @CsvSource({
    "sample-images/base-station-video-good.jpg, 18",
    "sample-images/base-station-video-good.jpg, 20",
    "sample-images/base-station-video-mixed.jpg, 18",
    "sample-images/base-station-video-mixed.jpg, 20",
    "sample-images/logger-sensor-open.jpg, 19",
    "sample-images/logger-sensor-open.jpg, 21"
  })
  void oneLeadMoreOrFewerIsNoRowToScore(String picture, int leads) {
    RowOutcome row = told(picture, leads);
    assertThat(row).isInstanceOf(RowOutcome.NotFound.class);
    assertThat(((RowOutcome.NotFound) row).reason())
        .isInstanceOfAny(
            NoteOfRow.OtherCount.class, NoteOfRow.MoreLeads.class, NoteOfRow.FewerLeads.class);
  }

  /** The end lead of this row told one short is bad; a bad neighbour is metal as well. */
  @ParameterizedTest
  @CsvSource({"told-fewer-02, 18, 19", "told-fewer-03, 18, 19"})
  void theCountThatShowsIsSaid(String picture, int leads, int shown) {
    RowOutcome row = told("src/test/resources/leadlight/net/" + picture + ".jpg", leads);
    assertThat(row)
        .isInstanceOfSatisfying(
            RowOutcome.NotFound.class,
            none -> assertThat(none.reason()).isEqualTo(new NoteOfRow.OtherCount(leads, shown)));
  }
}
