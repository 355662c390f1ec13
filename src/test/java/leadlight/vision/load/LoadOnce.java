package leadlight.vision.load;

import leadlight.vision.Frame;
import leadlight.vision.Threads;
import org.opencv.core.Core;

/** A program of its own for {@link NativeLibraryTest}: loads, uses and says which copy it has. */
final class LoadOnce {

  private LoadOnce() {}

  public static void main(String[] args) {
    Threads.set(1);
    try (Frame frame = Frame.ofRgb(2, 1, new byte[] {1, 2, 3, 4, 5, 6})) {
      System.out.println("width " + frame.widthPx() + ", threads " + Core.getNumThreads());
    } catch (leadlight.model.UserError e) {
      System.out.println("refused " + e.getMessage());
    }
  }
}
