package leadlight.reader;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import leadlight.model.picture.RowPictures;

/**
 * Finds what a call rests on: parts of the joint's picture are covered with grey, one after the
 * other, and the part whose cover lowers the score most is the one that spoke (occlusion: Zeiler
 * and Fergus 2014, Visualizing and understanding convolutional networks, section 3.1). Large parts
 * are tried first and then the quarters of the one that speaks loudest, since each try costs a run
 * of the network.
 */
final class Covering {

  /** A pitch wide and about as high. */
  private static final int COLUMNS = 2;

  private static final int ROWS = 4;

  /** A quarter stands for its part if its cover alone has this share of the effect. */
  private static final double SAME_FROM = 0.5;

  private final RowPictures row;

  Covering(RowPictures row) {
    this.row = row;
  }

  /** Part of a picture, pixels. */
  record Part(int x, int y, int width, int height) {

    private List<Part> divided(int columns, int rows) {
      int wide = width / columns;
      int high = height / rows;
      return IntStream.range(0, columns * rows)
          .mapToObj(i -> new Part(x + i % columns * wide, y + i / columns * high, wide, high))
          .toList();
    }
  }

  private record Effect(Part part, double fall) {}

  /**
   * The part that moved a score.
   *
   * @param shown the joint's planes and those of the row, as the network sees them
   * @param score its uncovered score
   * @param scores the scores of several such pictures
   * @return empty if no cover lowers the score
   */
  Optional<Part> strongest(float[] shown, double score, Function<float[], double[]> scores) {
    Part whole = new Part(0, 0, row.width(), row.height());
    Effect large = strongest(whole.divided(COLUMNS, ROWS), shown, score, scores);
    if (large.fall() <= 0) {
      return Optional.empty();
    }
    Effect small = strongest(large.part().divided(2, 2), shown, score, scores);
    return Optional.of(small.fall() >= SAME_FROM * large.fall() ? small.part() : large.part());
  }

  private Effect strongest(
      List<Part> parts, float[] shown, double score, Function<float[], double[]> scores) {
    float[] covered = new float[parts.size() * shown.length];
    for (int i = 0; i < parts.size(); i++) {
      System.arraycopy(shown, 0, covered, i * shown.length, shown.length);
      cover(covered, i * shown.length, parts.get(i));
    }
    double[] after = scores.apply(covered);
    int best = 0;
    for (int i = 1; i < after.length; i++) {
      best = after[i] < after[best] ? i : best;
    }
    return new Effect(parts.get(best), score - after[best]);
  }

  private void cover(float[] pictures, int from, Part part) {
    for (int plane = 0; plane < RowPictures.PLANES; plane++) {
      for (int y = part.y(); y < part.y() + part.height(); y++) {
        int at = from + (plane * row.height() + y) * row.width() + part.x();
        Arrays.fill(pictures, at, at + part.width(), 0);
      }
    }
  }
}
