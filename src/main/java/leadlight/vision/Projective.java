package leadlight.vision;

import java.util.List;
import leadlight.model.Homography;
import leadlight.model.PointPx;
import leadlight.vision.load.NativeLibrary;
import org.opencv.calib3d.Calib3d;
import org.opencv.core.Mat;
import org.opencv.core.MatOfPoint2f;
import org.opencv.core.Point;

/** Fits of projective maps. */
public final class Projective {

  private Projective() {}

  /**
   * The least-squares projective map between matching points (at least four, not on one line).
   *
   * @throws IllegalArgumentException if the points do not fix a map
   */
  public static Homography fit(List<PointPx> from, List<PointPx> to) {
    NativeLibrary.load();
    try (MatScope scope = new MatScope()) {
      MatOfPoint2f source = scope.add(points(from));
      MatOfPoint2f target = scope.add(points(to));
      Mat map = scope.add(Calib3d.findHomography(source, target, 0));
      if (map.empty()) {
        throw new IllegalArgumentException("the points do not fix a projective map");
      }
      double[] m = new double[9];
      map.get(0, 0, m);
      return new Homography(m);
    }
  }

  private static MatOfPoint2f points(List<PointPx> points) {
    return new MatOfPoint2f(
        points.stream().map(p -> new Point(p.x(), p.y())).toArray(Point[]::new));
  }
}
