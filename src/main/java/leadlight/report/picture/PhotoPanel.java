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

  /** A small copy of the photo that shows where the row lies and at which end pin 1 is. */
  private static final class Locator implements Block {

    private static final int MOST_WIDTH_PX = 430;
    private static final int MOST_HEIGHT_PX = 300;
    private static final int CAPTION_PX = 26;

    private final Frame picture;
    private final List<PointPx> corners;
    private final int lastPin;
    private final String caption;
    private final double factor;

    /**
     * Takes the photo and the row's corners in it.
     *
     * @param picture the photo, at any size
     * @param corners at pin 1 body side, then round by the last pin, in pixels of the picture
     */
    Locator(Frame picture, List<PointPx> corners, int lastPin, String caption) {
      this.caption = caption;
      this.picture = picture;
      this.corners = corners;
      this.lastPin = lastPin;
      this.factor =
          Math.min(
              1,
              Math.min(
                  MOST_WIDTH_PX / (double) picture.widthPx(),
                  MOST_HEIGHT_PX / (double) picture.heightPx()));
    }

    int widthPx() {
      return (int) Math.max(1, Math.round(factor * picture.widthPx()));
    }

    private int pictureHeightPx() {
      return (int) Math.max(1, Math.round(factor * picture.heightPx()));
    }

    @Override
    public int heightPx() {
      return CAPTION_PX + pictureHeightPx();
    }

    @Override
    public void paint(Pen pen, int x, int y) {
      int top = y + CAPTION_PX;
      pen.text(TextStyle.NOTE, caption, x, y + 17);
      pen.canvas().paste(picture, x, top, widthPx(), pictureHeightPx());
      pen.frame(Pen.RULE, x, top, widthPx(), pictureHeightPx());
      outline(pen, x, top, 5, Pen.INK);
      outline(pen, x, top, 2, Pen.PAPER);
      end(pen, x, top, 0, 3, 1);
      end(pen, x, top, 1, 2, lastPin);
    }

    private void outline(Pen pen, int x, int y, double thickness, int colour) {
      for (int i = 0; i < 4; i++) {
        PointPx a = corners.get(i);
        PointPx b = corners.get((i + 1) % 4);
        pen.line(
            colour,
            thickness,
            x + factor * a.x(),
            y + factor * a.y(),
            x + factor * b.x(),
            y + factor * b.y());
      }
    }

    /** The pin's number at an end of the row, on a plate that stays on the small picture. */
    private void end(Pen pen, int x, int y, int bodyCorner, int openCorner, int pin) {
      PointPx a = corners.get(bodyCorner);
      PointPx b = corners.get(openCorner);
      String text = "" + pin;
      int width = (int) Math.ceil(TextStyle.STRONG.width(text)) + 8;
      int height = 22;
      double middleX = x + factor * (a.x() + b.x()) / 2;
      double middleY = y + factor * (a.y() + b.y()) / 2;
      int left = clamp((int) Math.round(middleX - width / 2.0), x, x + widthPx() - width);
      int top = clamp((int) Math.round(middleY - height / 2.0), y, y + pictureHeightPx() - height);
      pen.rect(Pen.INK, left - 1, top - 1, width + 2, height + 2);
      pen.rect(Pen.PAPER, left, top, width, height);
      pen.textAround(TextStyle.STRONG, text, left + width / 2.0, top + 17);
    }

    private static int clamp(int value, int least, int most) {
      return Math.max(least, Math.min(value, most));
    }
  }
}
