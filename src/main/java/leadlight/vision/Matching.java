package leadlight.vision;

import leadlight.model.picture.ColourPatch;
import leadlight.model.picture.Plane;
import leadlight.vision.load.NativeLibrary;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.imgproc.Imgproc;

/** Template matching. */
public final class Matching {

  private Matching() {}

  /**
   * Normalised cross-correlation (means removed, channels together) of a template with each place
   * of an image: the value at (x, y) is for the template's first pixel at (x, y). Places without
   * contrast give 0.
   */
  public static Plane correlation(ColourPatch image, ColourPatch template) {
    NativeLibrary.load();
    try (MatScope scope = new MatScope()) {
      Mat scores = scope.add(new Mat());
      Imgproc.matchTemplate(
          scope.add(mat(image)), scope.add(mat(template)), scores, Imgproc.TM_CCOEFF_NORMED);
      float[] data = new float[scores.rows() * scores.cols()];
      scores.get(0, 0, data);
      for (int i = 0; i < data.length; i++) {
        data[i] = Float.isFinite(data[i]) ? Math.max(-1, Math.min(1, data[i])) : 0;
      }
      return new Plane(scores.cols(), scores.rows(), data);
    }
  }

  private static Mat mat(ColourPatch patch) {
    float[] r = patch.red().data();
    float[] g = patch.green().data();
    float[] b = patch.blue().data();
    float[] mixed = new float[3 * r.length];
    for (int i = 0; i < r.length; i++) {
      mixed[3 * i] = b[i];
      mixed[3 * i + 1] = g[i];
      mixed[3 * i + 2] = r[i];
    }
    Mat mat = new Mat(patch.height(), patch.width(), CvType.CV_32FC3);
    mat.put(0, 0, mixed);
    return mat;
  }
}
