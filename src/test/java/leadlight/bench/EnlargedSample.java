package leadlight.bench;

import java.nio.file.Path;
import java.util.Locale;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.trial.truth.PhotoTruth;
import leadlight.trial.truth.TrialPhoto;
import leadlight.trial.truth.TruthFolder;
import org.opencv.core.Core;
import org.opencv.core.Mat;
import org.opencv.core.MatOfInt;
import org.opencv.core.Size;
import org.opencv.imgcodecs.Imgcodecs;
import org.opencv.imgproc.Imgproc;

/**
 * A photo of any size: a sample, enlarged to the photo's width and continued above and below by its
 * own edge rows; 4 to 3, JPEG.
 */
final class EnlargedSample {

  private static final String SAMPLE = "base-station-video-good";
  private static final int JPEG_QUALITY = 92;

  private final TrialPhoto sample =
      TruthFolder.read(Path.of("sample-images")).stream()
          .filter(photo -> photo.file().getFileName().toString().startsWith(SAMPLE))
          .findFirst()
          .orElseThrow();
  private final int sampleWidthPx;

  EnlargedSample() {
    // Reading by Leadlight also has the native library loaded in Leadlight's own way.
    try (Photo photo = new PhotoReader().read(sample.file())) {
      sampleWidthPx = photo.info().widthPx();
    }
  }

  PhotoTruth truth() {
    return sample.truth().orElseThrow();
  }

  double scale(double megapixels) {
    return widthPx(megapixels) / (double) sampleWidthPx;
  }

  private static int widthPx(double megapixels) {
    return (int) Math.round(Math.sqrt(megapixels * 1e6 * 4 / 3));
  }

  Path write(double megapixels, Path folder) {
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
    Path file = folder.resolve(String.format(Locale.ROOT, "photo-%.0f.jpg", megapixels));
    MatOfInt settings = new MatOfInt(Imgcodecs.IMWRITE_JPEG_QUALITY, JPEG_QUALITY);
    Imgcodecs.imwrite(file.toString(), whole, settings);
    settings.release();
    picture.release();
    large.release();
    whole.release();
    return file;
  }
}
