package leadlight.register;

import leadlight.model.Homography;
import leadlight.model.PointPx;
import leadlight.model.picture.ColourPatch;
import leadlight.model.picture.Plane;
import leadlight.vision.Frame;

/**
 * A photo's piece over a grid.
 *
 * @param grid where its pixels lie
 * @param light grey levels, 0 to 255, not rounded
 * @param seen whether a pixel lies in the photo
 */
public record Cut(RowGrid grid, Plane light, boolean[] seen) {

  /**
   * Cuts a photo; one that the grid shows much smaller is shrunk first, else detail aliases.
   *
   * @param gridToPhoto grid pixels to photo pixels
   */
  public static Cut of(Frame photo, RowGrid grid, Homography gridToPhoto, RegisterTuning tuning) {
    PointPx a = gridToPhoto.map(grid.width() / 2.0, grid.height() / 2.0);
    PointPx b = gridToPhoto.map(grid.width() / 2.0 + 1, grid.height() / 2.0);
    if (a.distanceTo(b) > tuning.mostShrink().value()) {
      double factor = 1 / a.distanceTo(b);
      try (Frame small = photo.shrunk(factor)) {
        return straight(small, grid, shrinking(factor).after(gridToPhoto));
      }
    }
    return straight(photo, grid, gridToPhoto);
  }

  /**
   * The same of colour: how far each pixel is from grey, 0 to 255, in place of its light.
   *
   * @param gridToPhoto grid pixels to photo pixels
   */
  static Cut colour(Frame photo, RowGrid grid, Homography gridToPhoto) {
    ColourPatch patch = photo.straightened(gridToPhoto, grid.width(), grid.height());
    float[] far = new float[grid.width() * grid.height()];
    for (int i = 0; i < far.length; i++) {
      float red = patch.red().data()[i];
      float green = patch.green().data()[i];
      float blue = patch.blue().data()[i];
      far[i] = Math.max(red, Math.max(green, blue)) - Math.min(red, Math.min(green, blue));
    }
    Plane colour = new Plane(grid.width(), grid.height(), far);
    return new Cut(grid, colour, seen(photo, grid, gridToPhoto));
  }

  /** Pixel centres lie at whole numbers, so shrinking moves the first centre by half a pixel. */
  private static Homography shrinking(double factor) {
    double shift = factor / 2 - 0.5;
    return new Homography(factor, 0, shift, 0, factor, shift, 0, 0, 1);
  }

  private static Cut straight(Frame photo, RowGrid grid, Homography gridToPhoto) {
    Plane light = photo.light(gridToPhoto, grid.width(), grid.height());
    return new Cut(grid, light, seen(photo, grid, gridToPhoto));
  }

  private static boolean[] seen(Frame photo, RowGrid grid, Homography gridToPhoto) {
    boolean[] seen = new boolean[grid.width() * grid.height()];
    for (int j = 0; j < grid.height(); j++) {
      for (int i = 0; i < grid.width(); i++) {
        PointPx at = gridToPhoto.map(i, j);
        seen[j * grid.width() + i] =
            at.x() >= 0 && at.y() >= 0 && at.x() < photo.widthPx() && at.y() < photo.heightPx();
      }
    }
    return seen;
  }
}
