package leadlight.page;

import java.util.List;
import leadlight.page.look.Assets;
import leadlight.page.photo.PageView;
import leadlight.page.photo.PinView;

/**
 * What the customer's sheet says: the same for the page and the PDF.
 *
 * @param language tag of the language
 * @param title heading
 * @param facts job, board, date
 * @param summary the result in plain sentences
 * @param pictures before and after
 * @param lists titled lists: what was wrong, what still needs work, what a picture cannot show
 * @param signed who signs, or that nobody did
 * @param signedName the name; empty if nobody
 * @param sealed the seal of the record, and what it is for
 * @param small what stands at the foot
 */
record SheetView(
    String language,
    String title,
    List<PinView.Line> facts,
    List<String> summary,
    List<Picture> pictures,
    List<PageView.TitledList> lists,
    String signed,
    String signedName,
    String sealed,
    String small) {

  /** A straightened row; the first of a state carries its caption. */
  record Picture(String caption, String label, byte[] jpeg, int widthPx, int heightPx) {
    String uri() {
      return Assets.dataUri("image/jpeg", jpeg);
    }
  }
}
