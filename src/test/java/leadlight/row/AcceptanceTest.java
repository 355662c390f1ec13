package leadlight.row;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import leadlight.model.Homography;
import leadlight.model.remark.Note;
import leadlight.model.row.RowSpec;
import leadlight.row.find.EndChoice;
import leadlight.row.find.RowFit;
import leadlight.row.strip.Lattice;
import leadlight.row.strip.Zone;
import leadlight.row.tuning.AcceptanceTuning;
import leadlight.row.tuning.RowTuning;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** When a fitted row is reported: each threshold of models/row/search.json from both sides. */
class AcceptanceTest {

  private static final AcceptanceTuning TUNING = RowTuning.builtIn().acceptance();
  private static final Lattice LATTICE =
      Lattice.of(RowSpec.plain(12, 0.5, OptionalDouble.empty(), OptionalDouble.empty()));
  private static final double JUST = 1e-6;

  private static RowFit fit(double pitchPx, double lock, EndChoice ends) {
    Homography map = new Homography(pitchPx, 0, 50, 0, pitchPx, 50, 0, 0, 1);
    return new RowFit(map, new Zone(-1, 1, lock), null, ends);
  }

  private static EndChoice ends(
      double inside, double outside, double last, boolean cropped, boolean runsOut) {
    return new EndChoice(0, 1, 1, inside, outside, last, cropped, runsOut);
  }

  private static boolean accepted(RowFit fit) {
    return new Acceptance(TUNING, 12).refusal(fit, LATTICE).isEmpty();
  }

  private static boolean good(double inside, double outside, double last, double lock) {
    return accepted(fit(30, lock, ends(inside, outside, last, false, false)));
  }

  @ParameterizedTest
  @CsvSource({"0,true", "-1,false", "1,true"})
  void likenessOfTheLeads(int side, boolean taken) {
    assertThat(good(TUNING.leastInside() + side * JUST, 0, 1, 1)).isEqualTo(taken);
  }

  @ParameterizedTest
  @CsvSource({"0,true", "-1,false"})
  void likenessOfTheLeastEndLead(int side, boolean taken) {
    assertThat(good(0.95, 0, TUNING.leastLastLead() + side * JUST, 1)).isEqualTo(taken);
  }

  @ParameterizedTest
  @CsvSource({"0,true", "1,false"})
  void likenessBeyondAnEnd(int side, boolean taken) {
    assertThat(good(0.999, TUNING.mostOutside() + side * JUST, 1, 1)).isEqualTo(taken);
  }

  @ParameterizedTest
  @CsvSource({"0,true", "-1,false"})
  void agreementInPhase(int side, boolean taken) {
    assertThat(good(0.95, 0, 1, TUNING.leastLock() + side * JUST)).isEqualTo(taken);
  }

  @ParameterizedTest
  @CsvSource({"0,true", "-1,false"})
  void pitchInPixels(int side, boolean taken) {
    double pitch = TUNING.leastPitchPx() + side * 0.001;
    assertThat(accepted(fit(pitch, 1, ends(0.95, 0, 1, false, false)))).isEqualTo(taken);
  }

  /** Less half of what lies beyond, so that a lead-like place beyond an end costs. */
  @ParameterizedTest
  @CsvSource({"1,true", "-1,false"})
  void contrastOfInsideAndOutside(int side, boolean taken) {
    double outside = TUNING.mostOutside();
    double inside = TUNING.leastContrast() + 0.5 * outside + side * JUST;
    boolean otherwiseGood = inside >= TUNING.leastInside();
    assertThat(good(inside, outside, 1, 1)).isEqualTo(taken && otherwiseGood);
  }

  @ParameterizedTest
  @CsvSource({"false,true", "true,false"})
  void aRowThatRunsOutOfThePictureIsRefused(boolean cropped, boolean taken) {
    assertThat(accepted(fit(30, 1, ends(0.95, 0, 1, cropped, false)))).isEqualTo(taken);
  }

  /** Where the places beyond an end reach the photo's edge nothing is known of them. */
  @ParameterizedTest
  @CsvSource({"true,true", "false,false"})
  void beyondAnEndThatLiesAtThePhotosEdgeNothingIsHeldAgainstTheRow(
      boolean runsOut, boolean taken) {
    EndChoice ends = ends(0.95, TUNING.mostOutside() + 0.05, 1, false, runsOut);
    assertThat(accepted(fit(30, 1, ends))).isEqualTo(taken);
  }

  @ParameterizedTest
  @CsvSource({
    "0.95,0,1,true,row-cropped",
    "0.95,0.99,1,false,more-leads",
    "0.95,0,0,false,fewer-leads",
    "0,0,1,false,not-like-leads"
  })
  void theRefusalSaysWhatIsWrong(
      double inside, double outside, double last, boolean cropped, String why) {
    assertThat(
            new Acceptance(TUNING, 12)
                .refusal(fit(30, 1, ends(inside, outside, last, cropped, false)), LATTICE))
        .map(Note::code)
        .contains(why);
  }
}
