package leadlight.row.strip;

import leadlight.model.Homography;
import leadlight.model.PointPx;
import leadlight.model.picture.ColourPatch;
import leadlight.model.picture.Plane;
import leadlight.vision.Pyramid;

/**
 * A straightened piece of the photo along a row, in row units: u in pitches along the row (the left
 * lead at 0), v in pitches along the leads. Pixel (i, j) shows u = uFrom + i / perPitch, v = vFrom
 * + j / perPitch.
 */
public record Strip(
    ColourPatch colour,
    Plane grey,
    Plane ripple,
    Homography uvToPhoto,
    double uFrom,
    double vFrom,
    int perPitch,
    int photoWidth,
    int photoHeight) {

  public static Strip of(
      Pyramid photo,
      Homography uvToPhoto,
      double uFrom,
      double uTo,
      double vFrom,
      double vTo,
      int perPitch) {
    double f = 1.0 / perPitch;
    int width = (int) Math.round((uTo - uFrom) * perPitch) + 1;
    int height = (int) Math.round((vTo - vFrom) * perPitch) + 1;
    Homography map = uvToPhoto.after(new Homography(f, 0, uFrom, 0, f, vFrom, 0, 0, 1));
    double scale = pitchPx(uvToPhoto, (uFrom + uTo) / 2, (vFrom + vTo) / 2) * f;
    ColourPatch colour = photo.straightened(map, width, height, scale);
    Plane grey = Grey.of(colour);
    return new Strip(
        colour,
        grey,
        ripple(grey, perPitch),
        uvToPhoto,
        uFrom,
        vFrom,
        perPitch,
        photo.widthPx(),
        photo.heightPx());
  }

  /** Brightness less its mean over one pitch along the row: edges that run along the row vanish. */
  static Plane ripple(Plane grey, int s) {
    int w = grey.width();
    float[] out = new float[grey.data().length];
    double[] sum = new double[w + 1];
    for (int y = 0; y < grey.height(); y++) {
      for (int x = 0; x < w; x++) {
        sum[x + 1] = sum[x] + grey.at(x, y);
      }
      for (int x = 0; x < w; x++) {
        int from = Math.max(0, Math.min(w - s, x - s / 2));
        out[y * w + x] = (float) (grey.at(x, y) - (sum[from + s] - sum[from]) / s);
      }
    }
    return new Plane(w, grey.height(), out);
  }

  /** Photo pixels per pitch along the row at a place. */
  public static double pitchPx(Homography uvToPhoto, double u, double v) {
    return uvToPhoto.map(u - 0.5, v).distanceTo(uvToPhoto.map(u + 0.5, v));
  }

  public int width() {
    return grey.width();
  }

  public int height() {
    return grey.height();
  }

  public double x(double u) {
    return (u - uFrom) * perPitch;
  }

  public double y(double v) {
    return (v - vFrom) * perPitch;
  }

  double u(double x) {
    return uFrom + x / perPitch;
  }

  public double v(double y) {
    return vFrom + y / perPitch;
  }

  /** Whether a place lies in the photo. */
  public boolean shows(double u, double v) {
    PointPx p = uvToPhoto.map(u, v);
    return p.x() >= 0 && p.y() >= 0 && p.x() <= photoWidth - 1 && p.y() <= photoHeight - 1;
  }

  /** The part of a picture of this strip around u, [v0, v1]; beyond the edge the edge repeats. */
  ColourPatch cut(ColourPatch patch, double u0, double u1, double v0, double v1) {
    return new ColourPatch(
        cut(patch.red(), u0, u1, v0, v1),
        cut(patch.green(), u0, u1, v0, v1),
        cut(patch.blue(), u0, u1, v0, v1));
  }

  /** The part of a plane of this strip around u, [v0, v1]; beyond the edge the edge repeats. */
  public Plane cut(Plane plane, double u0, double u1, double v0, double v1) {
    int x0 = (int) Math.round(x(u0));
    int y0 = (int) Math.round(y(v0));
    int w = (int) Math.round((u1 - u0) * perPitch) + 1;
    int h = (int) Math.round((v1 - v0) * perPitch) + 1;
    float[] data = new float[w * h];
    for (int j = 0; j < h; j++) {
      int y = Math.max(0, Math.min(plane.height() - 1, y0 + j));
      for (int i = 0; i < w; i++) {
        int x = Math.max(0, Math.min(plane.width() - 1, x0 + i));
        data[j * w + i] = plane.at(x, y);
      }
    }
    return new Plane(w, h, data);
  }
}
