package leadlight.page.photo;

import java.util.List;
import java.util.Optional;
import leadlight.model.PointPx;
import leadlight.model.joint.GradedJoint;
import leadlight.model.picture.ColourPatch;
import leadlight.model.picture.RowView;
import leadlight.page.look.Assets;
import leadlight.page.look.Plot;
import leadlight.report.strip.StripGeometry;
import leadlight.vision.Canvas;
import leadlight.vision.Frame;

/** The pictures of a photo's page besides its strips: the whole photo and the typical joint. */
final class PagePictures {

  private static final int WHOLE_PX = 1400;
  private static final int QUALITY = 85;

  private PagePictures() {}

  static PageView.Typical typical(RowView view, boolean mirrored) {
    ColourPatch patch = view.typical();
    double unitsPerPixel = Plot.PITCH / view.pixelsPerPitch();
    Plot plot = Plot.of(view, view.joints().get(0));
    return new PageView.Typical(
        Assets.dataUri("image/jpeg", jpeg(patch)),
        Plot.PITCH * view.xFromPitch() - unitsPerPixel / 2,
        Plot.PITCH * view.yFromPitch() - unitsPerPixel / 2,
        patch.width() * unitsPerPixel,
        patch.height() * unitsPerPixel,
        mirrored,
        plot.typical());
  }

  private static byte[] jpeg(ColourPatch patch) {
    byte[] rgb = new byte[3 * patch.width() * patch.height()];
    for (int i = 0; i < patch.red().data().length; i++) {
      rgb[3 * i] = (byte) Math.round(patch.red().data()[i]);
      rgb[3 * i + 1] = (byte) Math.round(patch.green().data()[i]);
      rgb[3 * i + 2] = (byte) Math.round(patch.blue().data()[i]);
    }
    // Enlarged here, since browsers smooth small pictures less well.
    int times = 3;
    try (Frame frame = Frame.ofRgb(patch.width(), patch.height(), rgb);
        Canvas canvas = new Canvas(times * patch.width(), times * patch.height(), 0)) {
      canvas.paste(frame, 0, 0, times * patch.width(), times * patch.height());
      return canvas.jpeg(QUALITY);
    }
  }

  static PageView.WholePhoto whole(
      Frame picture, Optional<StripGeometry> geometry, List<GradedJoint> joints) {
    double factor =
        Math.min(1, WHOLE_PX / (double) Math.max(picture.widthPx(), picture.heightPx()));
    StringBuilder frame = new StringBuilder();
    PointPx pin1 = new PointPx(0, 0);
    List<PointPx> corners = geometry.map(StripGeometry::corners).orElse(List.of());
    for (PointPx corner : corners) {
      frame.append(tenths(factor * (corner.x() + 0.5))).append(',');
      frame.append(tenths(factor * (corner.y() + 0.5))).append(' ');
    }
    if (!corners.isEmpty()) {
      PointPx a = corners.get(0);
      PointPx b = corners.get(3);
      pin1 = new PointPx(factor * (a.x() + b.x()) / 2, factor * (a.y() + b.y()) / 2);
    }
    try (Frame small = picture.shrunk(factor);
        Canvas canvas = new Canvas(small.widthPx(), small.heightPx(), 0)) {
      canvas.paste(small, 0, 0, small.widthPx(), small.heightPx());
      return new PageView.WholePhoto(
          Assets.dataUri("image/jpeg", canvas.jpeg(QUALITY)),
          small.widthPx(),
          small.heightPx(),
          frame.toString().strip(),
          tenths(pin1.x()),
          tenths(pin1.y()),
          PinSpot.of(joints, factor));
    }
  }

  /** A place in tenths of a unit, so that no noise digits show. */
  static double tenths(double value) {
    return Math.round(value * 10) / 10.0;
  }
}
