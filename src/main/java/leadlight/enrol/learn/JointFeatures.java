package leadlight.enrol.learn;

import java.util.ArrayList;
import java.util.List;
import leadlight.model.picture.RowPictures;

/**
 * The numbers that a bench learns from: each joint's picture made very small, from one pitch behind
 * the toe to beyond the land's end, in light, two colours and edges along and across. What a reader
 * gives behind its scores would be added here: this is the one place. (Of the present reader's it
 * was tried and told less than the small pictures: docs/enrolment.md.)
 */
public final class JointFeatures {

  /** Cells of a small picture. */
  static final int COLUMNS = 6;

  static final int ROWS = 8;

  private static final int CELLS = COLUMNS * ROWS;

  /** Blocks of numbers that are scaled alike: light, both colours, both edges. */
  public static final List<Block> BLOCKS =
      List.of(new Block(0, CELLS), new Block(CELLS, 3 * CELLS), new Block(3 * CELLS, 5 * CELLS));

  /** Numbers a joint. */
  public static final int COUNT = 5 * CELLS;

  /** From one pitch behind the toe on; three quarters of a pitch to either side. */
  private static final double Y_FROM_PITCH = -1.0;

  private static final double X_HALF_PITCH = 0.75;

  /** Brings pictures and edges to about one; only their ratio to each other would matter. */
  private static final double LEVELS = 128;

  private static final double EDGES = 32;

  private JointFeatures() {}

  /** Numbers from one, included, to another, excluded. */
  public record Block(int from, int to) {}

  /** The numbers of each joint of a row, pin 1 first. */
  public static List<float[]> of(RowPictures row) {
    List<float[]> all = new ArrayList<>();
    for (byte[] joint : row.joints()) {
      all.add(new Cut(row, joint).features());
    }
    return all;
  }

  /** Four decimals: less than the noise of a picture, and a file that people can compare. */
  public static float[] rounded(float[] features) {
    float[] out = new float[features.length];
    for (int i = 0; i < out.length; i++) {
      out[i] = Math.round(features[i] * 1e4f) / 1e4f;
    }
    return out;
  }

  /** The mean joint. */
  public static float[] mean(List<float[]> joints) {
    float[] mean = new float[COUNT];
    joints.forEach(
        joint -> {
          for (int i = 0; i < mean.length; i++) {
            mean[i] += joint[i] / joints.size();
          }
        });
    return rounded(mean);
  }

  private static final class Cut {

    private final RowPictures row;
    private final byte[] picture;
    private final int x0;
    private final int x1;
    private final int y0;

    Cut(RowPictures row, byte[] picture) {
      this.row = row;
      this.picture = picture;
      double scale = row.pixelsPerPitch();
      this.x0 = (int) Math.round((-X_HALF_PITCH - row.xFromPitch()) * scale);
      this.x1 = (int) Math.round((X_HALF_PITCH - row.xFromPitch()) * scale);
      this.y0 = (int) Math.round((Y_FROM_PITCH - row.yFromPitch()) * scale);
    }

    float[] features() {
      float[] out = new float[COUNT];
      for (int cell = 0; cell < CELLS; cell++) {
        int left = x0 + cell % COLUMNS * (x1 - x0) / COLUMNS;
        int right = x0 + (cell % COLUMNS + 1) * (x1 - x0) / COLUMNS;
        int top = y0 + cell / COLUMNS * (row.height() - y0) / ROWS;
        int bottom = y0 + (cell / COLUMNS + 1) * (row.height() - y0) / ROWS;
        for (int plane = 0; plane < RowPictures.PLANES; plane++) {
          out[plane * CELLS + cell] = mean(plane, left, right, top, bottom);
        }
        out[3 * CELLS + cell] = steps(left, right, top, bottom, 1, 0);
        out[4 * CELLS + cell] = steps(left, right, top, bottom, 0, 1);
      }
      return out;
    }

    private float mean(int plane, int left, int right, int top, int bottom) {
      double sum = 0;
      for (int y = top; y < bottom; y++) {
        for (int x = left; x < right; x++) {
          sum += level(plane, x, y);
        }
      }
      return (float) (sum / ((right - left) * (bottom - top)) / LEVELS);
    }

    /** Mean step of light between places two apart on either side, smoothed across it. */
    private float steps(int left, int right, int top, int bottom, int dx, int dy) {
      double sum = 0;
      for (int y = top; y < bottom; y++) {
        for (int x = left; x < right; x++) {
          double step = 0;
          for (int aside = -1; aside <= 1; aside++) {
            int atX = x + aside * dy;
            int atY = y + aside * dx;
            step += smooth(atX + 2 * dx, atY + 2 * dy) - smooth(atX - 2 * dx, atY - 2 * dy);
          }
          sum += Math.abs(step) / 3;
        }
      }
      return (float) (sum / ((right - left) * (bottom - top)) / EDGES);
    }

    private double smooth(int x, int y) {
      return (2 * level(0, x, y)
              + level(0, x - 1, y)
              + level(0, x + 1, y)
              + level(0, x, y - 1)
              + level(0, x, y + 1))
          / 6.0;
    }

    private int level(int plane, int x, int y) {
      int column = Math.max(0, Math.min(row.width() - 1, x));
      int line = Math.max(0, Math.min(row.height() - 1, y));
      return picture[(plane * row.height() + line) * row.width() + column] & 0xff;
    }
  }
}
