package leadlight.report.picture;

import java.util.Locale;
import leadlight.model.PointPx;
import leadlight.model.result.Nudge;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.row.Lead;
import leadlight.model.row.RowOutcome;
import leadlight.report.paint.Pen;
import leadlight.report.paint.TextStyle;
import leadlight.report.words.PictureWords;
import leadlight.vision.Canvas;
import leadlight.vision.Frame;

/**
 * The photo at rest, ahead of each lead what it did when pushed: an arrow and micrometres where it
 * moved, a bar where it held, a question mark, a dot. Shapes tell them apart in grey print, too.
 */
public final class NudgePicture {

  private static final int WIDTH_PX = 1600;
  private static final int HEAD_PX = 84;
  private static final double AWAY_PITCH = 1.6;
  private static final int MOVES = 0xb3261e;
  private static final int FIRM = 0x1b5e20;

  private final RowOutcome.Found row;
  private final double factor;
  private final Pen pen;

  private NudgePicture(RowOutcome.Found row, double factor, Pen pen) {
    this.row = row;
    this.factor = factor;
    this.pen = pen;
  }

  /** The picture as PNG. */
  public static byte[] png(
      ScoredPhoto rest, RowOutcome.Found row, Nudge nudge, Frame photo, PictureWords said) {
    double factor = WIDTH_PX / (double) photo.widthPx();
    int height = (int) Math.round(photo.heightPx() * factor);
    try (Canvas canvas = new Canvas(WIDTH_PX, height + HEAD_PX, Pen.PAPER)) {
      canvas.paste(photo, 0, HEAD_PX, WIDTH_PX, height);
      Pen pen = new Pen(canvas);
      pen.text(TextStyle.TITLE, said.get("pushed", rest.photo().file()), 24, 36);
      pen.text(TextStyle.BODY, said.get("pushed.key"), 24, 64);
      NudgePicture picture = new NudgePicture(row, factor, pen);
      for (Lead lead : row.leads()) {
        picture.mark(lead, nudge.leads().get(lead.pin() - 1));
      }
      return canvas.png();
    }
  }

  private void mark(Lead lead, Nudge.Moved moved) {
    double dx = lead.toePx().x() - lead.heelPx().x();
    double dy = lead.toePx().y() - lead.heelPx().y();
    double length = Math.hypot(dx, dy);
    double away = AWAY_PITCH * row.pitchPx() / length;
    PointPx at = place(lead.toePx().x() + dx * away, lead.toePx().y() + dy * away);
    double half = 0.3 * row.pitchPx() * factor;
    double along = row.angleRad();
    double cos = Math.cos(along);
    double sin = Math.sin(along);
    double x = at.x();
    double y = at.y();
    pen.rect(Pen.PAPER, (int) (x - half - 6), (int) (y - 26), (int) (2 * half + 12), 44);
    pen.textAround(TextStyle.BODY_BOLD, "" + lead.pin(), x, y - 10);
    switch (moved.motion()) {
      case MOVES -> {
        double sign = moved.shiftUm().orElse(0) < 0 ? -1 : 1;
        arrow(x, y, sign * half * cos, sign * half * sin);
        pen.textAround(
            TextStyle.NOTE,
            String.format(Locale.ROOT, "%.0f", Math.abs(moved.shiftUm().orElse(0))),
            x,
            y + 15);
      }
      case FIRM ->
          pen.line(FIRM, 5, x - half * cos, y - half * sin, x + half * cos, y + half * sin);
      case CANNOT_TELL -> pen.textAround(TextStyle.BODY_BOLD, "?", x, y + 8);
      case NOT_TOUCHED -> pen.rect(Pen.FAINT_INK, (int) x - 2, (int) y - 2, 4, 4);
    }
  }

  private PointPx place(double x, double y) {
    double px = Math.max(20, Math.min(WIDTH_PX - 20, x * factor));
    double most = pen.canvas().heightPx() - 20;
    return new PointPx(px, Math.max(HEAD_PX + 26, Math.min(most, y * factor + HEAD_PX)));
  }

  private void arrow(double x, double y, double dx, double dy) {
    pen.line(MOVES, 4, x - dx, y - dy, x + dx, y + dy);
    pen.fill(
        MOVES,
        x + 1.3 * dx,
        y + 1.3 * dy,
        x + 0.5 * dx - 0.5 * dy,
        y + 0.5 * dy + 0.5 * dx,
        x + 0.5 * dx + 0.5 * dy,
        y + 0.5 * dy - 0.5 * dx);
  }
}
