package leadlight.report.picture;

import java.util.List;
import leadlight.model.result.LegSet;
import leadlight.report.paint.Block;
import leadlight.report.paint.Pen;
import leadlight.report.paint.TextBlock;
import leadlight.report.paint.TextStyle;
import leadlight.report.words.LegSentences;
import leadlight.report.words.PictureWords;
import leadlight.text.VerdictWords;
import leadlight.vision.Frame;

/** A photo of anchor legs with their marks, and what is said of each. */
final class LegPanel implements Block {

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
