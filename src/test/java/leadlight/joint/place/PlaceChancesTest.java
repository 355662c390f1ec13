package leadlight.joint.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import leadlight.joint.cut.FootBands;
import leadlight.joint.cut.PatchGrid;
import org.junit.jupiter.api.Test;

class PlaceChancesTest {

  private static final double LEAD_HALF = 0.2;

  private static List<PlaceChances.Place> places(FootScores.Fit... scores) {
    return new PlaceChances(PlacementModel.builtIn().chances(), new FootBands(-1.8), LEAD_HALF, 0)
        .places(List.of(scores));
  }

  /** Scores of a lead that fits at these offsets and, worse by distance, about them. */
  private static FootScores.Fit fitsAt(double... offsets) {
    double[] scores = new double[FootScores.PLACES];
    for (int i = 0; i < scores.length; i++) {
      double offset = (i - FootScores.STEPS) / (double) PatchGrid.DENSITY;
      double nearest = Arrays.stream(offsets).map(at -> Math.abs(at - offset)).min().orElseThrow();
      scores[i] = Math.max(-1.5, 0.5 - 8 * nearest);
    }
    double[][] all = new double[FootBands.COUNT][];
    Arrays.fill(all, scores);
    return new FootScores.Fit(all, new double[FootScores.PLACES]);
  }

  private static FootScores.Fit fitsNowhere() {
    double[][] all = new double[FootBands.COUNT][FootScores.PLACES];
    for (double[] band : all) {
      Arrays.fill(band, -4);
    }
    return new FootScores.Fit(all, new double[FootScores.PLACES]);
  }

  @Test
  void aLeadLiesWhereItFits() {
    PlaceChances.Place place = places(fitsAt(0), fitsAt(0.375), fitsAt(0)).get(1);
    assertThat(place.toe()).isCloseTo(0.375, within(0.01));
    assertThat(place.end()).isCloseTo(0.375, within(0.01));
    assertThat(place.uToe()).isLessThan(0.03);
  }

  @Test
  void aPlaceThatTheNeighbourFillsIsNotTaken() {
    FootScores.Fit either = fitsAt(0, 0.5);
    assertThat(places(either, fitsAt(0)).get(0).uToe())
        .isGreaterThan(places(either, fitsAt(-0.375)).get(0).uToe());
    assertThat(places(fitsAt(0.5), fitsAt(-0.375)).get(1).toe()).isCloseTo(-0.375, within(0.01));
  }

  @Test
  void aLeadThatFitsNowhereIsUnsureNotSurelyInItsPlace() {
    PlaceChances.Place hidden = places(fitsAt(0), fitsNowhere(), fitsAt(0)).get(1);
    assertThat(hidden.toe()).isCloseTo(0, within(0.1));
    assertThat(hidden.uToe()).isGreaterThan(2 * places(fitsAt(0)).get(0).uToe());
  }
}
