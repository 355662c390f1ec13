package leadlight.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import leadlight.model.Homography;
import leadlight.model.PointPx;
import leadlight.trial.truth.JointTruth;
import leadlight.trial.truth.PhotoTruth;
import org.opencv.core.Core;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Rect;
import org.opencv.core.Scalar;
import org.opencv.core.Size;
import org.opencv.imgproc.Imgproc;

/**
 * Something that makes a picture worse, or turns it, together with its truth.
 *
 * @param name for the table
 * @param alter makes the picture and says where its places went
 */
record Alteration(String name, Alter alter) {

  /** Makes the altered picture; the given one stays as it is. */
  interface Alter {
    Altered of(Mat picture, PhotoTruth truth);
  }

  /**
   * An altered picture.
   *
   * @param picture owned by the taker
   * @param truth where everything is now
   */
  record Altered(Mat picture, PhotoTruth truth) {}

  static List<Alteration> all() {
    List<Alteration> all = new ArrayList<>();
    all.add(new Alteration("as taken", (picture, truth) -> new Altered(picture.clone(), truth)));
    for (double ofPitch : new double[] {0.02, 0.04, 0.08, 0.15}) {
      all.add(blurred(ofPitch));
    }
    for (double pitchPx : new double[] {20, 15, 10, 8, 6}) {
      all.add(shrunk(pitchPx));
    }
    for (double gain : new double[] {1.3, 1.6, 2, 3}) {
      all.add(overexposed(gain));
    }
    all.add(cropped(2));
    all.add(cropped(5));
    all.add(covered(4));
    for (double angleDeg : new double[] {0, 37, 90, 180, 270}) {
      all.add(rotated(angleDeg));
    }
    return all;
  }

  static Alteration blurred(double ofPitch) {
    return new Alteration(
        String.format(Locale.ROOT, "blurred by %.2f pitch more", ofPitch),
        (picture, truth) -> {
          Mat blurred = new Mat();
          Imgproc.GaussianBlur(picture, blurred, new Size(), ofPitch * truth.pitchPx());
          return new Altered(blurred, truth);
        });
  }

  static Alteration shrunk(double pitchPx) {
    return new Alteration(
        String.format(Locale.ROOT, "shrunk to %.0f px a pitch", pitchPx),
        (picture, truth) -> {
          double factor = pitchPx / truth.pitchPx();
          Mat small = new Mat();
          Imgproc.resize(picture, small, new Size(), factor, factor, Imgproc.INTER_AREA);
          double shift = factor / 2 - 0.5;
          return new Altered(
              small, moved(truth, new Homography(factor, 0, shift, 0, factor, shift, 0, 0, 1)));
        });
  }

  static Alteration overexposed(double gain) {
    return new Alteration(
        String.format(Locale.ROOT, "over-exposed by %.1f", gain),
        (picture, truth) -> {
          Mat bright = new Mat();
          picture.convertTo(bright, -1, gain, 0);
          return new Altered(bright, truth);
        });
  }

  /** Cuts the picture in the middle of the gap before the last leads. */
  static Alteration cropped(int leads) {
    return new Alteration(
        "cropped, " + leads + " leads cut off",
        (picture, truth) -> {
          PointPx end = truth.joints().get(truth.leads() - leads).landToePx();
          PointPx before = truth.joints().get(truth.leads() - leads - 1).landToePx();
          int cut = (int) Math.round((end.x() + before.x()) / 2);
          boolean keepLeft = before.x() < end.x();
          int x = keepLeft ? 0 : cut;
          int width = keepLeft ? cut : picture.cols() - cut;
          Mat part = picture.submat(new Rect(x, 0, width, picture.rows())).clone();
          return new Altered(part, moved(truth, new Homography(1, 0, -x, 0, 1, 0, 0, 0, 1)));
        });
  }

  /** Lays a grey strip over leads in the middle of the row. */
  static Alteration covered(int leads) {
    return new Alteration(
        leads + " leads covered",
        (picture, truth) -> {
          Mat covered = picture.clone();
          int first = (truth.leads() - leads) / 2;
          double from = truth.joints().get(first).landToePx().x();
          double to = truth.joints().get(first + leads - 1).landToePx().x();
          double half = truth.pitchPx() / 2;
          int x = (int) Math.round(Math.min(from, to) - half);
          int width = (int) Math.round(Math.abs(to - from) + 2 * half);
          Mat strip = covered.submat(new Rect(x, 0, width, picture.rows()));
          strip.setTo(new Scalar(90, 90, 90));
          strip.release();
          return new Altered(covered, truth);
        });
  }

  /** Turns clockwise about the middle, on a canvas that holds all of it. */
  static Alteration rotated(double angleDeg) {
    return new Alteration(
        String.format(Locale.ROOT, "rotated by %.0f deg", angleDeg),
        (picture, truth) -> {
          double cos = Math.cos(Math.toRadians(angleDeg));
          double sin = Math.sin(Math.toRadians(angleDeg));
          int w = picture.cols();
          int h = picture.rows();
          int width = (int) Math.ceil(Math.abs(w * cos) + Math.abs(h * sin) - 1e-6);
          int height = (int) Math.ceil(Math.abs(w * sin) + Math.abs(h * cos) - 1e-6);
          double cx = (w - 1) / 2.0;
          double cy = (h - 1) / 2.0;
          double tx = (width - 1) / 2.0 - cos * cx + sin * cy;
          double ty = (height - 1) / 2.0 - sin * cx - cos * cy;
          Mat map = new Mat(2, 3, CvType.CV_64F);
          map.put(0, 0, cos, -sin, tx, sin, cos, ty);
          Mat turned = new Mat();
          Imgproc.warpAffine(
              picture,
              turned,
              map,
              new Size(width, height),
              Imgproc.INTER_CUBIC,
              Core.BORDER_CONSTANT,
              Core.mean(picture));
          map.release();
          return new Altered(
              turned, moved(truth, new Homography(cos, -sin, tx, sin, cos, ty, 0, 0, 1)));
        });
  }

  private static PhotoTruth moved(PhotoTruth truth, Homography map) {
    PointPx origin = map.map(0, 0);
    PointPx body = map.map(truth.towardsBodyPx().x(), truth.towardsBodyPx().y());
    return new PhotoTruth(
        truth.photo(),
        truth.connector(),
        truth.leads(),
        truth.pitchMm(),
        truth.landsAtMm(),
        truth.leadWidthMm(),
        truth.landLengthMm(),
        truth.landAheadOfToeMm(),
        truth.lamp(),
        truth.mask(),
        truth.edgeBlurPx(),
        truth.tiltRad(),
        new PointPx(body.x() - origin.x(), body.y() - origin.y()),
        truth.joints().stream().map(joint -> moved(joint, map)).toList());
  }

  private static JointTruth moved(JointTruth joint, Homography map) {
    return new JointTruth(
        joint.pin(),
        joint.toePx().map(at -> map.map(at.x(), at.y())),
        joint.heelPx().map(at -> map.map(at.x(), at.y())),
        map.map(joint.landToePx().x(), joint.landToePx().y()),
        map.map(joint.landHeelPx().x(), joint.landHeelPx().y()),
        joint.condition(),
        joint.class2(),
        joint.findings(),
        joint.sideOverhangOfLeadWidth(),
        joint.wetted(),
        joint.liftedMm(),
        joint.bridgeTo());
  }
}
