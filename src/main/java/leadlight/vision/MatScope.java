package leadlight.vision;

import java.lang.ref.Reference;
import java.util.ArrayDeque;
import java.util.Deque;
import org.opencv.core.Mat;

/** Temporaries of one operation, released together. */
public final class MatScope implements AutoCloseable {

  private final Deque<Mat> mats = new ArrayDeque<>();

  public <M extends Mat> M add(M mat) {
    mats.push(mat);
    return mat;
  }

  @Override
  public void close() {
    while (!mats.isEmpty()) {
      release(mats.pop());
    }
  }

  /**
   * Releases an image whose last use this is. An object that is not used any more may be collected
   * while its own native method still runs, and the finalizer of {@code Mat} would then free the
   * same memory a second time; the fence keeps it until the method has returned.
   */
  public static void release(Mat mat) {
    mat.release();
    Reference.reachabilityFence(mat);
  }
}
