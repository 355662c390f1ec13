package leadlight.vision;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import leadlight.model.Homography;
import leadlight.model.picture.ColourPatch;
import leadlight.model.picture.Plane;
import leadlight.vision.load.NativeLibrary;
import org.opencv.core.Core;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Range;
import org.opencv.core.Rect;
import org.opencv.core.Size;
import org.opencv.imgproc.Imgproc;

/**
 * A picture in native memory: 8 bits a channel, blue-green-red, owned by this object and released
 * when it is closed. Its pixels never change.
 */
public final class Frame implements AutoCloseable {

  private static final AtomicInteger LIVE = new AtomicInteger();

  private final Mat mat;

  /** The picture shrunk to half, a quarter ... of its size, as far as anybody asked. */
  private final List<Mat> halves = new ArrayList<>();

  private boolean open = true;

  /** Takes over the image, which must be of 8 bits and three channels. */
  public Frame(Mat mat) {
    if (mat.type() != CvType.CV_8UC3) {
      throw new IllegalArgumentException("a frame has 8 bits and 3 channels, not " + mat);
    }
    this.mat = mat;
    LIVE.incrementAndGet();
  }

  /** Number of frames not yet closed; zero after each test. */
  public static int live() {
    return LIVE.get();
  }

  /** A frame from interleaved red-green-blue bytes, row by row. */
  public static Frame ofRgb(int width, int height, byte[] rgb) {
    NativeLibrary.load();
    try (MatScope scope = new MatScope()) {
      Mat source = scope.add(new Mat(height, width, CvType.CV_8UC3));
      source.put(0, 0, rgb);
      Mat bgr = new Mat();
      Imgproc.cvtColor(source, bgr, Imgproc.COLOR_RGB2BGR);
      return new Frame(bgr);
    }
  }

  /** Columns. */
  public int widthPx() {
    return mat().cols();
  }

  /** Rows. */
  public int heightPx() {
    return mat().rows();
  }

  /** The native image, for this package alone. */
  public Mat mat() {
    if (!open) {
      throw new IllegalStateException("the frame is closed");
    }
    return mat;
  }

  /**
   * The picture halved so many times; made once, whoever asks, and released with this frame. Each
   * pixel is the mean of four; of an odd side the last pixel is left out.
   *
   * @param times at least 1; both sides must stay above zero
   */
  public synchronized Mat halved(int times) {
    while (halves.size() < times) {
      Mat last = halves.isEmpty() ? mat() : halves.get(halves.size() - 1);
      Mat half = new Mat();
      Shrink.halve(last, half);
      halves.add(half);
    }
    return halves.get(times - 1);
  }

  /** A copy shrunk by area averaging to {@code factor} (above 0, at most 1) of its size. */
  public Frame shrunk(double factor) {
    if (factor == 0.5 && widthPx() % 2 == 0 && heightPx() % 2 == 0) {
      // Pixels never change, so that both may hold the same ones.
      return new Frame(new Mat(halved(1), Range.all()));
    }
    Mat small = new Mat();
    if (factor < 0.5) {
      Size size = new Size(Math.rint(factor * widthPx()), Math.rint(factor * heightPx()));
      Imgproc.resize(notTwice(size), small, size, 0, 0, Imgproc.INTER_AREA);
    } else {
      Imgproc.resize(mat(), small, new Size(), factor, factor, Imgproc.INTER_AREA);
    }
    return new Frame(small);
  }

  /** The smallest of the halved pictures that is at least of a size, as {@link Shrink} has it. */
  private Mat notTwice(Size size) {
    int times = 0;
    Mat from = mat();
    while (Shrink.fitsTwice(from, size)) {
      from = halved(++times);
    }
    return from;
  }

  /**
   * A copy turned and mirrored as an Exif orientation asks.
   *
   * @param exifOrientation 1 to 8
   */
  public Frame upright(int exifOrientation) {
    return new Frame(Turn.upright(mat(), exifOrientation));
  }

  /** A copy of a part; the part must lie within the frame. */
  public Frame cropped(int x, int y, int widthPx, int heightPx) {
    Mat view = mat().submat(new Rect(x, y, widthPx, heightPx));
    try {
      return new Frame(view.clone());
    } finally {
      MatScope.release(view);
    }
  }

  /** Interleaved red-green-blue bytes, row by row. */
  public byte[] rgb() {
    try (MatScope scope = new MatScope()) {
      Mat rgb = scope.add(new Mat());
      Imgproc.cvtColor(mat(), rgb, Imgproc.COLOR_BGR2RGB);
      byte[] bytes = new byte[rgb.rows() * rgb.cols() * 3];
      rgb.get(0, 0, bytes);
      return bytes;
    }
  }

  /**
   * A straightened piece: pixel (i, j) of the result shows the photo at {@code patchToPhoto(i, j)},
   * linearly interpolated; beyond the edge the edge is repeated. To shrink by more than two, shrink
   * the frame first, else fine detail aliases.
   */
  public ColourPatch straightened(Homography patchToPhoto, int width, int height) {
    try (MatScope scope = new MatScope()) {
      Mat map = scope.add(new Mat(3, 3, CvType.CV_64F));
      map.put(0, 0, patchToPhoto.rowMajor());
      Mat warped = scope.add(new Mat());
      Imgproc.warpPerspective(
          mat(),
          warped,
          map,
          new Size(width, height),
          Imgproc.INTER_LINEAR | Imgproc.WARP_INVERSE_MAP,
          Core.BORDER_REPLICATE);
      byte[] bytes = new byte[width * height * 3];
      warped.get(0, 0, bytes);
      return new ColourPatch(
          plane(bytes, 2, width, height),
          plane(bytes, 1, width, height),
          plane(bytes, 0, width, height));
    }
  }

  /**
   * The light of a straightened piece, grey levels that are not rounded, cubic interpolation: for
   * shifts of hundredths of a pixel. Places as in {@link #straightened}.
   */
  public Plane light(Homography patchToPhoto, int width, int height) {
    try (MatScope scope = new MatScope()) {
      Mat map = scope.add(new Mat(3, 3, CvType.CV_64F));
      map.put(0, 0, patchToPhoto.rowMajor());
      Mat grey = scope.add(new Mat());
      Imgproc.cvtColor(mat(), grey, Imgproc.COLOR_BGR2GRAY);
      Mat deep = scope.add(new Mat());
      grey.convertTo(deep, CvType.CV_32F);
      Mat warped = scope.add(new Mat());
      Imgproc.warpPerspective(
          deep,
          warped,
          map,
          new Size(width, height),
          Imgproc.INTER_CUBIC | Imgproc.WARP_INVERSE_MAP,
          Core.BORDER_REPLICATE);
      float[] data = new float[width * height];
      warped.get(0, 0, data);
      return new Plane(width, height, data);
    }
  }

  private static Plane plane(byte[] bgr, int channel, int width, int height) {
    float[] data = new float[width * height];
    for (int i = 0; i < data.length; i++) {
      data[i] = bgr[3 * i + channel] & 0xff;
    }
    return new Plane(width, height, data);
  }

  @Override
  public synchronized void close() {
    if (open) {
      open = false;
      MatScope.release(mat);
      halves.forEach(MatScope::release);
      halves.clear();
      LIVE.decrementAndGet();
    }
  }
}
