package leadlight.joint;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import leadlight.model.RowPictures;

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
  private static final int LEVELS = 256;

  private RowPicturesMaker() {}

  static RowPictures of(List<JointPatch> patches, RowLight light) {
    List<byte[]> joints = new ArrayList<>();
    for (JointPatch patch : patches) {
      byte[] picture = new byte[RowPictures.PLANES * WIDTH * HEIGHT];
      put(light.levelled(patch.landLight()), DARK, LIGHT_RANGE, picture, 0);
      put(light.scaled(patch.landRedGreen()), GREY, COLOUR_RANGE, picture, 1);
      put(light.scaled(patch.landYellowBlue()), GREY, COLOUR_RANGE, picture, 2);
      joints.add(picture);
    }
    return new RowPictures(
        WIDTH,
        HEIGHT,
        -PatchGrid.X_HALF,
        PatchGrid.Y_FROM,
        PatchGrid.DENSITY,
        joints,
        typical(joints));
  }

  private static void put(float[] from, int zero, int range, byte[] to, int plane) {
    int at = plane * WIDTH * HEIGHT;
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        int level = Math.round(zero + range * from[y * PatchGrid.WIDTH + x]);
        to[at++] = (byte) Math.max(0, Math.min(LEVELS - 1, level));
      }
    }
  }

  /** The lower middle value of each place, by counting. */
  private static byte[] typical(List<byte[]> joints) {
    byte[] typical = new byte[joints.get(0).length];
    int[] count = new int[LEVELS];
    int below = (joints.size() - 1) / 2;
    for (int i = 0; i < typical.length; i++) {
      Arrays.fill(count, 0);
      for (byte[] joint : joints) {
        count[joint[i] & 0xff]++;
      }
      int level = 0;
      for (int passed = count[0]; passed <= below; passed += count[level]) {
        level++;
      }
      typical[i] = (byte) level;
    }
    return typical;
  }
}
