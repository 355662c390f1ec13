package leadlight.row.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import leadlight.model.PointPx;
import leadlight.model.picture.Plane;
import leadlight.numeric.LeastSquares;
import leadlight.numeric.Parabola;
import leadlight.numeric.Quantiles;
import leadlight.row.find.CombHit;
import leadlight.row.find.DirectionSearch;
import leadlight.row.find.Symmetry;
import leadlight.row.strip.LeadPicture;
import leadlight.row.strip.Zone;
import leadlight.row.tuning.RowTuning;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The arithmetic under the search for a row; expected values by hand or by the textbook. */
class RowArithmeticTest {

  private static final Rows TENTHS = new Rows(10);

  // Rows: values along the leads, ten a pitch.

  @Test
  void aMeanIsTakenOverAStretchBesideEachRowAndEdgesRepeat() {
    double[] steps = {0, 1, 2, 3, 4, 5};

    assertThat(TENTHS.mean(steps, -0.1, 0.1)).containsExactly(0.5, 1, 2, 3, 4, 4.5);
    assertThat(TENTHS.mean(steps, 0.1, 0.2)).containsExactly(1.5, 2.5, 3.5, 4.5, 5, 5);
    assertThat(TENTHS.mean(steps, 0, 0)).containsExactly(steps);
  }

  @Test
  void channelsAreAveragedEachByItself() {
    double[][] rows = {{0, 10}, {2, 20}, {4, 60}};
    double[][] mean = TENTHS.mean(rows, -0.1, 0);
    assertThat(mean[0]).containsExactly(0, 10);
    assertThat(mean[1]).containsExactly(1, 15);
    assertThat(mean[2]).containsExactly(3, 40);
  }

  @Test
  void shiftedLooksFurtherOnAndStopsAtTheEdge() {
    double[] values = {1, 2, 3, 4};
    assertThat(TENTHS.shifted(values, 0.2)).containsExactly(3, 4, 4, 4);
    assertThat(TENTHS.shifted(values, -0.1)).containsExactly(1, 1, 2, 3);
  }

  @Test
  void theLargestIsLookedForInAStretchAndNotBeyondTheEnd() {
    double[] values = {0, 5, 1, 9, 2};
    assertThat(TENTHS.largest(values, 0, 0.1, 4)).containsExactly(5, 5, 9, 9, 2);
    assertThat(TENTHS.largest(values, 0, 0.1, 2)).containsExactly(5, 5, 1, 0, 0);
    assertThat(TENTHS.largest(values, -0.1, 0, 4)).containsExactly(0, 5, 5, 9, 9);
  }

  /** A ramp of one a row, ten rows a pitch, is a change of one per tenth of a pitch. */
  @Test
  void stepsAreChangesPerTenthOfAPitch() {
    double[][] ramp = new double[40][1];
    for (int y = 0; y < ramp.length; y++) {
      ramp[y][0] = y;
    }
    double[][] steps = TENTHS.steps(ramp, 0.1);
    assertThat(steps[20][0]).isCloseTo(1, within(1e-9));
    assertThat(new Rows(20).steps(ramp, 0.1)[20][0]).isCloseTo(2, within(1e-9));
    assertThat(steps[0][0]).as("no neighbour, no change").isZero();
  }

  @Test
  void coloursDifferByTheRootMeanSquare() {
    double[][] a = {{0, 0, 0}, {1, 1, 1}};
    double[][] b = {{3, 0, 0}, {1, 1, 1}};
    assertThat(Rows.distance(a, b)[0]).isCloseTo(Math.sqrt(3), within(1e-12));
    assertThat(Rows.distance(a, b)[1]).isZero();
    assertThat(Rows.channels(new double[][] {{-1, 3}}, Math::abs)).containsExactly(2);
  }

  @Test
  void theLogarithmIsALineNearNoughtAndNoughtBelow() {
    assertThat(Rows.log(new double[] {-5, 0, 10, 0.001}, 10))
        .satisfies(
            log -> {
              assertThat(log[0]).isZero();
              assertThat(log[1]).isZero();
              assertThat(log[2]).isCloseTo(Math.log(2), within(1e-12));
              assertThat(log[3]).isCloseTo(0.0001, within(1e-8));
            });
  }

