package leadlight.report.picture;

import java.util.ArrayList;
import java.util.List;
import leadlight.model.PointPx;
import leadlight.model.result.LegSet;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.row.RowOutcome;
import leadlight.report.paint.Block;
import leadlight.report.paint.Sheet;
import leadlight.report.strip.RowStrip;
import leadlight.report.strip.StripGeometry;
import leadlight.report.words.PictureWords;
import leadlight.report.words.ReportContext;
import leadlight.vision.Frame;

/**
 * The annotated picture: header, the straightened row with its marks around it, the findings, and
 * the untouched photo. One width for every photo, so that letters have one size.
 */
public final class AnnotatedPicture {

  private AnnotatedPicture() {}

  static byte[] png(ScoredPhoto scored, Frame photo, ReportContext context) {
    return png(scored, photo, LegPhotos.NONE, context);
  }

  /** The same with photos of anchor legs below the row. */
  public static byte[] png(ScoredPhoto scored, Frame photo, LegPhotos legs, ReportContext context) {
    PictureWords said = new PictureWords(context.words());
    double factor = Math.min(1, Sheet.CONTENT_PX / (double) photo.widthPx());
    try (Frame small = photo.shrunk(factor)) {
      List<Block> blocks = new ArrayList<>();
      blocks.add(new Header(scored, legs.set(), context, Sheet.CONTENT_PX));
      List<PointPx> corners = new ArrayList<>();
      if (scored.row() instanceof RowOutcome.Found found) {
        StripGeometry geometry =
            new StripGeometry(
                found,
                scored.settings().row(),
                scored.joints(),
                Sheet.CONTENT_PX - Sheet.BESIDE_STRIP_PX);
        for (List<Integer> strip : geometry.strips()) {
          blocks.add(new RowStrip(geometry, strip, scored.joints(), photo, said));
        }
        blocks.add(new FindingTable(Entry.of(scored.joints(), context), Sheet.CONTENT_PX, said));
        for (PointPx corner : geometry.corners()) {
          corners.add(new PointPx(factor * corner.x(), factor * corner.y()));
        }
      }
      for (int i = 0; i < legs.pictures().size(); i++) {
        LegSet set = legs.set();
        blocks.add(
            new LegPanel(set, set.photos().get(i), legs.pictures().get(i), Sheet.CONTENT_PX, said));
      }
      blocks.add(new PhotoPanel(scored, context, small, corners, Sheet.CONTENT_PX));
      return Sheet.png(blocks);
    }
  }
}
