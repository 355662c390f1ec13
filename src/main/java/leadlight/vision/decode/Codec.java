package leadlight.vision.decode;

import java.util.Optional;
import leadlight.vision.Frame;
import leadlight.vision.MatScope;
import org.opencv.core.Core;
import org.opencv.core.CvException;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.imgcodecs.Imgcodecs;

/** Picture bytes to frames. */
public final class Codec {

  private static final int AS_STORED = Imgcodecs.IMREAD_IGNORE_ORIENTATION;

  private Codec() {}

  /**
   * A decoded picture.
   *
   * @param frame owned by the taker
   * @param significantBits 8, or for a 16-bit file how many of its bits carry the picture: 10, 12,
   *     14 or 16
   */
  public record Decoded(Frame frame, int significantBits) {}

  /**
   * Decodes to 8 bits and three channels as stored: orientation tags are ignored, but for TIFF,
   * whose decoder always applies its own. Grey becomes three equal channels; an alpha channel is
   * dropped and the colour stored beneath it kept.
   *
   * <p>16-bit values are divided, never clipped: v -> round(255 v / (2^b - 1)). b is 16 unless the
   * brightest value fits into 10, 12 or 14 bits, as cameras leave it that put their 12-bit values
   * unshifted into 16-bit files.
   *
   * @param picture the file's bytes
   * @param half decode at half size (rounded up); a JPEG is then never held in full size
   * @return empty if the bytes are no whole picture
   */
  public static Optional<Decoded> decode(EncodedPicture picture, boolean half) {
    int colour = half ? Imgcodecs.IMREAD_REDUCED_COLOR_2 : Imgcodecs.IMREAD_COLOR;
    return read(picture, colour | AS_STORED).map(mat -> new Decoded(new Frame(mat), 8));
  }

  /**
   * As {@link #decode}, for files of 16 bits a channel. Closes the picture before the 8-bit copy is
   * made, so that never more than two of the three are held.
   */
  public static Optional<Decoded> decode16(EncodedPicture picture) {
    Optional<Mat> deep =
        read(picture, Imgcodecs.IMREAD_COLOR | Imgcodecs.IMREAD_ANYDEPTH | AS_STORED);
    picture.close();
    return deep.map(Codec::to8);
  }

  /**
   * Decodes the bytes of an 8-bit file in full size; see {@link #decode(EncodedPicture, boolean)}.
   */
  public static Optional<Frame> decode(byte[] file) {
    try (EncodedPicture picture = EncodedPicture.of(file)) {
      return decode(picture, false).map(Decoded::frame);
    }
  }

  private static Optional<Mat> read(EncodedPicture picture, int flags) {
    try {
      Mat mat = Imgcodecs.imdecode(picture.bytes(), flags);
      if (mat.empty()) {
        MatScope.release(mat);
        return Optional.empty();
      }
      return Optional.of(mat);
    } catch (CvException e) {
      return Optional.empty();
    }
  }

  private static Decoded to8(Mat deep) {
    try {
      int bits = deep.depth() == CvType.CV_16U ? significantBits(deep) : 8;
      double scale = bits == 8 ? 1 : 255.0 / ((1 << bits) - 1);
      Mat mat = new Mat();
      deep.convertTo(mat, CvType.CV_8U, scale);
      return new Decoded(new Frame(mat), bits);
    } finally {
      MatScope.release(deep);
    }
  }

  private static int significantBits(Mat deep) {
    try (MatScope scope = new MatScope()) {
      double brightest = Core.minMaxLoc(scope.add(deep.reshape(1))).maxVal;
      int bits = 10;
      while (bits < 16 && brightest >= 1 << bits) {
        bits += 2;
      }
      return bits;
    }
  }
}
