package leadlight.vision.blur;

import java.util.Arrays;
import leadlight.vision.Frame;
import leadlight.vision.MatScope;
import org.opencv.core.Core;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Rect;
import org.opencv.imgproc.Imgproc;

/** Brightness and noise of a picture. */
public final class ToneMeter {

  private static final int LEVELS = GreyScan.LEVELS;
  private static final int NOISE_TILE_PX = 64;

  /** Tiles along each side of the lattice on which noise is measured. */
  private static final int NOISE_TILES = 8;

  private ToneMeter() {}

  /**
   * How a picture's grey levels are spread.
   *
   * @param levels share of the pixels at each of the 256 levels; owned by this record
   */
  public record Tones(double[] levels) {

    /** Share of the pixels at {@code level} or above. */
    public double shareFrom(int level) {
      return Arrays.stream(levels, level, LEVELS).sum();
    }

    /** Share of the pixels at {@code level} or below. */
    public double shareUpTo(int level) {
      return Arrays.stream(levels, 0, level + 1).sum();
    }

    /** The lowest level that at least {@code share} of the pixels do not exceed. */
    public int quantile(double share) {
      double sum = 0;
      for (int level = 0; level < LEVELS; level++) {
        sum += levels[level];
        if (sum >= share) {
          return level;
        }
      }
      return LEVELS - 1;
    }
  }

  /** The spread of a picture's grey levels. */
  public static Tones tones(GreyScan scan) {
    return new Tones(scan.shares());
  }

  /**
   * The standard deviation of the noise, in grey levels: the median over a lattice of tiles of
   * Immerkaer's estimate (1996, Computer Vision and Image Understanding 64, 300-302, doi
   * 10.1006/cviu.1996.0060), sigma = sqrt(pi / 2) / 6 times the mean absolute response to the mask
   * 1 -2 1, -2 4 -2, 1 -2 1. Approximate: fine structure counts as noise, and what JPEG or the
   * camera smoothed away does not.
   */
  public static double noise(Frame frame) {
    try (MatScope scope = new MatScope()) {
      Mat mask = scope.add(new Mat(3, 3, CvType.CV_32F));
      mask.put(0, 0, 1, -2, 1, -2, 4, -2, 1, -2, 1);
      double[] sigmas = new double[NOISE_TILES * NOISE_TILES];
      for (int i = 0; i < sigmas.length; i++) {
        Rect tile = tile(frame, i % NOISE_TILES, i / NOISE_TILES);
        Mat grey = grey(scope.add(frame.mat().submat(tile)), scope);
        Mat response = scope.add(new Mat());
        Imgproc.filter2D(grey, response, CvType.CV_16S, mask);
        double mean = Core.norm(response, Core.NORM_L1) / tile.area();
        sigmas[i] = Math.sqrt(Math.PI / 2) / 6 * mean;
      }
      Arrays.sort(sigmas);
      return sigmas[sigmas.length / 2];
    }
  }

  private static Rect tile(Frame frame, int column, int row) {
    int width = Math.min(NOISE_TILE_PX, frame.widthPx());
    int height = Math.min(NOISE_TILE_PX, frame.heightPx());
    return new Rect(
        (frame.widthPx() - width) * column / (NOISE_TILES - 1),
        (frame.heightPx() - height) * row / (NOISE_TILES - 1),
        width,
        height);
  }

  private static Mat grey(Mat bgr, MatScope scope) {
    Mat grey = scope.add(new Mat());
    Imgproc.cvtColor(bgr, grey, Imgproc.COLOR_BGR2GRAY);
    return grey;
  }
}
