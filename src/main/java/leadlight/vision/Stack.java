package leadlight.vision;

import java.util.Arrays;
import java.util.List;
import leadlight.model.Homography;
import org.opencv.core.Core;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Scalar;
import org.opencv.core.Size;
import org.opencv.imgproc.Imgproc;

/**
 * Pictures of one view laid over the first and averaged: where all are as sharp, noise falls with
 * the root of their number; where one is sharper, it counts more.
 */
public final class Stack {

  private final Mat first;
  private final Mat sum;
  private final Mat weights;
  private final Settings settings;
  private final int width;
  private final int height;

  /**
   * How pictures are averaged.
   *
   * @param quietPx sigma by which noise is smoothed before sharpness is looked at, pixels
   * @param placePx sigma of the surroundings whose sharpness counts for a place, pixels
   * @param power of the squared contrast that a picture's weight grows with
   * @param floor squared contrast that is no sign of sharpness, square grey levels
   */
  public record Settings(double quietPx, double placePx, double power, double floor) {}

  /**
   * A picture.
   *
   * @param picture stays open
   * @param fromFirst from the first picture's pixels to its own
   */
  public record Layer(Frame picture, Homography fromFirst) {}

  private Stack(Frame first, Settings settings, MatScope scope) {
    this.first = first.mat();
    this.width = first.widthPx();
    this.height = first.heightPx();
    this.settings = settings;
    this.sum = scope.add(Mat.zeros(height, width, CvType.CV_32FC3));
    this.weights = scope.add(Mat.zeros(height, width, CvType.CV_32F));
  }

  /** The average, with the first picture's pixels; to be closed by the caller. */
  public static Frame of(List<Layer> layers, Settings settings) {
    try (MatScope scope = new MatScope()) {
      Frame first = layers.get(0).picture();
      Stack stack = new Stack(first, settings, scope);
      for (Layer layer : layers) {
        stack.add(layer, layer.picture() == first);
      }
      return new Frame(stack.mean(scope));
    }
  }

  /** Mean squared contrast of a picture from pixel to pixel, noise smoothed. */
  public static double sharpness(Frame picture, double quietPx) {
    try (MatScope scope = new MatScope()) {
      Mat deep = scope.add(new Mat());
      picture.mat().convertTo(deep, CvType.CV_32FC3);
      return Core.mean(contrast(deep, quietPx, scope)).val[0];
    }
  }

  private void add(Layer layer, boolean itself) {
    try (MatScope scope = new MatScope()) {
      Mat deep = scope.add(new Mat());
      layer.picture().mat().convertTo(deep, CvType.CV_32FC3);
      Mat seen = scope.add(new Mat(deep.size(), CvType.CV_32F, new Scalar(1)));
      Mat over = itself ? deep : warped(deep, layer, Imgproc.INTER_CUBIC, scope);
      Mat within = itself ? seen : warped(seen, layer, Imgproc.INTER_NEAREST, scope);
      Core.multiply(over, Scalar.all(gain(over, within, scope)), over);
      Mat weight = sharpness(over, scope);
      Core.multiply(weight, within, weight);
      Mat three = scope.add(new Mat());
      Core.merge(List.of(weight, weight, weight), three);
      Core.multiply(over, three, over);
      Core.add(sum, over, sum);
      Core.add(weights, weight, weights);
    }
  }

  /** First's light over a layer's, green, where both show: what lies beyond an edge is no dark. */
  private double gain(Mat over, Mat within, MatScope scope) {
    Mat shown = scope.add(new Mat());
    within.convertTo(shown, CvType.CV_8U);
    double own = Core.mean(over, shown).val[1];
    return own > 0 ? Core.mean(first, shown).val[1] / own : 1;
  }

  private Mat warped(Mat picture, Layer layer, int how, MatScope scope) {
    Mat map = scope.add(new Mat(3, 3, CvType.CV_64F));
    map.put(0, 0, layer.fromFirst().rowMajor());
    Mat warped = scope.add(new Mat());
    Imgproc.warpPerspective(
        picture,
        warped,
        map,
        new Size(width, height),
        how | Imgproc.WARP_INVERSE_MAP,
        Core.BORDER_CONSTANT,
        Scalar.all(0));
    return warped;
  }

  /** Squared contrast around each place, to a power. */
  private Mat sharpness(Mat picture, MatScope scope) {
    Mat contrast = contrast(picture, settings.quietPx(), scope);
    Imgproc.GaussianBlur(contrast, contrast, new Size(), settings.placePx());
    Core.add(contrast, Scalar.all(settings.floor()), contrast);
    Core.pow(contrast, settings.power(), contrast);
    return contrast;
  }

  private static Mat contrast(Mat picture, double quietPx, MatScope scope) {
    Mat grey = scope.add(new Mat());
    Imgproc.cvtColor(picture, grey, Imgproc.COLOR_BGR2GRAY);
    Imgproc.GaussianBlur(grey, grey, new Size(), quietPx);
    Mat across = scope.add(new Mat());
    Mat down = scope.add(new Mat());
    Imgproc.Sobel(grey, across, CvType.CV_32F, 1, 0, 3, 0.125);
    Imgproc.Sobel(grey, down, CvType.CV_32F, 0, 1, 3, 0.125);
    Core.multiply(across, across, across);
    Core.multiply(down, down, down);
    Core.add(across, down, across);
    return across;
  }

  private Mat mean(MatScope scope) {
    Mat three = scope.add(new Mat());
    Core.merge(Arrays.asList(weights, weights, weights), three);
    Core.divide(sum, three, sum);
    Mat whole = new Mat();
    sum.convertTo(whole, CvType.CV_8UC3);
    return whole;
  }
}
