package leadlight.vision;

import java.util.ArrayDeque;
import java.util.Deque;
import org.opencv.core.Mat;

/** Temporaries of one operation, released together. */
final class MatScope implements AutoCloseable {

  private final Deque<Mat> mats = new ArrayDeque<>();

  <M extends Mat> M add(M mat) {
    mats.push(mat);
    return mat;
  }

  @Override
  public void close() {
    while (!mats.isEmpty()) {
      mats.pop().release();
    }
  }
}
