package leadlight.joint.dirt;

import java.util.Arrays;
import java.util.List;
import leadlight.joint.cut.LevelledPatch;
import leadlight.joint.cut.PatchGrid;
import leadlight.joint.cut.RowGeometry;

/**
 * The row's joints side by side, each from half a pitch before its land's middle to half a pitch
 * after, with the row's typical cell beneath: a foreign body lies whole on it, wherever it lies.
 * Planes are shares of the row's range of light, smoothed by 1 2 1 both ways.
 */
public final class RowCells {

  /** Width of a joint's cell: one pitch. */
  public static final int CELL = PatchGrid.DENSITY;

  /** The body's shadow at the heel differs from pin to pin. */
  private static final double OFF_HEEL = 0.1;

  private static final double OFF_LAND = 0.05;

  private final int joints;
  private final RowGeometry geometry;
  private final int top;
  private final int height;
  private final float[][] planes = new float[3][];
  private final float[][] typical = new float[3][];

  public RowCells(List<LevelledPatch> joints, RowGeometry geometry, double beyondLand) {
    this.joints = joints.size();
    this.geometry = geometry;
    this.top = PatchGrid.row(geometry.heelY() + OFF_HEEL);
    this.height = PatchGrid.row(geometry.ahead() + beyondLand) - top + 1;
    plane(0, joints.stream().map(LevelledPatch::landLight).toList());
    plane(1, joints.stream().map(LevelledPatch::landRedGreen).toList());
    plane(2, joints.stream().map(LevelledPatch::landYellowBlue).toList());
  }

  private void plane(int which, List<float[]> patches) {
    float[] cells = new float[width() * height];
    int left = PatchGrid.column(-0.5);
    for (int i = 0; i < joints; i++) {
      for (int y = 0; y < height; y++) {
        int from = (top + y) * PatchGrid.WIDTH + left;
        System.arraycopy(patches.get(i), from, cells, y * width() + i * CELL, CELL);
      }
    }
    planes[which] = smoothed(cells, width());
    typical[which] = smoothed(typicalCell(cells), CELL);
  }

  private float[] typicalCell(float[] cells) {
    float[] cell = new float[CELL * height];
    float[] pixel = new float[joints];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < CELL; x++) {
        for (int i = 0; i < joints; i++) {
          pixel[i] = cells[y * width() + i * CELL + x];
        }
        Arrays.sort(pixel);
        cell[y * CELL + x] = (pixel[(joints - 1) / 2] + pixel[joints / 2]) / 2;
      }
    }
    return cell;
  }

  private float[] smoothed(float[] plane, int width) {
    float[] across = new float[plane.length];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        int at = y * width + x;
        int before = x == 0 ? at : at - 1;
        int after = x == width - 1 ? at : at + 1;
        across[at] = (plane[before] + 2 * plane[at] + plane[after]) / 4;
      }
    }
    float[] out = new float[plane.length];
    for (int at = 0; at < out.length; at++) {
      int before = at < width ? at : at - width;
      int after = at + width >= out.length ? at : at + width;
      out[at] = (across[before] + 2 * across[at] + across[after]) / 4;
    }
    return out;
  }

  public int joints() {
    return joints;
  }

  RowGeometry geometry() {
    return geometry;
  }

  int width() {
    return joints * CELL;
  }

  int height() {
    return height;
  }

  /** Plane 0 light, 1 red less green, 2 yellow less blue. */
  float value(int plane, int x, int y) {
    return planes[plane][y * width() + x];
  }

  /** The same plane of the row's typical cell. */
  float typical(int plane, int x, int y) {
    return typical[plane][y * CELL + x % CELL];
  }

  float change(int plane, int x, int y) {
    return value(plane, x, y) - typical(plane, x, y);
  }

  /** How unlike the row's typical picture. */
  double strangeness(int x, int y) {
    double light = change(0, x, y);
    double redGreen = change(1, x, y);
    double yellowBlue = change(2, x, y);
    return Math.sqrt(light * light + redGreen * redGreen + yellowBlue * yellowBlue);
  }

  /** Pitches from the middle of the column's land. */
  public static double acrossLand(int x) {
    return x % CELL / (double) CELL - 0.5;
  }

  /** Pitches from the toe. */
  double along(int y) {
    return (top + y) / (double) PatchGrid.DENSITY + PatchGrid.Y_FROM;
  }

  /** Row of a place along the lead, kept within the cells. */
  int row(double along) {
    return Math.max(0, Math.min(height - 1, PatchGrid.row(along) - top));
  }

  public boolean besideLand(int x) {
    return Math.abs(acrossLand(x)) > geometry.landHalf() + OFF_LAND;
  }

  /** Whether this is board, not land. */
  boolean onBoard(int x, int y) {
    return besideLand(x) || along(y) > geometry.ahead() + OFF_LAND;
  }
}
