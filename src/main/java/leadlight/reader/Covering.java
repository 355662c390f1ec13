package leadlight.reader;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.Function;
import leadlight.model.Region;
import leadlight.model.RowPictures;

/**
 * Finds what a call rests on: parts of the joint's picture are covered with grey, one after the
 * other, and the part whose cover lowers the score most is the one that spoke (occlusion: Zeiler
 * and Fergus 2014, Visualizing and understanding convolutional networks, section 3.1).
 */
final class Covering {

  /** Half a pitch wide and about as high: a gap, a toe or a flank each fill one. */
  static final int COLUMNS = 4;

  static final int ROWS = 8;

  /** A neighbour of the strongest part belongs to it from this share of its effect on. */
  private static final double SAME_FROM = 0.5;

  private final int width;
  private final int height;
  private final int planes;

  Covering(RowPictures row) {
    this.width = row.width();
    this.height = row.height();
    this.planes = 2 * RowPictures.PLANES;
  }

  /**
   * The part that moved a score.
   *
   * @param shown the joint's planes and those of the row, as the network sees them
   * @param score its uncovered score
   * @param scores the scores of several such pictures
   * @return empty if no cover lowers the score
   */
  Optional<Region> strongest(float[] shown, double score, Function<float[], double[]> scores) {
    float[] covered = new float[COLUMNS * ROWS * shown.length];
    for (int part = 0; part < COLUMNS * ROWS; part++) {
      System.arraycopy(shown, 0, covered, part * shown.length, shown.length);
      cover(covered, part * shown.length, part);
    }
    double[] fall = scores.apply(covered);
    for (int part = 0; part < fall.length; part++) {
      fall[part] = score - fall[part];
    }
    return region(fall);
  }

  private void cover(float[] pictures, int from, int part) {
    int x = part % COLUMNS * width / COLUMNS;
    int y = part / COLUMNS * height / ROWS;
    for (int plane = 0; plane < planes / 2; plane++) {
      for (int row = y; row < y + height / ROWS; row++) {
        int at = from + (plane * height + row) * width + x;
        Arrays.fill(pictures, at, at + width / COLUMNS, 0);
      }
    }
  }

  private static Optional<Region> region(double[] fall) {
    int best = 0;
    for (int part = 1; part < fall.length; part++) {
      best = fall[part] > fall[best] ? part : best;
    }
    if (fall[best] <= 0) {
      return Optional.empty();
    }
    int x0 = best % COLUMNS;
    int y0 = best / COLUMNS;
    int x1 = x0;
    int y1 = y0;
    double same = SAME_FROM * fall[best];
    x1 += x0 + 1 < COLUMNS && fall[best + 1] >= same ? 1 : 0;
    x0 -= x0 > 0 && fall[best - 1] >= same ? 1 : 0;
    y1 += y0 + 1 < ROWS && fall[best + COLUMNS] >= same ? 1 : 0;
    y0 -= y0 > 0 && fall[best - COLUMNS] >= same ? 1 : 0;
    return Optional.of(new Region(x0, y0, x1 + 1.0, y1 + 1.0));
  }
}
