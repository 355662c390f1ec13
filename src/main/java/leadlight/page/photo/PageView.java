package leadlight.page.photo;

import java.util.List;
import java.util.Optional;
import leadlight.page.look.StripView;
import leadlight.page.words.Verdicts;
import leadlight.text.Messages;

/**
 * All that the template of the photo page needs, ready to be put in.
 *
 * @param words the language
 * @param policy content-security policy
 * @param css the style with the places of this row's pins
 * @param script the page's own script
 * @param title of the window
 * @param file name of the photo
 * @param headline the result in one line
 * @param verdict id of the photo's verdict
 * @param counts joints by verdict, then legs
 * @param facts name and value of what a reader must know of the job
 * @param strips the row straightened
 * @param typical the row's typical joint, if a row was found
 * @param pins the joints, pin 1 first
 * @param legs anchor legs in photos of their own, if any were given
 * @param rework what to touch up, if a row was found
 * @param symptoms symptoms and pins
 * @param whole the whole photo
 * @param noRow why no row was found, if none was
 * @param rowNotes what is to be said of the row as a whole
 * @param lists titled lists of sentences: photo, not visible, cautions, limits
 * @param made by what and of what
 * @param leftPin the pin at the left end
 */
public record PageView(
    Messages words,
    String policy,
    String css,
    String script,
    String title,
    String file,
    String headline,
    String verdict,
    List<Verdicts.Count> counts,
    List<PinView.Line> facts,
    List<StripView> strips,
    Optional<Typical> typical,
    List<PinView> pins,
    Optional<LegsView> legs,
    Optional<ReworkView> rework,
    List<SymptomView> symptoms,
    WholePhoto whole,
    Optional<String> noRow,
    List<String> rowNotes,
    List<TitledList> lists,
    String made,
    int leftPin) {

  /** The typical joint's picture; places in the plot's units. */
  public record Typical(
      String uri,
      double xUnits,
      double yUnits,
      double widthUnits,
      double heightUnits,
      boolean mirrored,
      String profile) {}

  /** A symptom with the pins to look at. */
  public record SymptomView(String text, String pins, String advice, String found, String source) {}

  /** The photo, shrunk, with the row's frame and its pins in it. */
  public record WholePhoto(
      String uri,
      int widthPx,
      int heightPx,
      String frame,
      double pin1X,
      double pin1Y,
      List<PinSpot> spots) {}

  /** Sentences under a title. */
  public record TitledList(String id, String title, List<String> sentences) {}

  /** The pins that need hands, in the order of their numbers. */
  public List<Integer> hands() {
    return pins.stream().filter(PinView::needsHands).map(PinView::pin).toList();
  }

  StripView stripOf(int pin) {
    return strips.stream().filter(s -> s.pins().contains(pin - 1)).findFirst().orElseThrow();
  }
}