  // Choice, peak, correlation: the best place between the rows.

  /** A parabola through (-1, l), (0, m), (1, r) has its top where calculus says. */
  @ParameterizedTest
  @ValueSource(doubles = {-0.4, -0.1, 0, 0.25, 0.45})
  void theTopOfAParabolaIsFoundBetweenTheRows(double top) {
    double[] scores = new double[7];
    for (int i = 0; i < scores.length; i++) {
      scores[i] = -(i - 3 - top) * (i - 3 - top);
    }
    assertThat(Parabola.peak(scores, 3)).isCloseTo(3 + top, within(1e-9));
    assertThat(Choice.of(scores, 1, 5).row()).isCloseTo(3 + top, within(1e-9));
  }

  @Test
  void atTheEdgeAndOnAPlainThereIsNothingBetweenTheRows() {
    assertThat(Parabola.peak(new double[] {3, 2, 1}, 0)).isZero();
    assertThat(Parabola.peak(new double[] {1, 2, 3}, 2)).isEqualTo(2);
    assertThat(Parabola.peak(new double[] {1, 1, 1}, 1)).isEqualTo(1);
    assertThat(Choice.of(new double[] {1, 2, 3, 9}, 0, 2).row())
        .as("what lies outside the range is not looked at")
        .isEqualTo(2);
  }

  /** Two rows of equal probability, two apart: root of half of four. */
  @Test
  void theSpreadOfAChoiceIsOfProbabilities() {
    double none = -1e9;
    assertThat(Choice.of(new double[] {0, none, 0}, 0, 2).spread())
        .isCloseTo(Math.sqrt(2), within(1e-9));
    assertThat(Choice.of(new double[] {none, 0, none}, 0, 2).spread()).isCloseTo(0, within(1e-9));
  }

  @Test
  void correlationKnowsShapeAndNotLevel() {
    double[][] shape = {{1}, {2}, {4}, {2}, {1}, {0}, {0}};
    double[][] brighter = {{51}, {52}, {54}, {52}, {51}, {50}, {50}};
    double[][] upsideDown = {{-1}, {-2}, {-4}, {-2}, {-1}, {0}, {0}};
    double[][] later = {{0}, {1}, {2}, {4}, {2}, {1}, {0}};

    assertThat(Correlation.of(shape, 2, brighter, 2, 2)).isCloseTo(1, within(1e-3));
    assertThat(Correlation.of(shape, 2, upsideDown, 2, 2)).isCloseTo(-1, within(1e-3));
    assertThat(Correlation.of(shape, 2, later, 3, 2)).isCloseTo(1, within(1e-3));
    assertThat(Correlation.of(shape, 2, later, 2, 2)).isLessThan(0.6);
  }

  // Smoothing.

  /** A Gaussian keeps the sum, and the value next to a unit pulse is exp(-1/2) of its own. */
  @Test
  void smoothingIsByAGaussian() {
    double[][] pulse = new double[21][1];
    pulse[10][0] = 1;
    double[][] smooth = FoldProfile.smoothed(pulse, 1);
    double sum = 0;
    for (double[] row : smooth) {
      sum += row[0];
    }
    assertThat(sum).isCloseTo(1, within(1e-9));
    assertThat(smooth[11][0] / smooth[10][0]).isCloseTo(Math.exp(-0.5), within(1e-9));
    assertThat(smooth[9][0]).isEqualTo(smooth[11][0]);
    assertThat(smooth[12][0] / smooth[10][0]).isCloseTo(Math.exp(-2), within(1e-9));
    assertThat(smooth[14][0]).as("three deviations are enough").isZero();
  }

  @Test
  void atTheEdgesTheLastRowRepeats() {
    double[][] level = {{5}, {5}, {5}};
    for (double[] row : FoldProfile.smoothed(level, 2)) {
      assertThat(row[0]).isCloseTo(5, within(1e-12));
    }
  }

