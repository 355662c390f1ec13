package leadlight.report.picture;

import java.util.ArrayList;
import java.util.List;
import leadlight.model.PointPx;
import leadlight.model.result.LegSet;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.row.RowOutcome;
import leadlight.report.paint.Block;
import leadlight.report.paint.Pen;
import leadlight.report.paint.Sheet;
import leadlight.report.paint.TextBlock;
import leadlight.report.paint.TextStyle;
import leadlight.report.strip.RowStrip;
import leadlight.report.strip.StripGeometry;
import leadlight.report.words.LegSentences;
import leadlight.report.words.PictureWords;
import leadlight.report.words.ReportContext;
import leadlight.text.VerdictWords;
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

  /** A photo of anchor legs with their marks, and what is said of each. */
  private static final class LegPanel implements Block {

    private static final int TITLE_PX = 32;
    private static final int MOST_WIDTH_PX = 900;
    private static final int GAP_PX = 14;

    private final Frame picture;
    private final LegSet.Shown shown;
    private final int pictureWidthPx;
    private final int pictureHeightPx;
    private final String title;
    private final TextBlock words;

    LegPanel(LegSet set, LegSet.Shown shown, Frame picture, int widthPx, PictureWords said) {
      this.picture = picture;
      this.title =
          said.words()
              .get("legs.photo." + shown.side().id(), shown.photo().file(), shown.legs().size());
      this.shown = shown;
      this.pictureWidthPx = Math.min(MOST_WIDTH_PX, widthPx);
      this.pictureHeightPx =
          (int) Math.round(picture.heightPx() * pictureWidthPx / (double) picture.widthPx());
      this.words = new TextBlock(widthPx);
      List<LegSet.Joined> legs =
          set.legs().stream()
              .filter(leg -> leg.seen().stream().anyMatch(it -> it.file().equals(file())))
              .toList();
      for (LegSet.Joined leg : legs) {
        words.add(
            TextStyle.BODY,
            said.leg(leg)
                + ": "
                + VerdictWords.of(leg.verdict(), said.words())
                + "; "
                + LegSentences.of(leg, said.words(), said.sentences()));
      }
    }

    private String file() {
      return shown.photo().file();
    }

    @Override
    public int heightPx() {
      return TITLE_PX + pictureHeightPx + GAP_PX + words.heightPx();
    }

    @Override
    public void paint(Pen pen, int x, int y) {
      pen.text(TextStyle.BODY_BOLD, title, x, y + 20);
      pen.canvas().paste(picture, x, y + TITLE_PX, pictureWidthPx, pictureHeightPx);
      double factor = pictureWidthPx / (double) picture.widthPx();
      LegsPicture.marks(pen, shown.legs(), factor, x, y + TITLE_PX, pictureWidthPx);
      words.paint(pen, x, y + TITLE_PX + pictureHeightPx + GAP_PX);
    }
  }
}
