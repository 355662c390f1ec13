package leadlight.vision.blur;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import leadlight.vision.MatScope;
import leadlight.vision.Shrink;
import org.opencv.core.Core;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Rect;
import org.opencv.core.Size;
import org.opencv.imgproc.Imgproc;

/** The parts of a large picture where most happens. */
final class BusyTiles {

  private static final int SIDE_PX = 256;
  private static final int TILES = 8;

  /** The map of business has this many pixels a tile's side: enough to see outlines. */
  private static final int MAP_PX = 32;

  private BusyTiles() {}

  /**
   * The whole of a picture of at most eight tiles, else its eight tiles of the steepest mean
   * gradient.
   */
  static List<Rect> of(GreyScan scan) {
    Rect all = scan.all();
    if ((long) all.width * all.height <= (long) TILES * SIDE_PX * SIDE_PX) {
      return List.of(all);
    }
    int across = (all.width + SIDE_PX - 1) / SIDE_PX;
    int down = (all.height + SIDE_PX - 1) / SIDE_PX;
    float[] business = business(scan.half(), across, down);
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < business.length; i++) {
      order.add(i);
    }
    order.sort(Comparator.comparingDouble(i -> -business[i]));
    return order.stream()
        .limit(TILES)
        .map(i -> tile(all, i % across, across, i / across, down))
        .toList();
  }

  private static float[] business(Mat half, int across, int down) {
    try (MatScope scope = new MatScope()) {
      Mat small = scope.add(new Mat());
      Size map = new Size(across * MAP_PX, down * MAP_PX);
      Shrink.area(half, small, map);
      Mat gx = scope.add(new Mat());
      Mat gy = scope.add(new Mat());
      Imgproc.Sobel(small, gx, CvType.CV_32F, 1, 0);
      Imgproc.Sobel(small, gy, CvType.CV_32F, 0, 1);
      Mat steep = scope.add(new Mat());
      Core.magnitude(gx, gy, steep);
      Mat mean = scope.add(new Mat());
      Imgproc.resize(steep, mean, new Size(across, down), 0, 0, Imgproc.INTER_AREA);
      float[] values = new float[across * down];
      mean.get(0, 0, values);
      return values;
    }
  }

  /** The grid is stretched to the picture, so that no tile is a sliver. */
  private static Rect tile(Rect all, int column, int across, int row, int down) {
    int left = all.width * column / across;
    int top = all.height * row / down;
    return new Rect(
        left, top, all.width * (column + 1) / across - left, all.height * (row + 1) / down - top);
  }
}
