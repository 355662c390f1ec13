package leadlight.report.picture;

import leadlight.model.Verdict;
import leadlight.model.result.LegSet;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.result.Settings;
import leadlight.model.row.RowOutcome;
import leadlight.report.paint.Block;
import leadlight.report.paint.Pen;
import leadlight.report.paint.TextBlock;
import leadlight.report.paint.TextStyle;
import leadlight.report.paint.Typeface;
import leadlight.report.paint.VerdictMark;
import leadlight.report.words.PictureWords;
import leadlight.report.words.ReportContext;
import leadlight.text.Sentences;

/** Name, connector, class, counts (which explain the marks), and what the photo cannot show. */
final class Header implements Block {

  private static final int TITLE_PX = 40;
  private static final int COUNTS_PX = 40;
  private static final int MARK_PX = 24;
  private static final TextStyle COUNT = new TextStyle(Typeface.BOLD, 20, Pen.INK);
  private static final TextStyle REASON = new TextStyle(Typeface.BOLD, 20, Pen.INK);

  private final ScoredPhoto scored;
  private final ReportContext context;
  private final int widthPx;
  private final PictureWords said;
  private final TextBlock job;
  private final TextBlock limits;

  Header(ScoredPhoto scored, LegSet legs, ReportContext context, int widthPx) {
    this.scored = scored;
    this.context = context;
    this.said = new PictureWords(context.words());
    Sentences sentences = said.sentences();
    this.widthPx = widthPx;
    Settings settings = scored.settings();
    this.job =
        new TextBlock(widthPx)
            .add(
                TextStyle.BODY,
                said.get(
                    "limits",
                    said.job(settings.row(), settings.productClass()),
                    settings.acceptanceSet(),
                    context.limits().name(context.words())));
    this.limits = new TextBlock(widthPx);
    if (scored.row() instanceof RowOutcome.NotFound none) {
      limits.add(REASON, said.get("no-row", sentences.of(none.reason())));
    }
    if (!legs.legs().isEmpty()) {
      limits.add(REASON, said.legs(legs));
    }
    limits.addAll(
        TextStyle.BODY_BOLD,
        sentences.of(scored.rowNotes()).stream().map(note -> said.get("row", note)).toList());
    limits.addAll(
        TextStyle.BODY_BOLD,
        sentences.of(scored.fitness()).stream().map(note -> said.get("photo", note)).toList());
    limits.add(
        TextStyle.BODY,
        said.get("not-visible", String.join(" \u2022 ", sentences.of(scored.notVisible()))));
  }

  @Override
  public int heightPx() {
    return TITLE_PX + job.heightPx() + countsPx() + limits.heightPx();
  }

  private int countsPx() {
    return scored.joints().isEmpty() ? 8 : COUNTS_PX;
  }

  @Override
  public void paint(Pen pen, int x, int y) {
    String maker = said.get("made", context.toolVersion());
    double makerPx = TextStyle.NOTE.width(maker);
    pen.textEndingAt(TextStyle.NOTE, maker, x + widthPx, y + 26);
    String name = TextStyle.TITLE.cut(scored.photo().file(), widthPx - makerPx - 40);
    pen.text(TextStyle.TITLE, name, x, y + 28);
    int down = y + TITLE_PX;
    job.paint(pen, x, down);
    down += job.heightPx();
    if (!scored.joints().isEmpty()) {
      counts(pen, x, down + COUNTS_PX / 2 + 2);
    }
    limits.paint(pen, x, down + countsPx());
  }

  private void counts(Pen pen, double x, double middle) {
    double at = x;
    for (Verdict verdict : Verdict.WORST_FIRST) {
      VerdictMark.draw(pen, verdict, at + MARK_PX / 2.0, middle, MARK_PX);
      String text = said.counted(scored.joints(), verdict);
      pen.text(COUNT, text, at + MARK_PX + 8, middle + 7);
      at += MARK_PX + 8 + COUNT.width(text) + 36;
    }
  }
}
