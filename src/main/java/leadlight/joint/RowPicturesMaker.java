package leadlight.joint;

import java.util.List;
import leadlight.joint.cut.LevelledPatch;
import leadlight.joint.cut.PatchGrid;
import leadlight.joint.cut.TypicalJoint;
import leadlight.model.picture.RowPictures;

/**
 * From the straightened joints to the small pictures that the second reader looks at. The reader
 * was trained on just these bytes: another crop, order or scale here asks for another training.
 */
final class RowPicturesMaker {

  /** Even sizes halve cleanly; the raster's last column and rows are left out. */
  static final int WIDTH = PatchGrid.WIDTH - 1;

  static final int HEIGHT = PatchGrid.HEIGHT - 2;

  /** The row's dark end of light; glints and pits to either side must fit too. */
  private static final int DARK = 64;

  private static final int LIGHT_RANGE = 128;
  private static final int GREY = 128;
  private static final int COLOUR_RANGE = 192;
  private static final int MOST = 255;

  private RowPicturesMaker() {}

  static RowPictures of(List<LevelledPatch> joints, TypicalJoint typical) {
    return new RowPictures(
        WIDTH,
        HEIGHT,
        -PatchGrid.X_HALF,
        PatchGrid.Y_FROM,
        PatchGrid.DENSITY,
        joints.stream()
            .map(it -> picture(it.landLight(), it.landRedGreen(), it.landYellowBlue()))
            .toList(),
        picture(typical.light(), typical.redGreen(), typical.yellowBlue()));
  }

  private static byte[] picture(float[] light, float[] redGreen, float[] yellowBlue) {
    byte[] picture = new byte[RowPictures.PLANES * WIDTH * HEIGHT];
    put(light, DARK, LIGHT_RANGE, picture, 0);
    put(redGreen, GREY, COLOUR_RANGE, picture, 1);
    put(yellowBlue, GREY, COLOUR_RANGE, picture, 2);
    return picture;
  }

  private static void put(float[] from, int zero, int range, byte[] to, int plane) {
    int at = plane * WIDTH * HEIGHT;
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        int level = Math.round(zero + range * from[y * PatchGrid.WIDTH + x]);
        to[at++] = (byte) Math.max(0, Math.min(MOST, level));
      }
    }
  }
}
