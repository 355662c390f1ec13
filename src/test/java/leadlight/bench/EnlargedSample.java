package leadlight.bench;

import java.nio.file.Path;
import java.util.Locale;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.trial.truth.PhotoTruth;
import leadlight.trial.truth.TrialPhoto;
import leadlight.trial.truth.TruthFolder;
import org.opencv.core.Core;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.MatOfInt;
import org.opencv.core.Size;
import org.opencv.imgcodecs.Imgcodecs;
import org.opencv.imgproc.Imgproc;

/**
 * A photo of any size: a sample, enlarged to the photo's width and continued above and below by its
 * own edge rows, with noise drawn by a stated seed; 4 to 3, JPEG.
 */
public final class EnlargedSample {

  static final String CLEAR = "base-station-video-good";

  private static final int JPEG_QUALITY = 92;

  /** Grey levels, standard deviation; common practice, no source. */
  private static final double NOISE = 2;

  private final TrialPhoto sample;
  private final int sampleWidthPx;

  public EnlargedSample() {
    this(CLEAR);
  }

  /** Takes the sample's name, without ending. */
  EnlargedSample(String name) {
    sample =
        TruthFolder.read(Path.of("sample-images")).stream()
            .filter(photo -> photo.file().getFileName().toString().equals(name + ".jpg"))
            .findFirst()
            .orElseThrow();
    // Reading by Leadlight also has the native library loaded in Leadlight's own way.
    try (Photo photo = new PhotoReader().read(sample.file())) {
      sampleWidthPx = photo.info().widthPx();
    }
  }

  public PhotoTruth truth() {
    return sample.truth().orElseThrow();
  }

  public double scale(double megapixels) {
    return widthPx(megapixels) / (double) sampleWidthPx;
  }

  private static int widthPx(double megapixels) {
    return (int) Math.round(Math.sqrt(megapixels * 1e6 * 4 / 3));
  }

  public Path write(double megapixels, Path folder) {
    return write(megapixels, 1, folder);
  }

  /** The same with other noise, so that no two files are alike. */
  Path write(double megapixels, int seed, Path folder) {
    int width = widthPx(megapixels);
    int height = width * 3 / 4;
    Mat picture = Imgcodecs.imread(sample.file().toString());
    Mat large = new Mat();
    Size size = new Size(width, Math.round(picture.rows() * scale(megapixels)));
    Imgproc.resize(picture, large, size, 0, 0, Imgproc.INTER_CUBIC);
    int above = (height - large.rows()) / 2;
    int below = height - large.rows() - above;
    Mat whole = new Mat();
    Core.copyMakeBorder(large, whole, above, below, 0, 0, Core.BORDER_REPLICATE);
    addNoise(whole, seed);
    Path file = folder.resolve(String.format(Locale.ROOT, "photo-%.0f-%d.jpg", megapixels, seed));
    MatOfInt settings = new MatOfInt(Imgcodecs.IMWRITE_JPEG_QUALITY, JPEG_QUALITY);
    Imgcodecs.imwrite(file.toString(), whole, settings);
    settings.release();
    picture.release();
    large.release();
    whole.release();
    return file;
  }

  private static void addNoise(Mat picture, int seed) {
    Core.setRNGSeed(seed);
    Mat noise = new Mat(picture.size(), CvType.CV_8SC3);
    Core.randn(noise, 0, NOISE);
    Core.add(picture, noise, picture, new Mat(), CvType.CV_8U);
    noise.release();
  }
}
