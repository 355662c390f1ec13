package leadlight.vision;

import java.util.ArrayList;
import java.util.List;
import leadlight.model.Homography;
import leadlight.model.picture.ColourPatch;

/**
 * A picture and its halved, quartered ... copies, so that a straightened piece is always taken from
 * a copy of about the wanted resolution. Does not own the picture; owns the copies. Safe for use by
 * several threads until it is closed.
 */
public final class Pyramid implements AutoCloseable {

  private static final int SMALLEST_SIDE_PX = 24;

  private final List<Frame> levels = new ArrayList<>();

  /** Prepares the first level; the others are made when asked for. */
  public Pyramid(Frame frame) {
    levels.add(frame);
  }

  /** Columns of the full picture. */
  public int widthPx() {
    return levels.get(0).widthPx();
  }

  /** Rows of the full picture. */
  public int heightPx() {
    return levels.get(0).heightPx();
  }

  /**
   * A straightened piece as by {@link Frame#straightened}, from the copy whose pixels are not more
   * than about 1.5 times finer than the piece's.
   *
   * @param photoPxPerPatchPx how many photo pixels one pixel of the piece covers
   */
  public ColourPatch straightened(
      Homography patchToPhoto, int width, int height, double photoPxPerPatchPx) {
    int level = 0;
    while (photoPxPerPatchPx / (1 << level) > 1.5 && grow(level + 1)) {
      level++;
    }
    double f = 1.0 / (1 << level);
    Homography photoToLevel = new Homography(f, 0, f / 2 - 0.5, 0, f, f / 2 - 0.5, 0, 0, 1);
    return at(level).straightened(photoToLevel.after(patchToPhoto), width, height);
  }

  private synchronized boolean grow(int level) {
    if (level < levels.size()) {
      return true;
    }
    Frame last = levels.get(levels.size() - 1);
    if (Math.min(last.widthPx(), last.heightPx()) < 2 * SMALLEST_SIDE_PX) {
      return false;
    }
    levels.add(last.shrunk(0.5));
    return true;
  }

  private synchronized Frame at(int level) {
    return levels.get(level);
  }

  @Override
  public synchronized void close() {
    for (Frame copy : levels.subList(1, levels.size())) {
      copy.close();
    }
  }
}
