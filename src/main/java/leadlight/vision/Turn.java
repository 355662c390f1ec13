package leadlight.vision;

import org.opencv.core.Core;
import org.opencv.core.Mat;

/** The eight Exif orientations (Exif 2.32, tag 0x0112; TIFF 6.0, Orientation). */
final class Turn {

  private static final int BOTH = -1;
  private static final int TOP_BOTTOM = 0;
  private static final int LEFT_RIGHT = 1;

  private Turn() {}

  /**
   * The upright picture of a stored one: a new image of the same pixels.
   *
   * @param orientation where the stored first row and column belong, 1 to 8
   */
  static Mat upright(Mat stored, int orientation) {
    Mat upright = new Mat();
    switch (orientation) {
      case 1 -> stored.copyTo(upright);
      case 2 -> Core.flip(stored, upright, LEFT_RIGHT);
      case 3 -> Core.flip(stored, upright, BOTH);
      case 4 -> Core.flip(stored, upright, TOP_BOTTOM);
      case 5 -> Core.transpose(stored, upright);
      case 6 -> Core.rotate(stored, upright, Core.ROTATE_90_CLOCKWISE);
      case 7 -> {
        Core.transpose(stored, upright);
        Core.flip(upright, upright, BOTH);
      }
      case 8 -> Core.rotate(stored, upright, Core.ROTATE_90_COUNTERCLOCKWISE);
      default ->
          throw new IllegalArgumentException("orientation must be 1 to 8, is " + orientation);
    }
    return upright;
  }
}
