package leadlight.report.picture;

import java.util.List;
import java.util.Optional;
import leadlight.model.PointPx;
import leadlight.model.result.ScoredPhoto;
import leadlight.report.paint.Block;
import leadlight.report.paint.Pen;
import leadlight.report.paint.TextBlock;
import leadlight.report.paint.TextStyle;
import leadlight.report.words.PictureWords;
import leadlight.report.words.ReportContext;
import leadlight.vision.Frame;

/**
 * The whole photo without any mark, with where the row lies in it, cautions and what the limits are
 * worth.
 */
final class PhotoPanel implements Block {

  private static final int MOST_HEIGHT_PX = 640;
  private static final int CAPTION_PX = 26;
  private static final int GAP_PX = 32;
  private static final int LEAST_SIDE_PX = 460;
  private static final double MOST_ENLARGED = 2;

  private final Frame picture;
  private final double factor;
  private final int leftPx;
  private final boolean beside;
  private final Optional<Locator> locator;
  private final TextBlock notes;
  private final String caption;

  /**
   * Takes the photo, already shrunk to a size worth pasting.
   *
   * @param corners the row's corners in the picture; empty if there is none
   */
  PhotoPanel(
      ScoredPhoto scored,
      ReportContext context,
      Frame picture,
      List<PointPx> corners,
      int widthPx) {
    this.picture = picture;
    PictureWords said = new PictureWords(context.words());
    this.factor =
        Math.min(
            MOST_ENLARGED,
            Math.min(
                widthPx / (double) picture.widthPx(),
                MOST_HEIGHT_PX / (double) picture.heightPx()));
    this.caption = caption(scored, factor * picture.widthPx() / scored.photo().widthPx(), said);
    this.leftPx = Math.max(shownWidthPx(), (int) Math.ceil(TextStyle.NOTE.width(caption)));
    int side = widthPx - leftPx - GAP_PX;
    this.beside = side >= LEAST_SIDE_PX;
    this.locator =
        corners.isEmpty()
            ? Optional.empty()
            : Optional.of(new Locator(picture, corners, scored.joints().size(), said.get("where")));
    int locatorPx = locator.map(Locator::widthPx).orElse(-GAP_PX);
    this.notes = new TextBlock(beside ? side : widthPx - locatorPx - GAP_PX);
    if (!scored.cautions().isEmpty()) {
      notes
          .add(TextStyle.BODY_BOLD, context.words().get("page.cautions"))
          .addAll(TextStyle.BODY, said.sentences().of(scored.cautions()));
    }
    notes
        .add(TextStyle.BODY_BOLD, context.words().get("page.provenance"))
        .add(TextStyle.BODY, String.join(" ", context.limits().notes(context.words())));
  }

  private static String caption(ScoredPhoto scored, double times, PictureWords said) {
    return said.get("whole", scored.photo().widthPx(), scored.photo().heightPx(), said.size(times));
  }

  private int shownWidthPx() {
    return (int) Math.max(1, Math.round(factor * picture.widthPx()));
  }

  private int shownHeightPx() {
    return (int) Math.max(1, Math.round(factor * picture.heightPx()));
  }

  @Override
  public int heightPx() {
    int photo = CAPTION_PX + shownHeightPx();
    int locatorPx = locator.map(Locator::heightPx).orElse(0);
    return beside
        ? Math.max(photo, locatorPx + GAP_PX / 2 + notes.heightPx())
        : photo + GAP_PX / 2 + Math.max(locatorPx, notes.heightPx());
  }

  @Override
  public void paint(Pen pen, int x, int y) {
    int top = y + CAPTION_PX;
    pen.text(TextStyle.NOTE, caption, x, y + 17);
    pen.canvas().paste(picture, x, top, shownWidthPx(), shownHeightPx());
    pen.frame(Pen.RULE, x, top, shownWidthPx(), shownHeightPx());
    if (beside) {
      int side = x + leftPx + GAP_PX;
      locator.ifPresent(l -> l.paint(pen, side, y));
      int down = locator.map(l -> l.heightPx() + GAP_PX / 2).orElse(CAPTION_PX);
      notes.paint(pen, side, y + down);
    } else {
      int down = top + shownHeightPx() + GAP_PX / 2;
      locator.ifPresent(l -> l.paint(pen, x, down));
      int side = locator.map(l -> l.widthPx() + GAP_PX).orElse(0);
      notes.paint(pen, x + side, down);
    }
  }
}
