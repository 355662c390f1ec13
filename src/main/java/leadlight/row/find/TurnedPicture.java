package leadlight.row.find;

import leadlight.model.Homography;
import leadlight.model.PointPx;
import leadlight.model.picture.ColourPatch;
import leadlight.model.picture.Plane;
import leadlight.row.strip.Grey;
import leadlight.vision.Pyramid;

/** The reduced picture, turned. */
record TurnedPicture(Plane grey, Homography toPhoto, int photoWidth, int photoHeight) {

  static TurnedPicture of(Pyramid photo, double f, double angle) {
    double c = Math.cos(angle);
    double s = Math.sin(angle);
    double w = photo.widthPx() / f;
    double h = photo.heightPx() / f;
    int width = (int) Math.ceil(Math.abs(w * c) + Math.abs(h * s));
    int height = (int) Math.ceil(Math.abs(w * s) + Math.abs(h * c));
    double mx = (photo.widthPx() - 1) / 2.0;
    double my = (photo.heightPx() - 1) / 2.0;
    double ox = (width - 1) / 2.0;
    double oy = (height - 1) / 2.0;
    Homography map =
        new Homography(
            f * c,
            -f * s,
            mx - f * (c * ox - s * oy),
            f * s,
            f * c,
            my - f * (s * ox + c * oy),
            0,
            0,
            1);
    ColourPatch patch = photo.straightened(map, width, height, f);
    return new TurnedPicture(Grey.of(patch), map, photo.widthPx(), photo.heightPx());
  }

  /** First and past-last column of row y that shows the photo. */
  int[] inside(int y) {
    PointPx a = toPhoto.map(0, y);
    PointPx b = toPhoto.map(1, y);
    double from = 0;
    double to = grey.width();
    double[][] limits = {
      {a.x(), b.x() - a.x(), photoWidth - 1}, {a.y(), b.y() - a.y(), photoHeight - 1}
    };
    for (double[] l : limits) {
      if (Math.abs(l[1]) < 1e-9) {
        if (l[0] < 0 || l[0] > l[2]) {
          return new int[] {0, 0};
        }
        continue;
      }
      double t0 = -l[0] / l[1];
      double t1 = (l[2] - l[0]) / l[1];
      from = Math.max(from, Math.min(t0, t1));
      to = Math.min(to, Math.max(t0, t1));
    }
    int first = (int) Math.ceil(from);
    return new int[] {first, Math.max(first, (int) Math.floor(to))};
  }
}
