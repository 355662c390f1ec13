package leadlight.vision;

import leadlight.vision.load.NativeLibrary;
import org.opencv.core.Core;

/** How many threads OpenCV works with; its own choice, one per core, unless set. */
public final class Threads {

  private Threads() {}

  /**
   * Sets the number of threads for the whole program; loads nothing for it. Results do not depend
   * on it.
   *
   * @param count at least 1
   * @throws IllegalArgumentException if below 1
   */
  public static void set(int count) {
    if (count < 1) {
      throw new IllegalArgumentException("count must be at least 1, is " + count);
    }
    NativeLibrary.whenLoaded(() -> Core.setNumThreads(count));
  }
}
