package leadlight.vision;

import java.util.Optional;
import org.opencv.core.Mat;
import org.opencv.core.MatOfByte;
import org.opencv.imgcodecs.Imgcodecs;

/** Picture bytes to frames. */
public final class Codec {

  private Codec() {}

  /** Decodes as stored (orientation tags ignored); empty if the bytes are no picture. */
  public static Optional<Frame> decode(byte[] file) {
    NativeLibrary.load();
    try (MatScope scope = new MatScope()) {
      MatOfByte bytes = scope.add(new MatOfByte(file));
      Mat mat =
          Imgcodecs.imdecode(bytes, Imgcodecs.IMREAD_COLOR | Imgcodecs.IMREAD_IGNORE_ORIENTATION);
      if (mat.empty()) {
        mat.release();
        return Optional.empty();
      }
      return Optional.of(new Frame(mat));
    }
  }
}