  // Cues.

  @Test
  void cuesAreSummedByTheirWeights() {
    Cues cues = new Cues();
    cues.add("a", new double[] {1, 2});
    cues.add("b", new double[] {10, 20});
    assertThat(cues.score(Map.of("a", 2.0, "b", 0.1))).containsExactly(3, 6);
    assertThat(cues.all().keySet()).containsExactly("a", "b");
    assertThat(new Cues().score(Map.of())).isEmpty();
  }

  @Test
  void aCueWithoutAWeightAndAWeightWithoutACueAreFaults() {
    Cues cues = new Cues();
    cues.add("a", new double[] {1});
    assertThatThrownBy(() -> cues.score(Map.of("a", 1.0, "b", 1.0)))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> cues.score(Map.of())).isInstanceOf(IllegalArgumentException.class);
  }

  // Least squares.

  @Test
  void threeUnknownsAreSolvedExactly() {
    double[][] rows = new double[9][];
    double[] y = new double[9];
    double[] w = new double[9];
    for (int i = 0; i < 9; i++) {
      double t = i - 4;
      rows[i] = new double[] {1, t, t * t};
      y[i] = 2 - 3 * t + 0.5 * t * t;
      w[i] = 1 + i % 3;
    }
    double[] c = LeastSquares.robust(rows, y, w, 10, 1);
    assertThat(c[0]).isCloseTo(2, within(1e-4));
    assertThat(c[1]).isCloseTo(-3, within(1e-4));
    assertThat(c[2]).isCloseTo(0.5, within(1e-4));
  }

  @Test
  void withoutObservationsTheAnswerIsSmall() {
    double[] c =
        LeastSquares.robust(new double[][] {{1, 0}}, new double[] {4}, new double[] {1}, 9, 9);
    assertThat(c[0]).isCloseTo(4, within(1e-4));
    assertThat(c[1]).isZero();
  }

  /** Weighted mean of 0 and 3 by 1 and 2, both well within the limit: 2, but for the biweight. */
  @Test
  void weightsCount() {
    double[] c =
        LeastSquares.robust(
            new double[][] {{1}, {1}}, new double[] {0, 3}, new double[] {1, 2}, 1000, 1000);
    assertThat(c[0]).isCloseTo(2, within(0.001));
  }

  @ParameterizedTest
  @CsvSource({"'3,1,2',2", "'4,1,3,2',2.5", "'7',7"})
  void theMedianOfAnEvenNumberIsBetweenTheMiddleTwo(String values, double median) {
    double[] numbers =
        java.util.Arrays.stream(values.split(",")).mapToDouble(Double::parseDouble).toArray();
    assertThat(Quantiles.median(numbers)).isEqualTo(median);
    assertThat(Quantiles.median(new double[0])).isZero();
    assertThat(LeastSquares.dot(new double[] {1, 2}, new double[] {3, 4})).isEqualTo(11);
  }

  // Symmetry.

  /** A bright bar off the middle of a picture two pitches wide; soft edges of two pixels. */
  @ParameterizedTest
  @ValueSource(doubles = {-0.25, -0.125, 0, 0.125, 0.3125})
  void theMiddleOfABrightBarIsFound(double off) {
    int s = 16;
    int width = 2 * s + 1;
    float[] data = new float[4 * width];
    for (int y = 0; y < 4; y++) {
      for (int x = 0; x < width; x++) {
        data[y * width + x] = (float) bar(x - (width - 1) / 2.0 - off * s, s);
      }
    }
    assertThat(Symmetry.axis(new Plane(width, 4, data), s)).isCloseTo(off, within(0.03));
  }

  /** Bars of a pitch, two fifths of it bright. */
  private static double bar(double x, int s) {
    double d = Math.abs(Math.IEEEremainder(x, s));
    return 40 + 150 * Math.max(0, Math.min(1, (0.2 * s + 1 - d) / 2));
  }

  // Combs.

  private static CombHit comb(double x, double y, double angle, double pitch) {
    return new CombHit(new PointPx(x, y), angle, pitch, 0.5);
  }

  @ParameterizedTest
  @CsvSource({
    "100,100,0,20,true",
    "150,100,0,20,true",
    "199,100,0,20,true",
    "201,100,0,20,false",
    "1,100,0,20,true",
    "-1,100,0,20,false",
    "100,149,0,20,true",
    "100,151,0,20,false",
    "100,51,0,20,true",
    "100,49,0,20,false",
    "100,100,0.19,20,true",
    "100,100,0.21,20,false",
    "100,100,-0.19,20,true",
    "100,100,3.1415,20,true",
    "100,100,0,17.5,true",
    "100,100,0,17.3,false",
    "100,100,0,22.9,true",
    "100,100,0,23.1,false"
  })
  void twoCombsAreOneRowIfTheyLieTogether(
      double x, double y, double angle, double pitch, boolean same) {
    assertThat(comb(100, 100, 0, 20).sameRow(comb(x, y, angle, pitch), 10)).isEqualTo(same);
  }

  @Test
  void aCombMovesAlongItself() {
    CombHit moved = comb(100, 100, Math.PI / 6, 20).movedAlong(3);
    assertThat(moved.middlePx().x()).isCloseTo(100 + 60 * Math.cos(Math.PI / 6), within(1e-9));
    assertThat(moved.middlePx().y()).isCloseTo(100 + 30, within(1e-9));
    assertThat(moved.pitchPx()).isEqualTo(20);
    assertThat(moved.score()).isEqualTo(0.5);
    // Across is measured across a turned row, too.
    CombHit turned = comb(100, 100, Math.PI / 2, 20);
    assertThat(turned.sameRow(comb(149, 100, Math.PI / 2, 20), 10)).isTrue();
    assertThat(turned.sameRow(comb(151, 100, Math.PI / 2, 20), 10)).isFalse();
    assertThat(turned.sameRow(comb(100, 199, Math.PI / 2, 20), 10)).isTrue();
    assertThat(turned.sameRow(comb(100, 201, Math.PI / 2, 20), 10)).isFalse();
  }

  // Zone.

  @ParameterizedTest
  @CsvSource({"-1,true", "-1.01,false", "0,true", "2,true", "2.01,false"})
  void aZoneHoldsItsEnds(double v, boolean holds) {
    Zone zone = new Zone(-1, 2, 1);
    assertThat(zone.holds(v)).isEqualTo(holds);
    assertThat(zone.middle()).isEqualTo(0.5);
  }

  // The median lead.

  @Test
  void theMedianPictureIsTakenPixelByPixel() {
    Plane a = new Plane(2, 1, new float[] {1, 9});
    Plane b = new Plane(2, 1, new float[] {5, 1});
    Plane c = new Plane(2, 1, new float[] {3, 2});
    assertThat(LeadPicture.median(new Plane[] {a, b, c}).data()).containsExactly(3, 2);
    assertThat(LeadPicture.median(new Plane[] {a, b}).data()).containsExactly(3, 5);
  }

  // Directions of edges.

  /** Bars that lean by an angle have their edges' normal at that angle, modulo a right angle. */
  @ParameterizedTest
  @ValueSource(doubles = {0.1, 0.4, 0.9, 1.3})
  void theStrongestDirectionIsThatOfTheBars(double angle) {
    int size = 120;
    float[] data = new float[size * size];
    for (int y = 0; y < size; y++) {
      for (int x = 0; x < size; x++) {
        double along = x * Math.cos(angle) + y * Math.sin(angle);
        data[y * size + x] = (float) (100 + 80 * Math.cos(2 * Math.PI * along / 12));
      }
    }
    List<Double> found =
        new DirectionSearch(RowTuning.builtIn()).directions(new Plane(size, size, data));
    assertThat(found.get(0)).isCloseTo(angle, within(0.02));
  }

  @Test
  void aFlatPictureHasNoDirection() {
    List<Double> found =
        new DirectionSearch(RowTuning.builtIn()).directions(new Plane(50, 50, new float[2500]));
    assertThat(new ArrayList<>(found)).isEmpty();
  }
}
