package leadlight.vision;

import leadlight.model.Homography;
import leadlight.model.PointPx;
import org.opencv.core.Rect;

/** The part of a picture that a straightened piece of it shows. */
final class SeenPart {

  private SeenPart() {}

  /** A rectangle round it, with a margin; empty if nothing of the picture is seen. */
  static Rect of(Frame picture, Homography toPicture, int widthPx, int heightPx) {
    double left = picture.widthPx();
    double top = picture.heightPx();
    double right = 0;
    double bottom = 0;
    for (PointPx corner : corners(toPicture, widthPx, heightPx)) {
      left = Math.min(left, corner.x());
      top = Math.min(top, corner.y());
      right = Math.max(right, corner.x());
      bottom = Math.max(bottom, corner.y());
    }
    int x = (int) Math.max(0, Math.floor(left) - 2);
    int y = (int) Math.max(0, Math.floor(top) - 2);
    int width = (int) Math.min(picture.widthPx(), Math.ceil(right) + 3) - x;
    int height = (int) Math.min(picture.heightPx(), Math.ceil(bottom) + 3) - y;
    return width > 0 && height > 0 ? new Rect(x, y, width, height) : new Rect();
  }

  /** Its area in the picture, square pixels. */
  static double area(Homography toPicture, int widthPx, int heightPx) {
    PointPx[] c = corners(toPicture, widthPx, heightPx);
    double twice = 0;
    for (int i = 0; i < 4; i++) {
      PointPx next = c[(i + 1) % 4];
      twice += c[i].x() * next.y() - next.x() * c[i].y();
    }
    return Math.abs(twice) / 2;
  }

  private static PointPx[] corners(Homography toPicture, int widthPx, int heightPx) {
    return new PointPx[] {
      toPicture.map(-0.5, -0.5),
      toPicture.map(widthPx - 0.5, -0.5),
      toPicture.map(widthPx - 0.5, heightPx - 0.5),
      toPicture.map(-0.5, heightPx - 0.5)
    };
  }
}
