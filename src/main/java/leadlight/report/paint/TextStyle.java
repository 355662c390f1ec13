package leadlight.report.paint;

import java.util.ArrayList;
import java.util.List;

/**
 * How a text looks.
 *
 * @param typeface its letters
 * @param sizePx one em in pixels
 * @param colour 0xRRGGBB
 */
public record TextStyle(Typeface typeface, double sizePx, int colour) {

  public static final TextStyle TITLE = new TextStyle(Typeface.BOLD, 28, Pen.INK);
  public static final TextStyle STRONG = new TextStyle(Typeface.BOLD, 17, Pen.INK);
  public static final TextStyle BODY = new TextStyle(Typeface.REGULAR, 16, Pen.INK);
  public static final TextStyle BODY_BOLD = new TextStyle(Typeface.BOLD, 16, Pen.INK);
  public static final TextStyle NOTE = new TextStyle(Typeface.REGULAR, 14.5, Pen.FAINT_INK);

  private static final String ELLIPSIS = "\u2026";

  public double width(String text) {
    return typeface.width(text) * sizePx;
  }

  /** Distance from one base line to the next. */
  public int lineHeightPx() {
    return (int) Math.round(sizePx * 1.35);
  }

  /** Lines no wider than given; a word that is too wide alone is cut. */
  public List<String> wrapped(String text, double widthPx) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.strip().split("\\s+")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && width(longer) > widthPx) {
        lines.add(cut(line, widthPx));
        longer = word;
      }
      line = longer;
    }
    lines.add(cut(line, widthPx));
    return lines;
  }

  /** The text, or its beginning and end around an ellipsis if it is too wide. */
  public String cut(String text, double widthPx) {
    if (width(text) <= widthPx) {
      return text;
    }
    int[] letters = text.codePoints().toArray();
    for (int kept = letters.length - 1; kept > 1; kept--) {
      int head = kept - kept / 3;
      String shorter =
          new String(letters, 0, head)
              + ELLIPSIS
              + new String(letters, letters.length - kept / 3, kept / 3);
      if (width(shorter) <= widthPx) {
        return shorter;
      }
    }
    return ELLIPSIS;
  }
}
